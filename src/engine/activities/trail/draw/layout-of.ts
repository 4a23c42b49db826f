// From a trail's JSON back to the lines of its tiles.
import { codeNumber, styleOf } from '../codes.js';
import { tileLayout, type TileLayout } from '../tile-layout.js';
import { SIDES, type Side, type Trail } from '../trail.js';

type Pieces = Pick<Trail, 'rows' | 'columns' | 'tiles' | 'entry'>;

/**
 * The cells of the trail from entry to exit. Follows the pair of sides that each tile of the trail names first, and ends
 * where the trail leaves the cells or would come back to one of them.
 */
export function routeOf({ rows, columns, tiles, entry }: Pieces): number[] {
  const route: number[] = [];
  let { cell } = entry;
  let came: Side = entry.side;
  while (!route.includes(cell)) {
    const [one, other] = tiles[cell]?.path[0] ?? [];
    if (one === undefined || other === undefined || (one !== came && other !== came)) break;
    route.push(cell);
    const goes = one === came ? other : one;
    const [row, column] = [Math.floor(cell / columns), cell % columns];
    const next = {
      north: [row - 1, column],
      east: [row, column + 1],
      south: [row + 1, column],
      west: [row, column - 1],
    }[goes] as [number, number];
    if (next[0] < 0 || next[0] >= rows || next[1] < 0 || next[1] >= columns) break;
    cell = next[0] * columns + next[1];
    came = SIDES[(SIDES.indexOf(goes) + 2) % 4] as Side;
  }
  return route;
}

/** The lines of a tile and the rooms beside them; null for a tile whose lines cannot be drawn clear of each other. */
export function layoutOf(trail: Pieces, index: number): TileLayout | null {
  const tile = trail.tiles[index];
  if (!tile) throw new RangeError(`a trail of ${trail.tiles.length} tiles has none with number ${index}`);
  const own = routeOf(trail).includes(index) ? tile.path[0] : undefined;
  const through = own ? ([SIDES.indexOf(own[0]), SIDES.indexOf(own[1])] as const) : null;
  const codes = tile.edges.map(codeNumber) as [number, number, number, number];
  const isSound = through === null || through.every((side) => styleOf(codes[side] as number) === 'path');
  return isSound ? tileLayout(codes, through) : null;
}
