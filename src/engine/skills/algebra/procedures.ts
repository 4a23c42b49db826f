// Following a rule with decisions, turning sums and products round, and two unknown numbers.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { inSentence } from '../offered.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

/** Halve an even number, add one to an odd one. */
const halveOrAdd = (n: number) => (n % 2 === 0 ? n / 2 : n + 1);

const decide = templateOf<readonly [start: number, rounds: number]>({
  id: 'halve-or-add',
  free: (rng) => [rng.int(5, 40), rng.int(2, 4)],
  on: onWhole(5, 400, (n, rng) => [n, rng.int(2, 3)]),
  draft: ([start, rounds], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const path = [start];
    for (let i = 0; i < rounds; i++) path.push(halveOrAdd(path[i] ?? start));
    const end = path[rounds] ?? start;
    const before = path[rounds - 1] ?? start;
    const steps = path
      .slice(0, -1)
      .map((n) => (n % 2 === 0 ? `${n} ÷ 2 = ${halveOrAdd(n)}` : `${n} + 1 = ${halveOrAdd(n)}`));
    const worked = path
      .slice(0, -1)
      .reduce((sum, n) => (n % 2 === 0 ? `(${sum} / 2)` : `(${sum} + 1)`), String(start));
    return {
      text: `Start with ${say(start)}. If it is even, halve it; if it is odd, add 1. Do this ${rounds} times. Where do you end?`,
      answer: wholeAnswer(end, locale),
      expression: worked,
      features: { extraSteps: rounds - 2, size: Math.min(2, start / 40) },
      strategy: steps,
      slips: wholeSlips(
        [
          ['procedure.step-missed', before],
          before % 2 === 0
            ? ['procedure.other-branch', before + 1]
            : // Whoever halves odd numbers does so in every round, not in the last one only.
              ['procedure.odd-halved', Math.floor(start / 2 ** rounds)],
        ],
        locale,
      ),
      usesNumber: `starts a rule at ${say(start)}`,
    };
  },
});

/** Divisors that leave something over: from a multiple it would be unclear whether to take 1 away at all. */
const unevenDivisors = (n: number) => [3, 4, 5].filter((divisor) => n % divisor !== 0);

const divideOrSubtract = templateOf<readonly [start: number, divisor: number]>({
  id: 'divide-or-subtract',
  free: (rng) => {
    const start = rng.int(14, 59);
    return [start, rng.pick(unevenDivisors(start))];
  },
  on: onWhole(14, 200, (n, rng) => (n % 60 === 0 ? null : [n, rng.pick(unevenDivisors(n))])),
  draft: ([start, divisor], { locale }) => {
    const lines: string[] = [];
    let here = start;
    let count = 0;
    while (here % divisor !== 0) {
      lines.push(`${here} − 1 = ${here - 1}`);
      here--;
      count++;
    }
    lines.push(`${here} ÷ ${divisor} = ${here / divisor}`);
    return {
      text: `Keep taking 1 away from ${start} until you reach a multiple of ${divisor}, then divide by ${divisor}. What do you get?`,
      answer: wholeAnswer(here / divisor, locale),
      expression: `(${start} - ${count}) / ${divisor}`,
      features: { extraSteps: Math.min(2, count), size: Math.min(2, start / 60) },
      strategy: lines,
      slips: wholeSlips(
        [
          ['rule.one-step', here],
          ['divide.neighbour', here / divisor + 1],
        ],
        locale,
      ),
      usesNumber: `starts a rule at ${start}`,
    };
  },
});

const turnSum = templateOf<readonly [a: number, b: number]>({
  id: 'sum',
  free: (rng) => [rng.int(2, 30), rng.int(41, 69)],
  on: onWhole(2, 1_000_000, (n, rng) => [n, rng.int(11, 69)]),
  draft: ([n, b], { locale }) => {
    const a = formatWhole(n, locale);
    return {
      text: `${a} + ${b} = ? + ${a}`,
      answer: wholeAnswer(b, locale),
      expression: `${n} + ${b} - ${n}`,
      features: { size: Math.min(2, n / 60), unknownInside: true, adjust: -0.8 },
      strategy: [`Turned around, a sum stays the same: ${a} + ${b} = ${b} + ${a}`],
      slips: wholeSlips(
        [
          ['equals.answer-next', n + b],
          ['equals.carries-on', n + b + n],
          ['missing.number-repeated', n],
        ],
        locale,
      ),
      usesNumber: `turns a sum with ${a} around`,
    };
  },
});

