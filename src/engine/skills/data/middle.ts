// Mode, median and range.
import {
  add,
  compare,
  divide,
  multiply,
  type Rational,
  rational,
  subtract,
  toNumber,
} from '../../numbers/rational.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { range, sorted, unsortedMedian } from '../../questions/slips/measuring.js';
import type { Rng } from '../../random/rng.js';
import { operand, sizeOf, using } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { type Style, answerOf, baseOn, listText, ragged, say } from './lists.js';

function middle(values: readonly Rational[], style: Style, { locale }: TemplateContext): Draft {
  const order = sorted(values);
  const result = order[Math.floor(order.length / 2)] ?? rational(0);
  return {
    text: `What is the median of ${listText(values, style, locale)}?`,
    answer: answerOf(result, style, locale),
    expression:
      values.length === 3
        ? `${values.map(operand).join(' + ')} - max(${values.map(operand).join(', ')}) - min(${values.map(operand).join(', ')})`
        : null,
    features: {
      size: sizeOf(toNumber(result)) * 0.3,
      extraSteps: values.length > 3 ? 1 : 0,
      unlike: ragged(values),
      adjust: -0.3,
    },
    strategy: [
      `In order: ${order.map((value) => say(value, style, locale)).join(', ')}`,
      `The one in the middle is ${say(result, style, locale)}`,
    ],
    slips: [
      { misconception: 'data.middle-unsorted', answer: answerOf(unsortedMedian(values), style, locale) },
      { misconception: 'data.measures-mixed-up', answer: answerOf(range(values), style, locale) },
      {
        misconception: 'data.largest-given',
        answer: answerOf(order[order.length - 1] ?? result, style, locale),
      },
    ],
  };
}

function spread(values: readonly Rational[], style: Style, { locale }: TemplateContext): Draft {
  const order = sorted(values);
  const low = order[0] ?? rational(0);
  const high = order[order.length - 1] ?? low;
  const first = values[0] ?? low;
  const last = values[values.length - 1] ?? high;
  const wrongEnds = subtract(last, first);
  return {
    text: `What is the range of ${listText(values, style, locale)}?`,
    answer: answerOf(subtract(high, low), style, locale),
    expression: `${operand(high)} - ${operand(low)}`,
    features: {
      size: sizeOf(toNumber(high)) * 0.4,
      extraSteps: values.length > 3 ? 1 : 0.5,
      unlike: ragged(values),
      adjust: -0.3,
    },
    strategy: [
      `Largest ${say(high, style, locale)}, smallest ${say(low, style, locale)}`,
      `${say(high, style, locale)} − ${say(low, style, locale)} = ${say(subtract(high, low), style, locale)}`,
    ],
    slips: [
      { misconception: 'data.largest-given', answer: answerOf(high, style, locale) },
      ...(wrongEnds.n > 0
        ? [{ misconception: 'data.ends-unsorted' as const, answer: answerOf(wrongEnds, style, locale) }]
        : []),
      // With an even count no number of the list is its median.
      ...(order.length % 2 === 1
        ? [
            {
              misconception: 'data.measures-mixed-up' as const,
              answer: answerOf(order[Math.floor(order.length / 2)] ?? high, style, locale),
            },
          ]
        : []),
    ],
  };
}

function mode(values: readonly Rational[], style: Style, { locale }: TemplateContext): Draft {
  const count = (value: Rational) => values.filter((other) => compare(other, value) === 0).length;
  const result = values.reduce((best, value) => (count(value) > count(best) ? value : best));
  const order = sorted(values);
  return {
    text: `What is the mode of ${listText(values, style, locale)}?`,
    answer: answerOf(result, style, locale),
    expression: null,
    features: { size: values.length > 5 ? 0.5 : 0, rule: true, adjust: 0.2 },
    strategy: [`${say(result, style, locale)} appears ${count(result)} times, more often than any other`],
    slips: [
      { misconception: 'data.how-often-given', answer: wholeAnswer(count(result), locale) },
      {
        misconception: 'data.largest-given',
        answer: answerOf(order[order.length - 1] ?? result, style, locale),
      },
      { misconception: 'data.measures-mixed-up', answer: answerOf(range(values), style, locale) },
    ],
  };
}

