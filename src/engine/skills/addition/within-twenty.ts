// Addition with totals to 20: first sums, bonds of ten, doubles and bridging ten.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { addOnSteps, addSteps } from '../../questions/strategies/adding.js';
import type { Skill } from '../skill.js';
import { countables, storyName } from '../story.js';
import { onWhole, templateOf } from '../template-of.js';
import { bareSum, missingAddend, type SumSpec, storySum } from './sum-templates.js';
import { pagesStory, withStory } from '../retold.js';

const WITHIN_10: SumSpec = {
  free: (rng) => {
    const a = rng.int(1, 8);
    return [a, rng.int(1, Math.min(5, 10 - a))];
  },
  from: 1,
  to: 9,
  on: (n, rng) => [n, rng.int(1, Math.min(5, 10 - n))],
  size: (a, b) => (a + b - 5) / 2.5,
  figure: (a, b) => ({ kind: 'ten-frame', filled: a, second: b, frames: 1 }),
};

const WITHIN_20: SumSpec = {
  free: (rng) => {
    const a = rng.int(3, 9);
    return rng.chance(0.25) ? [rng.int(10, 16), rng.int(2, 4)] : [a, rng.int(11 - a, 9)];
  },
  from: 3,
  to: 18,
  on: (n, rng) => [n, rng.int(n < 10 ? Math.min(9, 11 - n) : 2, Math.min(9, 20 - n))],
  plainCarries: 1,
  size: (a, b) => (a + b - 11) / 3,
  figure: (a, b) => ({ kind: 'ten-frame', filled: a, second: b, frames: 2 }),
};

const bondOfTen = templateOf<number>({
  id: 'bond',
  free: (rng) => rng.int(1, 9),
  on: onWhole(1, 9, (n) => n),
  draft: (a, { locale, rng }) => ({
    text: rng.chance(0.6) ? `${a} + ? = 10` : `How many more does ${a} need to make 10?`,
    answer: wholeAnswer(10 - a, locale),
    expression: `10 - ${a}`,
    features: { tie: a === 5, size: a < 5 ? 1 : 0, rule: a === 9, drawn: true },
    strategy: [`A full ten-frame holds 10: ${a} ${a === 1 ? 'is' : 'are'} there`, `${a} + ${10 - a} = 10`],
    slips: wholeSlips(
      [
        ['missing.adds-all', 10 + a],
        ['count.off-by-one', 11 - a],
        ['fact.one-out', 9 - a],
      ],
      locale,
    ),
    figure: { kind: 'ten-frame', filled: a, frames: 1 },
    usesNumber: `finds what makes ${a} up to 10`,
  }),
});

const partsOfTen = templateOf<readonly [whole: number, part: number]>({
  id: 'parts',
  free: (rng) => {
    const whole = rng.int(5, 10);
    return [whole, rng.int(1, whole - 1)];
  },
  on: onWhole(2, 10, (n, rng) => [n, rng.int(1, n - 1)]),
  draft: ([whole, part], { locale, rng }) => {
    const things = countables(whole, rng);
    return {
      text: `${storyName(rng.fork(whole))} holds ${whole} ${things}, ${part} in one hand. How many in the other?`,
      answer: wholeAnswer(whole - part, locale),
      expression: `${whole} - ${part}`,
      features: { story: true, size: (whole - 5) / 3, tie: whole === 2 * part },
      strategy: [`${part} and how many more make ${whole}?`, `${part} + ${whole - part} = ${whole}`],
      slips: wholeSlips(
        [
          ['missing.adds-all', whole + part],
          ['count.off-by-one', whole - part + 1],
        ],
        locale,
      ),
      figure: { kind: 'part-whole', whole: String(whole), parts: [String(part), '?'] },
      usesNumber: `splits ${whole} into two parts`,
    };
  },
});

const double = templateOf<number>({
  id: 'double',
  free: (rng) => rng.int(2, 10),
  on: onWhole(1, 20, (n) => n),
  draft: (a, { locale, rng }) => {
    const text = rng.pick([`Double ${a}`, `${a} + ${a}`, `What is twice ${a}?`]);
    return {
      text,
      answer: wholeAnswer(2 * a, locale),
      expression: `${a} + ${a}`,
      features: { tie: true, size: (a - 4) / 3, fives: a % 5 === 0 },
      strategy:
        a > 10
          ? [`10 + 10 = 20`, `${a - 10} + ${a - 10} = ${2 * a - 20}`, `20 + ${2 * a - 20} = ${2 * a}`]
          : a === 10
            ? ['1 ten and 1 ten are 2 tens, so 10 + 10 = 20']
            : a > 5
              ? [`5 + 5 = 10`, `${a - 5} + ${a - 5} = ${2 * a - 10}`, `10 + ${2 * a - 10} = ${2 * a}`]
              : [`Hold up ${a} ${a === 1 ? 'finger' : 'fingers'} on each hand: ${a} + ${a} = ${2 * a}`],
      slips: wholeSlips(
        [
          ['times.adds-two', text.includes('+') ? null : a + 2],
          ['place.written-as-heard', a < 10 ? Number(`${a}${a}`) : null],
          ['fact.one-out', 2 * a - 1],
        ],
        locale,
      ),
      figure: { kind: 'array', rows: 2, columns: a },
      usesNumber: `doubles ${a}`,
    };
  },
});