const turnProduct = templateOf<readonly [a: number, b: number]>({
  id: 'product',
  free: (rng) => [rng.pick([2, 3, 4, 5, 10]), rng.int(6, 9)],
  on: onWhole(2, 99, (n, rng) => [n, rng.pick([2, 3, 4, 5, 10])]),
  draft: ([a, b], { locale }) => ({
    text: `${a} × ${b} = ${b} × ?`,
    answer: wholeAnswer(a, locale),
    expression: `${a} * ${b} / ${b}`,
    features: { unknownInside: true, size: Math.min(2, b / 10), adjust: -0.6 },
    strategy: [`Turned around, a product stays the same: ${a} × ${b} = ${b} × ${a}`],
    slips: wholeSlips(
      [
        ['equals.answer-next', a * b],
        ['missing.number-repeated', b],
      ],
      locale,
    ),
    // The product on the left, as it is written; more than twelve rows would be too tall beside the words.
    ...(a <= 12 && a * b <= 90 ? { figure: { kind: 'array' as const, rows: a, columns: b } } : {}),
    usesNumber: `turns a product with ${a} around`,
  }),
});

const sumAndDifference = templateOf<readonly [small: number, gap: number, larger: boolean]>({
  id: 'sum-difference',
  free: (rng) => [rng.int(3, 30), rng.int(2, 12), rng.chance(0.5)],
  on: onWhole(3, 200, (n, rng) => [n, rng.int(2, 12), rng.chance(0.5)]),
  draft: ([small, gap, larger], { locale }) => {
    const large = small + gap;
    const sum = small + large;
    return {
      text: `Two numbers add up to ${sum}. One is ${gap} more than the other. What is the ${larger ? 'larger' : 'smaller'} number?`,
      answer: wholeAnswer(larger ? large : small, locale),
      expression: `(${sum} ${larger ? '+' : '-'} ${gap}) / 2`,
      features: { size: Math.min(2, sum / 60), extraSteps: 1, unknownInside: true },
      strategy: [
        `Without the ${gap} more: ${sum} − ${gap} = ${2 * small}`,
        `${2 * small} ÷ 2 = ${small}`,
        ...(larger ? [`${small} + ${gap} = ${large}`] : []),
      ],
      slips: wholeSlips(
        [
          ['unknown.difference-forgotten', sum % 2 === 0 ? sum / 2 : null],
          ['rule.one-step', sum - gap],
          ['part.rest-given', larger ? small : large],
        ],
        locale,
      ),
      figure: { kind: 'bar-model', whole: String(sum), parts: ['?', '?', String(gap)] },
      usesNumber: `builds two numbers around ${small}`,
    };
  },
});

const sumAndTimes = templateOf<readonly [small: number, times: number]>({
  id: 'sum-times',
  free: (rng) => [rng.int(3, 15), rng.int(2, 5)],
  draft: ([small, times], { locale }) => {
    const total = small * (times + 1);
    return {
      text: `Two numbers add up to ${total}. One is ${times} times the other. What is the smaller number?`,
      answer: wholeAnswer(small, locale),
      expression: `${total} / (${times} + 1)`,
      features: { size: Math.min(2, total / 60), extraSteps: 1, unknownInside: true },
      strategy: [`Together they are ${times + 1} equal parts`, `${total} ÷ ${times + 1} = ${small}`],
      slips: wholeSlips(
        [
          ['unknown.smaller-not-counted', total % times === 0 ? total / times : null],
          ['ratio.adds', total - times],
          ['part.rest-given', small * times],
        ],
        locale,
      ),
      figure: {
        kind: 'bar-model',
        whole: String(total),
        parts: Array.from({ length: times + 1 }, () => '?'),
      },
    };
  },
});

const countPairs = templateOf<number>({
  id: 'pairs',
  free: (rng) => rng.int(4, 12),
  draft: (total, { locale }) => ({
    text: `a and b are whole numbers above 0, and a + b = ${total}. How many different values can a have?`,
    answer: wholeAnswer(total - 1, locale),
    // Values from 1 to the last one are counted; a jump back along a line would show something else.
    expression: `${total - 1} - 1 + 1`,
    features: { size: Math.min(2, total / 12), extraSteps: 1 },
    strategy: [
      total - 1 <= 4
        ? `a can be ${inSentence(['1', '2', '3', '4'].slice(0, total - 1), 'or')}`
        : `a can be 1, 2, … up to ${total - 1}; when a is ${total - 1}, b is 1`,
      `That is ${total - 1} values`,
    ],
    slips: wholeSlips(
      [
        ['inequality.end-included', total],
        ['pairs.counted-once', Math.floor(total / 2)],
      ],
      locale,
    ),
  }),
});

