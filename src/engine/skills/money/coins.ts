// Coins and notes: what they are worth together.
import type { DayNumber } from '../../numbers/day-number.js';
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { add, type Rational, rational } from '../../numbers/rational.js';
import { moneyAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { storyName } from '../story.js';
import { cashOn, price, priceOperand, sizeOf, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { FEWEST } from './fewest.js';
import { drawCoins, drawSmall, drawWhole, leastCounted, totalOf } from './pieces.js';

function joined(texts: readonly string[]): string {
  return texts.length < 2
    ? texts.join('')
    : `${texts.slice(0, -1).join(', ')} and ${texts[texts.length - 1]}`;
}

function figureOf(minor: readonly number[], locale: Locale) {
  const { code, coins } = locale.currency;
  return {
    kind: 'money' as const,
    currency: code,
    coins: minor.filter((value) => coins.includes(value)),
    notes: minor.filter((value) => !coins.includes(value)).map((value) => value / 100),
  };
}

function runningTotals(values: readonly number[], start: number, locale: Locale): string[] {
  const steps: string[] = [];
  let total = start;
  for (const value of values) {
    if (total > 0)
      steps.push(`${price(total, locale)} + ${price(value, locale)} = ${price(total + value, locale)}`);
    total += value;
  }
  return steps;
}

function countPieces(values: readonly number[], { locale }: TemplateContext): Draft {
  const sorted = [...values].sort((a, b) => b - a);
  const total = totalOf(sorted);
  const isAlike = sorted.every((value) => value === sorted[0]);
  return {
    text: `How much is ${joined(sorted.map((value) => price(value, locale)))} altogether?`,
    answer: moneyAnswer(rational(total, 100), locale),
    expression: sorted.map(priceOperand).join(' + '),
    features: {
      size: Math.max(0, sorted.length - 2) * 0.6,
      drawn: true,
      unlike: new Set(sorted).size > 2,
      ...(isAlike ? { adjust: -0.4 } : {}),
    },
    strategy: [...(isAlike ? [] : ['Start with the one worth most']), ...runningTotals(sorted, 0, locale)],
    slips: [
      { misconception: 'money.coins-counted', answer: moneyAnswer(countedOneByOne(sorted), locale) },
      {
        misconception: 'money.piece-missed',
        answer: moneyAnswer(rational(total - (sorted[sorted.length - 1] ?? 0), 100), locale),
      },
    ],
    figure: figureOf(sorted, locale),
  };
}

/** Pieces counted one by one: as dollars or pounds where all are, as cents or pence where small ones are among them. */
function countedOneByOne(values: readonly number[]): Rational {
  return rational(values.length, values.every((value) => value >= 100) ? 1 : 100);
}

function addPieces(
  start: number,
  values: readonly number[],
  who: string,
  { locale }: TemplateContext,
): Draft {
  const sorted = [...values].sort((a, b) => b - a);
  const total = start + totalOf(sorted);
  const last = sorted[sorted.length - 1] ?? 0;
  const crosses = Math.floor(total / 100) > Math.floor(start / 100) + Math.floor(totalOf(sorted) / 100);
  return {
    text: `${who} has ${price(start, locale)} and gets ${joined(sorted.map((value) => price(value, locale)))}. How much does ${who} have now?`,
    answer: moneyAnswer(rational(total, 100), locale),
    expression: [start, ...sorted].map(priceOperand).join(' + '),
    features: { size: (sorted.length - 1) * 0.8, carries: crosses ? 1 : 0, story: true, drawn: true },
    strategy: runningTotals(sorted, start, locale),
    slips: [
      {
        misconception: 'money.coins-counted',
        answer: moneyAnswer(add(rational(start, 100), countedOneByOne(sorted)), locale),
      },
      { misconception: 'money.piece-missed', answer: moneyAnswer(rational(total - last, 100), locale) },
      ...(crosses
        ? [
            {
              misconception: 'money.whole-not-carried' as const,
              answer: moneyAnswer(rational(total - 100, 100), locale),
            },
          ]
        : []),
    ],
    figure: figureOf(sorted, locale),
  };
}

function likeCoins(count: number, coin: number, { locale }: TemplateContext): Draft {
  const total = count * coin;
  const name = price(coin, locale);
  return {
    text: `How much are ${formatWhole(count, locale)} coins of ${name} worth?`,
    answer: moneyAnswer(rational(total, 100), locale),
    expression: `${count} * ${priceOperand(coin)}`,
    features: {
      size: sizeOf(count),
      rule: coin === 10 || coin === 100,
      adjust: (total >= 100 && coin < 100 ? 0.3 : -0.4) + (coin === 25 || coin === 5 ? 0.3 : 0),
    },
    strategy: [
      ...(total >= 100 && coin < 100
        ? [`${formatWhole(count, locale)} × ${coin} = ${formatWhole(total, locale)}`]
        : [`${formatWhole(count, locale)} × ${name} = ${price(total, locale)}`]),
      ...(total >= 100 && coin < 100
        ? [`${formatWhole(total, locale)}${locale.currency.minorSymbol} = ${price(total, locale)}`]
        : []),
    ],
    slips: [
      {
        misconception: 'money.coins-counted',
        answer: moneyAnswer(rational(count, coin >= 100 ? 1 : 100), locale),
      },
      ...(total % 10 === 0 && coin < 100
        ? [{ misconception: 'money.factor-ten' as const, answer: moneyAnswer(rational(total, 10), locale) }]
        : []),
      ...(count > 2
        ? [
            {
              misconception: 'money.piece-missed' as const,
              answer: moneyAnswer(rational(total - coin, 100), locale),
            },
          ]
        : []),
    ],
    ...(count <= 10
      ? {
          figure: figureOf(
            Array.from({ length: count }, () => coin),
            locale,
          ),
        }
      : {}),
  };
}

/** Counts of a coin that come to at most one dollar or pound or to whole ones: amounts with a point come later. */
function countsOf(coin: number): number[] {
  return Array.from({ length: 18 }, (_, i) => i + 3).filter(
    (count) => count * coin <= 100 || (count * coin) % 100 === 0,
  );
}

/** Coins or notes that a start on the day's amount goes up by, or none where the country's money cannot make it. */
function foundOn(day: DayNumber, context: TemplateContext): readonly [start: number, found: number[]] | null {
  const { rng, locale } = context;
  const count = rng.int(1, 3);
  const whole = wholeOn(day, 1, 100);
  if (whole !== null)
    return [whole * 100, Array.from({ length: count }, () => rng.pick([100, 500, 1000, 2000]))];
  const start = cashOn(day, locale, 5, 1_000_000);
  if (start === null) return null;
  const found = start < 100 ? drawSmall(count, start, context) : drawCoins(count, context);
  return found.length === 0 ? null : [start, found];
}

export const COIN_SKILLS: readonly Skill[] = [
  {
    id: 'money.coins.count',
    title: 'Count money',
    year: 1,
    fluentYear: 2,
    strand: 'money',
    prerequisites: ['alg.skip', 'place.tens-ones'],
    codes: {
      ac9: ['AC9M2N06', 'AC9M3M06'],
      england: ['NC-Y1-measure-3', 'NC-Y2-measure-3'],
      ccss: ['2.MD.C.8'],
    },
    templates: [
      {
        id: 'mixed',
        ask: (context) => {
          const count = context.rng.int(2, 5);
          const values = context.rng.chance(0.5) ? drawSmall(count, 0, context) : drawWhole(count, context);
          return countPieces(values, context);
        },
      },
      {
        id: 'found',
        ask: (context) => {
          const { rng, locale } = context;
          const who = storyName(rng);
          const count = rng.int(1, 3);
          if (rng.chance(0.5))
            return addPieces(rng.int(1, 18) * 100, drawWhole(count, context), who, context);
          const least = leastCounted(locale);
          const start = rng.int(1, Math.floor(60 / least)) * least;
          return addPieces(start, drawSmall(count, start, context), who, context);
        },
        dayKinds: ['whole', 'money'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const numbers = foundOn(day, context);
          if (numbers === null) return null;
          const [start, found] = numbers;
          return using(
            addPieces(start, found, storyName(rng), context),
            `adds coins or ${locale.currency.noteName[1]} to ${price(start, locale)}`,
          );
        },
      },
    ],
  },
  {
    id: 'money.coins.like',
    title: 'Find what several equal coins are worth',
    year: 2,
    fluentYear: 3,
    strand: 'money',
    prerequisites: ['money.coins.count', 'alg.skip'],
    codes: { ac9: ['AC9M2N06', 'AC9M3M06'], england: ['NC-Y2-measure-3'], ccss: ['2.MD.C.8'] },
    templates: [
      {
        id: 'like',
        ask: (context) => {
          const coin = context.rng.pick(
            context.locale.currency.coins.filter((value) => value >= 5 && value <= 50),
          );
          return likeCoins(context.rng.pick(countsOf(coin)), coin, context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const count = wholeOn(day, 3, 100);
          if (count === null) return null;
          // Many coins of one dollar are no work, and many of a quarter too much.
          const coins = context.locale.currency.coins.filter(
            (value) => value >= 5 && value !== 100 && (count <= 60 || value !== 25),
          );
          const coin = context.rng.pick(coins);
          return using(
            likeCoins(count, coin, context),
            `counts ${day.text} coins of ${price(coin, context.locale)}`,
          );
        },
      },
    ],
  },
  {
    id: 'money.coins.fewest',
    title: 'Make an amount of money from the fewest pieces',
    year: 2,
    fluentYear: 3,
    strand: 'money',
    prerequisites: ['money.coins.count'],
    codes: { ac9: ['AC9M3M06'], england: ['NC-Y2-measure-4'], ccss: ['2.MD.C.8'] },
    templates: [FEWEST],
  },
];
