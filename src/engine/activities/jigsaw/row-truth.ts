// The judge of a full row. Generous on purpose: whatever a child could defend counts as true, so that a defensible rival
// assembly is found and the jigsaw cut anew.
import {
  add,
  compare,
  divide,
  equals,
  multiply,
  type Rational,
  rational,
  subtract,
} from '../../numbers/rational.js';
import type { JigsawCell, RowRule } from './jigsaw.js';
import { isComparison, kindOf, valueOf } from './token.js';

/**
 * True when the row keeps its rule. Sentences: split at blank cells, every part is a true comparison of exact numbers, a
 * chain being true when all neighbours are; × and ÷ bind tighter, or the side is worked from left to right (a child may
 * read it either way). Steps: one constant difference, not 0. Repeats: the texts have a period of 2, 3 or 4, seen at
 * least one and a half times.
 */
export function isRowTrue(cells: readonly JigsawCell[], rule: RowRule): boolean {
  if (rule === 'steps') return stepsTruly(cells);
  if (rule === 'repeats') return repeatsTruly(cells.map((cell) => cell.text));
  return sentenceParts(cells).every((part) => READINGS.some((reading) => isSentenceTrue(part, reading)));
}

/** True when every part is true in every reading: what a right row must be. */
export function isRowPlainlyTrue(cells: readonly JigsawCell[], rule: RowRule): boolean {
  if (rule !== 'sentences') return isRowTrue(cells, rule);
  const parts = sentenceParts(cells);
  return (
    parts.length > 0 && parts.every((part) => READINGS.every((reading) => isSentenceTrue(part, reading)))
  );
}

/** The stretches between blank cells. */
export function sentenceParts(cells: readonly JigsawCell[]): readonly (readonly JigsawCell[])[] {
  const parts: JigsawCell[][] = [];
  let isOpen = false;
  for (const cell of cells) {
    if (kindOf(cell) === 'blank') isOpen = false;
    else if (isOpen) (parts.at(-1) as JigsawCell[]).push(cell);
    else {
      parts.push([cell]);
      isOpen = true;
    }
  }
  return parts;
}

/**
 * "joined" is how a program reads the expressions put together: after ÷ a fraction n/d divides by n and then by d. No child
 * reads it so, but whoever checks a jigsaw by machine may.
 */
const READINGS = ['precedence', 'left to right', 'joined'] as const;
type Reading = (typeof READINGS)[number];

function isSentenceTrue(part: readonly JigsawCell[], reading: Reading): boolean {
  const sides: JigsawCell[][] = [[]];
  const signs: string[] = [];
  for (const cell of part) {
    if (kindOf(cell) === 'sign' && isComparison(cell.expression)) {
      signs.push(cell.expression);
      sides.push([]);
    } else (sides.at(-1) as JigsawCell[]).push(cell);
  }
  if (signs.length === 0) return false;
  const values = sides.map((side) => sideValue(side, reading));
  return signs.every((sign, i) => {
    const [left, right] = [values[i], values[i + 1]];
    return left != null && right != null && holds(compare(left, right), sign);
  });
}

/** Whether a comparison's sign agrees with a difference. */
function holds(difference: number, sign: string): boolean {
  if (sign === '==') return difference === 0;
  if (sign === '<') return difference < 0;
  if (sign === '>') return difference > 0;
  return sign === '<=' ? difference <= 0 : difference >= 0;
}

/** The value of numbers with signs between them (and before them: − 3 is a number too), or null when it has none. */
function sideValue(side: readonly JigsawCell[], reading: Reading): Rational | null {
  const numbers: Rational[] = [];
  const signs: string[] = [];
  let isNegative = false;
  for (const cell of side) {
    const needsNumber = numbers.length === signs.length;
    if (kindOf(cell) === 'sign') {
      if (!needsNumber) signs.push(cell.expression);
      else if (cell.expression === '-') isNegative = !isNegative;
      else if (cell.expression !== '+') return null;
    } else {
      const value = valueOf(cell);
      if (!needsNumber || value === null) return null;
      numbers.push(isNegative ? { n: 0 - value.n, d: value.d } : value);
      isNegative = false;
    }
  }
  if (numbers.length !== signs.length + 1) return null;
  if (reading === 'left to right') return leftToRight(numbers, signs);
  const divisors = numbers.map((value, i) =>
    reading === 'joined' && signs[i - 1] === '/' && value.d > 1 ? rational(value.n * value.d) : value,
  );
  return byPrecedence(divisors, signs);
}

function leftToRight(numbers: readonly Rational[], signs: readonly string[]): Rational | null {
  let value: Rational | null = numbers[0] as Rational;
  for (const [i, sign] of signs.entries()) {
    value = value === null ? null : apply(value, sign, numbers[i + 1] as Rational);
  }
  return value;
}

function byPrecedence(numbers: readonly Rational[], signs: readonly string[]): Rational | null {
  const terms: (Rational | null)[] = [numbers[0] as Rational];
  const between: string[] = [];
  for (const [i, sign] of signs.entries()) {
    const next = numbers[i + 1] as Rational;
    if (sign === '+' || sign === '-') {
      between.push(sign);
      terms.push(next);
    } else {
      const last = terms.at(-1) ?? null;
      terms[terms.length - 1] = last === null ? null : apply(last, sign, next);
    }
  }
  return terms.includes(null) ? null : leftToRight(terms as Rational[], between);
}

function apply(a: Rational, sign: string, b: Rational): Rational | null {
  if (sign === '+') return add(a, b);
  if (sign === '-') return subtract(a, b);
  if (sign === '*') return multiply(a, b);
  return b.n === 0 ? null : divide(a, b);
}

function stepsTruly(cells: readonly JigsawCell[]): boolean {
  const values = cells.map((cell) => (kindOf(cell) === 'number' ? valueOf(cell) : null));
  if (values.includes(null)) return false;
  const known = values as Rational[];
  const step = subtract(known[1] as Rational, known[0] as Rational);
  return (
    step.n !== 0 && known.every((value, i) => i === 0 || equals(value, add(known[i - 1] as Rational, step)))
  );
}

export const REPEAT_PERIODS = [2, 3, 4] as const;

/** Whether a row of this width shows the period at least one and a half times. */
export function isPeriodSeen(period: number, width: number): boolean {
  return 2 * width >= 3 * period;
}

function repeatsTruly(texts: readonly string[]): boolean {
  return REPEAT_PERIODS.some(
    (period) =>
      isPeriodSeen(period, texts.length) &&
      texts.every((text, i) => text !== '' && (i < period || text === texts[i - period])),
  );
}
