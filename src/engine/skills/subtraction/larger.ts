// Subtraction from three digits on: round numbers and adjusting, borrowing across zeros, below zero.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { bareTake, compareTake, missingTake, storyTake, type TakeSpec } from './take-templates.js';

const ADJUSTED: TakeSpec = {
  free: (rng) => [rng.int(53, 180), rng.pick([9, 19, 29, 39, 49])],
  from: 12,
  to: 999,
  on: (n, rng) => {
    const near = [9, 19, 29, 39, 49, 99, 98, 199].filter((b) => b <= n - 2 && (n < 150 || b > 10));
    return [n, rng.pick(near)];
  },
  plainBorrows: 1,
  size: (_a, b) => (b > 90 ? 0.6 : b > 10 ? 0.3 : 0) + (b % 10 === 8 ? 0.5 : 0),
};

const THREE_DIGIT: TakeSpec = {
  free: (rng) => {
    const a = rng.int(210, 990);
    return [a, rng.chance(0.5) ? rng.int(12, 99) : rng.int(102, a - 50)];
  },
  from: 15,
  to: 999,
  on: (n, rng) => {
    if (n < 101) return [rng.int(n + 101, 990), n];
    const choice = rng.int(0, 3);
    if (choice === 0) return [n, rng.int(2, 9)];
    if (choice === 1) return [n, 10 * rng.int(1, Math.min(9, Math.floor(n / 10) - 1))];
    return choice === 2 && n > 220 ? [n, rng.int(102, n - 50)] : [n, rng.int(12, 99)];
  },
  plainBorrows: 1,
  size: (_a, b) => (b % 10 === 0 ? 0 : 0.7) + (b > 99 ? 0.6 : 0),
  adjust: -0.1,
};

const FROM_ROUND: TakeSpec = {
  free: (rng) => [rng.pick([200, 300, 400, 500, 700, 1000, 2000, 402, 603]), rng.int(12, 195)],
  from: 3,
  to: 9000,
  on: (n, rng) => {
    if (n % 100 === 0) return [n, rng.int(12, 98)];
    if (n > 100 && n < 1000 && Math.floor(n / 10) % 10 === 0 && n % 10 < 9 && rng.chance(0.5))
      return [n, 10 * rng.int(1, 8) + rng.int((n % 10) + 1, 9)];
    if (n < 100) return [rng.pick([200, 300, 400, 500, 1000, 1000, 302, 504]), n];
    return n < 1000
      ? [rng.pick([1000, 2000, 3000]), n]
      : [1000 * Math.ceil(n / 1000) + 1000 * rng.int(0, 1), n];
  },
  plainBorrows: 2,
  size: (a, b) => (a > 999 ? 0.6 : 0) + (b > 99 ? 0.6 : 0) - (b < 10 ? 0.8 : 0),
  adjust: -0.2,
};

const FOUR_DIGIT: TakeSpec = {
  free: (rng) => {
    const a = rng.int(2100, 9800);
    return [a, rng.chance(0.6) ? 10 * rng.int(11, 180) : rng.int(115, 1900)];
  },
  from: 105,
  to: 9999,
  on: (n, rng) => {
    if (n < 1000) return [100 * rng.int(20, 90), n];
    return [
      n,
      rng.chance(0.4)
        ? 100 * rng.int(1, Math.min(19, Math.floor(n / 100) - 1))
        : rng.int(105, n - 100 > 1900 ? 1900 : n - 100),
    ];
  },
  plainBorrows: 1,
  size: (_a, b) => (b % 100 === 0 ? 0 : b % 10 === 0 ? 0.7 : 1.4),
};

const LARGE: TakeSpec = {
  free: (rng) => {
    const a = 500 * rng.int(30, 180);
    return [a, 100 * rng.int(15, Math.floor(a / 200))];
  },
  from: 3000,
  to: 1_000_000,
  on: (n, rng) => {
    const unit = n < 10_000 ? 50 : n < 100_000 ? 100 : 5000;
    return [n, unit * rng.int(5, Math.max(6, Math.min(150, Math.floor((0.8 * n) / unit))))];
  },
  plainBorrows: 1,
  size: (a, b) => (b % 1000 === 0 ? 0 : 0.7) + (a % 1000 === 0 ? 0 : 0.4) + (a % 100 === 0 ? 0 : 0.6),
};

