// Changing units of length, mass and capacity.
import { formatWhole } from '../../numbers/format.js';
import {
  add,
  decimalPlaces,
  divide,
  multiply,
  type Rational,
  rational,
  toNumber,
} from '../../numbers/rational.js';
import { unitAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { pointReadAsUnits, wrongConversions } from '../../questions/slips/measuring.js';
import type { Rng } from '../../random/rng.js';
import {
  type Quantity,
  quantity,
  quantityAnswer,
  quantityOn,
  shown,
  sizeOf,
  using,
  wholeOn,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { CM_MM, KG_G, KM_M, L_ML, M_CM, PAIRS, type UnitPair, largeText } from './metric.js';

function toSmall(amount: Quantity, pair: UnitPair, { locale }: TemplateContext): Draft {
  const total = multiply(amount.value, rational(pair.factor));
  const { n, d } = amount.value;
  const isFraction = amount.style === 'fraction' && d > 1;
  const whole = Math.floor(n / d);
  const wrong = wrongConversions(amount.value, pair.factor);
  const units = pointReadAsUnits(amount.value, pair.factor);
  const answer = (value: Rational) => quantityAnswer(value, 'decimal', locale, pair.small);
  const one = rational(pair.factor, d);
  const part = rational(n - whole * d, d);
  const partTotal = multiply(part, rational(pair.factor));
  const strategy = isFraction
    ? [
        `${formatWhole(pair.factor, locale)} ÷ ${d} = ${shown(one, locale)}`,
        ...(part.n > 1 ? [`${part.n} × ${shown(one, locale)} = ${shown(partTotal, locale)}`] : []),
        ...(whole > 0
          ? [
              `${formatWhole(whole * pair.factor, locale)} + ${shown(partTotal, locale)} = ${shown(total, locale)}`,
            ]
          : []),
      ]
    : [`${amount.text} × ${formatWhole(pair.factor, locale)} = ${shown(total, locale)}`];
  return {
    text: `How many ${pair.smallName(locale)}s are in ${largeText(amount, pair, locale)}?`,
    answer: answer(total),
    expression: `${amount.expression} * ${pair.factor}`,
    features: {
      size: (d === 1 ? sizeOf(n) * 0.3 : 0.8) + (pair.factor === 1000 ? 0.5 : 0),
      rule: d === 1,
      extraSteps: isFraction ? (part.n > 1 ? 1 : 0) + (whole > 0 ? 0.5 : 0) : 0,
      unlike:
        !isFraction &&
        (decimalPlaces(amount.value) ?? 0) > 0 &&
        10 ** (decimalPlaces(amount.value) ?? 0) !== pair.factor,
      adjust: d === 2 && whole === 0 ? -0.9 : -0.2,
    },
    strategy: [`1\u00a0${pair.large} = ${formatWhole(pair.factor, locale)}\u00a0${pair.small}`, ...strategy],
    slips: [
      ...(decimalPlaces(wrong.tenTooFew) === null
        ? []
        : [{ misconception: 'meas.factor' as const, answer: answer(wrong.tenTooFew) }]),
      { misconception: 'meas.factor', answer: answer(wrong.tenTooMany) },
      ...(isFraction && part.n > 1
        ? [
            {
              misconception: 'part.one-only' as const,
              answer: answer(add(rational(whole * pair.factor), one)),
            },
          ]
        : []),
      ...(!isFraction && units !== null && d > 1
        ? [{ misconception: 'time.point-as-units' as const, answer: answer(units) }]
        : []),
      ...(!isFraction && decimalPlaces(wrong.reversed) !== null && (decimalPlaces(wrong.reversed) ?? 9) <= 4
        ? [{ misconception: 'meas.reversed' as const, answer: answer(wrong.reversed) }]
        : []),
    ],
  };
}

function toLarge(count: Quantity, pair: UnitPair, { locale }: TemplateContext): Draft {
  const total = divide(count.value, rational(pair.factor));
  const answer = (value: Rational) => quantityAnswer(value, 'decimal', locale, pair.large);
  const zeros = decimalPlaces(total) ?? 0;
  return {
    text: `How many ${pair.largeName(locale)}s is ${count.text}\u00a0${pair.small}?`,
    answer: answer(total),
    expression: `${count.expression} / ${pair.factor}`,
    features: { size: zeros * 0.5, rule: zeros === 0, unlike: toNumber(total) < 1 && zeros > 1 },
    strategy: [
      `${formatWhole(pair.factor, locale)}\u00a0${pair.small} = 1\u00a0${pair.large}`,
      `${count.text} ÷ ${formatWhole(pair.factor, locale)} = ${shown(total, locale)}`,
    ],
    slips: [
      { misconception: 'meas.factor', answer: answer(multiply(total, rational(10))) },
      { misconception: 'meas.factor', answer: answer(divide(total, rational(10))) },
      { misconception: 'meas.reversed', answer: answer(multiply(count.value, rational(pair.factor))) },
    ],
  };
}

/** "305 cm is 3 m and how many centimetres?" */
function split(count: number, pair: UnitPair, { locale }: TemplateContext): Draft {
  const large = Math.floor(count / pair.factor);
  const rest = count % pair.factor;
  const answer = (value: number) => unitAnswer(value, pair.small, locale);
  return {
    text: `${formatWhole(count, locale)}\u00a0${pair.small} is ${large}\u00a0${pair.large} and how many ${pair.smallName(locale)}s?`,
    answer: answer(rest),
    expression: `${count} - ${large} * ${pair.factor}`,
    features: {
      size: pair.factor === 1000 ? 0.5 : 0,
      unlike: rest > 0 && rest < pair.factor / 10,
      adjust: -0.8,
    },
    strategy: [
      `${large} × ${formatWhole(pair.factor, locale)} = ${formatWhole(large * pair.factor, locale)}`,
      `${formatWhole(count, locale)} − ${formatWhole(large * pair.factor, locale)} = ${rest}`,
    ],
    slips: [
      ...(pair.factor > 10
        ? [
            {
              misconception: 'meas.factor' as const,
              answer: answer(count - (large * pair.factor) / 10),
            },
          ]
        : []),
      { misconception: 'meas.units-ignored', answer: answer(count - large) },
      { misconception: 'part.rest-given', answer: answer(large) },
    ],
  };
}

/** From 11 to 99 without whole tens, so that a tenth or a hundredth of it is a decimal and no whole number. */
const noTens = (rng: Rng): number => 10 * rng.int(1, 9) + rng.int(1, 9);

function pairFor(amount: Quantity, rng: Rng, isWholeSmall: boolean): UnitPair | null {
  const size = toNumber(amount.value);
  const fits = PAIRS.filter((pair) => {
    if (pair.factor % amount.value.d !== 0 && isWholeSmall) return false;
    if (pair === CM_MM) return size <= 120;
    return pair === M_CM || pair === KM_M ? size <= 400 : size <= 60;
  });
  return fits.length === 0 ? null : rng.pick(fits);
}

const TO_SMALL = {
  ac9: ['AC9M5M01'],
  england: ['NC-Y4-measure-1', '5NPV-5'],
  ccss: ['4.MD.A.1'],
} as const;

const FREE_PARTS = [
  rational(1, 2),
  rational(1, 4),
  rational(3, 4),
  rational(1, 5),
  rational(2, 5),
  rational(3, 10),
  rational(7, 10),
  rational(3, 2),
];

export const CONVERSION_SKILLS: readonly Skill[] = [
  {
    id: 'meas.units',
    title: 'Change a larger unit to a smaller one',
    year: 4,
    fluentYear: 5,
    strand: 'measures',
    prerequisites: ['meas.fill-up', 'mult.by100'],
    codes: TO_SMALL,
    templates: [
      {
        id: 'to-small',
        ask: (context) =>
          toSmall(quantity(context.rng.int(2, 12), context.locale), context.rng.pick(PAIRS), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const count = wholeOn(day, 1, 400);
          if (count === null) return null;
          const amount = quantity(count, context.locale);
          const pair = pairFor(amount, context.rng, true);
          return pair === null
            ? null
            : using(
                toSmall(amount, pair, context),
                `changes ${day.text}\u00a0${pair.large} to ${pair.smallName(context.locale)}s`,
              );
        },
      },
      {
        id: 'split',
        ask: (context) => {
          const pair = context.rng.pick(PAIRS);
          return split(
            context.rng.int(1, 8) * pair.factor + context.rng.int(1, 9) * (pair.factor / 10),
            pair,
            context,
          );
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const count = wholeOn(day, 11, 999_999);
          if (count === null) return null;
          const pairs = PAIRS.filter(
            (each) =>
              count > each.factor &&
              count < (each.factor < 1000 ? 100 : 1000) * each.factor &&
              count % each.factor !== 0,
          );
          if (pairs.length === 0) return null;
          const pair = context.rng.pick(pairs);
          return using(
            split(count, pair, context),
            `splits ${day.text}\u00a0${pair.small} into ${pair.largeName(context.locale)}s and ${pair.smallName(context.locale)}s`,
          );
        },
      },
    ],
  },
  {
    id: 'meas.units.fraction',
    title: 'Change a fraction of a unit to a smaller unit',
    year: 5,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.units', 'frac.nonunit-of'],
    codes: {
      ac9: ['AC9M5M01', 'AC9M6M01'],
      england: ['5NPV-5', 'NC-Y4-fractions-10'],
      ccss: ['4.MD.A.2', '5.MD.A.1'],
    },
    templates: [
      {
        id: 'part',
        ask: (context) =>
          toSmall(
            quantity(context.rng.pick(FREE_PARTS), context.locale, 'fraction'),
            context.rng.pick([M_CM, KM_M, KG_G, L_ML]),
            context,
          ),
        dayKinds: ['fraction'],
        askOn: (day, context) => {
          const amount = quantityOn(day, context.locale, 0.01, 20);
          if (amount === null || 1000 % amount.value.d !== 0) return null;
          const pair = pairFor(amount, context.rng, true);
          return pair === null
            ? null
            : using(toSmall(amount, pair, context), `takes ${largeText(amount, pair, context.locale)}`);
        },
      },
    ],
  },
  {
    id: 'meas.units.decimal',
    title: 'Change units with decimals',
    year: 6,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.units', 'dec.times10', 'dec.divide10'],
    codes: {
      ac9: ['AC9M6M01'],
      england: ['NC-Y5-measure-1', 'NC-Y6-measure-2', '5NPV-5'],
      ccss: ['5.MD.A.1', '6.RP.A.3d'],
    },
    templates: [
      {
        id: 'to-small',
        ask: (context) => {
          const places = context.rng.int(1, 2);
          return toSmall(
            quantity(rational(noTens(context.rng) * 10 ** (2 - places), 100), context.locale),
            context.rng.pick([M_CM, KM_M, KG_G, L_ML]),
            context,
          );
        },
        dayKinds: ['decimal'],
        askOn: (day, context) => {
          const amount = quantityOn(day, context.locale, 0.001, 400);
          const pair = amount === null ? null : pairFor(amount, context.rng, true);
          return amount === null || pair === null
            ? null
            : using(
                toSmall(amount, pair, context),
                `changes ${day.text}\u00a0${pair.large} to ${pair.smallName(context.locale)}s`,
              );
        },
      },
      {
        id: 'to-large',
        ask: (context) => {
          const pair = context.rng.pick(PAIRS);
          return toLarge(quantity(noTens(context.rng) * (pair.factor / 10), context.locale), pair, context);
        },
        dayKinds: ['whole', 'decimal'],
        askOn: (day, context) => {
          const count = quantityOn(day, context.locale, 2, 1_000_000, 1);
          if (count === null) return null;
          const size = toNumber(count.value);
          // Of a part of a gram, or of 8 g in kilograms, nobody speaks.
          const pairs = PAIRS.filter(
            (each) =>
              size <= (each === CM_MM ? 1000 : each === M_CM ? 5000 : 1_000_000) &&
              size * 20 >= each.factor &&
              (count.value.d === 1 || each.factor < 1000),
          );
          if (pairs.length === 0) return null;
          const pair = context.rng.pick(pairs);
          return using(
            toLarge(count, pair, context),
            `changes ${day.text}\u00a0${pair.small} to ${pair.largeName(context.locale)}s`,
          );
        },
      },
    ],
  },
];
