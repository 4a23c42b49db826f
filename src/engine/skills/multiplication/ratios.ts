// Times as many, ratio, rate and scale: two quantities linked by multiplying.
import type { FigureSpec } from '../../figures/figure.js';
import { formatMoney, formatWhole } from '../../numbers/format.js';
import { gcd, rational } from '../../numbers/rational.js';
import { moneyAnswer, unitAnswer, wholeAnswer, wordAnswer } from '../../questions/answer.js';
import { unitSlips, wholeSlips } from '../../questions/slips/whole-slips.js';
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

const MIXTURES = [
  ['spoons of cocoa', 'cups of milk'],
  ['pots of red paint', 'pots of white paint'],
] as const;

/** Mixtures that take more of the second: nobody cooks rice in less water than rice. */
const MORE_OF_SECOND = [
  ...MIXTURES,
  ['cups of rice', 'cups of water'],
  ['scoops of seed', 'scoops of soil'],
] as const;

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
    const [first, second] = rng.pick(other > a ? MORE_OF_SECOND : MIXTURES);
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

const speed = templateOf<readonly [perHour: number, hours: number, ask: 'distance' | 'rate']>({
  id: 'per-hour',
  free: (rng) => [
    rng.pick([4, 5, 6, 12, 15, 20, 40, 50, 60, 80]),
    rng.int(2, 5),
    rng.pick(['distance', 'rate']),
  ],
  on: onWhole(4, 120, (n, rng) => [n, rng.int(2, 5), 'distance']),
  draft: ([perHour, hours, ask], { locale }) => {
    const total = perHour * hours;
    const unit = locale.id === 'en-AU' || locale.id === 'en-NZ' ? 'km' : 'miles';
    const inFull = unit === 'km' ? 'kilometres' : unit;
    // The same numbers are faster in miles: nobody walks 5 miles every hour, and no car may go 80.
    const mostOnFoot = unit === 'km' ? 6 : 4;
    const who =
      perHour <= mostOnFoot
        ? 'A walker'
        : perHour < 10
          ? 'A boat'
          : perHour < 26
            ? 'A cyclist'
            : perHour <= 60
              ? 'A car'
              : 'A train';
    return {
      text:
        ask === 'rate'
          ? `${who} goes ${total} ${unit} in ${hours} hours at a steady speed. How many ${inFull} is that in one hour?`
          : `${who} goes ${perHour} ${unit} every hour. How many ${inFull} is that in ${hours} hours?`,
      answer: unitAnswer(ask === 'rate' ? perHour : total, unit, locale),
      expression: ask === 'rate' ? `${total} / ${hours}` : `${hours} * ${perHour}`,
      features: { story: true, size: Math.min(2, total / 120), unknownInside: ask === 'rate' },
      strategy: [ask === 'rate' ? `${total} ÷ ${hours} = ${perHour}` : `${hours} × ${perHour} = ${total}`],
      slips: unitSlips(
        [
          ['ratio.adds', ask === 'rate' ? total - hours : perHour + hours],
          ['times.neighbour', ask === 'rate' ? null : perHour * (hours - 1)],
          ['divide.as-times', ask === 'rate' ? total * hours : null],
        ],
        unit,
        locale,
      ),
      usesNumber: `goes ${perHour} ${unit} every hour`,
    };
  },
});

const perItem = templateOf<readonly [each: number, count: number, wanted: number]>({
  id: 'per-item',
  free: (rng) => [rng.int(2, 9) * 50, rng.int(2, 6), rng.int(3, 9)],
  draft: ([each, count, asked], { locale }) => {
    const wanted = asked === count ? asked + 1 : asked;
    const money = (cents: number) => formatMoney(rational(cents, 100), locale);
    return {
      text: `${count} pens cost ${money(each * count)}. What do ${wanted} of these pens cost?`,
      answer: moneyAnswer(rational(each * wanted, 100), locale),
      expression: `${each * count} / 100 / ${count} * ${wanted}`,
      features: { story: true, size: Math.min(2, wanted / 5), extraSteps: 1 },
      strategy: [
        `One pen: ${money(each * count)} ÷ ${count} = ${money(each)}`,
        `${wanted} pens: ${wanted} × ${money(each)} = ${money(each * wanted)}`,
      ],
      slips: [
        { misconception: 'ratio.one-group', answer: moneyAnswer(rational(each, 100), locale) },
        {
          misconception: 'ratio.adds',
          answer: moneyAnswer(rational(Math.max(5, each * count + 100 * (wanted - count)), 100), locale),
        },
      ],
    };
  },
});

