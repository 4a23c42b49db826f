// The fact spaces of the ladder: every fact of one idea, listed in full, so that forms can be balanced over them.
import { type Rational, rational } from '../../numbers/rational.js';
import type { Fact, Sign } from './fact.js';

function fact(
  skill: string,
  first: number | Rational,
  sign: Sign,
  second: number | Rational,
  asked: Fact['asked'] = 'result',
): Fact {
  const exact = (value: number | Rational) => (typeof value === 'number' ? rational(value) : value);
  return { skill, first: exact(first), sign, second: exact(second), asked };
}

function range(from: number, to: number, step = 1): number[] {
  return Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);
}

function pairs(first: readonly number[], second: readonly number[]): (readonly [number, number])[] {
  return first.flatMap((a) => second.map((b) => [a, b] as const));
}

/** Sums of two numbers from 0 to 10 each with a total from `low` to `high`. */
export function sums(low: number, high: number): Fact[] {
  return pairs(range(0, 10), range(0, 10))
    .filter(([a, b]) => a + b >= low && a + b <= high)
    .map(([a, b]) => fact(a + b <= 10 ? 'add.within10' : 'add.within20', a, '+', b));
}

/** The takings away that undo {@link sums}. */
export function takes(low: number, high: number): Fact[] {
  return pairs(range(0, 10), range(0, 10))
    .filter(([a, b]) => a + b >= low && a + b <= high)
    .map(([a, b]) => fact(a + b <= 10 ? 'sub.within10' : 'sub.within20', a + b, '−', b));
}

/** "7 + ? = 10" and its like: what makes `whole`. */
export function pairsTo(whole: number): Fact[] {
  return range(0, whole).map((a) => fact('add.bonds10', a, '+', whole - a, 'second'));
}

/** Doubles to 10 + 10 and the sums next to them. */
export function doublesAndNear(): Fact[] {
  return range(1, 10).flatMap((a) => [
    fact('add.doubles', a, '+', a),
    ...(a < 10 ? [fact('add.doubles', a, '+', a + 1), fact('add.doubles', a + 1, '+', a)] : []),
  ]);
}

/** Whole tens: 30 + 40, 90 − 20, up to a hundred. */
export function wholeTens(): Fact[] {
  const tens = range(10, 90, 10);
  return pairs(tens, tens).flatMap(([a, b]) => [
    ...(a + b <= 100 ? [fact('add.tens', a, '+', b)] : []),
    ...(a > b ? [fact('sub.tens', a, '−', b)] : []),
  ]);
}

/** Two-digit numbers and ones that pass a ten: 47 + 8. */
export function onesPastTen(): Fact[] {
  return pairs(range(15, 89), range(3, 9))
    .filter(([a, b]) => (a % 10) + b > 10 && a % 10 > 0)
    .map(([a, b]) => fact('add.2d1d', a, '+', b));
}

/** Two-digit numbers less ones, back through a ten: 53 − 8. */
export function onesBackThroughTen(): Fact[] {
  return pairs(range(21, 97), range(3, 9))
    .filter(([a, b]) => a % 10 < b && a % 10 > 0)
    .map(([a, b]) => fact('sub.2d1d', a, '−', b));
}

/** Two-digit numbers together, with carrying and without, up to a hundred. */
export function twoDigitSums(): Fact[] {
  return pairs(range(12, 78), range(12, 78))
    .filter(([a, b]) => a + b < 100 && a % 10 > 0 && b % 10 > 0 && (a * 7 + b * 3) % 11 === 0)
    .map(([a, b]) => fact((a % 10) + (b % 10) >= 10 ? 'add.2d2d.carry' : 'add.2d2d', a, '+', b));
}

/** Differences of two-digit numbers, with borrowing and without. */
export function twoDigitTakes(): Fact[] {
  return pairs(range(31, 98), range(12, 79))
    .filter(([a, b]) => a - b >= 11 && a % 10 > 0 && b % 10 > 0 && (a * 3 + b * 7) % 11 === 0)
    .map(([a, b]) => fact(a % 10 < b % 10 ? 'sub.2d2d.borrow' : 'sub.2d2d', a, '−', b));
}

/** The tables of the numbers given, up to `top` lots, each product both ways round. */
export function products(tables: readonly number[], top: number): Fact[] {
  const facts = new Map<string, Fact>();
  for (const [of, lots] of pairs(tables, range(1, top))) {
    // A product of two tables belongs to the one that is learnt later.
    const table = tables.includes(lots) ? Math.max(of, lots) : of;
    facts.set(`${of}x${lots}`, fact(`mult.table.${table}`, of, '×', lots));
    facts.set(`${lots}x${of}`, fact(`mult.table.${table}`, lots, '×', of));
  }
  return [...facts.values()];
}

/** The tables of the numbers given read backwards. */
export function quotients(divisors: readonly number[], top: number): Fact[] {
  return pairs(divisors, range(1, top)).map(([of, lots]) => fact(divisionSkill(of), of * lots, '÷', of));
}

function divisionSkill(divisor: number): string {
  if ([2, 5, 10].includes(divisor)) return 'div.table.2510';
  if (divisor <= 4) return 'div.table.34';
  return divisor <= 9 ? 'div.table.69' : 'div.table.1112';
}

/** "6 × ? = 42": the missing factor, in the tables given. */
export function missingFactors(tables: readonly number[], top: number): Fact[] {
  return pairs(tables, range(2, top)).map(([of, lots]) => fact(`mult.table.${of}`, of, '×', lots, 'second'));
}

/** Whole numbers ten, a hundred times as large or as small. */
export function tensAndHundreds(): Fact[] {
  return [3, 4, 7, 8, 12, 16, 25, 34, 47, 58, 63, 90].flatMap((n) =>
    [10, 100].flatMap((unit) => [
      fact(unit === 10 ? 'mult.by10' : 'mult.by100', n, '×', unit),
      fact('div.by10', n * unit, '÷', unit),
    ]),
  );
}

/** Tenths: 0.7 + 0.5, 3.2 − 0.4. */
export function tenths(): Fact[] {
  const tenth = (n: number) => rational(n, 10);
  return pairs(range(3, 48, 3), range(2, 19)).flatMap(([a, b]) => [
    ...(a % 10 > 0 && b % 10 > 0 && (a + b) % 3 === 0 ? [fact('dec.add', tenth(a), '+', tenth(b))] : []),
    ...(a > b && a % 10 > 0 && b % 10 > 0 && (a + b) % 3 === 1
      ? [fact('dec.subtract', tenth(a), '−', tenth(b))]
      : []),
  ]);
}

/** Decimals ten or a hundred times as large or as small. */
export function decimalShifts(): Fact[] {
  return [4, 7, 12, 25, 36, 48, 59, 73, 81, 95, 104, 168].flatMap((n) =>
    [10, 100].flatMap((unit) => [
      fact('dec.times10', rational(n, 10), '×', unit),
      fact('dec.divide10', n, '÷', unit),
    ]),
  );
}

/** Takings away that end below zero: 5 − 8. */
export function pastZero(): Fact[] {
  return pairs(range(1, 12), range(2, 20))
    .filter(([a, b]) => b > a)
    .map(([a, b]) => fact('sub.below-zero', a, '−', b));
}