const nearDouble = templateOf<readonly [a: number, b: number]>({
  id: 'near-double',
  free: (rng) => {
    const a = rng.int(3, 9);
    return [a, a + 1];
  },
  on: onWhole(2, 10, (n, rng) => [n, rng.chance(0.5) ? n - 1 : n + 1]),
  draft: ([a, b], { locale }) => {
    const low = Math.min(a, b);
    return {
      text: `${a} + ${b}`,
      answer: wholeAnswer(a + b, locale),
      expression: `${a} + ${b}`,
      features: { size: (low - 3) / 2.5, extraSteps: 0.5, rule: low === 1 },
      strategy: [`${low} + ${low} = ${2 * low}`, `${2 * low} + 1 = ${a + b}`],
      slips: wholeSlips(
        [
          ['compensate.forgotten', 2 * low],
          ['compensate.wrong-way', 2 * low - 1],
          ['fact.one-out', a + b + 1],
        ],
        locale,
      ),
      figure: { kind: 'ten-frame', filled: a, second: b, frames: 2 },
      usesNumber: `adds ${b} to ${a} by a near double`,
    };
  },
});

const pairOfTen = (first: number, second: number): string[] => [
  `Look for a pair ${first + second === 10 ? 'that makes' : 'whose ones make'} a ten: ${first} and ${second}`,
  `${first} + ${second} = ${first + second}`,
];

const threeNumbers = templateOf<readonly [a: number, b: number, c: number]>({
  id: 'three',
  free: (rng) => {
    const a = rng.int(2, 9);
    return rng.chance(0.6) ? [a, rng.int(2, 9), 10 - a] : [a, rng.int(2, 9), rng.int(2, 9)];
  },
  on: onWhole(1, 89, (n, rng) => {
    const friend = 10 - (n % 10);
    return [n, rng.int(2, 9), rng.chance(0.6) && friend < 10 ? friend : rng.int(2, 9)];
  }),
  draft: ([a, b, c], { locale }) => {
    const say = (n: number) => formatWhole(n, locale);
    const friendly = (a + c) % 10 === 0;
    const lastPair = !friendly && (a + b) % 10 !== 0 && b + c === 10;
    const carried = Math.floor(((a % 10) + b + c) / 10);
    return {
      text: `${a} + ${b} + ${c}`,
      answer: wholeAnswer(a + b + c, locale),
      expression: `${a} + ${b} + ${c}`,
      features: { size: Math.min(3, (a + b + c - 12) / 12), adjust: friendly ? 0 : 0.3 },
      strategy: friendly
        ? [...pairOfTen(a, c), ...addOnSteps(a + c, b, say)]
        : lastPair
          ? [...pairOfTen(b, c), `${a} + 10 = ${a + 10}`]
          : [...addSteps(a, b, say), ...addOnSteps(a + b, c, say)],
      slips: wholeSlips(
        [
          ['addend.left-out', a + b],
          ['carry.dropped', carried > 0 && a > 9 ? a + b + c - 10 * carried : null],
          ['fact.one-out', a + b + c - 1],
        ],
        locale,
      ),
      usesNumber: `adds ${b} and ${c} to ${a}`,
    };
  },
});

export const WITHIN_TWENTY_SKILLS: readonly Skill[] = [
  {
    id: 'add.within10',
    title: 'Add within 10',
    year: 0,
    fluentYear: 1,
    strand: 'addition',
    prerequisites: ['place.next.20'],
    codes: { ac9: ['AC9MFN05'], england: ['1AS-2', '1NF-1', '2NF-1'], ccss: ['K.OA.A.2'] },
    templates: [bareSum(WITHIN_10), storySum(WITHIN_10)],
  },
  {
    id: 'add.bonds10',
    title: 'Pairs that make 10 or less',
    year: 0,
    fluentYear: 1,
    strand: 'addition',
    prerequisites: ['add.within10'],
    codes: { ac9: ['AC9MFN04'], england: ['1AS-1'], ccss: ['K.OA.A.4', 'K.OA.A.3'] },
    shift: 0.2,
    templates: [bondOfTen, partsOfTen],
  },
  {
    id: 'add.doubles',
    family: 'double',
    title: 'Doubles and near doubles',
    year: 1,
    fluentYear: 2,
    strand: 'addition',
    prerequisites: ['add.within10'],
    codes: { ac9: ['AC9M1N04'], england: ['NC-Y1-addsub-2'], ccss: ['1.OA.C.6'] },
    templates: [double, nearDouble],
  },
  {
    id: 'add.within20',
    title: 'Add within 20',
    year: 1,
    fluentYear: 2,
    strand: 'addition',
    prerequisites: ['add.bonds10', 'place.tens-ones'],
    codes: {
      ac9: ['AC9M1N04', 'AC9M1N05', 'AC9M2A02'],
      england: ['NC-Y1-addsub-3', '2AS-1', 'NC-Y1-addsub-4', 'NC-Y2-addsub-2', '3NF-1'],
      ccss: ['1.OA.C.6', '1.OA.A.1', '2.OA.B.2'],
    },
    templates: [bareSum(WITHIN_20), missingAddend(WITHIN_20), storySum(WITHIN_20)],
  },
  {
    id: 'add.three',
    title: 'Add three numbers',
    year: 2,
    fluentYear: 3,
    strand: 'addition',
    prerequisites: ['add.within20'],
    codes: { ac9: ['AC9M2N04'], england: ['NC-Y2-addsub-3d'], ccss: ['1.OA.A.2'] },
    templates: withStory(pagesStory, [threeNumbers]),
  },
];
