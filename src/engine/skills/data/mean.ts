// The mean, and a missing number from it.
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
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { range, sorted, sum } from '../../questions/slips/measuring.js';
import type { Rng } from '../../random/rng.js';
import { operand, sizeOf, using } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { type Style, answerOf, baseOn, listText, ragged, say } from './lists.js';

/** True when the style can write the value. */
function canSay(value: Rational, style: Style): boolean {
  if (style === 'money') return 100 % value.d === 0;
  return style === 'fraction' || decimalPlaces(value) !== null;
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
    text: `Two ${style === 'money' ? 'amounts' : 'numbers'} have a mean of ${say(target, style, locale)}. One is ${say(known, style, locale)}. What is the other?`,
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
              misconception: 'data.mean-gap-given' as const,
              answer: answerOf(subtract(target, known), style, locale),
            },
          ]
        : []),
      ...(canSay(half, style)
        ? [{ misconception: 'missing.same-operation' as const, answer: answerOf(half, style, locale) }]
        : []),
      { misconception: 'missing.adds-all', answer: answerOf(add(target, known), style, locale) },
    ],
  };
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

export const MEAN_SKILLS: readonly Skill[] = [
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
            ? using(
                mean(list, base.style, context),
                `finds the mean of ${day.text} and ${list.length === 2 ? 'one other' : 'others'}`,
              )
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
            isTarget
              ? `works back from a mean of ${day.text}`
              : `finds the partner of ${day.text} from the mean of the two`,
          );
        },
      },
    ],
  },
];
