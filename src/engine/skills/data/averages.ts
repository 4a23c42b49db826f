// Mean, median, mode and range.
import { formatMoney } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import {
  add,
  compare,
  decimalPlaces,
  divide,
  multiply,
  type Rational,
  rational,
  subtract,
  toNumber,
} from '../../numbers/rational.js';
import { moneyAnswer, wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { range, sorted, sum, unsortedMedian } from '../../questions/slips/measuring.js';
import type { Answer } from '../../questions/question.js';
import type { DayNumber } from '../../numbers/day-number.js';
import type { Rng } from '../../random/rng.js';
import { operand, quantityAnswer, quantityOn, shown, sizeOf, using } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

/** How the numbers of a list are written: plain, as fractions, or as money. */
type Style = 'decimal' | 'fraction' | 'money';

function say(value: Rational, style: Style, locale: Locale): string {
  return style === 'money' ? formatMoney(value, locale) : shown(value, locale, style);
}

function answerOf(value: Rational, style: Style, locale: Locale): Answer {
  return style === 'money' ? moneyAnswer(value, locale) : quantityAnswer(value, style, locale);
}

/** True when the style can write the value. */
function canSay(value: Rational, style: Style): boolean {
  if (style === 'money') return 100 % value.d === 0;
  return style === 'fraction' || decimalPlaces(value) !== null;
}

function listText(values: readonly Rational[], style: Style, locale: Locale): string {
  const texts = values.map((value) => say(value, style, locale));
  return `${texts.slice(0, -1).join(', ')} and ${texts[texts.length - 1]}`;
}

function ragged(values: readonly Rational[]): boolean {
  return values.some((value) => value.d > 1);
}

function mean(values: readonly Rational[], style: Style, { locale }: TemplateContext): Draft {
  const total = sum(values);
  const count = rational(values.length);
  const result = divide(total, count);
  const middle = sorted(values)[Math.floor(values.length / 2)] ?? result;
  const operands = values.map((value) => say(value, style, locale));
  const wrong: [Rational, 'data.mean-not-shared' | 'data.mean-halved' | 'data.measures-mixed-up'][] = [
    [total, 'data.mean-not-shared'],
    [divide(total, rational(2)), 'data.mean-halved'],
    [values.length > 2 ? middle : range(values), 'data.measures-mixed-up'],
  ];
  return {
    text: `What is the mean of ${listText(values, style, locale)}?`,
    answer: answerOf(result, style, locale),
    expression: `(${values.map(operand).join(' + ')}) / ${values.length}`,
    features: {
      size: sizeOf(toNumber(total)) * 0.4,
      extraSteps: values.length - 2,
      unlike: ragged(values) || result.d > 1,
      carries: ragged(values) && style !== 'fraction' ? 1 : 0,
      adjust: values.length === 2 ? -0.4 : -0.2,
    },
    strategy: [
      `${operands.join(' + ')} = ${say(total, style, locale)}`,
      `${say(total, style, locale)} ÷ ${values.length} = ${say(result, style, locale)}`,
    ],
    slips: wrong
      .filter(([value]) => canSay(value, style))
      .map(([value, misconception]) => ({ misconception, answer: answerOf(value, style, locale) })),
  };
}

function missingForMean(known: Rational, target: Rational, style: Style, { locale }: TemplateContext): Draft {
  const missing = subtract(multiply(target, rational(2)), known);
  const half = divide(add(target, known), rational(2));
  return {
    text: `The mean of two numbers is ${say(target, style, locale)}. One of them is ${say(known, style, locale)}. What is the other?`,
    answer: answerOf(missing, style, locale),
    expression: `2 * ${operand(target)} - ${operand(known)}`,
    features: {
      size: sizeOf(toNumber(target)) * 0.4,
      extraSteps: 1,
      unknownInside: true,
      unlike: ragged([known, target]),
    },
    strategy: [
      `2 × ${say(target, style, locale)} = ${say(multiply(target, rational(2)), style, locale)}`,
      `${say(multiply(target, rational(2)), style, locale)} − ${say(known, style, locale)} = ${say(missing, style, locale)}`,
    ],
    slips: [
      ...(compare(target, known) > 0
        ? [
            {
              misconception: 'data.measures-mixed-up' as const,
              answer: answerOf(subtract(target, known), style, locale),
            },
          ]
        : []),
      ...(canSay(half, style)
        ? [{ misconception: 'data.mean-halved' as const, answer: answerOf(half, style, locale) }]
        : []),
      { misconception: 'data.mean-not-shared', answer: answerOf(add(target, known), style, locale) },
    ],
  };
}

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
      `In order: ${order.map((value) => say(value, style, locale)).join(', ')}.`,
      `The one in the middle is ${say(result, style, locale)}.`,
    ],
    slips: [
      { misconception: 'data.middle-unsorted', answer: answerOf(unsortedMedian(values), style, locale) },
      { misconception: 'data.measures-mixed-up', answer: answerOf(range(values), style, locale) },
      {
        misconception: 'data.measures-mixed-up',
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
      `Largest ${say(high, style, locale)}, smallest ${say(low, style, locale)}.`,
      `${say(high, style, locale)} − ${say(low, style, locale)} = ${say(subtract(high, low), style, locale)}`,
    ],
    slips: [
      { misconception: 'data.measures-mixed-up', answer: answerOf(high, style, locale) },
      ...(wrongEnds.n > 0
        ? [{ misconception: 'data.ends-unsorted' as const, answer: answerOf(wrongEnds, style, locale) }]
        : []),
      {
        misconception: 'data.measures-mixed-up',
        answer: answerOf(order[Math.floor(order.length / 2)] ?? high, style, locale),
      },
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
    strategy: [`${say(result, style, locale)} appears ${count(result)} times, more often than any other.`],
    slips: [
      { misconception: 'data.how-often-given', answer: wholeAnswer(count(result), locale) },
      {
        misconception: 'data.measures-mixed-up',
        answer: answerOf(order[order.length - 1] ?? result, style, locale),
      },
      { misconception: 'data.measures-mixed-up', answer: answerOf(range(values), style, locale) },
    ],
  };
}

