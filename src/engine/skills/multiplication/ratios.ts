// Times as many and ratio: two amounts linked by multiplying.
import type { FigureSpec } from '../../figures/figure.js';
import { formatWhole } from '../../numbers/format.js';
import { gcd } from '../../numbers/rational.js';
import { wholeAnswer, wordAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Skill } from '../skill.js';
import { twoNames } from '../story.js';
import { onWhole, templateOf } from '../template-of.js';

const bars = (whole: string, parts: readonly string[], shaded = 0): FigureSpec => ({
  kind: 'bar-model',
  whole,
  parts,
  shaded,
});

const THINGS = ['shells', 'stickers', 'marbles', 'cards', 'beads'] as const;

const timesAsMany = templateOf<readonly [small: number, times: number]>({
  id: 'times-as-many',
  free: (rng) => [rng.int(3, 12), rng.int(2, 6)],
  on: onWhole(2, 500, (n, rng) => [n, rng.int(2, 6)]),
  draft: ([small, times], { rng, locale }) => {
    const [a, b] = twoNames(rng);
    const things = rng.pick(THINGS);
    const say = (value: number) => formatWhole(value, locale);
    return {
      text: `${a} has ${say(small)} ${things}. ${b} has ${times} times as many. How many does ${b} have?`,
      answer: wholeAnswer(small * times, locale),
      expression: `${times} * ${small}`,
      features: { story: true, size: Math.min(2, (small * times) / 60) },
      strategy: [`${times} groups of ${say(small)}: ${times} × ${say(small)} = ${say(small * times)}`],
      slips: wholeSlips(
        [
          ['ratio.adds', small + times],
          ['times.neighbour', small * (times + 1)],
        ],
        locale,
      ),
      figure: bars(
        '?',
        Array.from({ length: times }, () => say(small)),
      ),
      usesNumber: `takes ${say(small)} several times`,
    };
  },
});

const howManyTimes = templateOf<readonly [small: number, times: number, difference: boolean]>({
  id: 'how-many-times',
  free: (rng) => [rng.int(2, 12), rng.int(2, 9), rng.chance(0.3)],
  draft: ([small, times, difference], { locale }) => {
    const large = small * times;
    return {
      text: difference
        ? `A red ribbon is ${large} cm long and a blue ribbon is ${small} cm long. How many centimetres longer is the red one?`.replace(
            'centimetres',
            locale.id === 'en-US' ? 'centimeters' : 'centimetres',
          )
        : `A red ribbon is ${large} cm long and a blue ribbon is ${small} cm long. How many times as long is the red one?`,
      answer: wholeAnswer(difference ? large - small : times, locale),
      expression: difference ? `${large} - ${small}` : `${large} / ${small}`,
      features: { story: true, size: Math.min(2, times / 6), unknownInside: !difference },
      strategy: [difference ? `${large} − ${small} = ${large - small}` : `${times} × ${small} = ${large}`],
      slips: wholeSlips(
        [
          [difference ? 'ratio.divides' : 'ratio.adds', difference ? times : large - small],
          [difference ? 'operation.swapped' : 'divide.neighbour', difference ? large + small : times + 1],
        ],
        locale,
      ),
    };
  },
});

const MIXES = [
  ['red', 'blue', 'beads'],
  ['yellow', 'green', 'tiles'],
  ['white', 'black', 'buttons'],
] as const;

const inSimplestForm = templateOf<readonly [a: number, b: number, factor: number]>({
  id: 'simplest',
  free: (rng) => [rng.int(1, 5), rng.int(1, 7), rng.int(2, 6)],
  draft: ([one, other, factor], { rng }) => {
    const shared = gcd(one, other);
    const [a, b] = one === other ? [one, one + 1] : [one / shared, other / shared];
    const [first, second, things] = rng.pick(MIXES);
    return {
      text: `There are ${a * factor} ${first} and ${b * factor} ${second} ${things}. What is the simplest ratio of ${first} to ${second}?`,
      answer: wordAnswer(`${a}:${b}`),
      accepts: [`${a} : ${b}`, `${a} to ${b}`],
      expression: null,
      features: { size: Math.min(2, factor / 4), extraSteps: 1 },
      strategy: [
        `Both numbers divide by ${factor}: ${a * factor} ÷ ${factor} = ${a} and ${b * factor} ÷ ${factor} = ${b}`,
        `The ratio is ${a}:${b}`,
      ],
      slips: [
        { misconception: 'ratio.order-swapped', answer: wordAnswer(`${b}:${a}`) },
        { misconception: 'ratio.not-simplified', answer: wordAnswer(`${a * factor}:${b * factor}`) },
      ],
    };
  },
});

const fractionOfMix = templateOf<readonly [a: number, b: number]>({
  id: 'part-of-mix',
  free: (rng) => [rng.int(1, 5), rng.int(1, 6)],
  draft: ([a, other], { rng, locale }) => {
    // Equal parts are no ratio worth asking, and nobody could take the wrong one.
    const b = other === a ? a + 1 : other;
    const [first, second, things] = rng.pick(MIXES);
    const total = a + b;
    return {
      text: `For every ${a} ${first} ${things.slice(0, a === 1 ? -1 : undefined)} there ${b === 1 ? 'is' : 'are'} ${b} ${second}. How many in every ${total * 2} ${things} are ${first}?`,
      answer: wholeAnswer(2 * a, locale),
      expression: `${total * 2} / (${a} + ${b}) * ${a}`,
      features: { size: Math.min(2, total / 5), extraSteps: 2 },
      strategy: [
        `One group has ${a} + ${b} = ${total}`,
        `${total * 2} ÷ ${total} = 2 groups`,
        `2 × ${a} = ${2 * a}`,
      ],
      slips: wholeSlips(
        [
          ['ratio.one-group', a],
          ['ratio.part-to-part', 2 * b],
        ],
        locale,
      ),
    };
  },
});