const belowZero = templateOf<readonly [a: number, b: number]>({
  id: 'below-zero',
  free: (rng) => {
    const a = rng.int(2, 30);
    return [a, a + rng.int(1, 25)];
  },
  on: onWhole(1, 400, (n, rng) => {
    if (n <= 12 || rng.chance(0.5)) return [n, n + rng.int(1, n > 20 ? 30 : 9)];
    return [n > 20 ? 10 * rng.int(1, Math.floor((n - 1) / 10)) : rng.int(1, n - 1), n];
  }),
  draft: ([a, b], { locale, rng }) => {
    const say = (n: number) => formatWhole(n, locale);
    // Falls that a day's weather may bring.
    const weather = b <= (locale.degrees === '°F' ? 30 : 15) && rng.chance(0.4);
    return {
      text: weather
        ? `It is ${a} ${locale.degrees} and gets ${b} degrees colder. What is the temperature now, in ${locale.degrees}?`
        : `${say(a)} − ${say(b)}`,
      answer: wholeAnswer(a - b, locale),
      expression: `${a} - ${b}`,
      features: { story: weather, size: Math.min(3, b / 20), fives: a % 10 === 0 },
      strategy: [
        `Take ${say(a)} to reach zero: ${say(a)} − ${say(a)} = 0`,
        `${say(b)} − ${say(a)} = ${say(b - a)}, so ${say(b - a)} still to take`,
        `${say(b - a)} below zero is ${say(a - b)}`,
      ],
      slips: wholeSlips(
        [
          [weather ? 'negative.sign-lost' : 'negative.turned-round', b - a],
          ['negative.zero-counted', a - b + 1],
          ['negative.zero-counted', a - b - 1],
          ['operation.swapped', a + b],
        ],
        locale,
        true,
      ),
      ...(b <= 20
        ? {
            figure: {
              kind: 'number-line' as const,
              from: -20,
              to: 20,
              step: 1,
              labels: [-20, -10, 0, 10, 20],
              mark: a,
            },
          }
        : {}),
      usesNumber: `goes below zero from ${say(a)} by taking ${say(b)}`,
    };
  },
});

export const LARGER_TAKE_SKILLS: readonly Skill[] = [
  {
    id: 'sub.adjust',
    title: 'Subtract by using a nearby round number',
    year: 3,
    fluentYear: 4,
    strand: 'subtraction',
    prerequisites: ['sub.tens'],
    codes: { ac9: ['AC9M3A02'], england: ['NC-Y3-addsub-4'], ccss: ['2.NBT.B.7'] },
    shift: 0.2,
    templates: [bareTake(ADJUSTED), storyTake(ADJUSTED)],
  },
  {
    id: 'sub.3d',
    title: 'Subtract with three-digit numbers',
    year: 3,
    fluentYear: 4,
    strand: 'subtraction',
    prerequisites: ['sub.2d2d.borrow', 'place.three-digit'],
    codes: {
      ac9: ['AC9M3N03'],
      england: ['NC-Y3-addsub-1a', 'NC-Y3-addsub-1b', 'NC-Y3-addsub-2', '3AS-2'],
      ccss: ['3.NBT.A.2'],
    },
    shift: 0.5,
    templates: [bareTake(THREE_DIGIT), storyTake(THREE_DIGIT), compareTake(THREE_DIGIT)],
  },
  {
    id: 'sub.across-zero',
    title: 'Subtract from numbers with zeros',
    year: 4,
    fluentYear: 5,
    strand: 'subtraction',
    prerequisites: ['sub.3d', 'add.to100'],
    codes: { ac9: ['AC9M4N06'], england: ['NC-Y4-addsub-1'], ccss: ['3.NBT.A.2'] },
    templates: [bareTake(FROM_ROUND), storyTake(FROM_ROUND), missingTake(FROM_ROUND)],
  },
  {
    id: 'sub.4d',
    title: 'Subtract with four-digit numbers',
    year: 4,
    fluentYear: 5,
    strand: 'subtraction',
    prerequisites: ['sub.3d'],
    codes: { ac9: ['AC9M4N06'], england: ['NC-Y4-addsub-1'], ccss: ['4.NBT.B.4'] },
    shift: 0.3,
    templates: [bareTake(FOUR_DIGIT), storyTake(FOUR_DIGIT)],
  },
  {
    id: 'sub.large',
    title: 'Subtract large numbers in the head',
    year: 5,
    fluentYear: 6,
    strand: 'subtraction',
    prerequisites: ['sub.4d', 'place.million'],
    codes: { ac9: ['AC9M5N09'], england: ['NC-Y5-addsub-2', 'NC-Y5-addsub-1'], ccss: ['4.NBT.B.4'] },
    shift: 0.2,
    templates: [bareTake(LARGE), storyTake(LARGE), missingTake(LARGE)],
  },
  {
    id: 'sub.below-zero',
    title: 'Subtract past zero',
    year: 6,
    fluentYear: 6,
    strand: 'subtraction',
    prerequisites: ['sub.across-zero'],
    codes: { ac9: ['AC9M6N01'], england: ['NC-Y6-place-3', 'NC-Y5-place-3'], ccss: ['6.NS.C.5'] },
    templates: [belowZero],
  },
];
