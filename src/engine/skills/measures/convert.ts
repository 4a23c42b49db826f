// Changing units of length, mass and capacity, and working with mixed units.
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import {
  add,
  decimalPlaces,
  divide,
  multiply,
  type Rational,
  rational,
  subtract,
  toNumber,
} from '../../numbers/rational.js';
import { unitAnswer, wholeAnswer } from '../../questions/answer.js';
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

interface UnitPair {
  readonly large: string;
  readonly small: string;
  readonly factor: number;
  readonly largeName: (locale: Locale) => string;
  readonly smallName: (locale: Locale) => string;
  /** What is commonly measured in these units, for one-sentence stories: up to `smallUpTo` large units, and beyond. */
  readonly things: readonly string[];
  readonly bigThings: readonly string[];
  readonly smallUpTo: number;
}

const M_CM: UnitPair = {
  large: 'm',
  small: 'cm',
  factor: 100,
  largeName: (locale) => locale.spelling.metre,
  smallName: (locale) => `centi${locale.spelling.metre}`,
  things: ['rope', 'ribbon', 'cable'],
  bigThings: ['rope', 'cable', 'fence wire'],
  smallUpTo: 6,
};
const CM_MM: UnitPair = {
  large: 'cm',
  small: 'mm',
  factor: 10,
  largeName: (locale) => `centi${locale.spelling.metre}`,
  smallName: (locale) => `milli${locale.spelling.metre}`,
  things: ['line', 'leaf', 'feather'],
  bigThings: ['line', 'strip of paper'],
  smallUpTo: 25,
};
const KM_M: UnitPair = {
  large: 'km',
  small: 'm',
  factor: 1000,
  largeName: (locale) => `kilo${locale.spelling.metre}`,
  smallName: (locale) => locale.spelling.metre,
  things: ['path', 'run', 'walk'],
  bigThings: ['bike trail', 'road'],
  smallUpTo: 12,
};
const KG_G: UnitPair = {
  large: 'kg',
  small: 'g',
  factor: 1000,
  largeName: () => 'kilogram',
  smallName: () => 'gram',
  things: ['bag of rice', 'block of clay'],
  bigThings: ['sack of rice', 'heap of sand'],
  smallUpTo: 6,
};
const L_ML: UnitPair = {
  large: 'L',
  small: 'mL',
  factor: 1000,
  largeName: (locale) => locale.spelling.litre,
  smallName: (locale) => `milli${locale.spelling.litre}`,
  things: ['bottle of juice', 'bucket of water', 'jug of lemonade'],
  bigThings: ['tank of water', 'drum of paint'],
  smallUpTo: 5,
};
const PAIRS = [M_CM, CM_MM, KM_M, KG_G, L_ML] as const;

/** "3/4 of a metre" or "3.6 m". */
function largeText(amount: Quantity, pair: UnitPair, locale: Locale): string {
  return amount.style === 'fraction' && toNumber(amount.value) < 1
    ? `${amount.text} of a ${pair.largeName(locale)}`
    : `${amount.text}\u00a0${pair.large}`;
}

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
      { misconception: 'meas.factor', answer: answer(count % (pair.factor / 10)) },
      { misconception: 'meas.factor', answer: answer(rest < pair.factor / 10 ? rest * 10 : count - large) },
      { misconception: 'part.rest-given', answer: answer(large) },
    ],
  };
}

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
        ? `A ${thing} is ${amountText} long and ${extraText}\u00a0${pair.small} are done. How many ${name} are left?`
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