/** The day's number and the step in which neighbours of it are drawn. */
function baseOn(day: DayNumber, locale: Locale): { value: Rational; style: Style; step: Rational } | null {
  if (day.kind === 'money') {
    if (100 % day.value.d !== 0 || toNumber(day.value) > 500) return null;
    return {
      value: day.value,
      style: 'money',
      step: toNumber(day.value) > 20 ? rational(1, 2) : rational(1, 20),
    };
  }
  const item = quantityOn(day, locale, 0.2, 1000, 2);
  if (item === null) return null;
  if (day.kind === 'fraction')
    return item.value.d <= 12
      ? { value: item.value, style: 'fraction', step: rational(1, item.value.d) }
      : null;
  const places = decimalPlaces(item.value) ?? 0;
  return {
    value: item.value,
    style: 'decimal',
    step: places === 0 ? rational(1) : rational(1, 10 ** places),
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

/** A list with the base in it whose mean is a tidy number. */
function tidyMean(base: Rational, step: Rational, style: Style, count: number, rng: Rng): Rational[] {
  const gap = multiply(step, rational(rng.int(1, 8) * (count === 2 ? 2 : 1)));
  const fits = compare(base, multiply(gap, rational(2))) > 0;
  if (count === 2) return rng.shuffle([base, fits && rng.chance(0.5) ? subtract(base, gap) : add(base, gap)]);
  // Three numbers whose parts above and below cancel, moved by a whole step.
  const shift = multiply(step, rational(3 * rng.int(0, 3)));
  return rng.shuffle([
    base,
    add(add(base, gap), shift),
    fits ? subtract(base, gap) : add(base, multiply(gap, rational(style === 'fraction' ? 2 : 5))),
  ]);
}

function freeList(rng: Rng, count: number): Rational[] {
  return neighbours(rational(rng.int(6, 30)), rational(1), count, rng);
}

function withRepeat(base: Rational, step: Rational, rng: Rng): Rational[] {
  const others = neighbours(base, step, rng.int(2, 4), rng);
  return rng.shuffle([base, base, ...(rng.chance(0.4) ? [base] : []), ...others]);
}

export const AVERAGE_SKILLS: readonly Skill[] = [
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
            `has ${day.text} in a list`,
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
  {
    id: 'data.mean',
    title: 'Find the mean',
    year: 6,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.survey', 'div.2d1d'],
    codes: { ac9: [], england: ['NC-Y6-stats-2'], ccss: ['6.SP.A.3', '6.SP.B.5c'] },
    templates: [
      {
        id: 'mean',
        ask: (context) =>
          mean(
            tidyMean(
              rational(context.rng.int(8, 30)),
              rational(1),
              'decimal',
              context.rng.int(2, 3),
              context.rng,
            ),
            'decimal',
            context,
          ),
        dayKinds: ['whole', 'decimal', 'money', 'fraction'],
        askOn: (day, context) => {
          const base = baseOn(day, context.locale);
          if (base === null) return null;
          const list = tidyMean(base.value, base.step, base.style, context.rng.int(2, 3), context.rng);
          return canSay(divide(sum(list), rational(list.length)), base.style)
            ? using(mean(list, base.style, context), `finds the mean of ${day.text} and others`)
            : null;
        },
      },
      {
        id: 'missing',
        ask: (context) => {
          const target = context.rng.int(10, 40);
          return missingForMean(
            rational(target - context.rng.int(1, 8)),
            rational(target),
            'decimal',
            context,
          );
        },
        dayKinds: ['whole', 'decimal', 'money', 'fraction'],
        askOn: (day, context) => {
          const base = baseOn(day, context.locale);
          if (base === null) return null;
          const gap = multiply(base.step, rational(context.rng.int(1, 6)));
          const isTarget = compare(base.value, gap) > 0 && context.rng.chance(0.5);
          const known = isTarget ? subtract(base.value, gap) : base.value;
          const target = isTarget ? base.value : add(base.value, gap);
          return using(
            missingForMean(known, target, base.style, context),
            `has ${day.text} as a number or as the mean`,
          );
        },
      },
    ],
  },
];
