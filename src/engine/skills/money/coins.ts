// Coins and notes: what they are worth together, and how to make an amount with few of them.
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { add, type Rational, rational } from '../../numbers/rational.js';
import { moneyAnswer, wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { storyName } from '../story.js';
import { minorOn, price, priceOperand, sizeOf, smallestCoin, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

/** "$2", "20c": coins and notes of the locale, in minor units, smallest first. */
function pieces(locale: Locale): number[] {
  const { coins, notes } = locale.currency;
  return [...new Set([...coins, ...notes.map((note) => note * 100)])].sort((a, b) => a - b);
}

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

function totalOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
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
  return {
    text: `How much is ${joined(sorted.map((value) => price(value, locale)))} altogether?`,
    answer: moneyAnswer(rational(total, 100), locale),
    expression: sorted.map(priceOperand).join(' + '),
    features: {
      size: Math.max(0, sorted.length - 2) * 0.6,
      drawn: true,
      unlike: new Set(sorted).size > 2,
      ...(sorted.every((value) => value === sorted[0]) ? { adjust: -0.4 } : {}),
    },
    strategy: ['Start with the largest', ...runningTotals(sorted, 0, locale)],
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
    text: `${who} has ${price(start, locale)} and gets ${joined(sorted.map((value) => price(value, locale)))}. How much now?`,
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

function drawCoins(count: number, { rng, locale }: TemplateContext): number[] {
  const usable = locale.currency.coins.filter((coin) => coin >= 5);
  return Array.from({ length: count }, () => rng.pick(usable));
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

/** The fewest coins and notes for an amount: largest first, which is best for 1-2-5 and for US pieces. */
export function fewestPieces(minor: number, locale: Locale, without = 0): number[] {
  const out: number[] = [];
  let rest = minor;
  for (const piece of pieces(locale).reverse()) {
    if (piece === without) continue;
    for (; rest >= piece; rest -= piece) out.push(piece);
  }
  return out;
}

function fewest(minor: number, { locale }: TemplateContext): Draft {
  const best = fewestPieces(minor, locale);
  const largest = best[0] ?? 0;
  const second = best.find((piece) => piece < largest);
  const noteWord = locale.id === 'en-US' ? 'bills' : 'notes';
  const what = minor < 500 && !(locale.id === 'en-US' && minor >= 100) ? 'coins' : `${noteWord} and coins`;
  const counts = [...new Set(best)].map((piece) => best.filter((other) => other === piece).length);
  const proposals = [
    fewestPieces(minor, locale, largest),
    second === undefined ? [] : fewestPieces(minor, locale, second),
  ].filter((paid) => paid.reduce((sum, piece) => sum + piece, 0) === minor);
  return {
    text: `What is the smallest number of ${what} that make ${price(minor, locale)}?`,
    answer: wholeAnswer(best.length, locale),
    expression: counts.join(' + '),
    features: { size: Math.max(0, best.length - 2) * 0.7, adjust: best.length === 1 ? -1 : 0 },
    strategy: [
      'Take the largest that fits, again and again',
      `${best.map((piece) => price(piece, locale)).join(' + ')} = ${price(minor, locale)}`,
    ],
    slips: [
      ...proposals
        .filter((list) => list.length > best.length && totalOf(list) === minor)
        .map((list) => ({
          misconception: 'money.small-pieces' as const,
          answer: wholeAnswer(list.length, locale),
        })),
      ...(best.length > 1
        ? [{ misconception: 'money.piece-missed' as const, answer: wholeAnswer(best.length - 1, locale) }]
        : []),
    ],
  };
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
        ask: (context) => countPieces(drawCoins(context.rng.int(2, 5), context), context),
      },
      {
        id: 'found',
        ask: (context) =>
          addPieces(
            context.rng.int(2, 18) * 50,
            drawCoins(context.rng.int(1, 3), context),
            storyName(context.rng),
            context,
          ),
        dayKinds: ['whole', 'money'],
        askOn: (day, context) => {
          const start = day.kind === 'whole' ? (wholeOn(day, 1, 100) ?? 0) * 100 : minorOn(day, 5, 1_000_000);
          if (!start) return null;
          const coins =
            day.kind === 'whole'
              ? Array.from({ length: context.rng.int(1, 3) }, () => context.rng.pick([100, 500, 1000, 2000]))
              : drawCoins(context.rng.int(1, 3), context);
          const usable =
            day.kind === 'whole'
              ? coins.map((coin) => (pieces(context.locale).includes(coin) ? coin : 500))
              : coins;
          return using(
            addPieces(start, usable, storyName(context.rng), context),
            `adds coins or notes to ${price(start, context.locale)}`,
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
          return likeCoins(context.rng.int(3, 12), coin, context);
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
    templates: [
      {
        id: 'fewest',
        ask: (context) => {
          const least = smallestCoin(context.locale);
          const steps = [5, 10, 20].filter((step) => step % least === 0);
          const minor = context.rng.int(3, 19) * context.rng.pick(steps);
          const more = 3 * Math.max(5, least);
          return fewest(fewestPieces(minor, context.locale).length > 1 ? minor : minor + more, context);
        },
        dayKinds: ['whole', 'money'],
        askOn: (day, context) => {
          const minor = day.kind === 'whole' ? (wholeOn(day, 1, 500) ?? 0) * 100 : minorOn(day, 5, 1_000_000);
          if (!minor || minor % smallestCoin(context.locale) !== 0) return null;
          const count = fewestPieces(minor, context.locale).length;
          if (count < 2 || count > 12) return null;
          return using(
            fewest(minor, context),
            `makes ${price(minor, context.locale)} with few coins and notes`,
          );
        },
      },
    ],
  },
];
