// Cells as the judge and the solvers read them: a kind, an exact value, a sign.
import { parseValue, type Rational, rational } from '../../numbers/rational.js';
import type { JigsawCell } from './jigsaw.js';

export const CELL_KINDS = ['number', 'sign', 'blank'] as const;
export type CellKind = (typeof CELL_KINDS)[number];

const SIGNS: ReadonlySet<string> = new Set(['+', '-', '*', '/', '==', '<', '>', '<=', '>=']);
const COMPARISONS: ReadonlySet<string> = new Set(['==', '<', '>', '<=', '>=']);

/** Whether the cell holds a number (or a word or shape in its place), a sign, or nothing. */
export function kindOf(cell: JigsawCell): CellKind {
  if (cell.text === '') return 'blank';
  return SIGNS.has(cell.expression) ? 'sign' : 'number';
}

/** True for = < > and their kin, which every sentence needs one of. */
export function isComparison(expression: string): boolean {
  return COMPARISONS.has(expression);
}

/** The exact number of a number cell ("7", "3/4", "0.75"), or null when its expression is not a plain number. */
export function valueOf(cell: JigsawCell): Rational | null {
  const decimal = /^(-?)(\d{1,9})\.(\d{1,6})$/.exec(cell.expression);
  if (!decimal) return parseValue(cell.expression);
  const size = Number(`${decimal[2]}${decimal[3]}`);
  return rational(decimal[1] === '-' ? -size : size, 10 ** (decimal[3] as string).length);
}
