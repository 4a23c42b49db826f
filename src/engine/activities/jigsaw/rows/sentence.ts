// Number sentences of 3, 5, 7 or 9 cells: = < >, the total on either side, × and ÷ alone on their side.
import { formatDecimal, formatWhole } from '../../../numbers/format.js';
import { type Rational, rational } from '../../../numbers/rational.js';
import { type Comparison, numberCell, type Operation, signCell } from '../cells.js';
import type { JigsawCell } from '../jigsaw.js';
import { reachOf, type RowContext } from './band.js';

interface Side {
  readonly value: number;
  readonly numbers: readonly number[];
  readonly operations: readonly Operation[];
}

const COMPARED_SHARE = 0.2;
const DECIMAL_SHARE = 0.3;
const ATTEMPTS = 40;

/** One sentence of `length` cells for a child of `year`, or null when chance found none. Some compare, unless `isEqual`. */
export function sentenceOf(
  length: number,
  year: number,
  context: RowContext,
  isEqual = false,
): JigsawCell[] | null {
  const { rng } = context;
  const numbers = (length + 1) / 2;
  // Tenths: the same sentence with every number a tenth of it.
  const scale = year >= 5 && rng.chance(DECIMAL_SHARE) ? 10 : 1;
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const comparison: Comparison =
      length === 3 || (!isEqual && rng.chance(COMPARED_SHARE)) ? (rng.chance(0.5) ? '<' : '>') : '==';
    const leftCount = numbers === 2 ? 1 : splitAt(numbers, rng.int(0, 2));
    const pair = sidesOf(leftCount, numbers - leftCount, comparison, year, context);
    if (pair === null) continue;
    const [left, right] = pair;
    if (isDull(left, right)) continue;
    const cells = [
      ...sideCells(left, scale, context),
      signCell(comparison),
      ...sideCells(right, scale, context),
    ];
    // Tenths of a product would no longer be true.
    const hasFactors = [...left.operations, ...right.operations].some((sign) => sign === '*' || sign === '/');
    if (scale === 1 || !hasFactors) return cells;
  }
  return null;
}

/** How many of the numbers stand left: one, half, or all but one. */
function splitAt(numbers: number, way: number): number {
  return way === 0 ? 1 : way === 1 ? numbers - 1 : Math.floor(numbers / 2);
}

function sidesOf(
  leftCount: number,
  rightCount: number,
  comparison: Comparison,
  year: number,
  context: RowContext,
): [Side, Side] | null {
  const { rng } = context;
  const left = sideOf(leftCount, year, context, null);
  if (left === null) return null;
  let target: number | null = left.value;
  if (comparison !== '==') {
    const gap = rng.int(1, Math.max(2, Math.round(reachOf(year).largest / 8)));
    target = comparison === '<' ? left.value + gap : left.value - gap;
  }
  const right = sideOf(rightCount, year, context, target);
  return right === null ? null : [left, right];
}

/** A side of so many numbers, of the given value if one is given. */
function sideOf(count: number, year: number, context: RowContext, value: number | null): Side | null {
  const { rng } = context;
  const { largest, tables } = reachOf(year);
  if (value !== null && (value < 0 || value > largest)) return null;
  if (count === 1) {
    const number = value ?? rng.int(Math.min(3, largest), largest);
    return { value: number, numbers: [number], operations: [] };
  }
  if (count === 2 && tables.length > 0 && rng.chance(0.5)) {
    const factors = productOf(value, tables, largest, rng.int(0, 1) === 0, context);
    if (factors) return factors;
  }
  return sumOf(count, largest, value, context);
}

function productOf(
  value: number | null,
  tables: readonly number[],
  largest: number,
  divides: boolean,
  { rng }: RowContext,
): Side | null {
  const a = rng.pick(tables);
  const b = divides && value !== null ? value : rng.pick(tables);
  if (divides) {
    if (b < 2 || a * b > largest) return null;
    return { value: b, numbers: [a * b, a], operations: ['/'] };
  }
  if (value === null) return a * b > largest ? null : { value: a * b, numbers: [a, b], operations: ['*'] };
  if (value % a !== 0) return null;
  const other = value / a;
  if (other < 2 || other > 12) return null;
  return { value, numbers: [a, other], operations: ['*'] };
}

function sumOf(count: number, largest: number, value: number | null, { rng }: RowContext): Side | null {
  const least = largest <= 10 ? 1 : 2;
  const operations: Operation[] = Array.from({ length: count - 1 }, () => (rng.chance(0.6) ? '+' : '-'));
  const numbers: number[] = [];
  let running = rng.int(least, Math.max(least, Math.round(largest * (operations[0] === '-' ? 0.9 : 0.5))));
  numbers.push(running);
  for (const [i, operation] of operations.entries()) {
    const isLast = i === operations.length - 1;
    const room = operation === '+' ? largest - running : running - 1;
    if (room < least) return null;
    let next = rng.int(least, Math.max(least, Math.round(room / (operations.length - i))));
    if (isLast && value !== null) next = operation === '+' ? value - running : running - value;
    if (next < least || next > room + 1) return null;
    // A step that undoes the one before, or takes a number from itself, leaves nothing to work out.
    if (next === numbers.at(-1) && (operation === '-' || operations[i - 1] === '-')) return null;
    running = operation === '+' ? running + next : running - next;
    numbers.push(next);
  }
  return running < 0 || running > largest ? null : { value: running, numbers, operations };
}

/** The same numbers on both sides, or a number taken from itself: true without any arithmetic. */
function isDull(left: Side, right: Side): boolean {
  const sorted = (side: Side) => side.numbers.toSorted((a, b) => a - b).join();
  if (sorted(left) === sorted(right)) return true;
  const shared = left.numbers.filter((number) => right.numbers.includes(number)).length;
  if (shared > 0 && left.numbers.length + right.numbers.length > 3) return true;
  return [left, right].some((side) => side.value === 0);
}

function sideCells(side: Side, scale: number, { locale }: RowContext): JigsawCell[] {
  return side.numbers.flatMap((number, i) => {
    const value: Rational = rational(number, scale);
    const text = scale === 1 ? formatWhole(number, locale) : formatDecimal(value, locale);
    const cell = numberCell(text, value);
    return i === 0 ? [cell] : [signCell(side.operations[i - 1] as Operation), cell];
  });
}