const findPartner = templateOf<readonly [times: number, a: number, b: number]>({
  id: 'partner',
  free: (rng) => [rng.int(2, 5), rng.int(2, 9), rng.int(2, 12)],
  draft: ([times, a, b], { locale }) => ({
    text: `${times}a + b = ${times * a + b}. What is b when a is ${a}?`,
    answer: wholeAnswer(b, locale),
    expression: `${times * a + b} - ${times} * ${a}`,
    features: { size: Math.min(2, (times * a + b) / 40), extraSteps: 1 },
    strategy: [`${times} × ${a} = ${times * a}`, `${times * a + b} − ${times * a} = ${b}`],
    slips: wholeSlips(
      [
        ['letter.coefficient-lost', times * a + b - a],
        ['missing.same-operation', times * a + b + times * a],
      ],
      locale,
    ),
  }),
});

const combinations = templateOf<readonly [a: number, b: number, c: number]>({
  id: 'combinations',
  free: (rng) => [rng.int(2, 5), rng.int(2, 6), rng.chance(0.3) ? rng.int(2, 3) : 1],
  draft: ([a, b, c], { rng, locale }) => {
    const [one, two, three] = rng.pick([
      ['hats', 'scarves', 'pairs of gloves'],
      ['soups', 'salads', 'desserts'],
      ['shirts', 'pairs of shorts', 'caps'],
    ] as const);
    const what = c > 1 ? `${a} ${one}, ${b} ${two} and ${c} ${three}` : `${a} ${one} and ${b} ${two}`;
    return {
      text: `You can choose from ${what}, one of each. How many different choices are there?`,
      answer: wholeAnswer(a * b * c, locale),
      expression: c > 1 ? `${a} * ${b} * ${c}` : `${a} * ${b}`,
      features: { story: true, size: Math.min(2, (a * b) / 15), extraSteps: c > 1 ? 1 : 0 },
      strategy: [
        `Each of the ${a} ${one} goes with each of the ${b} ${two}: ${a} × ${b} = ${a * b}`,
        ...(c > 1 ? [`${a * b} × ${c} = ${a * b * c}`] : []),
      ],
      slips: wholeSlips(
        [
          ['times.as-plus', c > 1 ? a + b + c : a + b],
          ['addend.left-out', c > 1 ? a * b : null],
          ['choices.paired-off', c > 1 ? null : Math.min(a, b)],
        ],
        locale,
      ),
    };
  },
});

export const PROCEDURE_SKILLS: readonly Skill[] = [
  {
    id: 'alg.turn-round',
    title: 'Turn a sum or a product around',
    year: 2,
    fluentYear: 3,
    strand: 'algebra',
    prerequisites: ['alg.equal', 'mult.groups'],
    codes: {
      ac9: ['AC9M2N04', 'AC9M2N05'],
      england: ['NC-Y2-addsub-4', 'NC-Y2-multdiv-3', '4MD-2'],
      ccss: ['1.OA.B.3', '3.OA.B.5'],
    },
    templates: [turnSum, turnProduct],
  },
  {
    id: 'alg.procedure',
    title: 'Follow a rule that decides',
    year: 3,
    fluentYear: 5,
    strand: 'algebra',
    prerequisites: ['place.odd-even', 'div.half.2d'],
    codes: { ac9: ['AC9M3N07', 'AC9M4N09'], england: [], ccss: ['3.OA.D.9'] },
    templates: [decide],
  },
  {
    id: 'alg.procedure.multiples',
    title: 'Follow a rule about multiples',
    year: 5,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.procedure', 'mult.multiples'],
    codes: { ac9: ['AC9M5N10', 'AC9M6A03'], england: [], ccss: ['4.OA.C.5'] },
    templates: [divideOrSubtract],
  },
  {
    id: 'alg.two-unknown',
    title: 'Two unknown numbers',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.missing', 'div.half.2d', 'alg.think'],
    codes: { ac9: [], england: ['6AS/MD-4', 'NC-Y6-algebra-4'], ccss: ['6.EE.B.6'] },
    templates: [sumAndDifference, sumAndTimes],
  },
  {
    id: 'alg.pairs',
    title: 'Pairs of numbers that fit',
    year: 6,
    fluentYear: 6,
    strand: 'algebra',
    prerequisites: ['alg.substitute'],
    codes: { ac9: [], england: ['NC-Y6-algebra-4', 'NC-Y6-algebra-5'], ccss: ['6.EE.B.5'] },
    templates: [countPairs, findPartner],
  },
  {
    id: 'mult.choices',
    title: 'How many choices',
    year: 3,
    fluentYear: 4,
    strand: 'multiplication',
    prerequisites: ['mult.table.3'],
    codes: { ac9: ['AC9M3N04'], england: ['NC-Y3-multdiv-3', 'NC-Y6-algebra-5'], ccss: ['3.OA.A.3'] },
    templates: [combinations],
  },
];
