// Addition with two- and three-digit numbers, in the head.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { complementWithExtraTen, smallestPlace } from '../../questions/slips/column-addition.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { countUpSteps } from '../../questions/strategies/adding.js';
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { bareSum, missingAddend, type Pair, type SumSpec, storySum } from './sum-templates.js';

const ADD_TENS: SumSpec = {
  free: (rng) => {
    const a = rng.int(11, 69);
    return [a, 10 * rng.int(1, Math.floor((99 - a) / 10))];
  },
  from: 1,
  to: 89,
  on: (n, rng) => [n, 10 * rng.int(1, Math.floor((99 - n) / 10))],
  size: (_a, b) => (b - 10) / 25,
  adjust: -0.3,
};

const TWO_DIGIT_AND_ONES: SumSpec = {
  free: (rng) => [rng.int(12, 89), rng.int(2, 9)],
  from: 2,
  to: 98,
  on: (n, rng) => (n < 10 ? [n, rng.int(12, 89)] : [n, rng.int(2, 9)]),
  size: (a, b) => (Math.min(a, b) - 2) / 7 + (Math.max(a, b) > 60 ? 0.5 : 0),
};

function withoutCarry(a: number, rng: Rng): Pair | null {
  const tens = Math.floor(a / 10);
  const ones = a % 10;
  return tens < 1 || tens > 8 ? null : [a, 10 * rng.int(1, 9 - tens) + rng.int(ones === 9 ? 0 : 1, 9 - ones)];
}

const NO_CARRY: SumSpec = {
  free: (rng) => withoutCarry(10 * rng.int(1, 6) + rng.int(1, 7), rng) ?? [23, 45],
  from: 11,
  to: 88,
  on: withoutCarry,
  size: (a, b) => (a + b - 40) / 25,
};

function withCarry(a: number, rng: Rng): Pair | null {
  const ones = a % 10;
  return ones < 1 ? null : [a, 10 * rng.int(1, 8) + rng.int(10 - ones, 9)];
}

const CARRY: SumSpec = {
  free: (rng) => withCarry(10 * rng.int(1, 7) + rng.int(3, 9), rng) ?? [47, 38],
  from: 11,
  to: 99,
  on: withCarry,
  plainCarries: 1,
  size: (a, b) => (a + b - 50) / 40,
};

const THREE_DIGIT: SumSpec = {
  free: (rng) => {
    const a = rng.int(120, 790);
    return [a, rng.chance(0.5) ? rng.int(12, 99) : rng.int(101, 990 - a)];
  },
  from: 12,
  to: 940,
  on: (n, rng) => {
    if (n < 100) return [n, rng.int(101, 899)];
    const choice = rng.int(0, 3);
    if (choice === 0) return [n, rng.int(2, 9)];
    if (choice === 1) return [n, 10 * rng.int(1, Math.min(9, Math.floor((999 - n) / 10)))];
    return choice === 2 && n < 890 ? [n, rng.int(101, 999 - n)] : [n, rng.int(11, Math.min(99, 999 - n))];
  },
  plainCarries: 1,
  size: (a, b) => (b % 10 === 0 ? 0 : 1) + (Math.min(a, b) > 99 ? 1 : 0),
  adjust: -0.2,
};

const ADJUSTED: SumSpec = {
  free: (rng) => [rng.int(23, 99), rng.pick([9, 19, 29, 39, 49, 99, 98])],
  from: 11,
  to: 1_000_000,
  on: (n, rng) => [n, n < 100 ? rng.pick([9, 19, 29, 39, 49, 99, 98]) : rng.pick([19, 29, 99, 98, 99, 199])],
  plainCarries: 1,
  size: (a, b) => (b > 90 ? 0.5 : b > 10 ? 0.3 : 0) + (b % 10 === 8 ? 0.5 : 0) + (a > 999 ? 0.6 : 0),
};

