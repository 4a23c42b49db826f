// Changes in temperature, also across zero.
import { MINUS } from '../../numbers/format.js';
import { add, rational, subtract, toNumber } from '../../numbers/rational.js';
import type { Rational } from '../../numbers/rational.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import {
  operand,
  type Quantity,
  quantity,
  quantityAnswer,
  quantityOn,
  shown,
  sizeOf,
  using,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

function degrees(value: Rational, context: TemplateContext) {
  return quantityAnswer(value, 'decimal', context.locale, context.locale.degrees);
}

function degreeWord(count: number): string {
  return count === 1 ? 'degree' : 'degrees';
}

/** The tens below and above two temperatures, twenty degrees or more apart. */
function around(a: number, b: number): { readonly from: number; readonly to: number } {
  const from = 10 * Math.floor(Math.min(a, b) / 10);
  return { from, to: Math.max(from + 20, 10 * Math.ceil(Math.max(a, b) / 10)) };
}

function temperatureChange(start: Quantity, change: number, context: TemplateContext): Draft {
  const { locale } = context;
  const end = add(start.value, rational(change));
  const size = Math.abs(change);
  const below = end.n < 0;
  const past = subtract(rational(size), start.value);
  return {
    text: `It is ${start.text}\u00a0${locale.degrees} and gets ${size}\u00a0${degreeWord(size)} ${change > 0 ? 'warmer' : 'colder'}. What is it then?`,
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
          `${size} − ${start.text} = ${shown(past, locale)} more ${degreeWord(toNumber(past))} down, below zero`,
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
      ...(change < 0 || start.value.d === 1
        ? [
            {
              misconception: 'meas.added-not-taken' as const,
              answer: degrees(subtract(start.value, rational(change)), context),
            },
          ]
        : []),
    ],
    ...(start.value.d === 1 && start.value.n <= 40
      ? {
          figure: {
            kind: 'scale' as const,
            form: 'thermometer' as const,
            ...around(start.value.n, start.value.n + change),
            step: 1,
            labelEvery: 10,
            value: start.value.n,
            unit: locale.degrees,
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
  const risen = (by: Rational) => quantityAnswer(by, 'decimal', locale, degreeWord(toNumber(by)));
  return {
    text: `It was ${lowText}\u00a0${locale.degrees} and now it is ${high.text}\u00a0${locale.degrees}. How many degrees warmer is it?`,
    answer: risen(rise),
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
            `${-low} ${degreeWord(-low)} up to zero, then ${high.text} more`,
            `${-low} + ${high.text} = ${shown(rise, locale)}`,
          ]
        : [`${high.text} − ${lowText} = ${shown(rise, locale)}`],
    slips: [
      low < 0
        ? {
            misconception: 'meas.zero-not-crossed',
            answer: risen(absolute(subtract(high.value, rational(-low)))),
          }
        : {
            misconception: 'meas.added-not-taken',
            answer: risen(add(high.value, lowValue)),
          },
      {
        misconception: 'data.larger-given',
        answer: risen(high.value),
      },
    ],
  };
}

function absolute(value: Rational): Rational {
  return value.n < 0 ? subtract(rational(0), value) : value;
}

export const TEMPERATURE_SKILLS: readonly Skill[] = [
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
          return using(
            temperatureChange(start, change, context),
            `starts at ${day.text}\u00a0${context.locale.degrees}`,
          );
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
            `rises to ${day.text}\u00a0${context.locale.degrees}`,
          );
        },
      },
    ],
  },
];
