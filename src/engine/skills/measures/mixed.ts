// Working with two units at once: filling up, adding and taking, how many fit.
import { formatWhole } from '../../numbers/format.js';
import { add, multiply, type Rational, rational, subtract, toNumber } from '../../numbers/rational.js';
import { unitAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import {
  type Quantity,
  quantity,
  quantityAnswer,
  quantityOn,
  shown,
  using,
  wholeOn,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { FIT } from './how-many.js';
import { KG_G, KM_M, L_ML, M_CM, PAIRS, type UnitPair } from './metric.js';

/** The article before a number read aloud: an 8, an 11, an 18, an 80. */
function aOrAn(text: string): 'a' | 'an' {
  return /^(8|(11|18)(?!\d))/.test(text) ? 'an' : 'a';
}

/** "3.6 kg and 400 g together, in grams" or the difference. */
function mixed(
  amount: Quantity,
  smallCount: number,
  isSum: boolean,
  pair: UnitPair,
  { rng, locale }: TemplateContext,
): Draft {
  const inSmall = multiply(amount.value, rational(pair.factor));
  const extra = rational(smallCount);
  const total = isSum ? add(inSmall, extra) : subtract(inSmall, extra);
  const answer = (value: Rational) => quantityAnswer(value, 'decimal', locale, pair.small);
  const extraText = formatWhole(smallCount, locale);
  const thing = rng.pick(toNumber(amount.value) <= pair.smallUpTo ? pair.things : pair.bigThings);
  const name = `${pair.smallName(locale)}s`;
  const amountText = `${amount.text}\u00a0${pair.large}`;
  const ignored = isSum ? add(amount.value, extra) : extra;
  const numerals = pair.factor / 10;
  const wrongBase = multiply(amount.value, rational(numerals));
  const verb =
    pair.small === 'mL' ? 'is poured out of' : pair.small === 'g' ? 'is taken from' : 'is cut from';
  const isTravel = pair.large === 'km';
  return {
    text: isSum
      ? `How many ${name} are ${amountText} and ${extraText}\u00a0${pair.small} together?`
      : isTravel
        ? `A ${thing} is ${amountText} long, and ${extraText}\u00a0${pair.small} of it is done. How many ${name} are left?`
        : `${extraText}\u00a0${pair.small} ${verb} ${aOrAn(amountText)} ${amountText} ${thing}. How many ${name} are left?`,
    answer: answer(total),
    expression: `${amount.expression} * ${pair.factor} ${isSum ? '+' : '-'} ${smallCount}`,
    features: {
      size: pair.factor === 1000 ? 1 : 0.5,
      extraSteps: 1,
      unlike: amount.value.d > 1,
      story: !isSum,
      carries: isSum ? 0 : 1,
      adjust: -0.3,
    },
    strategy: [
      `${amountText} = ${shown(inSmall, locale)}\u00a0${pair.small}`,
      `${shown(inSmall, locale)} ${isSum ? '+' : '−'} ${extraText} = ${shown(total, locale)}`,
    ],
    slips: [
      ...(isSum
        ? [{ misconception: 'meas.units-ignored' as const, answer: answer(ignored) }]
        : [{ misconception: 'meas.added-not-taken' as const, answer: answer(add(inSmall, extra)) }]),
      ...(isSum || toNumber(wrongBase) > smallCount
        ? [
            {
              misconception: 'meas.factor' as const,
              answer: answer(isSum ? add(wrongBase, extra) : subtract(wrongBase, extra)),
            },
          ]
        : []),
      {
        misconception: 'meas.factor',
        answer: answer(
          isSum
            ? add(multiply(inSmall, rational(10)), extra)
            : subtract(multiply(inSmall, rational(10)), extra),
        ),
      },
    ],
  };
}

/** How much is missing to the next full large unit. */
function fillUp(count: number, pair: UnitPair, { locale }: TemplateContext): Draft {
  const missing = pair.factor - count;
  const answer = (value: number) => unitAnswer(value, pair.small, locale);
  const digit = missing % 10;
  return {
    text: `How many ${pair.smallName(locale)}s must be added to ${formatWhole(count, locale)}\u00a0${pair.small} to make 1\u00a0${pair.large}?`,
    answer: answer(missing),
    expression: `${pair.factor} - ${count}`,
    features: {
      unknownInside: true,
      size: pair.factor === 1000 ? 1 : pair.factor === 10 ? -0.5 : 0,
      carries: digit === 0 ? 0 : pair.factor === 1000 ? 2 : 1,
      adjust: -0.5,
    },
    strategy:
      pair.factor === 1000 && missing > 100 && count % 100 !== 0
        ? [
            `${count} + ${100 - (count % 100)} = ${count + 100 - (count % 100)}`,
            `${count + 100 - (count % 100)} + ${missing - 100 + (count % 100)} = ${formatWhole(1000, locale)}`,
            `${100 - (count % 100)} + ${missing - 100 + (count % 100)} = ${missing}`,
          ]
        : [`${count} + ${missing} = ${formatWhole(pair.factor, locale)}`],
    slips: [
      ...(pair.factor > 10
        ? [{ misconception: 'meas.complement-ten' as const, answer: answer(missing + 10) }]
        : []),
      ...(pair.factor === 1000 && count < 100
        ? [{ misconception: 'meas.factor' as const, answer: answer(100 - count) }]
        : pair.factor === 100
          ? [{ misconception: 'meas.factor' as const, answer: answer(1000 - count) }]
          : pair.factor === 10
            ? [{ misconception: 'meas.factor' as const, answer: answer(100 - count) }]
            : [{ misconception: 'meas.factor' as const, answer: answer(10_000 - count) }]),
    ],
  };
}

export const MIXED_UNIT_SKILLS: readonly Skill[] = [
  {
    id: 'meas.fill-up',
    family: 'make up to a whole',
    title: 'Fill up to a whole unit of measure',
    year: 3,
    fluentYear: 4,
    strand: 'measures',
    prerequisites: ['meas.compare', 'add.to100'],
    codes: { ac9: ['AC9M3M02'], england: ['NC-Y3-measure-1'], ccss: ['3.MD.A.2'] },
    templates: [
      {
        id: 'whole',
        ask: (context) =>
          context.rng.chance(0.6)
            ? fillUp(context.rng.int(11, 98), M_CM, context)
            : fillUp(context.rng.int(3, 19) * 50, context.rng.pick([KG_G, L_ML, KM_M]), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const count = wholeOn(day, 1, 990);
          if (count === null) return null;
          const pairs = PAIRS.filter((pair) => pair.factor > count && (count <= 10 || pair.factor > 10));
          const pair = context.rng.pick(pairs);
          return using(
            fillUp(count, pair, context),
            `fills ${count}\u00a0${pair.small} up to 1\u00a0${pair.large}`,
          );
        },
      },
    ],
  },
  {
    id: 'meas.mixed',
    title: 'Add and subtract measures in different units',
    year: 5,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.units'],
    codes: {
      ac9: ['AC9M5M01', 'AC9M6M01'],
      england: ['NC-Y5-measure-7', 'NC-Y6-measure-1'],
      ccss: ['4.MD.A.2', '5.MD.A.1'],
    },
    templates: [
      {
        id: 'mixed',
        ask: (context) => {
          const { rng } = context;
          const pair = rng.pick([M_CM, KM_M, KG_G, L_ML]);
          const amount = quantity(rational(rng.int(3, 18), rng.pick([1, 2])), context.locale);
          return mixed(amount, rng.int(2, 9) * (pair.factor / 20), rng.chance(0.5), pair, context);
        },
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const amount = quantityOn(day, locale, 0.5, 60, 2);
          if (amount === null || amount.value.d > 20) return null;
          const pairs = [M_CM, KM_M, KG_G, L_ML].filter((pair) => pair.factor % amount.value.d === 0);
          if (pairs.length === 0) return null;
          const pair = rng.pick(pairs);
          const extra = rng.int(2, 9) * (pair.factor / 20);
          const isSum = rng.chance(0.5);
          return using(
            mixed(amount, extra, isSum, pair, context),
            `${isSum ? 'adds' : 'takes'} ${pair.smallName(locale)}s ${isSum ? 'to' : 'from'} ${day.text}\u00a0${pair.large}`,
          );
        },
      },
    ],
  },
  {
    id: 'meas.how-many',
    title: 'Find how many smaller amounts fit into a larger one',
    year: 6,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.units.fraction', 'meas.mixed'],
    codes: {
      ac9: ['AC9M6M01', 'AC9M6N09'],
      england: ['NC-Y5-measure-7', 'NC-Y6-measure-1'],
      ccss: ['5.MD.A.1', '6.RP.A.3d'],
    },
    templates: [FIT],
  },
];
