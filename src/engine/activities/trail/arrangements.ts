// Laying the tiles by picture alone: the search that looks for rival arrangements while a picture is woven, and whose
// work on the finished tiles is the measure of how little the picture gives away.
import { CODES, EAST, NORTH, SOUTH, WEST } from './codes.js';

/** Tiles as codes, four a tile (north, east, south, west), row by row; the frame is what the tiles show on the rim. */
export interface TileSet {
  readonly rows: number;
  readonly columns: number;
  readonly codes: Uint8Array;
}

export interface Laying {
  /** The tile on each cell in the first arrangement found that is not the right one; null when there is none. */
  readonly rival: Uint8Array | null;
  /** Tiles laid. */
  readonly nodes: number;
  /** False when the limit of nodes ended the search. */
  readonly isComplete: boolean;
}

/**
 * Looks for an arrangement other than the right one (tile i on cell i) with all edges matching. Cells are filled in
 * reading order; a tile is laid when it matches the frame, the tile above and the tile to the left; dead ends are taken
 * back. With no rival found and `isComplete`, the whole tree was seen, and the right arrangement is the only one.
 */
export function layByPicture({ rows, columns, codes }: TileSet, mostNodes: number): Laying {
  const cells = rows * columns;
  const byCorner: number[][] = Array.from({ length: CODES * CODES }, () => []);
  for (let tile = 0; tile < cells; tile++) {
    byCorner[CODES * (codes[4 * tile + NORTH] as number) + (codes[4 * tile + WEST] as number)]?.push(tile);
  }
  const laid = new Uint8Array(cells);
  const isUsed = new Uint8Array(cells);
  let nodes = 0;
  let moved = 0;

  /** True ends the search. */
  const fill = (cell: number): boolean => {
    if (cell === cells) return moved > 0;
    const column = cell % columns;
    const isLast = column === columns - 1;
    const isBottom = cell >= cells - columns;
    const above =
      cell < columns
        ? (codes[4 * cell + NORTH] as number)
        : (codes[4 * (laid[cell - columns] as number) + SOUTH] as number);
    const before =
      column === 0
        ? (codes[4 * cell + WEST] as number)
        : (codes[4 * (laid[cell - 1] as number) + EAST] as number);
    for (const tile of byCorner[CODES * above + before] as number[]) {
      if (isUsed[tile]) continue;
      if (isLast && codes[4 * tile + EAST] !== codes[4 * cell + EAST]) continue;
      if (isBottom && codes[4 * tile + SOUTH] !== codes[4 * cell + SOUTH]) continue;
      if (++nodes > mostNodes) return true;
      laid[cell] = tile;
      isUsed[tile] = 1;
      if (tile !== cell) moved++;
      const isOver = fill(cell + 1);
      if (isOver) return true;
      if (tile !== cell) moved--;
      isUsed[tile] = 0;
    }
    return false;
  };
  const isOver = fill(0);
  const isComplete = nodes <= mostNodes;
  return { rival: isOver && isComplete ? laid : null, nodes, isComplete };
}
