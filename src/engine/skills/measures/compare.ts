// Comparing, reading rulers and scales, choosing units, temperature.
import { formatWhole, MINUS } from '../../numbers/format.js';
import { add, compare, rational, subtract, toNumber } from '../../numbers/rational.js';
import type { Rational } from '../../numbers/rational.js';
import { choiceAnswer, unitAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { scaleReadByOnes } from '../../questions/slips/measuring.js';
import {
  borrowsIn,
  operand,
  type Quantity,
  quantity,
  quantityAnswer,
  quantityOn,
  shown,
  sizeOf,
  using,
  withGap,
  wholeOn,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

const ADJECTIVES = [
  { more: 'longer', less: 'shorter', unit: 'cm', thing: 'ribbon', other: 'string' },
  { more: 'heavier', less: 'lighter', unit: 'kg', thing: 'box', other: 'bag' },
  { more: 'longer', less: 'shorter', unit: 'm', thing: 'path', other: 'fence' },
] as const;

type Adjective = (typeof ADJECTIVES)[number];

function compareSame(
  first: Quantity,
  second: Quantity,
  kind: Adjective,
  adjust: number,
  { rng }: TemplateContext,
): Draft {
  const firstIsMore = compare(first.value, second.value) > 0;
  const askMore = rng.chance(0.7);
  const word = askMore ? kind.more : kind.less;
  const right = firstIsMore === askMore ? first : second;
  const wrong = right === first ? second : first;
  const [left, later] = rng.chance(0.5) ? [first, second] : [second, first];
  const say = (item: Quantity) => `${item.text}${withGap(kind.unit)}`;
  return {
    text: `Which is ${word}: ${say(left)} or ${say(later)}?`,
    answer: choiceAnswer(say(right)),
    expression: null,
    features: {
      fewChoices: true,
      size: sizeOf(toNumber(first.value)) * 0.3,
      adjust: adjust + (askMore ? 0 : 0.2),
    },
    strategy: [`${say(firstIsMore ? first : second)} > ${say(firstIsMore ? second : first)}`],
    slips: [{ misconception: 'meas.number-before-unit', answer: choiceAnswer(say(wrong)) }],
  };
}

interface Pair {
  readonly large: string;
  readonly small: string;
  readonly factor: number;
  readonly more: string;
  /** Most of the large unit that comes up in a child's day. */
  readonly limit?: number;
}

const PAIRS: readonly Pair[] = [
  { large: 'm', small: 'cm', factor: 100, more: 'longer' },
  { large: 'cm', small: 'mm', factor: 10, more: 'longer' },
  { large: 'kg', small: 'g', factor: 1000, more: 'heavier', limit: 50 },
  { large: 'km', small: 'm', factor: 1000, more: 'longer', limit: 50 },
  { large: 'L', small: 'mL', factor: 1000, more: 'more', limit: 50 },
];

function compareUnits(
  large: Quantity,
  smallCount: number,
  pair: Pair,
  { rng, locale }: TemplateContext,
): Draft | null {
  const inSmall = rational(large.value.n * pair.factor, large.value.d);
  const difference = compare(inSmall, rational(smallCount));
  if (difference === 0) return null;
  const largeText = `${large.text}${withGap(pair.large)}`;
  const smallText = `${formatWhole(smallCount, locale)}${withGap(pair.small)}`;
  const right = difference > 0 ? largeText : smallText;
  const wrong = difference > 0 ? smallText : largeText;
  const order = rng.chance(0.5) ? `${largeText} or ${smallText}` : `${smallText} or ${largeText}`;
  const inSmallText = `${shown(inSmall, locale)}${withGap(pair.small)}`;
  return {
    text: `Which is ${pair.more}: ${order}?`,
    answer: choiceAnswer(right),
    expression: null,
    features: {
      fewChoices: true,
      extraSteps: 1,
      unlike: large.value.d > 1,
      adjust: pair.factor === 1000 ? 0.2 : 0,
    },
    strategy: [`${largeText} = ${inSmallText}`, `${inSmallText} ${difference > 0 ? '>' : '<'} ${smallText}`],
    slips: [{ misconception: 'meas.number-before-unit', answer: choiceAnswer(wrong) }],
  };
}

/** A count of small units near the given amount, above or below it. */
function nearCount(large: Quantity, pair: Pair, { rng }: TemplateContext): number {
  const exact = toNumber(large.value) * pair.factor;
  const step = pair.factor === 10 ? 1 : pair.factor / 20;
  const near = Math.max(1, Math.round(exact / step) + rng.pick([-6, -3, -1, 1, 3, 6])) * step;
  return Math.round(near) === exact ? Math.round(near) + 1 : Math.round(near);
}

const OBJECTS = ['pencil', 'crayon', 'key', 'leaf', 'spoon', 'ribbon'];

function readRuler(from: number, to: number, { rng, locale }: TemplateContext): Draft {
  const object = rng.pick(OBJECTS);
  const length = to - from;
  return {
    text:
      from === 0
        ? `How many centimetres long is the ${object} on the ruler?`.replace(
            'centimetres',
            `centi${locale.spelling.metre}s`,
          )
        : `The ${object} lies on the ruler from ${from}\u00a0cm to ${to}\u00a0cm. How long is it?`,
    answer: unitAnswer(length, 'cm', locale),
    expression: `${to} - ${from}`,
    features: {
      drawn: true,
      size: from === 0 ? 0 : 0.5,
      extraSteps: from === 0 ? 0 : 1,
      adjust: from === 0 ? -0.6 : -0.2,
    },
    strategy: from === 0 ? ['It starts at 0, so read the mark at its end.'] : [`${to} − ${from} = ${length}`],
    slips: [
      ...(from > 0
        ? [{ misconception: 'meas.end-read' as const, answer: unitAnswer(to, 'cm', locale) }]
        : []),
      { misconception: 'meas.marks-counted', answer: unitAnswer(length + 1, 'cm', locale) },
      ...(from === 0 && to > 1
        ? [{ misconception: 'shape.one-short' as const, answer: unitAnswer(length - 1, 'cm', locale) }]
        : []),
    ],
    figure: { kind: 'ruler', lengthCm: Math.max(12, to + 2), objectFrom: from, objectTo: to, object },
  };
}

function tapeLength(from: Quantity, to: Quantity, { rng, locale }: TemplateContext): Draft {
  const object = rng.pick(['ribbon', 'plank', 'rope', 'shelf', 'scarf']);
  const length = subtract(to.value, from.value);
  const wholes = from.value.d === 1 && to.value.d === 1;
  return {
    text: `A ${object} lies along a tape measure from ${from.text}\u00a0cm to ${to.text}\u00a0cm. How long is it?`,
    answer: quantityAnswer(length, from.style, locale, 'cm'),
    expression: `${to.expression} - ${from.expression}`,
    features: {
      size: sizeOf(toNumber(to.value)) * 0.6,
      carries: wholes ? borrowsIn(to.value.n, from.value.n) : 1,
      unlike: !wholes,
    },
    strategy: [`${to.text} − ${from.text} = ${shown(length, locale, from.style)}`],
    slips: [
      { misconception: 'meas.end-read', answer: quantityAnswer(to.value, from.style, locale, 'cm') },
      {
        misconception: 'meas.added-not-taken',
        answer: quantityAnswer(add(to.value, from.value), from.style, locale, 'cm'),
      },
    ],
  };
}

interface ScaleKind {
  readonly form: 'dial' | 'jug' | 'thermometer';
  readonly to: number;
  readonly step: number;
  readonly labelEvery: number;
  readonly unit: string;
  readonly asks: string;
}

const SCALES: readonly ScaleKind[] = [
  { form: 'jug', to: 1000, step: 50, labelEvery: 100, unit: 'mL', asks: 'How much water is in the jug?' },
  { form: 'jug', to: 500, step: 25, labelEvery: 100, unit: 'mL', asks: 'How much water is in the jug?' },
  { form: 'jug', to: 1000, step: 20, labelEvery: 100, unit: 'mL', asks: 'How much water is in the jug?' },
  {
    form: 'dial',
    to: 1000,
    step: 50,
    labelEvery: 200,
    unit: 'g',
    asks: 'What mass do the kitchen scales show?',
  },
  { form: 'dial', to: 100, step: 5, labelEvery: 10, unit: 'kg', asks: 'What mass do the scales show?' },
  { form: 'dial', to: 50, step: 2, labelEvery: 10, unit: 'kg', asks: 'What mass do the scales show?' },
  {
    form: 'thermometer',
    to: 40,
    step: 2,
    labelEvery: 10,
    unit: '°C',
    asks: 'What temperature does the thermometer show?',
  },
  {
    form: 'thermometer',
    to: 50,
    step: 5,
    labelEvery: 10,
    unit: '°C',
    asks: 'What temperature does the thermometer show?',
  },
];

function readScale(kind: ScaleKind, value: number, { locale }: TemplateContext): Draft {
  const inUnit = (count: number, unit: string, at: typeof locale) =>
    quantityAnswer(rational(count), 'decimal', at, unit);
  const label = Math.floor(value / kind.labelEvery) * kind.labelEvery;
  const marks = (value - label) / kind.step;
  const spaces = kind.labelEvery / kind.step;
  return {
    text: kind.asks,
    answer: inUnit(value, kind.unit, locale),
    expression: `${label} + ${marks} * ${kind.step}`,
    features: {
      drawn: true,
      size: marks === 0 ? 0 : kind.step % 10 === 0 || kind.step === 5 ? 0.5 : 1.2,
      adjust: marks === 0 ? -0.8 : -0.2,
    },
    strategy:
      marks === 0
        ? ['The pointer is at a label: read it.']
        : [
            `${spaces} spaces from label to label: ${kind.labelEvery} ÷ ${spaces} = ${kind.step}`,
            `${label} + ${marks} × ${kind.step} = ${value}`,
          ],
    slips:
      marks > 0
        ? [
            {
              misconception: 'meas.scale-by-ones' as const,
              answer: inUnit(scaleReadByOnes(0, kind.step, kind.labelEvery, value), kind.unit, locale),
            },
            { misconception: 'meas.label-below' as const, answer: inUnit(label, kind.unit, locale) },
          ]
        : [
            {
              misconception: 'meas.label-below' as const,
              answer: inUnit(Math.max(0, value - kind.labelEvery), kind.unit, locale),
            },
            {
              misconception: 'meas.scale-by-ones' as const,
              answer: inUnit(value / kind.labelEvery, kind.unit, locale),
            },
          ],
    figure: {
      kind: 'scale',
      form: kind.form,
      from: 0,
      to: kind.to,
      step: kind.step,
      labelEvery: kind.labelEvery,
      value,
      unit: kind.unit,
    },
  };
}

interface UnitChoice {
  readonly asks: string;
  readonly right: string;
  readonly wrong: readonly [string, string];
}

const CHOICES: readonly UnitChoice[] = [
  { asks: 'the length of a pencil', right: 'centimetres', wrong: ['metres', 'kilometres'] },
  { asks: 'the distance between two towns', right: 'kilometres', wrong: ['metres', 'centimetres'] },
  { asks: 'the length of a classroom', right: 'metres', wrong: ['millimetres', 'kilometres'] },
  { asks: 'the thickness of a coin', right: 'millimetres', wrong: ['metres', 'kilometres'] },
  { asks: 'the mass of an apple', right: 'grams', wrong: ['kilograms', 'litres'] },
  { asks: 'the mass of a grown-up', right: 'kilograms', wrong: ['grams', 'millilitres'] },
  { asks: 'the water in a bathtub', right: 'litres', wrong: ['millilitres', 'kilometres'] },
  { asks: 'the medicine on a spoon', right: 'millilitres', wrong: ['litres', 'kilograms'] },
];

function chooseUnit({ rng, locale }: TemplateContext): Draft {
  const choice = rng.pick(CHOICES);
  const spell = (unit: string) =>
    unit.replace('metre', locale.spelling.metre).replace('litre', locale.spelling.litre);
  const names = rng.shuffle([choice.right, ...choice.wrong]).map(spell);
  return {
    text: `Which unit suits ${choice.asks} best: ${names[0]}, ${names[1]} or ${names[2]}?`,
    answer: choiceAnswer(spell(choice.right)),
    expression: null,
    features: {
      fewChoices: true,
      adjust: choice.right === 'millimetres' || choice.right === 'millilitres' ? 0.3 : 0,
    },
    strategy: [
      'Think of something that measures one of each unit, and compare.',
      `Best: ${spell(choice.right)}.`,
    ],
    slips: choice.wrong.map((unit) => ({
      misconception: 'meas.number-before-unit' as const,
      answer: choiceAnswer(spell(unit)),
    })),
  };
}

function degrees(value: Rational, context: TemplateContext) {
  return quantityAnswer(value, 'decimal', context.locale, '°C');
}

function temperatureChange(start: Quantity, change: number, context: TemplateContext): Draft {
  const { locale } = context;
  const end = add(start.value, rational(change));
  const size = Math.abs(change);
  const below = end.n < 0;
  const many = size === 1 ? 'degree' : 'degrees';
  return {
    text: `It is ${start.text}\u00a0°C and gets ${size}\u00a0${many} ${change > 0 ? 'warmer' : 'colder'}. What is the temperature then?`,
    answer: degrees(end, context),
    expression: `${start.expression} ${change > 0 ? '+' : '-'} ${size}`,
    features: {
      size: sizeOf(toNumber(start.value)) * 0.5,
      extraSteps: below ? 1 : 0,
      unlike: start.value.d > 1,
      carries: below && start.value.d > 1 ? 1 : 0,
      adjust: below ? 0.4 : -0.6,
    },
    strategy: below
      ? [
          `${start.text} − ${start.text} = 0`,
          `${size} − ${start.text} = ${shown(subtract(rational(size), start.value), locale)} more degrees down, below zero.`,
          `${start.text} − ${size} = ${shown(end, locale)}`,
        ]
      : [`${start.text} ${change > 0 ? '+' : MINUS} ${size} = ${shown(end, locale)}`],
    slips: [
      ...(below
        ? [
            {
              misconception: 'meas.zero-not-crossed' as const,
              answer: degrees(subtract(rational(0), end), context),
            },
          ]
        : []),
      ...(change < 0 || compare(start.value, rational(change)) >= 0
        ? [
            {
              misconception: 'meas.added-not-taken' as const,
              answer: degrees(subtract(start.value, rational(change)), context),
            },
          ]
        : []),
      { misconception: 'meas.label-below', answer: degrees(start.value, context) },
    ],
    ...(start.value.d === 1 && start.value.n <= 40
      ? {
          figure: {
            kind: 'scale' as const,
            form: 'thermometer' as const,
            from: -20,
            to: 40,
            step: 1,
            labelEvery: 10,
            value: start.value.n,
            unit: '°C',
          },
        }
      : {}),
  };
}

function temperatureRise(low: number, high: Quantity, context: TemplateContext): Draft {
  const { locale } = context;
  const lowValue = rational(low);
  const rise = subtract(high.value, lowValue);
  const lowText = shown(lowValue, locale);
  return {
    text: `At night it was ${lowText}\u00a0°C, at noon ${high.text}\u00a0°C. By how many degrees did it get warmer?`,
    answer: quantityAnswer(rise, 'decimal', locale, 'degrees'),
    expression: `${high.expression} - ${operand(lowValue)}`,
    features: {
      size: sizeOf(toNumber(high.value)) * 0.5,
      extraSteps: low < 0 ? 1 : 0,
      unlike: high.value.d > 1,
      story: true,
      adjust: low < 0 ? 0.4 : -0.6,
    },
    strategy:
      low < 0
        ? [
            `${-low} degrees up to zero, then ${high.text} more.`,
            `${-low} + ${high.text} = ${shown(rise, locale)}`,
          ]
        : [`${high.text} − ${lowText} = ${shown(rise, locale)}`],
    slips: [
      low < 0
        ? {
            misconception: 'meas.zero-not-crossed',
            answer: quantityAnswer(
              absolute(subtract(high.value, rational(-low))),
              'decimal',
              locale,
              'degrees',
            ),
          }
        : {
            misconception: 'meas.added-not-taken',
            answer: quantityAnswer(add(high.value, lowValue), 'decimal', locale, 'degrees'),
          },
      {
        misconception: 'data.larger-given',
        answer: quantityAnswer(high.value, 'decimal', locale, 'degrees'),
      },
    ],
  };
}

function absolute(value: Rational): Rational {
  return value.n < 0 ? subtract(rational(0), value) : value;
}

export const READING_SKILLS: readonly Skill[] = [
  {
    id: 'meas.compare',
    title: 'Say which is longer or heavier',
    year: 1,
    fluentYear: 2,
    strand: 'measures',
    prerequisites: ['place.compare.20', 'place.compare.20'],
    codes: {
      ac9: ['AC9MFM01', 'AC9M1M01'],
      england: ['NC-Y1-measure-1a', 'NC-Y1-measure-1b'],
      ccss: ['K.MD.A.2', '1.MD.A.1'],
    },
    templates: [
      {
        id: 'same-unit',
        ask: (context) => {
          const { rng, locale } = context;
          const first = rng.int(2, 30);
          return compareSame(
            quantity(first, locale),
            quantity(first + rng.int(1, 9), locale),
            ADJECTIVES[0],
            0,
            context,
          );
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const first = wholeOn(day, 1, 120);
          if (first === null) return null;
          const second = Math.max(1, first + rng.pick([-1, 1]) * rng.int(1, Math.min(20, first + 2)));
          const safe = second === first ? first + 2 : second;
          return using(
            compareSame(
              quantity(first, locale),
              quantity(safe, locale),
              first <= 30 ? rng.pick(ADJECTIVES) : ADJECTIVES[0],
              0,
              context,
            ),
            `compares ${day.text} with another measure`,
          );
        },
      },
    ],
  },
  {
    id: 'meas.compare.units',
    title: 'Compare measures in different units',
    year: 4,
    fluentYear: 5,
    strand: 'measures',
    prerequisites: ['meas.compare', 'meas.units'],
    codes: {
      ac9: ['AC9M5M01', 'AC9M3M02'],
      england: ['NC-Y2-measure-2', 'NC-Y4-measure-1'],
      ccss: ['4.MD.A.1'],
    },
    templates: [
      {
        id: 'units',
        ask: (context) => {
          const pair = context.rng.pick(PAIRS);
          const large = quantity(context.rng.int(2, 9), context.locale);
          return compareUnits(large, nearCount(large, pair, context), pair, context) ?? chooseUnit(context);
        },
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const large = quantityOn(day, locale, 0.05, 200, 2);
          if (large === null) return null;
          // A plain whole number of the same unit makes the gentle case.
          if (large.value.d > 1 && rng.chance(0.4)) {
            const whole = Math.max(1, Math.floor(toNumber(large.value)) + rng.pick([-1, 1, 2, 0]));
            return using(
              compareSame(
                large,
                quantity(whole, locale),
                rng.pick(ADJECTIVES.slice(1)),
                large.style === 'fraction' ? -1.2 : -1.6,
                context,
              ),
              `compares ${day.text} with ${whole}`,
            );
          }
          const pairs = PAIRS.filter(
            (each) =>
              (each.factor * 100) % large.value.d === 0 && toNumber(large.value) <= (each.limit ?? 200),
          );
          if (pairs.length === 0) return null;
          const pair = rng.pick(pairs);
          const draft = compareUnits(large, nearCount(large, pair, context), pair, context);
          return draft === null ? null : using(draft, `compares ${day.text} of one unit with another`);
        },
      },
    ],
  },
  {
    id: 'meas.ruler',
    title: 'Read a ruler',
    year: 2,
    fluentYear: 3,
    strand: 'measures',
    prerequisites: ['meas.compare'],
    codes: {
      ac9: ['AC9M1M02', 'AC9M3M02'],
      england: ['NC-Y2-measure-1', 'NC-Y3-measure-1'],
      ccss: ['1.MD.A.2', '2.MD.A.4'],
    },
    templates: [
      {
        id: 'ruler',
        ask: (context) => {
          const from = context.rng.pick([0, 0, 1, 2, 3]);
          return readRuler(from, from + context.rng.int(3, 9), context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const from = wholeOn(day, 1, 9);
          return from === null
            ? null
            : using(
                readRuler(from, Math.min(15, from + context.rng.int(2, 6)), context),
                `measures from the ${from}\u00a0cm mark`,
              );
        },
      },
    ],
  },
  {
    id: 'meas.tape',
    title: 'Find a length from two marks on a tape',
    year: 3,
    fluentYear: 4,
    strand: 'measures',
    prerequisites: ['meas.ruler', 'sub.2d2d'],
    codes: { ac9: ['AC9M3M02', 'AC9M4M01'], england: ['NC-Y3-measure-1'], ccss: ['2.MD.A.4', '2.MD.B.6'] },
    templates: [
      {
        id: 'tape',
        ask: (context) => {
          const from = context.rng.int(5, 60);
          return tapeLength(
            quantity(from, context.locale),
            quantity(from + context.rng.int(8, 38), context.locale),
            context,
          );
        },
        dayKinds: ['whole', 'decimal'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const from = quantityOn(day, locale, 2, 400, 1);
          if (from === null) return null;
          const whole = Math.floor(toNumber(from.value));
          const end = rng.chance(0.5)
            ? whole + rng.int(3, 30)
            : (Math.floor(whole / 10) + rng.int(1, 4)) * 10;
          return using(
            tapeLength(from, quantity(end, locale), context),
            `measures from the ${day.text}\u00a0cm mark`,
          );
        },
      },
    ],
  },
  {
    id: 'meas.scale',
    title: 'Read a scale between its labels',
    year: 4,
    fluentYear: 5,
    strand: 'measures',
    prerequisites: ['meas.ruler'],
    codes: {
      ac9: ['AC9M3M02', 'AC9M4M01'],
      england: ['NC-Y2-measure-1', 'NC-Y3-measure-1'],
      ccss: ['3.MD.A.2'],
    },
    templates: [
      {
        id: 'scale',
        ask: (context) => {
          const kind = context.rng.pick(SCALES);
          return readScale(kind, context.rng.int(1, kind.to / kind.step - 1) * kind.step, context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const kinds = SCALES.filter(
            (kind) => wholeOn(day, kind.step, kind.to - kind.step) !== null && day.value.n % kind.step === 0,
          );
          if (kinds.length === 0) return null;
          return using(
            readScale(context.rng.pick(kinds), day.value.n, context),
            `reads ${day.text} on a scale`,
          );
        },
      },
    ],
  },
  {
    id: 'meas.unit.choose',
    title: 'Choose a sensible unit',
    year: 3,
    fluentYear: 4,
    strand: 'measures',
    prerequisites: ['meas.compare'],
    codes: { ac9: ['AC9M3M01'], england: ['NC-Y2-measure-1'], ccss: ['2.MD.A.3'] },
    templates: [{ id: 'unit', ask: (context) => chooseUnit(context) }],
  },
  {
    id: 'meas.temperature',
    title: 'Work out changes in temperature',
    year: 5,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.scale'],
    codes: { ac9: ['AC9M4M01'], england: ['NC-Y2-measure-1'], ccss: [] },
    templates: [
      {
        id: 'change',
        ask: (context) =>
          temperatureChange(
            quantity(context.rng.int(2, 20), context.locale),
            context.rng.pick([-12, -9, -7, -5, 6, 8]),
            context,
          ),
        dayKinds: ['whole', 'decimal'],
        askOn: (day, context) => {
          const start = quantityOn(day, context.locale, 0.1, 48, 1);
          if (start === null) return null;
          const { rng } = context;
          const change =
            toNumber(start.value) < 16
              ? rng.pick([3, 5, 8, -2, -5, -9, -12])
              : rng.pick([-3, -5, -8, -12, 2]);
          return using(temperatureChange(start, change, context), `starts at ${day.text}\u00a0°C`);
        },
      },
      {
        id: 'rise',
        ask: (context) =>
          temperatureRise(
            context.rng.pick([-8, -6, -5, -3, -2, 2, 4, 5, 6]),
            quantity(context.rng.int(8, 25), context.locale),
            context,
          ),
        dayKinds: ['whole', 'decimal'],
        askOn: (day, context) => {
          const high = quantityOn(day, context.locale, 1, 40, 1);
          if (high === null) return null;
          const top = Math.floor(toNumber(high.value));
          const low = context.rng.chance(0.5)
            ? -context.rng.int(1, 8)
            : Math.max(0, top - context.rng.int(2, 12));
          return using(
            temperatureRise(low === 0 || (low === top && high.value.d === 1) ? low - 3 : low, high, context),
            `rises to ${day.text}\u00a0°C`,
          );
        },
      },
    ],
  },
];