/** How many pieces of a small length, or cups, come out of a large amount. */
function howMany(amount: Quantity, each: number, pair: UnitPair, { rng, locale }: TemplateContext): Draft {
  const inSmall = multiply(amount.value, rational(pair.factor));
  const pieces = Math.floor(toNumber(inSmall) / each);
  const left = subtract(inSmall, rational(pieces * each));
  const eachText = `${formatWhole(each, locale)}\u00a0${pair.small}`;
  const amountText = largeText(amount, pair, locale);
  const what =
    pair.small === 'mL'
      ? `cups of ${eachText} can be filled from`
      : pair.small === 'g'
        ? `bags of ${eachText} can be filled from`
        : `pieces of ${eachText} can be cut from`;
  const stuff =
    pair.small === 'mL'
      ? rng.pick(['juice', 'water', 'milk'])
      : pair.small === 'g'
        ? rng.pick(['rice', 'flour', 'sand'])
        : rng.pick(['rope', 'ribbon', 'wire']);
  return {
    text: `How many full ${what} ${amountText} of ${stuff}?`,
    answer: wholeAnswer(pieces, locale),
    expression:
      left.n === 0
        ? `${amount.expression} * ${pair.factor} / ${each}`
        : `floor(${amount.expression} * ${pair.factor} / ${each})`,
    features: {
      size: pieces > 10 ? 1 : 0.3,
      extraSteps: left.n === 0 ? 1 : 2,
      unlike: amount.value.d > 1,
      story: true,
    },
    strategy: [
      `${amountText} = ${shown(inSmall, locale)}\u00a0${pair.small}`,
      ...(left.n === 0
        ? [`${shown(inSmall, locale)} ÷ ${formatWhole(each, locale)} = ${pieces}`]
        : [
            `${pieces} × ${formatWhole(each, locale)} = ${formatWhole(pieces * each, locale)}`,
            `${shown(left, locale)}\u00a0${pair.small} are left, too few for another one.`,
          ]),
    ],
    slips: [
      ...(left.n === 0
        ? []
        : [{ misconception: 'group.rounds-up' as const, answer: wholeAnswer(pieces + 1, locale) }]),
      {
        misconception: 'meas.factor',
        answer: wholeAnswer(Math.max(1, Math.floor(toNumber(inSmall) / 10 / each)), locale),
      },
      {
        misconception: 'meas.factor',
        answer: wholeAnswer(Math.floor((toNumber(inSmall) * 10) / each), locale),
      },
    ],
  };
}

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
  ac9: ['AC9M4M01', 'AC9M5M01'],
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
    id: 'meas.fill-up',
    title: 'Fill up to a whole metre, kilogram or litre',
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
                `changes ${day.text}\u00a0${pair.large} to ${pair.small}`,
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
          const count = wholeOn(day, 11, 20_000);
          if (count === null) return null;
          const pairs = PAIRS.filter(
            (each) => count > each.factor && count < 100 * each.factor && count % each.factor !== 0,
          );
          if (pairs.length === 0) return null;
          const pair = context.rng.pick(pairs);
          return using(
            split(count, pair, context),
            `splits ${day.text}\u00a0${pair.small} into ${pair.large} and ${pair.small}`,
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
            quantity(rational(context.rng.int(11, 99) * 10 ** (2 - places), 100), context.locale),
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
                `changes ${day.text}\u00a0${pair.large} to ${pair.small}`,
              );
        },
      },
      {
        id: 'to-large',
        ask: (context) => {
          const pair = context.rng.pick(PAIRS);
          return toLarge(
            quantity(context.rng.int(12, 98) * (pair.factor / 10), context.locale),
            pair,
            context,
          );
        },
        dayKinds: ['whole', 'decimal'],
        askOn: (day, context) => {
          const count = quantityOn(day, context.locale, 2, 20_000, 1);
          if (count === null) return null;
          const size = toNumber(count.value);
          const pair = context.rng.pick(
            PAIRS.filter((each) => size <= (each === CM_MM ? 1000 : each === M_CM ? 5000 : 20_000)),
          );
          return using(
            toLarge(count, pair, context),
            `changes ${day.text}\u00a0${pair.small} to ${pair.large}`,
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
          return using(
            mixed(amount, extra, rng.chance(0.5), pair, context),
            `joins ${day.text}\u00a0${pair.large} with ${pair.small}`,
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
    templates: [
      {
        id: 'fit',
        ask: (context) => {
          const { rng, locale } = context;
          const pair = rng.pick([M_CM, KG_G, L_ML]);
          const amount = quantity(rational(rng.int(2, 9), rng.pick([1, 2])), locale);
          return howMany(
            amount,
            rng.pick(pair === M_CM ? [15, 20, 25, 30, 40] : [150, 200, 250, 300]),
            pair,
            context,
          );
        },
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const size = wholeOn(day, 12, 400);
          if (size !== null) {
            // The number is the size of each piece.
            const pair = size < 90 ? M_CM : rng.pick([KG_G, L_ML]);
            const amount = quantity(rng.int(size < 90 ? 1 : 1, 5), locale);
            return using(
              howMany(amount, size, pair, context),
              `cuts or fills ${day.text}\u00a0${pair.small} at a time`,
            );
          }
          const amount = quantityOn(day, locale, 0.5, 20, 2);
          if (amount === null) return null;
          const pairs = [M_CM, KG_G, L_ML].filter((pair) => pair.factor % amount.value.d === 0);
          if (pairs.length === 0) return null;
          const pair = rng.pick(pairs);
          const each = rng.pick(pair === M_CM ? [12, 15, 20, 25, 30, 40] : [120, 150, 200, 250, 300]);
          return using(howMany(amount, each, pair, context), `shares out ${day.text}\u00a0${pair.large}`);
        },
      },
    ],
  },
];
