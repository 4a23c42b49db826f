// Discounts and the better buy.
import { rational, subtract, toNumber } from '../../numbers/rational.js';
import { choiceAnswer, moneyAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import type { Rng } from '../../random/rng.js';
import { minorOn, price, priceOperand, smallestCoin, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { atStart, itemFor } from './things.js';

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
        misconception: 'operation.swapped',
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
  const [, things] = itemFor(smallPrice / smallCount, rng);
  const small = `${smallCount} for ${price(smallPrice, locale)}`;
  const big = `${bigCount} for ${price(bigPrice, locale)}`;
  const best = gap < 0 ? big : small;
  const other = gap < 0 ? small : big;
  return {
    text: `${atStart(things)}: which is the better buy, ${small} or ${big}?`,
    answer: choiceAnswer(best),
    expression: null,
    features: { fewChoices: true, extraSteps: 2, size: times - 2, carries: smallPrice % 100 === 0 ? 0 : 1 },
    strategy: [
      `${times} × ${price(smallPrice, locale)} = ${price(smallPrice * times, locale)}`,
      `${bigCount} cost ${price(smallPrice * times, locale)} in small packs, ${price(bigPrice, locale)} in the big pack`,
      `Better: ${best}`,
    ],
    // Prices alone speak for the small pack, size alone for the big one.
    slips: [
      { misconception: gap < 0 ? 'money.price-only' : 'money.bigger-pack', answer: choiceAnswer(other) },
    ],
  };
}

/** Upper price in cents or pence, and things that may well be sold for less than that. */
const THINGS_ON_SALE: readonly (readonly [number, readonly string[]])[] = [
  [2000, ['A game', 'A book', 'A cap', 'A ticket']],
  [12_000, ['A jacket', 'A lamp', 'A bag', 'A game', 'A book set']],
  [100_000, ['A tent', 'A bike', 'A desk', 'A sofa']],
  [Number.POSITIVE_INFINITY, ['A solar roof', 'A used car', 'A kitchen']],
];

/** Something that may well cost the given amount before its discount. */
function onSale(minor: number, rng: Rng): string {
  return rng.pick(THINGS_ON_SALE.find(([limit]) => minor <= limit)?.[1] ?? ['A ticket']);
}

export const OFFER_SKILLS: readonly Skill[] = [
  {
    id: 'money.discount',
    family: 'discount',
    title: 'Find the price after a discount',
    year: 6,
    fluentYear: 6,
    strand: 'money',
    prerequisites: ['money.part-of', 'pct.of.easy'],
    codes: { ac9: ['AC9M6N07'], england: ['NC-Y5-fractions-11'], ccss: ['6.RP.A.3c'] },
    templates: [
      {
        id: 'off',
        ask: (context) => {
          const { rng } = context;
          const percent = rng.pick([10, 20, 25, 50]);
          const minor = rng.int(2, 16) * 500;
          return discount(minor, percent, onSale(minor, rng), context);
        },
        dayKinds: ['money', 'whole'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const minor =
            day.kind === 'money' ? minorOn(day, 100, 200_000) : (wholeOn(day, 2, 20_000) ?? 0) * 100;
          if (!minor) return null;
          const ways = [10, 20, 25, 50].filter((percent) => (minor * percent) % 100 === 0);
          if (ways.length === 0) return null;
          const percent = rng.pick(ways);
          return using(
            discount(minor, percent, onSale(minor, rng), context),
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
