// Subtraction to 100: first facts, back through ten, tens and ones, difference, two digits.
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { bareTake, compareTake, missingTake, storyTake, type Take, type TakeSpec } from './take-templates.js';

const WITHIN_10: TakeSpec = {
  free: (rng) => {
    const a = rng.int(3, 10);
    return [a, rng.int(1, Math.min(5, a - 1))];
  },
  from: 2,
  to: 10,
  on: (n, rng) => [n, rng.int(1, Math.min(5, n))],
  size: (a, b) => (a - 4) / 4 + (b - 1) / 3,
  figure: (a) => ({ kind: 'ten-frame', filled: a, frames: 1 }),
};

const WITHIN_20: TakeSpec = {
  free: (rng) => {
    const a = rng.int(11, 18);
    return [a, rng.int(Math.max(2, a - 9), 9)];
  },
  from: 2,
  to: 20,
  on: (n, rng) => {
    if (n <= 9) return [n + rng.int(11 - n, 9), n];
    return n === 10 || n >= 19 ? [n, rng.int(2, 9)] : [n, rng.int(Math.max(2, n - 9), 9)];
  },
  plainBorrows: 1,
  size: (a, b) => (a - 11) / 4 + (Math.min(b, a - b) > 4 ? 0.6 : 0),
  figure: (a) => ({ kind: 'ten-frame', filled: a, frames: 2 }),
};

const TAKE_TENS: TakeSpec = {
  free: (rng) => {
    const a = rng.int(31, 98);
    return [a, 10 * rng.int(1, Math.floor(a / 10) - 1)];
  },
  from: 11,
  to: 99,
  on: (n, rng) => [n, 10 * rng.int(1, Math.floor(n / 10))],
  size: (_a, b) => (b - 10) / 25,
  adjust: -0.2,
};

const TAKE_ONES: TakeSpec = {
  free: (rng) => [rng.int(21, 95), rng.int(2, 9)],
  from: 2,
  to: 99,
  on: (n, rng) => (n < 11 ? [rng.int(21, 95), n] : [n, rng.int(2, 9)]),
  size: (a, b) => (b - 2) / 7 + (a > 60 ? 0.5 : 0),
};

const CLOSE: TakeSpec = {
  free: (rng) => {
    const b = rng.int(8, 88);
    return [b + rng.int(3, 11), b];
  },
  from: 5,
  to: 97,
  on: (n, rng) => (rng.chance(0.6) || n < 20 ? [n + rng.int(2, 12), n] : [n, n - rng.int(2, 12)]),
  plainBorrows: 1,
  size: (a, b) => (a - b - 3) / 5 + (a > 50 ? 0.4 : 0),
};

function withoutBorrow(a: number, rng: Rng): Take | null {
  const tens = Math.floor(a / 10);
  const ones = a % 10;
  return tens < 2 || ones === 0 ? null : [a, 10 * rng.int(1, tens - 1) + rng.int(1, ones)];
}

const NO_BORROW: TakeSpec = {
  free: (rng) => withoutBorrow(10 * rng.int(3, 9) + rng.int(3, 9), rng) ?? [68, 25],
  from: 21,
  to: 99,
  on: withoutBorrow,
  size: (a) => (a - 30) / 30,
};

function withBorrow(a: number, rng: Rng): Take | null {
  const tens = Math.floor(a / 10);
  const ones = a % 10;
  return tens < 2 || ones === 9 ? null : [a, 10 * rng.int(1, tens - 1) + rng.int(ones + 1, 9)];
}

const BORROW: TakeSpec = {
  free: (rng) => withBorrow(10 * rng.int(3, 9) + rng.int(0, 7), rng) ?? [83, 47],
  from: 12,
  to: 98,
  on: (n, rng) => {
    const ones = n % 10;
    // Below 20, and for ones of 9, the day's number is what is taken away.
    if (n < 20 || ones === 9 || (n < 79 && ones > 0 && rng.chance(0.35)))
      return ones === 0
        ? null
        : n < 89
          ? [10 * rng.int(Math.floor(n / 10) + 2, 10) + rng.int(0, ones - 1), n]
          : [100, n];
    return withBorrow(n, rng);
  },
  plainBorrows: 1,
  size: (a, b) => (a - 40) / 40 + (a % 10 === 0 ? 0.3 : 0) - (a - b < 12 ? 0.3 : 0),
};

