// What is proved about a trail, from its JSON alone.
import { type Covering, searchCovers } from '../../solver/exact-cover.js';
import { layByPicture } from './arrangements.js';
import { codeNumber, EAST, NORTH, SOUTH, WEST } from './codes.js';
import { isInner, makeGrid } from './grid.js';
import type { Trail, TrailProof } from './trail.js';

/** What of a trail the proof is about. */
export type TrailPieces = Pick<Trail, 'rows' | 'columns' | 'frame'> & {
  readonly tiles: readonly Pick<Trail['tiles'][number], 'edges'>[];
};

const NO_LIMIT = Number.MAX_SAFE_INTEGER;

/**
 * The proof of a trail. `arrangements` is counted up to `most` (2 unless given: more than one is one too many).
 * Throws RangeError for tiles or a frame of the wrong number, or an unknown code.
 */
export function proveTrail(pieces: TrailPieces, most = 2): TrailProof {
  const codes = codesOf(pieces);
  const rim = rimOf(pieces);
  const { rows, columns } = pieces;
  const breaks = swapBreaks(pieces, codes, rim);
  return {
    arrangements: countArrangements(pieces, codes, rim, most),
    swapsShown: breaks.filter((broken) => broken >= 2).length,
    swaps: breaks.length,
    leastBreaks: Math.min(...breaks),
    pictureOnlyNodes: layByPicture({ rows, columns, codes }, NO_LIMIT).nodes,
  };
}

function codesOf({ rows, columns, tiles }: TrailPieces): Uint8Array {
  if (tiles.length !== rows * columns)
    throw new RangeError(`${tiles.length} tiles for ${rows * columns} cells`);
  return Uint8Array.from(tiles.flatMap(({ edges }) => numbersOf(edges, 4)));
}

function numbersOf(names: readonly string[], count: number): number[] {
  const numbers = names.map(codeNumber);
  if (numbers.length !== count || numbers.includes(-1))
    throw new RangeError(`not ${count} edge codes: ${names.join(' ')}`);
  return numbers;
}

/** The frame's code at 4 * cell + side, -1 where another cell is. */
function rimOf({ rows, columns, frame }: TrailPieces): Int8Array {
  const rim = new Int8Array(4 * rows * columns).fill(-1);
  numbersOf(frame.north, columns).forEach((code, column) => (rim[4 * column + NORTH] = code));
  numbersOf(frame.south, columns).forEach(
    (code, column) => (rim[4 * ((rows - 1) * columns + column) + SOUTH] = code),
  );
  numbersOf(frame.west, rows).forEach((code, row) => (rim[4 * row * columns + WEST] = code));
  numbersOf(frame.east, rows).forEach((code, row) => (rim[4 * (row * columns + columns - 1) + EAST] = code));
  return rim;
}

/**
 * An arrangement is an exact cover: each option lays a tile on a cell whose frame it matches; it covers the cell and the
 * tile, and colours the inner edges around the cell, which two neighbours must colour alike.
 */
function countArrangements(
  { rows, columns }: TrailPieces,
  codes: Uint8Array,
  rim: Int8Array,
  most: number,
): number {
  const grid = makeGrid(rows, columns);
  const { cells } = grid;
  const options: Covering[][] = [];
  for (let cell = 0; cell < cells; cell++) {
    for (let tile = 0; tile < cells; tile++) {
      if (rimMisses(cell, tile, codes, rim) > 0) continue;
      const coverings: Covering[] = [{ item: cell }, { item: cells + tile }];
      for (let side = 0; side < 4; side++) {
        const edge = grid.edgeOf[4 * cell + side] as number;
        if (isInner(grid, edge))
          coverings.push({ item: 2 * cells + edge, colour: 1 + (codes[4 * tile + side] as number) });
      }
      options.push(coverings);
    }
  }
  return searchCovers({ primary: 2 * cells, secondary: grid.edges, options }, { covers: most }).covers;
}

function rimMisses(cell: number, tile: number, codes: Uint8Array, rim: Int8Array): number {
  let misses = 0;
  for (let side = 0; side < 4; side++) {
    const wanted = rim[4 * cell + side] as number;
    if (wanted >= 0 && wanted !== codes[4 * tile + side]) misses++;
  }
  return misses;
}

/** For each pair of tiles, the edges that do not match when the two change places. */
function swapBreaks({ rows, columns }: TrailPieces, codes: Uint8Array, rim: Int8Array): number[] {
  const grid = makeGrid(rows, columns);
  const laid = Array.from({ length: grid.cells }, (_, cell) => cell);
  const brokenIn = (cells: readonly number[]): number => {
    const edges = new Set(
      cells.flatMap((cell) => [0, 1, 2, 3].map((side) => grid.edgeOf[4 * cell + side] as number)),
    );
    let broken = cells.reduce((sum, cell) => sum + rimMisses(cell, laid[cell] as number, codes, rim), 0);
    for (const edge of edges) {
      if (!isInner(grid, edge)) continue;
      const [before, after] = [grid.besides[2 * edge] as number, grid.besides[2 * edge + 1] as number];
      const side = after === before + 1 && grid.edgeOf[4 * before + EAST] === edge ? EAST : SOUTH;
      if (
        codes[4 * (laid[before] as number) + side] !== codes[4 * (laid[after] as number) + ((side + 2) % 4)]
      )
        broken++;
    }
    return broken;
  };
  const breaks: number[] = [];
  for (let a = 0; a < grid.cells; a++) {
    for (let b = a + 1; b < grid.cells; b++) {
      laid[a] = b;
      laid[b] = a;
      breaks.push(brokenIn([a, b]));
      laid[a] = a;
      laid[b] = b;
    }
  }
  return breaks;
}