const enlarge = templateOf<readonly [side: number, factor: number, ask: 'side' | 'factor']>({
  id: 'scale',
  free: (rng) => [rng.int(2, 12), rng.int(2, 6), rng.pick(['side', 'factor'])],
  on: onWhole(2, 200, (n, rng) => [n, rng.int(2, 6), 'side']),
  draft: ([side, factor, ask], { locale }) => ({
    text:
      ask === 'side'
        ? `A drawing is enlarged by scale factor ${factor}. A side was ${side} cm. How long is it now?`
        : `A side of ${side} cm becomes ${side * factor} cm when a drawing is enlarged. What is the scale factor?`,
    answer: ask === 'side' ? unitAnswer(side * factor, 'cm', locale) : wholeAnswer(factor, locale),
    expression: ask === 'side' ? `${side} * ${factor}` : `${side * factor} / ${side}`,
    features: { size: Math.min(2, (side * factor) / 40), unknownInside: ask === 'factor' },
    strategy: [
      ask === 'side' ? `${side} × ${factor} = ${side * factor}` : `${side * factor} ÷ ${side} = ${factor}`,
    ],
    slips:
      ask === 'side'
        ? unitSlips(
            [
              ['ratio.adds', side + factor],
              ['times.neighbour', side * (factor + 1)],
            ],
            'cm',
            locale,
          )
        : wholeSlips(
            [
              ['ratio.adds', side * factor - side],
              ['times.neighbour', factor + 1],
            ],
            locale,
          ),
    usesNumber: `enlarges a side of ${side} cm`,
  }),
});

const onMap = templateOf<readonly [cm: number, each: number]>({
  id: 'map',
  free: (rng) => [rng.int(2, 12), rng.pick([2, 5, 10, 20, 50, 100])],
  on: onWhole(2, 60, (n, rng) => [n, rng.pick([2, 5, 10])]),
  draft: ([cm, each], { locale }) => ({
    text: `On a map 1 cm stands for ${each} km. How many kilometres are ${cm} cm on the map?`.replace(
      'kilometres',
      locale.id === 'en-US' ? 'kilometers' : 'kilometres',
    ),
    answer: unitAnswer(cm * each, 'km', locale),
    expression: `${cm} * ${each}`,
    features: { size: Math.min(2, cm / 10), fives: each % 5 === 0 },
    strategy: [`${cm} × ${each} = ${formatWhole(cm * each, locale)}`],
    slips: unitSlips(
      [
        ['ratio.adds', cm + each],
        ['times.zero-count', each >= 10 ? (cm * each) / 10 : null],
      ],
      'km',
      locale,
    ),
    usesNumber: `measures ${cm} cm on a map`,
  }),
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
  {
    id: 'ratio.rate',
    title: 'Amounts for one: rates and speed',
    year: 6,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['ratio.missing', 'money.several'],
    codes: {
      ac9: ['AC9M6N09'],
      england: ['NC-Y5-multdiv-11', 'NC-Y6-ratio-1'],
      ccss: ['6.RP.A.2', '6.RP.A.3b'],
    },
    templates: [speed, perItem],
  },
  {
    id: 'ratio.scale',
    title: 'Scale factors and maps',
    year: 6,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['ratio.times-as-many'],
    codes: { ac9: [], england: ['NC-Y6-ratio-3'], ccss: ['6.RP.A.3'] },
    templates: [enlarge, onMap],
  },
];