export const WITHIN_HUNDRED_TAKE_SKILLS: readonly Skill[] = [
  {
    id: 'sub.within10',
    title: 'Take away within 10',
    year: 0,
    fluentYear: 1,
    strand: 'subtraction',
    prerequisites: ['add.within10'],
    codes: { ac9: ['AC9MFN05'], england: ['1AS-2', '1NF-1', '2NF-1'], ccss: ['K.OA.A.2'] },
    shift: 0.2,
    templates: [bareTake(WITHIN_10), storyTake(WITHIN_10)],
  },
  {
    id: 'sub.within20',
    title: 'Take away within 20',
    year: 1,
    fluentYear: 2,
    strand: 'subtraction',
    prerequisites: ['sub.within10', 'add.within20'],
    codes: {
      ac9: ['AC9M1N04', 'AC9M1N05', 'AC9M2A02'],
      england: ['NC-Y1-addsub-3', '2AS-1', 'NC-Y1-addsub-4', 'NC-Y2-addsub-2', '3NF-1'],
      ccss: ['1.OA.C.6', '1.OA.B.4', '2.OA.B.2'],
    },
    shift: 0.2,
    templates: [bareTake(WITHIN_20), storyTake(WITHIN_20), missingTake(WITHIN_20)],
  },
  {
    id: 'sub.tens',
    title: 'Take away a multiple of ten',
    year: 2,
    fluentYear: 3,
    strand: 'subtraction',
    prerequisites: ['place.ten-more'],
    codes: { ac9: ['AC9M2N04'], england: ['NC-Y2-addsub-3b', '2AS-3'], ccss: ['1.NBT.C.6'] },
    templates: [bareTake(TAKE_TENS), missingTake(TAKE_TENS)],
  },
  {
    id: 'sub.2d1d',
    title: 'Take ones from a two-digit number',
    year: 2,
    fluentYear: 3,
    strand: 'subtraction',
    prerequisites: ['sub.within20'],
    codes: { ac9: ['AC9M2N04'], england: ['NC-Y2-addsub-3a', '2AS-3'], ccss: ['2.NBT.B.5'] },
    shift: 0.1,
    templates: [bareTake(TAKE_ONES), storyTake(TAKE_ONES)],
  },
  {
    id: 'sub.difference',
    family: 'difference',
    title: 'Find the difference by counting up',
    year: 2,
    fluentYear: 3,
    strand: 'subtraction',
    prerequisites: ['sub.within20'],
    codes: { ac9: ['AC9M2N04', 'AC9M2N06'], england: ['2AS-2'], ccss: ['2.OA.A.1'] },
    templates: [compareTake(CLOSE)],
  },
  {
    id: 'sub.2d2d',
    title: 'Subtract two-digit numbers without borrowing',
    year: 2,
    fluentYear: 3,
    strand: 'subtraction',
    prerequisites: ['sub.tens'],
    codes: {
      ac9: ['AC9M2N04'],
      england: ['NC-Y2-addsub-3c', '2AS-4', 'NC-Y2-addsub-1b'],
      ccss: ['2.NBT.B.5'],
    },
    shift: 0.3,
    templates: [bareTake(NO_BORROW), storyTake(NO_BORROW)],
  },
  {
    id: 'sub.2d2d.borrow',
    title: 'Subtract two-digit numbers with borrowing',
    year: 3,
    fluentYear: 4,
    strand: 'subtraction',
    prerequisites: ['sub.2d2d', 'sub.2d1d'],
    codes: { ac9: ['AC9M3A02'], england: ['2AS-4', 'NC-Y3-addsub-4'], ccss: ['2.NBT.B.5', '2.OA.A.1'] },
    shift: 0.3,
    templates: [bareTake(BORROW), storyTake(BORROW), missingTake(BORROW)],
  },
];
