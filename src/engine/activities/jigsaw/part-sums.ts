// Fast arithmetic on half-laid sentences: whether the sides that are full agree. Numbers and signs alternate, as the frame
// shows them. Values are binary numbers here; the exact judge of row-truth.ts has the last word on the right assembly.
import type { Puzzle, Token } from './puzzle.js';

const CLOSE = 1e-9;

/** Signs as small numbers, so that the inner loops compare no texts. */
const CODES: Readonly<Record<string, number>> = {
  '+': 1,
  '-': 2,
  '*': 3,
  '/': 4,
  '==': 5,
  '<': 6,
  '>': 7,
  '<=': 8,
  '>=': 9,
};
const MINUS = 2;
const TIMES = 3;
const OVER = 4;
const EQUAL = 5;
const LESS = 6;
const MORE = 7;
const AT_MOST = 8;

const PRECEDENCE = 0;
const LEFT_TO_RIGHT = 1;
const JOINED = 2;

/** Judges stretches of cells of one puzzle. */
export class PartSums {
  readonly #values: Float64Array;
  readonly #codes: Uint8Array;
  /** What a number divides by when expressions are read joined: n times d where it is written n/d. */
  readonly #divisors: Float64Array;

  constructor({ tokens }: Puzzle) {
    this.#values = Float64Array.from(tokens, (token) => token.value);
    this.#codes = Uint8Array.from(tokens, (token) =>
      token.kind === 'sign' ? (CODES[token.cell.expression] ?? 0) : 0,
    );
    this.#divisors = Float64Array.from(tokens, ({ cell, value }) => {
      const bottom = cell.expression.split('/')[1];
      return bottom ? value * Number(bottom) ** 2 : value;
    });
  }

  /** Every comparison whose two sides are full holds: × and ÷ first, all from left to right, or joined (see row-truth.ts). */
  areSidesTrue(grid: Int16Array, from: number, to: number): boolean {
    if (this.#areSidesTrueRead(grid, from, to, PRECEDENCE)) return true;
    // Only where × or ÷ stands are there other readings.
    for (let i = from + 1; i < to; i += 2) {
      const id = grid[i] as number;
      const code = id < 0 ? 0 : this.#codes[id];
      if (code === TIMES || code === OVER)
        return (
          this.#areSidesTrueRead(grid, from, to, LEFT_TO_RIGHT) ||
          this.#areSidesTrueRead(grid, from, to, JOINED)
        );
    }
    return false;
  }

  #areSidesTrueRead(grid: Int16Array, from: number, to: number, reading: number): boolean {
    const codes = this.#codes;
    let left = Number.NaN;
    let sign = 0;
    let start = from;
    for (let i = from + 1; i <= to; i += 2) {
      const id = i < to ? (grid[i] as number) : -2;
      const code = id >= 0 ? (codes[id] as number) : 0;
      if (id !== -2 && code < EQUAL) continue;
      const value = this.#sideValue(grid, start, i, reading);
      if (sign > 0 && left === left && value === value && !holds(left, value, sign)) return false;
      left = value;
      sign = code;
      start = i + 1;
    }
    return true;
  }

  /** The side's value; NaN when something is missing in it, Infinity when it divides by 0 (then no comparison holds). */
  #sideValue(grid: Int16Array, from: number, to: number, reading: number): number {
    let sum = 0;
    let factor = 1;
    let term = Number.NaN;
    for (let i = from; i < to; i += 2) {
      const id = grid[i] as number;
      if (id === -1) return Number.NaN;
      const value = this.#values[id] as number;
      if (i === from) {
        term = value;
        continue;
      }
      const signId = grid[i - 1] as number;
      if (signId === -1) return Number.NaN;
      const code = this.#codes[signId];
      if (code === TIMES || code === OVER) {
        if (reading === LEFT_TO_RIGHT) {
          term = sum + factor * term;
          sum = 0;
          factor = 1;
        }
        if (code === OVER && value === 0) return Number.POSITIVE_INFINITY;
        const divisor = reading === JOINED ? (this.#divisors[id] as number) : value;
        term = code === TIMES ? term * value : term / divisor;
      } else {
        sum += factor * term;
        factor = code === MINUS ? -1 : 1;
        term = value;
      }
    }
    return sum + factor * term;
  }
}

/** Whether a full part has a comparison (one only, where that is known) and is true. */
export function isPartTrue(
  grid: Int16Array,
  from: number,
  to: number,
  sums: PartSums,
  isOneComparison: boolean,
  tokens: readonly Token[],
): boolean {
  let comparisons = 0;
  for (let i = from + 1; i < to; i += 2) if ((tokens[grid[i] as number] as Token).isComparison) comparisons++;
  return comparisons > 0 && (!isOneComparison || comparisons === 1) && sums.areSidesTrue(grid, from, to);
}

function holds(left: number, right: number, sign: number): boolean {
  if (left === Number.POSITIVE_INFINITY || right === Number.POSITIVE_INFINITY) return false;
  const difference = left - right;
  const isEqual = Math.abs(difference) < CLOSE;
  if (sign === EQUAL) return isEqual;
  if (sign === LESS) return difference < 0 && !isEqual;
  if (sign === MORE) return difference > 0 && !isEqual;
  return sign === AT_MOST ? difference < 0 || isEqual : difference > 0 || isEqual;
}