/** Other numbers near the base, never negative and not equal to it, `count` of them. */
function neighbours(base: Rational, step: Rational, count: number, rng: Rng): Rational[] {
  const steps = Math.max(6, Math.min(20, Math.floor(toNumber(divide(base, step)) / 2)));
  const out: Rational[] = [];
  for (let i = 0; out.length < count; i++) {
    const up = rng.chance(0.6) || i > 20;
    const other = add(base, multiply(step, rational(up ? rng.int(1, steps + i) : -rng.int(1, steps))));
    if (other.n > 0 && !out.some((value) => compare(value, other) === 0)) out.push(other);
  }
  return out;
}

function freeList(rng: Rng, count: number): Rational[] {
  return neighbours(rational(rng.int(6, 30)), rational(1), count, rng);
}

function withRepeat(base: Rational, step: Rational, rng: Rng): Rational[] {
  const others = neighbours(base, step, rng.int(2, 4), rng);
  return rng.shuffle([base, base, ...(rng.chance(0.4) ? [base] : []), ...others]);
}

export const MIDDLE_SKILLS: readonly Skill[] = [
  {
    id: 'data.mode',
    title: 'Find the mode',
    year: 5,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.survey'],
    codes: { ac9: ['AC9M5ST01'], england: [], ccss: [] },
    templates: [
      {
        id: 'mode',
        ask: (context) =>
          mode(withRepeat(rational(context.rng.int(4, 30)), rational(1), context.rng), 'decimal', context),
        dayKinds: ['whole', 'decimal', 'money', 'fraction'],
        askOn: (day, context) => {
          const base = baseOn(day, context.locale);
          if (base === null) return null;
          // The mode is another number, so that the day's number does not give itself away.
          const other = neighbours(base.value, base.step, 1, context.rng)[0] ?? base.value;
          const list = withRepeat(other, base.step, context.rng).filter(
            (value) => compare(value, base.value) !== 0,
          );
          return using(
            mode(context.rng.shuffle([base.value, ...list]), base.style, context),
            `looks for the mode of ${day.text} and others`,
          );
        },
      },
    ],
  },
  {
    id: 'data.median',
    title: 'Find the median',
    year: 6,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.mode'],
    codes: { ac9: [], england: [], ccss: ['6.SP.B.5c'] },
    templates: [
      {
        id: 'median',
        ask: (context) => middle(freeList(context.rng, context.rng.pick([3, 5])), 'decimal', context),
        dayKinds: ['whole', 'decimal', 'money', 'fraction'],
        askOn: (day, context) => {
          const base = baseOn(day, context.locale);
          if (base === null) return null;
          const list = [
            base.value,
            ...neighbours(base.value, base.step, context.rng.pick([2, 4]), context.rng),
          ];
          return using(
            middle(context.rng.shuffle(list), base.style, context),
            `puts ${day.text} in order with others`,
          );
        },
      },
    ],
  },
  {
    id: 'data.range',
    title: 'Find the range',
    year: 6,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.mode', 'sub.3d'],
    codes: { ac9: ['AC9M6ST01'], england: [], ccss: ['6.SP.B.5c'] },
    templates: [
      {
        id: 'range',
        ask: (context) => spread(freeList(context.rng, context.rng.int(3, 5)), 'decimal', context),
        dayKinds: ['whole', 'decimal', 'money', 'fraction'],
        askOn: (day, context) => {
          const base = baseOn(day, context.locale);
          if (base === null) return null;
          const list = [base.value, ...neighbours(base.value, base.step, context.rng.int(2, 4), context.rng)];
          return using(
            spread(context.rng.shuffle(list), base.style, context),
            `finds the range of ${day.text} and others`,
          );
        },
      },
    ],
  },
];
