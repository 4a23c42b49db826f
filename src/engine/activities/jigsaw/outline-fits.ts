// How many assemblies fit by outline and by kind of cell alone. When there are many, shape does not solve the jigsaw.
import { countAssemblies } from './count.js';
import type { Jigsaw, JigsawCell } from './jigsaw.js';
import { outlineOf } from './outlines.js';
import { makePuzzle } from './puzzle.js';
import { kindOf } from './token.js';

/** Cells of a jigsaw and the fits asked for there; between two of them the logarithm is interpolated, beyond extrapolated. */
const ASKED: readonly (readonly [cells: number, fits: number])[] = [
  [15, 4],
  [20, 10],
  [35, 30],
  [54, 100],
];

/** The fewest fits by outline and kind that a jigsaw of this size may have: 10 for 4 x 5, 30 for 5 x 7, 100 for 6 x 9. */
export function fitsAsked(rows: number, columns: number): number {
  const cells = rows * columns;
  const at = ASKED.findIndex(([size]) => size >= cells);
  const to = at < 0 ? ASKED.length - 1 : Math.max(1, at);
  const [lowCells, low] = ASKED[to - 1] as readonly [number, number];
  const [highCells, high] = ASKED[to] as readonly [number, number];
  const share = (cells - lowCells) / (highCells - lowCells);
  return Math.round(low * (high / low) ** share);
}

type FitsSource = Pick<Jigsaw, 'rows' | 'columns' | 'cells' | 'rowRule' | 'pieces'>;

/** Exchanges among pieces of the same outline and kinds: each gives another fit, so their number is a lower bound. */
export function exchanges({ cells, columns, pieces }: FitsSource): number {
  const alike = new Map<string, number>();
  let product = 1;
  for (const piece of pieces) {
    const ordered = piece.cells.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
    const kinds = ordered.map(([row, column]) => kindOf(cells[row * columns + column] as JigsawCell)[0]);
    const name = `${outlineOf(piece)}|${kinds.join('')}`;
    const count = (alike.get(name) ?? 0) + 1;
    alike.set(name, count);
    product *= count;
  }
  return product;
}

const NODE_LIMIT = 1500;
const MOST_FITS = 1000;

/** A lower bound of the fits, counted no further than about `enough` (1000 unless given); exact while it stays below. */
export function outlineFits(source: FitsSource, enough = MOST_FITS): number {
  const bound = exchanges(source);
  if (bound >= enough) return bound;
  const puzzle = makePuzzle({ ...source, given: [] });
  return Math.max(
    bound,
    countAssemblies(puzzle, { sees: 'outlines', most: enough, nodeLimit: NODE_LIMIT }).found,
  );
}
