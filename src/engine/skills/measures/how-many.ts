// How many smaller amounts fit into a larger one.
import { formatWhole } from '../../numbers/format.js';
import { multiply, rational, subtract, toNumber } from '../../numbers/rational.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Draft, Template, TemplateContext } from '../../questions/draft.js';
import { type Quantity, quantity, quantityOn, shown, using, wholeOn } from '../measuring/quantity.js';
import { KG_G, L_ML, M_CM, type UnitPair, largeText } from './metric.js';

/** What an amount in these units is parted into. */
function portionsOf(pair: UnitPair): 'cups' | 'bags' | 'pieces' {
  return pair === L_ML ? 'cups' : pair === KG_G ? 'bags' : 'pieces';
}

/** How many pieces of a small length, or cups, come out of a large amount. */
function howMany(amount: Quantity, each: number, pair: UnitPair, { rng, locale }: TemplateContext): Draft {
  const inSmall = multiply(amount.value, rational(pair.factor));
  const pieces = Math.floor(toNumber(inSmall) / each);
  const left = subtract(inSmall, rational(pieces * each));
  const eachText = `${formatWhole(each, locale)}\u00a0${pair.small}`;
  const amountText = largeText(amount, pair, locale);
  const portions = portionsOf(pair);
  const isDone = pair === M_CM ? 'cut' : 'filled';
  const stuff =
    pair.small === 'mL'
      ? rng.pick(['juice', 'water', 'milk'])
      : pair.small === 'g'
        ? rng.pick(['rice', 'flour', 'sand'])
        : rng.pick(['rope', 'ribbon', 'wire']);
  return {
    text: `How many full ${portions} of ${eachText} can be ${isDone} from ${amountText} of ${stuff}?`,
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
            `${shown(left, locale)}\u00a0${pair.small} is left, too little for another one`,
          ]),
    ],
    slips: [
      ...(left.n === 0
        ? []
        : [{ misconception: 'group.rounds-up' as const, answer: wholeAnswer(pieces + 1, locale) }]),
      ...(toNumber(inSmall) / 10 < each
        ? []
        : [
            {
              misconception: 'meas.factor' as const,
              answer: wholeAnswer(Math.floor(toNumber(inSmall) / 10 / each), locale),
            },
          ]),
      {
        misconception: 'meas.factor',
        answer: wholeAnswer(Math.floor((toNumber(inSmall) * 10) / each), locale),
      },
    ],
  };
}

export const FIT: Template = {
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
      const amount = quantity(rng.int(1, 5), locale);
      return using(
        howMany(amount, size, pair, context),
        `${pair === M_CM ? 'cuts' : 'fills'} ${portionsOf(pair)} of ${day.text}\u00a0${pair.small}`,
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
};