type Mixture = readonly [first: string, second: string];

const MIXTURES: readonly Mixture[] = [
  ['spoons of cocoa', 'cups of milk'],
  ['pots of red paint', 'pots of white paint'],
];

/** Nobody counts out more spoons, pots, cups or scoops than this for one mix. */
const MOST_SPOONS = 60;

const WEIGHED_MIXTURES: readonly Mixture[] = [
  ['grams of oats', 'grams of nuts'],
  ['grams of raisins', 'grams of seeds'],
  ['grams of clay', 'grams of sand'],
];

/** Mixtures that take more of the second: nobody cooks rice in less water than rice. */
const MORE_OF_SECOND: readonly Mixture[] = [
  ...MIXTURES,
  ['cups of rice', 'cups of water'],
  ['scoops of seed', 'scoops of soil'],
];

const missing = templateOf<readonly [a: number, b: number, factor: number]>({
  id: 'missing-value',
  free: (rng) => [rng.int(2, 5), rng.int(2, 9), rng.int(2, 9)],
  on: onWhole(4, 1000, (n, rng) => {
    const choices = [2, 3, 4, 5].filter((d) => n % d === 0 && n > d);
    if (choices.length === 0) return null;
    const a = rng.pick(choices);
    return [a, rng.int(2, 9), n / a];
  }),
  draft: ([a, b, factor], { rng, locale }) => {
    const other = b === a ? b + 1 : b;
    const [first, second] = rng.pick(
      a * factor > MOST_SPOONS ? WEIGHED_MIXTURES : other > a ? MORE_OF_SECOND : MIXTURES,
    );
    const say = (value: number) => formatWhole(value, locale);
    return {
      text: `A mix takes ${a} ${first} to ${other} ${second}. How many ${second} go with ${say(a * factor)} ${first}?`,
      answer: wholeAnswer(other * factor, locale),
      expression: `${other} * (${a * factor} / ${a})`,
      features: { story: true, size: Math.min(2, factor / 5), extraSteps: 1 },
      strategy: [
        `${say(a * factor)} ÷ ${a} = ${say(factor)} times as much`,
        `${say(factor)} × ${other} = ${say(other * factor)}`,
      ],
      slips: wholeSlips(
        [
          ['ratio.adds', other + a * factor - a],
          ['ratio.factor-given', factor],
        ],
        locale,
      ),
      usesNumber: `keeps a mix in step with ${say(a * factor)}`,
    };
  },
});

/** Ratios in lowest terms, the smaller share first. */
const SHARES = [
  [1, 2],
  [1, 3],
  [1, 4],
  [1, 5],
  [2, 3],
  [2, 5],
  [3, 4],
  [3, 5],
] as const;

const shareInRatio = templateOf<readonly [a: number, b: number, size: number]>({
  id: 'share',
  free: (rng) => {
    const [one, other] = rng.pick(SHARES);
    return [one, other, rng.int(2, 9)];
  },
  draft: ([a, b, size], { rng, locale }) => {
    const total = (a + b) * size;
    const [first, second] = twoNames(rng);
    return {
      text: `${first} and ${second} share ${total} stickers in the ratio ${a}:${b}. How many does ${second} get?`,
      answer: wholeAnswer(b * size, locale),
      expression: `${total} / (${a} + ${b}) * ${b}`,
      features: { story: true, size: Math.min(2, size / 5), extraSteps: 2 },
      strategy: [
        `${a} + ${b} = ${a + b} parts`,
        `${total} ÷ ${a + b} = ${size}`,
        `${b} × ${size} = ${b * size}`,
      ],
      slips: wholeSlips(
        [
          ['ratio.order-swapped', a * size],
          ['ratio.one-group', size],
          ['ratio.one-number-divides', total % b === 0 ? total / b : null],
        ],
        locale,
      ),
      figure: bars(
        String(total),
        Array.from({ length: a + b }, () => '?'),
        a,
      ),
    };
  },
});

export const RATIO_SKILLS: readonly Skill[] = [
  {
    id: 'ratio.times-as-many',
    title: 'Times as many, and how many more',
    year: 4,
    fluentYear: 5,
    strand: 'multiplication',
    prerequisites: ['mult.table.6', 'sub.difference'],
    codes: { ac9: ['AC9M4N08'], england: ['NC-Y3-multdiv-3', '6AS/MD-1'], ccss: ['4.OA.A.1', '4.OA.A.2'] },
    templates: [timesAsMany, howManyTimes],
  },
  {
    id: 'ratio.simplest',
    title: 'Write and read a ratio',
    year: 6,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.common', 'ratio.times-as-many'],
    codes: { ac9: [], england: ['NC-Y6-ratio-4', '6AS/MD-3'], ccss: ['6.RP.A.1'] },
    templates: [inSimplestForm, fractionOfMix],
  },
  {
    id: 'ratio.missing',
    title: 'Keep two amounts in step',
    year: 6,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['ratio.times-as-many'],
    codes: {
      ac9: ['AC9M6N09'],
      england: ['NC-Y6-ratio-1', '6AS/MD-3', 'NC-Y5-multdiv-11'],
      ccss: ['6.RP.A.3', '6.RP.A.3a'],
    },
    templates: [missing],
  },
  {
    id: 'ratio.share',
    title: 'Share in a ratio',
    year: 6,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['ratio.simplest', 'div.2d1d'],
    codes: { ac9: [], england: ['NC-Y6-ratio-4', '6AS/MD-3'], ccss: ['6.RP.A.3'] },
    templates: [shareInRatio],
  },
];