const toHundred = templateOf<readonly [a: number, whole: number]>({
  id: 'to-100',
  free: (rng) => [rng.int(11, 98), 100],
  on: onWhole(2, 999, (n) => (n % 100 === 0 ? null : [n, 100 * Math.ceil(n / 100)])),
  draft: ([a, whole], { locale, rng }) => {
    const say = (n: number) => formatWhole(n, locale);
    const b = whole - a;
    const text = rng.pick([
      `${a} + ? = ${say(whole)}`,
      `What must be added to ${a} to make ${say(whole)}?`,
      `${say(whole)} − ${a}`,
    ]);
    return {
      text,
      answer: wholeAnswer(b, locale),
      expression: `${whole} - ${a}`,
      features: { rule: a % 10 === 0, fives: a % 5 === 0, size: b > 20 ? 0.6 : 0, adjust: a > 100 ? 0.3 : 0 },
      strategy: countUpSteps(a, whole, say),
      slips: wholeSlips(
        [
          ['complement.extra-ten', complementWithExtraTen(a, b)],
          ['fact.one-out', b - smallestPlace(a, b)],
          [text.includes('−') ? 'operation.swapped' : 'missing.adds-all', whole + a],
        ],
        locale,
      ),
      figure: { kind: 'part-whole', whole: say(whole), parts: [say(a), '?'] },
      usesNumber: `finds what makes ${a} up to ${say(whole)}`,
    };
  },
});

export const WITHIN_THOUSAND_SKILLS: readonly Skill[] = [
  {
    id: 'add.tens',
    title: 'Add a multiple of ten',
    year: 2,
    fluentYear: 3,
    strand: 'addition',
    prerequisites: ['place.ten-more'],
    codes: { ac9: ['AC9M2N04'], england: ['NC-Y2-addsub-3b', '2AS-3'], ccss: ['1.NBT.C.4'] },
    templates: [bareSum(ADD_TENS), missingAddend(ADD_TENS)],
  },
  {
    id: 'add.2d1d',
    title: 'Add ones to a two-digit number',
    year: 2,
    fluentYear: 3,
    strand: 'addition',
    prerequisites: ['add.within20'],
    codes: { ac9: ['AC9M2N04'], england: ['NC-Y2-addsub-3a', '2AS-3'], ccss: ['1.NBT.C.4'] },
    templates: [bareSum(TWO_DIGIT_AND_ONES), storySum(TWO_DIGIT_AND_ONES), missingAddend(TWO_DIGIT_AND_ONES)],
  },
  {
    id: 'add.2d2d',
    title: 'Add two-digit numbers without carrying',
    year: 2,
    fluentYear: 3,
    strand: 'addition',
    prerequisites: ['add.tens'],
    codes: {
      ac9: ['AC9M2N04'],
      england: ['NC-Y2-addsub-3c', '2AS-4', 'NC-Y2-addsub-1b'],
      ccss: ['2.NBT.B.5'],
    },
    shift: 0.2,
    templates: [bareSum(NO_CARRY), storySum(NO_CARRY)],
  },
  {
    id: 'add.2d2d.carry',
    title: 'Add two-digit numbers with carrying',
    year: 3,
    fluentYear: 4,
    strand: 'addition',
    prerequisites: ['add.2d2d', 'add.2d1d'],
    codes: { ac9: ['AC9M3A02'], england: ['2AS-4', 'NC-Y3-addsub-4'], ccss: ['2.NBT.B.5', '2.OA.A.1'] },
    templates: [bareSum(CARRY), storySum(CARRY), missingAddend(CARRY)],
  },
  {
    id: 'add.to100',
    family: 'make up to a whole',
    title: 'Make up to a hundred',
    year: 3,
    fluentYear: 4,
    strand: 'addition',
    prerequisites: ['add.bonds10', 'add.2d1d'],
    codes: { ac9: ['AC9M3A02'], england: ['3AS-1'], ccss: ['2.NBT.B.5'] },
    templates: [toHundred],
  },
  {
    id: 'add.adjust',
    title: 'Add by using a nearby round number',
    year: 3,
    fluentYear: 4,
    strand: 'addition',
    prerequisites: ['add.tens'],
    codes: { ac9: ['AC9M3A02'], england: ['NC-Y3-addsub-4'], ccss: ['2.NBT.B.7'] },
    templates: [bareSum(ADJUSTED), storySum(ADJUSTED)],
  },
  {
    id: 'add.3d',
    title: 'Add with three-digit numbers',
    year: 3,
    fluentYear: 4,
    strand: 'addition',
    prerequisites: ['add.2d2d.carry', 'place.three-digit'],
    codes: {
      ac9: ['AC9M3N03'],
      england: ['NC-Y3-addsub-1a', 'NC-Y3-addsub-1b', 'NC-Y3-addsub-2', '3AS-2'],
      ccss: ['3.NBT.A.2'],
    },
    shift: 0.3,
    templates: [bareSum(THREE_DIGIT), storySum(THREE_DIGIT), missingAddend(THREE_DIGIT)],
  },
];
