// Place value to a thousand: neighbours, order, tens and ones, hundreds, odd and even.
import { formatWhole } from '../../numbers/format.js';
import { choiceAnswer, wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { compose, digitWorth, howMany, type NumberRange, restOf } from './place-templates.js';
import { greatestOrLeast, moreOrLess } from './step-and-order.js';

const TO_20: NumberRange = { free: (rng) => rng.int(2, 19), from: 1, to: 19 };
const TO_100: NumberRange = { free: (rng) => rng.int(11, 99), from: 11, to: 99 };
const TO_120: NumberRange = { free: (rng) => rng.int(11, 110), from: 5, to: 110 };
const TO_1000: NumberRange = { free: (rng) => rng.int(101, 999), from: 100, to: 999 };
const COMPARED: NumberRange = {
  free: (rng) => (rng.chance(0.4) ? rng.int(21, 99) : rng.int(102, 980)),
  from: 12,
  to: 999,
};

const parityName = (n: number) => (n % 2 === 0 ? 'even' : 'odd');

/** "7 is 3 pairs and 1 more", below ten. */
function inPairs(n: number): string {
  if (n === 1) return '1 has no partner';
  const pairs = Math.floor(n / 2);
  return `${n} is ${pairs} ${pairs === 1 ? 'pair' : 'pairs'}${n % 2 === 0 ? '' : ' and 1 more'}`;
}

const oddOrEven = templateOf<number>({
  id: 'odd-even',
  free: (rng) => rng.int(3, 199),
  on: onWhole(1, 1_000_000, (n) => n),
  draft: (n, { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const first = Number(String(n)[0]);
    const differs = n > 9 && first % 2 !== n % 2;
    return {
      text: `Is ${say(n)} odd or even?`,
      answer: choiceAnswer(parityName(n)),
      expression: null,
      features: { fewChoices: true, size: n < 20 ? 0 : n < 100 ? 0.5 : 1, adjust: differs ? 0.3 : 0 },
      strategy: [
        n < 10
          ? `${inPairs(n)}, so it is ${parityName(n)}`
          : `Only the ones matter: ${n % 10} is ${parityName(n)}, so ${say(n)} is ${parityName(n)}`,
      ],
      slips: [
        {
          misconception: differs ? 'parity.first-digit' : 'parity.swapped',
          answer: choiceAnswer(parityName(n + 1)),
        },
      ],
      usesNumber: `tells whether ${say(n)} is odd or even`,
    };
  },
});

const nextParity = templateOf<readonly [n: number, parity: number]>({
  id: 'next-odd-even',
  free: (rng) => [rng.int(8, 199), rng.int(0, 1)],
  on: onWhole(1, 1_000_000, (n, rng) => [n, rng.int(0, 1)]),
  draft: ([n, parity], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const step = n % 2 === parity ? 2 : 1;
    return {
      text: `What is the next ${parityName(parity)} number after ${say(n)}?`,
      answer: wholeAnswer(n + step, locale),
      expression: `${n} + ${step}`,
      features: {
        size: n < 20 ? 0 : n < 100 ? 0.4 : n < 10_000 ? 0.8 : 1.2,
        carries: (n % 10) + step > 9 ? 1 : 0,
      },
      strategy: [
        `${say(n)} is ${parityName(n)}`,
        `${say(n)} + ${step} = ${say(n + step)}, which is ${parityName(parity)}`,
      ],
      slips: wholeSlips(
        [
          ['parity.swapped', n + 3 - step],
          ['count.too-far', n + step + 2],
          ['count.wrong-way', n - step],
        ],
        locale,
      ),
      usesNumber: `finds the next ${parityName(parity)} number after ${say(n)}`,
    };
  },
});

const sumParity = templateOf<readonly [a: number, b: number]>({
  id: 'sum-odd-even',
  free: (rng) => [rng.int(12, 99), rng.int(12, 99)],
  on: onWhole(5, 9999, (n, rng) => [n, rng.int(11, 99)]),
  draft: ([a, b], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    return {
      text: `Without adding, is ${say(a)} + ${b} odd or even?`,
      answer: choiceAnswer(parityName(a + b)),
      expression: null,
      features: { fewChoices: true, extraSteps: 2, size: a > 99 ? 0.5 : 0 },
      strategy: [
        `${say(a)} is ${parityName(a)} and ${b} is ${parityName(b)}`,
        `${a % 2 === b % 2 ? `Two ${parityName(a)} numbers` : `An ${parityName(a)} and an ${parityName(b)} number`} together make an ${parityName(a + b)} one`,
      ],
      slips: [{ misconception: 'parity.swapped', answer: choiceAnswer(parityName(a + b + 1)) }],
      usesNumber: `uses that ${say(a)} is ${parityName(a)}`,
    };
  },
});

const nextTen = templateOf<readonly [n: number, up: boolean]>({
  id: 'next-ten',
  free: (rng) => [rng.int(12, 98), rng.chance(0.6)],
  on: onWhole(11, 1_000_000, (n, rng) => [n, rng.chance(0.6)]),
  draft: ([n, up], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const ten = up ? 10 * (Math.floor(n / 10) + 1) : 10 * (Math.ceil(n / 10) - 1);
    return {
      text: up
        ? `What is the next multiple of 10 after ${say(n)}?`
        : `What is the last multiple of 10 before ${say(n)}?`,
      answer: wholeAnswer(ten, locale),
      expression: `${n} ${up ? '+' : '-'} ${Math.abs(ten - n)}`,
      features: {
        size: (up ? 0 : 0.5) + (n > 9999 ? 1.6 : n > 99 ? 0.6 : 0),
        carries: up && ten % 100 === 0 ? 1 : 0,
      },
      strategy: [
        n % 10 === 0
          ? `${say(n)} is a multiple of 10 itself, so go ${up ? 'on to the next' : 'back to the one before'}`
          : `${say(n)} has ${n % 10} ${n % 10 === 1 ? 'one' : 'ones'} beyond ${say(n - (n % 10))}`,
        `${say(n)} ${up ? '+' : '−'} ${Math.abs(ten - n)} = ${say(ten)}`,
      ],
      slips: wholeSlips(
        [
          ['count.wrong-way', up ? 10 * (Math.ceil(n / 10) - 1) : 10 * (Math.floor(n / 10) + 1)],
          ['multiples.adds-the-step', up ? n + 10 : n - 10],
          ['count.too-far', up ? ten + 10 : ten - 10],
        ],
        locale,
      ),
      usesNumber: `finds the multiple of 10 just ${up ? 'after' : 'before'} ${say(n)}`,
    };
  },
});

export const FIRST_PLACE_SKILLS: readonly Skill[] = [
  {
    id: 'place.next.20',
    family: 'one more',
    title: 'One more and one less to 20',
    year: 0,
    fluentYear: 1,
    strand: 'place-value',
    prerequisites: [],
    codes: { ac9: ['AC9MFN01'], england: ['NC-Y1-place-3', '1NPV-1'], ccss: ['K.CC.A.2', 'K.CC.B.4c'] },
    templates: [moreOrLess(TO_20, [1], { drawn: true, adjust: 0.6 })],
  },
  {
    id: 'place.compare.20',
    family: 'which is greater',
    title: 'Compare numbers to 20',
    year: 0,
    fluentYear: 1,
    strand: 'place-value',
    prerequisites: ['place.next.20'],
    codes: { ac9: ['AC9MFN01'], england: ['1NPV-2'], ccss: ['K.CC.C.7'] },
    templates: [greatestOrLeast(TO_20, 20)],
  },
  {
    id: 'place.tens-ones',
    title: 'Tens and ones',
    year: 1,
    fluentYear: 2,
    strand: 'place-value',
    prerequisites: ['place.compare.20'],
    codes: { ac9: ['AC9M1N02'], england: ['NC-Y2-place-2', '2NPV-1'], ccss: ['1.NBT.B.2'] },
    templates: [howMany(TO_100), compose(TO_100), restOf(TO_100), digitWorth(TO_100)],
  },
  {
    id: 'place.ten-more',
    family: 'one more',
    title: 'One and ten more or less to 120',
    year: 1,
    fluentYear: 2,
    strand: 'place-value',
    prerequisites: ['place.tens-ones'],
    codes: {
      ac9: ['AC9M1N01'],
      england: ['NC-Y1-place-1', 'NC-Y1-place-3'],
      ccss: ['1.NBT.C.5', '1.NBT.A.1'],
    },
    templates: [moreOrLess(TO_120, [1]), moreOrLess(TO_120, [10])],
  },
  {
    id: 'place.next-ten',
    title: 'Find the tens on each side of a number',
    year: 2,
    fluentYear: 3,
    strand: 'place-value',
    prerequisites: ['place.ten-more'],
    codes: { ac9: ['AC9M2N01'], england: ['2NPV-2', '3NPV-3'], ccss: ['2.NBT.A.2'] },
    templates: [nextTen],
  },
  {
    id: 'place.odd-even',
    title: 'Odd and even numbers',
    year: 2,
    fluentYear: 4,
    strand: 'place-value',
    prerequisites: ['place.tens-ones'],
    codes: { ac9: ['AC9M4N02'], england: ['1AS-1', '1NF-2'], ccss: ['2.OA.C.3'] },
    templates: [oddOrEven, nextParity, sumParity],
  },
  {
    id: 'place.three-digit',
    title: 'Hundreds, tens and ones',
    year: 2,
    fluentYear: 3,
    strand: 'place-value',
    prerequisites: ['place.ten-more'],
    codes: {
      ac9: ['AC9M2N01', 'AC9M2N02'],
      england: ['NC-Y3-place-2', '3NPV-2', '3NPV-1'],
      ccss: ['2.NBT.A.1', '2.NBT.A.3'],
    },
    templates: [
      howMany(TO_1000),
      compose(TO_1000),
      restOf(TO_1000),
      digitWorth(TO_1000),
      moreOrLess(TO_1000, [1]),
    ],
  },
  {
    id: 'place.compare.1000',
    family: 'which is greater',
    title: 'Compare numbers to 1000',
    year: 2,
    fluentYear: 3,
    strand: 'place-value',
    prerequisites: ['place.compare.20', 'place.tens-ones'],
    codes: {
      ac9: ['AC9M2N01'],
      england: ['NC-Y3-place-3', 'NC-Y2-place-4'],
      ccss: ['2.NBT.A.4', '1.NBT.B.3'],
    },
    templates: [greatestOrLeast(COMPARED, 1000)],
  },
];
