// Comparing measures and choosing a unit.
import { formatWhole } from '../../numbers/format.js';
import { compare, rational, toNumber } from '../../numbers/rational.js';
import { choiceAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import {
  type Quantity,
  quantity,
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
    strategy: [
      `${(firstIsMore ? first : second).text} is more than ${(firstIsMore ? second : first).text}`,
      `So ${say(right)} is ${word}`,
    ],
    slips: [{ misconception: 'compare.reversed', answer: choiceAnswer(say(wrong)) }],
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
    // Who goes by the numbers picks the small units, of which there are more; who goes by the units picks the large one.
    slips: [
      {
        misconception: difference > 0 ? 'meas.number-before-unit' : 'meas.unit-before-number',
        answer: choiceAnswer(wrong),
      },
    ],
  };
}

/** A count of small units near the given amount, above or below it. */
function nearCount(large: Quantity, pair: Pair, { rng }: TemplateContext): number {
  const exact = toNumber(large.value) * pair.factor;
  const step = pair.factor === 10 ? 1 : pair.factor / 20;
  const near = Math.max(1, Math.round(exact / step) + rng.pick([-6, -3, -1, 1, 3, 6])) * step;
  return Math.round(near) === exact ? Math.round(near) + 1 : Math.round(near);
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
  { asks: 'the mass of an apple', right: 'grams', wrong: ['kilograms', 'tonnes'] },
  { asks: 'the mass of a grown-up', right: 'kilograms', wrong: ['grams', 'tonnes'] },
  { asks: 'the water in a bathtub', right: 'litres', wrong: ['millilitres', 'grams'] },
  { asks: 'the medicine on a spoon', right: 'millilitres', wrong: ['litres', 'kilograms'] },
];

/** The order in which answers are offered, so that a question always reads the same. */
const UNITS = [
  'millimetres',
  'centimetres',
  'metres',
  'kilometres',
  'millilitres',
  'litres',
  'grams',
  'kilograms',
  'tonnes',
];

function chooseUnit({ rng, locale }: TemplateContext): Draft {
  const choice = rng.pick(CHOICES);
  const spell = (unit: string) =>
    unit
      .replace('metre', locale.spelling.metre)
      .replace('litre', locale.spelling.litre)
      .replace('tonnes', locale.id === 'en-US' ? 'metric tons' : 'tonnes');
  const names = UNITS.filter((unit) => unit === choice.right || choice.wrong.includes(unit)).map(spell);
  return {
    text: `Which unit suits ${choice.asks}: ${names[0]}, ${names[1]} or ${names[2]}?`,
    answer: choiceAnswer(spell(choice.right)),
    expression: null,
    features: {
      fewChoices: true,
      adjust: choice.right === 'millimetres' || choice.right === 'millilitres' ? 0.3 : 0,
    },
    strategy: [
      'Picture one of each unit next to it',
      `Neither far too many nor less than one: ${spell(choice.right)}`,
    ],
    slips: choice.wrong.map((unit) => ({
      misconception: 'meas.unit-size' as const,
      answer: choiceAnswer(spell(unit)),
    })),
  };
}

export const COMPARING_SKILLS: readonly Skill[] = [
  {
    id: 'meas.compare',
    family: 'which is greater',
    title: 'Say which is longer or heavier',
    year: 1,
    fluentYear: 2,
    strand: 'measures',
    prerequisites: ['place.compare.20'],
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
            rng.pick(ADJECTIVES.slice(0, 2)),
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
    family: 'which is greater',
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
    id: 'meas.unit.choose',
    title: 'Choose a sensible unit',
    year: 3,
    fluentYear: 4,
    strand: 'measures',
    prerequisites: ['meas.compare'],
    codes: { ac9: ['AC9M3M01'], england: ['NC-Y2-measure-1'], ccss: ['2.MD.A.3'] },
    templates: [{ id: 'unit', ask: (context) => chooseUnit(context) }],
  },
];
