// The cost of goods sold by the kilogram.
import { add, decimalPlaces, isWhole, multiply, rational, toNumber } from '../../numbers/rational.js';
import { moneyAnswer } from '../../questions/answer.js';
import type { Draft, Template, TemplateContext } from '../../questions/draft.js';
import { type Quantity, quantity, quantityOn, sizeOf, using } from '../measuring/quantity.js';

interface Good {
  readonly name: string;
  /** What a kilogram may cost in any of the countries, in dollars or pounds. */
  readonly from: number;
  readonly to: number;
  /** The most that somebody may well buy, in kilograms. */
  readonly upTo: number;
}

/** From memory. Only goods of two dollars or pounds and more: at one, the cost is the weight. */
const GOODS: readonly Good[] = [
  { name: 'potatoes', from: 2, to: 3, upTo: 60 },
  { name: 'carrots', from: 2, to: 3, upTo: 60 },
  { name: 'rice', from: 2, to: 5, upTo: 60 },
  { name: 'apples', from: 3, to: 5, upTo: 60 },
  { name: 'bananas', from: 2, to: 4, upTo: 10 },
  { name: 'pears', from: 3, to: 6, upTo: 10 },
  { name: 'tomatoes', from: 3, to: 6, upTo: 10 },
  { name: 'grapes', from: 4, to: 8, upTo: 10 },
  { name: 'mushrooms', from: 6, to: 10, upTo: 5 },
  { name: 'cherries', from: 8, to: 15, upTo: 5 },
  { name: 'cheese', from: 8, to: 16, upTo: 5 },
  { name: 'nuts', from: 9, to: 20, upTo: 5 },
  { name: 'fish', from: 12, to: 25, upTo: 5 },
];

/** Goods that may well cost that much a kilogram and be bought by that weight. */
const goodsAt = (perKilo: number, kilos: number): readonly Good[] =>
  GOODS.filter(({ from, to, upTo }) => perKilo >= from && perKilo <= to && kilos <= upTo);

function byWeight(weight: Quantity, perKilo: number, { rng, locale }: TemplateContext): Draft {
  const cost = multiply(weight.value, rational(perKilo));
  const { name: what } = rng.pick(goodsAt(perKilo, toNumber(weight.value)));
  const whole = Math.floor(toNumber(weight.value));
  const rest = toNumber(weight.value) - whole;
  const per = `${locale.currency.symbol}${perKilo}`;
  const parted = whole > 0 && rest > 0;
  const wholeCost = rational(whole * perKilo);
  const restValue = rational(weight.value.n - whole * weight.value.d, weight.value.d);
  const restCost = multiply(restValue, rational(perKilo));
  const onePart = rational(perKilo, restValue.d);
  const amount = (value: typeof cost) => moneyAnswer(value, locale).text;
  return {
    text: `What does ${weight.text}\u00a0kg of ${what} cost at ${per} a kilogram?`,
    answer: moneyAnswer(cost, locale),
    expression: `${weight.expression} * ${perKilo}`,
    features: {
      size: sizeOf(perKilo) + (parted ? 0.5 : 0) + sizeOf(whole) * 0.4,
      extraSteps: isWhole(weight.value) && whole > 12 ? 1 : 0,
      unlike: weight.style === 'fraction' && restValue.n > 1,
      carries: isWhole(weight.value) ? 0 : 1,
      story: true,
    },
    strategy: parted
      ? [
          `${whole} × ${per} = ${amount(wholeCost)}`,
          `${quantity(restValue, locale, weight.style).text} × ${per} = ${amount(restCost)}`,
          `${amount(wholeCost)} + ${amount(restCost)} = ${amount(cost)}`,
        ]
      : [`${weight.text} × ${per} = ${amount(cost)}`],
    slips: [
      ...(parted
        ? [{ misconception: 'money.rest-dropped' as const, answer: moneyAnswer(wholeCost, locale) }]
        : []),
      ...(weight.style === 'fraction' && restValue.n > 1 && 100 % onePart.d === 0
        ? [{ misconception: 'part.one-only' as const, answer: moneyAnswer(add(wholeCost, onePart), locale) }]
        : []),
      ...(whole > 1 && rest === 0
        ? [
            {
              misconception: 'money.piece-missed' as const,
              answer: moneyAnswer(rational((whole - 1) * perKilo), locale),
            },
          ]
        : []),
      ...(100 % weight.value.d === 0
        ? [
            {
              misconception: 'money.added-not-multiplied' as const,
              answer: moneyAnswer(
                rational(weight.value.n + perKilo * weight.value.d, weight.value.d),
                locale,
              ),
            },
          ]
        : []),
    ],
  };
}

/** "1/2 of a kilogram", "1 1/2 kilograms", "0.7 kilograms". */
const kilos = ({ style, text, value }: Quantity): string =>
  style === 'fraction' && value.n < value.d ? `${text} of a kilogram` : `${text} kilograms`;

export const KILOS: Template = {
  id: 'kilos',
  ask: (context) => {
    // One kilogram costs what a kilogram costs: no question.
    const tenths = context.rng.int(3, 45);
    const weight = quantity(rational(tenths === 10 ? 11 : tenths, 10), context.locale);
    return byWeight(weight, context.rng.int(2, 9), context);
  },
  dayKinds: ['decimal', 'fraction', 'whole'],
  askOn: (day, context) => {
    const weight = quantityOn(day, context.locale, 0.1, 60, 2);
    if (weight === null || (weight.value.n === 1 && weight.value.d === 1)) return null;
    if (decimalPlaces(weight.value) === null) return null;
    const prices = [2, 3, 4, 5, 6, 8, 12, 20].filter(
      (each) =>
        100 % multiply(weight.value, rational(each)).d === 0 &&
        goodsAt(each, toNumber(weight.value)).length > 0,
    );
    if (prices.length === 0) return null;
    return using(byWeight(weight, context.rng.pick(prices), context), `buys ${kilos(weight)}`);
  },
};
