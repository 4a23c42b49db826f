// Parts of an amount: fractions, discounts, and the better buy.
import { multiply, type Rational, rational, subtract, toNumber } from '../../numbers/rational.js';
import { choiceAnswer, moneyAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { storyName } from '../story.js';
import {
  minorOn,
  operand,
  price,
  priceOperand,
  type Quantity,
  quantity,
  smallestCoin,
  using,
  wholeOn,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

function isMoney(value: Rational): boolean {
  return 100 % value.d === 0;
}

function partOf(part: Quantity, minor: number, { locale }: TemplateContext): Draft {
  const whole = rational(minor, 100);
  const result = multiply(part.value, whole);
  const one = multiply(rational(1, part.value.d), whole);
  const top = part.value.n;
  const text = (value: Rational) => moneyAnswer(value, locale).text;
  return {
    text: `How much is ${part.text} of ${price(minor, locale)}?`,
    answer: moneyAnswer(result, locale),
    expression: `${part.expression} * ${operand(whole)}`,
    features: {
      size: (part.value.d > 5 ? 1 : 0) + (minor % 100 === 0 ? 0 : 1),
      extraSteps: top === 1 ? 0 : 1,
      adjust: part.value.d === 2 ? -0.7 : -0.2,
    },
    strategy: [
      `${price(minor, locale)} ÷ ${part.value.d} = ${text(one)}`,
      ...(top > 1 ? [`${top} × ${text(one)} = ${text(result)}`] : []),
    ],
    slips: [
      ...(top > 1 ? [{ misconception: 'part.one-only' as const, answer: moneyAnswer(one, locale) }] : []),
      ...(part.value.n < part.value.d
        ? [
            {
              misconception: 'part.rest-given' as const,
              answer: moneyAnswer(subtract(whole, result), locale),
            },
          ]
        : []),
      ...(top > 1 && isMoney(rational(whole.n, whole.d * top))
        ? [
            {
              misconception: 'part.divided-by-top' as const,
              answer: moneyAnswer(rational(whole.n, whole.d * top), locale),
            },
          ]
        : []),
      ...(top < part.value.d
        ? [
            {
              misconception: 'part.bottom-as-amount' as const,
              answer: moneyAnswer(rational(part.value.d), locale),
            },
          ]
        : []),
      ...(top === 1
        ? [
            {
              misconception: 'money.multiplied-not-shared' as const,
              answer: moneyAnswer(multiply(whole, rational(part.value.d)), locale),
            },
          ]
        : []),
    ],
    ...(part.value.d <= 10 && top < part.value.d
      ? {
          figure: {
            kind: 'bar-model' as const,
            whole: price(minor, locale),
            parts: Array.from({ length: part.value.d }, () => '?'),
          },
        }
      : {}),
  };
}

function partLeft(part: Quantity, minor: number, who: string, { locale }: TemplateContext): Draft {
  const whole = rational(minor, 100);
  const spent = multiply(part.value, whole);
  const left = subtract(whole, spent);
  const one = multiply(rational(1, part.value.d), whole);
  const text = (value: Rational) => moneyAnswer(value, locale).text;
  return {
    text: `${who} has ${price(minor, locale)} and spends ${part.text} of it. How much is left?`,
    answer: moneyAnswer(left, locale),
    expression: `${operand(whole)} - ${part.expression} * ${operand(whole)}`,
    features: {
      size: (part.value.d > 5 ? 1 : 0) + (minor % 100 === 0 ? 0 : 1),
      extraSteps: part.value.n === 1 ? 1 : 2,
      story: true,
    },
    strategy: [
      `${price(minor, locale)} ÷ ${part.value.d} = ${text(one)}`,
      ...(part.value.n > 1 ? [`${part.value.n} × ${text(one)} = ${text(spent)}`] : []),
      `${price(minor, locale)} − ${text(spent)} = ${text(left)}`,
    ],
    slips: [
      { misconception: 'part.rest-given', answer: moneyAnswer(spent, locale) },
      { misconception: 'part.one-only', answer: moneyAnswer(one, locale) },
      ...(toNumber(whole) > part.value.d
        ? [
            {
              misconception: 'part.bottom-as-amount' as const,
              answer: moneyAnswer(subtract(whole, rational(part.value.d)), locale),
            },
          ]
        : []),
    ],
  };
}

const PERCENT_STEPS: Readonly<Record<number, string>> = { 10: '÷ 10', 20: '÷ 5', 25: '÷ 4', 50: '÷ 2' };

function discount(minor: number, percent: number, thing: string, { locale }: TemplateContext): Draft {
  const off = rational(minor * percent, 10_000);
  const now = subtract(rational(minor, 100), off);
  const isCash = ((minor * (100 - percent)) / 100) % smallestCoin(locale) === 0;
  const offText = moneyAnswer(off, locale).text;
  const asUnits = subtract(rational(minor, 100), rational(percent));
  return {
    text: `${thing} at ${price(minor, locale)} is ${percent}% off${isCash ? '' : ' in an online shop'}. What does it cost now?`,
    answer: moneyAnswer(now, locale),
    expression: `${priceOperand(minor)} * (100 - ${percent}) / 100`,
    features: {
      size: minor % 1000 === 0 ? 0 : minor % 100 === 0 ? 1 : 2,
      extraSteps: percent === 50 ? 0 : 1,
      story: true,
      carries: percent === 10 || percent === 50 ? 0 : 1,
    },
    strategy: [
      `${price(minor, locale)} ${PERCENT_STEPS[percent] ?? '× 1'} = ${offText}`,
      `${price(minor, locale)} − ${offText} = ${moneyAnswer(now, locale).text}`,
    ],
    slips: [
      { misconception: 'money.discount-is-price', answer: moneyAnswer(off, locale) },
      {
        misconception: 'meas.added-not-taken',
        answer: moneyAnswer(subtract(rational(minor, 50), now), locale),
      },
      ...(toNumber(asUnits) > 0
        ? [{ misconception: 'money.percent-as-units' as const, answer: moneyAnswer(asUnits, locale) }]
        : []),
    ],
  };
}

function betterBuy(
  smallCount: number,
  smallPrice: number,
  times: number,
  gap: number,
  { rng, locale }: TemplateContext,
): Draft {
  const bigCount = smallCount * times;
  const bigPrice = smallPrice * times + gap;
  const things = rng.pick(['pencils', 'juice boxes', 'muesli bars', 'batteries', 'tennis balls']);
  const small = `${smallCount} for ${price(smallPrice, locale)}`;
  const big = `${bigCount} for ${price(bigPrice, locale)}`;
  const best = gap < 0 ? big : small;
  const other = gap < 0 ? small : big;
  return {
    text: `Which is the better buy for ${things}: ${small} or ${big}?`,
    answer: choiceAnswer(best),
    expression: null,
    features: { fewChoices: true, extraSteps: 2, size: times - 2, carries: smallPrice % 100 === 0 ? 0 : 1 },
    strategy: [
      `${times} × ${price(smallPrice, locale)} = ${price(smallPrice * times, locale)}`,
      `So ${bigCount} would cost ${price(smallPrice * times, locale)} in the small packs; the big pack costs ${price(bigPrice, locale)}.`,
      `Better: ${best}.`,
    ],
    slips: [{ misconception: 'money.price-only', answer: choiceAnswer(other) }],
  };
}

/** Amounts in minor units of which the fraction is an exact amount. */
function wholesFor(part: Rational): number[] {
  const nice = [400, 500, 600, 800, 1000, 1200, 1500, 2000, 2400, 3000, 4000, 5000, 6000, 10_000];
  return nice.filter((minor) => minor % part.d === 0 && (minor / part.d) % 5 === 0);
}

const THINGS_ON_SALE = ['A game', 'A jacket', 'A lamp', 'A scooter', 'A book set', 'A ticket'];

export const RATE_SKILLS: readonly Skill[] = [
  {
    id: 'money.part-of',
    title: 'Find a fraction of an amount of money',
    year: 5,
    fluentYear: 6,
    strand: 'money',
    prerequisites: ['money.share', 'frac.nonunit-of'],
    codes: { ac9: ['AC9M6N07'], england: ['NC-Y4-fractions-3', 'NC-Y4-fractions-10'], ccss: ['4.MD.A.2'] },
    templates: [
      {
        id: 'part',
        ask: (context) => {
          const { rng, locale } = context;
          const bottom = rng.pick([2, 3, 4, 5, 10]);
          const part = quantity(rational(rng.int(1, bottom - 1), bottom), locale, 'fraction');
          return partOf(part, rng.pick(wholesFor(part.value)), context);
        },
        dayKinds: ['fraction', 'money', 'whole'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          if (day.kind === 'fraction') {
            const wholes = wholesFor(day.value);
            if (wholes.length === 0 || toNumber(day.value) > 10) return null;
            const minor = rng.pick(wholes);
            return using(
              partOf(quantity(day.value, locale, 'fraction'), minor, context),
              `finds ${day.text} of ${price(minor, locale)}`,
            );
          }
          const minor = day.kind === 'money' ? minorOn(day, 20, 50_000) : (wholeOn(day, 2, 500) ?? 0) * 100;
          if (!minor) return null;
          const parts = [
            rational(1, 2),
            rational(1, 4),
            rational(3, 4),
            rational(1, 5),
            rational(2, 5),
            rational(1, 10),
            rational(3, 10),
            rational(1, 3),
            rational(2, 3),
          ].filter((part) => minor % part.d === 0 && (day.kind === 'money' || (minor / part.d) % 5 === 0));
          if (parts.length === 0) return null;
          const part = quantity(rng.pick(parts), locale, 'fraction');
          return using(partOf(part, minor, context), `finds ${part.text} of ${price(minor, locale)}`);
        },
      },
      {
        id: 'left',
        ask: (context) => {
          const { rng, locale } = context;
          const bottom = rng.pick([3, 4, 5, 10]);
          const part = quantity(rational(rng.int(1, bottom - 1), bottom), locale, 'fraction');
          return partLeft(
            part,
            rng.pick(wholesFor(part.value).filter((minor) => minor > 400)),
            storyName(rng),
            context,
          );
        },
        dayKinds: ['fraction'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const wholes = wholesFor(day.value).filter((minor) => minor > 400);
          if (toNumber(day.value) >= 1 || wholes.length === 0) return null;
          const minor = rng.pick(wholes);
          return using(
            partLeft(quantity(day.value, locale, 'fraction'), minor, storyName(rng), context),
            `spends ${day.text} of ${price(minor, locale)}`,
          );
        },
      },
    ],
  },
  {
    id: 'money.discount',
    title: 'Find the price after a discount',
    year: 6,
    fluentYear: 6,
    strand: 'money',
    prerequisites: ['money.part-of', 'pct.of.easy'],
    codes: { ac9: ['AC9M6N07', 'AC9M6N08'], england: ['NC-Y5-fractions-11'], ccss: ['6.RP.A.3c'] },
    templates: [
      {
        id: 'off',
        ask: (context) => {
          const { rng } = context;
          const percent = rng.pick([10, 20, 25, 50]);
          return discount(rng.int(2, 16) * 500, percent, rng.pick(THINGS_ON_SALE), context);
        },
        dayKinds: ['money', 'whole'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const minor = day.kind === 'money' ? minorOn(day, 100, 50_000) : (wholeOn(day, 2, 1000) ?? 0) * 100;
          if (!minor) return null;
          const ways = [10, 20, 25, 50].filter((percent) => (minor * percent) % 100 === 0);
          if (ways.length === 0) return null;
          const percent = rng.pick(ways);
          return using(
            discount(minor, percent, rng.pick(THINGS_ON_SALE), context),
            `takes ${percent}% off ${price(minor, locale)}`,
          );
        },
      },
    ],
  },
  {
    id: 'money.better-buy',
    title: 'Find the better buy',
    year: 6,
    fluentYear: 6,
    strand: 'money',
    prerequisites: ['money.several', 'money.difference'],
    codes: { ac9: ['AC9M6N09'], england: ['NC-Y5-measure-7'], ccss: ['6.RP.A.3b'] },
    templates: [
      {
        id: 'packs',
        ask: (context) => {
          const { rng } = context;
          return betterBuy(
            rng.int(2, 6),
            rng.int(8, 60) * 10,
            rng.int(2, 3),
            rng.pick([-40, -30, -20, 20, 30, 40]),
            context,
          );
        },
        dayKinds: ['money'],
        askOn: (day, context) => {
          const { rng } = context;
          const minor = minorOn(day, 150, 10_000);
          if (minor === null) return null;
          const gap = rng.pick([-40, -30, -20, 20, 30, 40]);
          return using(
            betterBuy(rng.int(2, 6), minor, rng.int(2, 4), gap, context),
            `compares a pack for ${day.text} with a bigger one`,
          );
        },
      },
    ],
  },
];
