// Coins and notes: what they are worth, how to make an amount with few of them, and dollars written as cents.
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { decimalPlaces, multiply, rational, toNumber } from '../../numbers/rational.js';
import { choiceAnswer, moneyAnswer, wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { storyName } from '../story.js';
import {
  minorOn,
  price,
  priceOperand,
  quantity,
  sizeOf,
  smallestCoin,
  using,
  wholeOn,
} from '../measuring/quantity.js';
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
    text: `How much money is this altogether: ${joined(sorted.map((value) => price(value, locale)))}?`,
    answer: moneyAnswer(rational(total, 100), locale),
    expression: sorted.map(priceOperand).join(' + '),
    features: {
      size: Math.max(0, sorted.length - 2) * 0.6,
      drawn: true,
      unlike: new Set(sorted).size > 2,
      ...(sorted.every((value) => value === sorted[0]) ? { adjust: -0.4 } : {}),
    },
    strategy: ['Start with the largest.', ...runningTotals(sorted, 0, locale)],
    slips: [
      { misconception: 'money.coins-counted', answer: moneyAnswer(rational(sorted.length, 100), locale) },
      {
        misconception: 'money.piece-missed',
        answer: moneyAnswer(rational(total - (sorted[sorted.length - 1] ?? 0), 100), locale),
      },
    ],
    figure: figureOf(sorted, locale),
  };
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
    text: `${who} has ${price(start, locale)} and gets ${joined(sorted.map((value) => price(value, locale)))} more. How much is that altogether?`,
    answer: moneyAnswer(rational(total, 100), locale),
    expression: [start, ...sorted].map(priceOperand).join(' + '),
    features: { size: (sorted.length - 1) * 0.8, carries: crosses ? 1 : 0, story: true, drawn: true },
    strategy: runningTotals(sorted, start, locale),
    slips: [
      {
        misconception: 'money.coins-counted',
        answer: moneyAnswer(rational(start + sorted.length, 100), locale),
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
    text: `How much are ${formatWhole(count, locale)} coins of ${name} worth together?`,
    answer: moneyAnswer(rational(total, 100), locale),
    expression: `${count} * ${priceOperand(coin)}`,
    features: {
      size: sizeOf(count),
      rule: coin === 10 || coin === 100,
      adjust: (total >= 100 && coin < 100 ? 0.3 : -0.4) + (coin === 25 || coin === 5 ? 0.3 : 0),
    },
    strategy: [
      `${formatWhole(count, locale)} × ${name} = ${price(total, locale)}`,
      ...(total >= 100 && coin < 100
        ? [`${total}${locale.currency.minorSymbol} = ${price(total, locale)}`]
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
  ];
  return {
    text: `What is the smallest number of ${what} that make exactly ${price(minor, locale)}?`,
    answer: wholeAnswer(best.length, locale),
    expression: counts.join(' + '),
    features: { size: Math.max(0, best.length - 2) * 0.7, adjust: best.length === 1 ? -1 : 0 },
    strategy: [
      'Take the largest that fits, again and again.',
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

/** Amount of small units as written: "458c". */
function minorText(minor: number, locale: Locale): string {
  return `${formatWhole(minor, locale)}${locale.currency.minorSymbol}`;
}

interface Written {
  readonly minor: number;
  readonly text: string;
  /** The number a child sees, without its unit. */
  readonly seen: number;
}

function compareAmounts(first: Written, second: Written, adjust: number, { rng }: TemplateContext): Draft {
  const more = first.minor > second.minor ? first : second;
  const less = more === first ? second : first;
  const shownInOrder = rng.chance(0.5) ? [first, second] : [second, first];
  return {
    text: `Which is more: ${shownInOrder[0]?.text} or ${shownInOrder[1]?.text}?`,
    answer: choiceAnswer(more.text),
    expression: null,
    features: { fewChoices: true, unlike: less.seen > more.seen, adjust },
    strategy: [`${more.text} > ${less.text}`],
    slips: [{ misconception: 'money.unit-ignored', answer: choiceAnswer(less.text) }],
  };
}

function writtenMain(minor: number, locale: Locale): Written {
  return { minor, text: price(minor, locale), seen: minor < 100 ? minor : minor / 100 };
}

function writtenMinor(minor: number, locale: Locale): Written {
  return { minor, text: minorText(minor, locale), seen: minor };
}

/** Something to compare an amount with: a plain smaller amount, swapped digits, or small units. */
function compareOn(minor: number, context: TemplateContext): Draft {
  const { rng, locale } = context;
  const base = writtenMain(minor, locale);
  const dollars = Math.floor(minor / 100);
  const cents = minor % 100;
  const swapped = dollars * 100 + (cents % 10) * 10 + Math.floor(cents / 10);
  const way = rng.int(0, 2);
  if (way === 0 && dollars >= 2) {
    return compareAmounts(base, writtenMain(rng.int(1, dollars - 1) * 100, locale), -1.4, context);
  }
  if (way === 1 && swapped !== minor && swapped % 100 >= 10 && dollars >= 1) {
    return compareAmounts(base, writtenMain(swapped, locale), -0.6, context);
  }
  const step = rng.pick([-10, -5, 5, 10]) * (dollars >= 3 ? rng.int(1, 3) : 1);
  const other = minor + step > 0 ? minor + step : minor + 10;
  return compareAmounts(base, writtenMinor(other, locale), 0.2, context);
}

function toMinor(value: ReturnType<typeof quantity>, spoken: string, { locale }: TemplateContext): Draft {
  const { currency } = locale;
  const total = multiply(value.value, rational(100)).n;
  const isWhole = value.value.d === 1;
  return {
    text: `How many ${currency.minorName[1]} are in ${spoken}?`,
    answer: wholeAnswer(total, locale),
    accepts: [minorText(total, locale)],
    expression: `${value.expression} * 100`,
    features: {
      size: isWhole ? sizeOf(value.value.n) * 0.4 : 0.6,
      rule: isWhole,
      unlike: value.style === 'fraction',
      extraSteps: value.style === 'fraction' && value.value.n % value.value.d !== 1 ? 1 : 0,
    },
    strategy: [
      `${currency.symbol}1 = 100${currency.minorSymbol}`,
      `${value.text} × 100 = ${formatWhole(total, locale)}`,
    ],
    slips: [
      ...(total % 10 === 0
        ? [{ misconception: 'money.factor-ten' as const, answer: wholeAnswer(total / 10, locale) }]
        : []),
      { misconception: 'money.factor-ten', answer: wholeAnswer(total * 10, locale) },
      ...(value.style === 'fraction'
        ? [
            {
              misconception: 'part.one-only' as const,
              answer: wholeAnswer(
                Math.floor(value.value.n / value.value.d) * 100 + 100 / value.value.d,
                locale,
              ),
            },
          ]
        : []),
    ],
  };
}

function toMain(minor: number, { locale }: TemplateContext): Draft {
  const { currency } = locale;
  const remainder = minor % 100;
  return {
    text: `How much is ${minorText(minor, locale)} when written in ${currency.mainName[1]} and ${currency.minorName[1]}?`,
    answer: moneyAnswer(rational(minor, 100), locale),
    expression: `${minor} / 100`,
    features: { size: sizeOf(minor) * 0.3, unlike: remainder > 0 && remainder < 10, rule: remainder === 0 },
    strategy: [
      `100${currency.minorSymbol} = ${currency.symbol}1`,
      `${formatWhole(minor, locale)} ÷ 100 = ${quantity(rational(minor, 100), locale).text}`,
    ],
    slips: [
      { misconception: 'money.factor-ten', answer: moneyAnswer(rational(minor, 10), locale) },
      ...(remainder > 0 && remainder < 10
        ? [
            {
              misconception: 'money.zero-dropped' as const,
              answer: moneyAnswer(rational(minor - remainder + remainder * 10, 100), locale),
            },
          ]
        : []),
    ],
  };
}

function calculator(tenthsOfMain: number, { locale }: TemplateContext): Draft {
  const shown = quantity(rational(tenthsOfMain, 10), locale);
  const { currency } = locale;
  return {
    text: `A calculator shows ${shown.text} for an amount in ${currency.mainName[1]}. How is this amount of money written?`,
    answer: moneyAnswer(shown.value, locale),
    expression: shown.expression,
    features: { size: sizeOf(tenthsOfMain / 10) * 0.3 },
    strategy: [
      `The first digit after the point counts tens of ${currency.minorName[1]}.`,
      `${currency.symbol}${shown.text} = ${price(tenthsOfMain * 10, locale)}`,
    ],
    slips: [
      {
        misconception: 'money.tenths-as-cents',
        answer: moneyAnswer(rational(Math.floor(tenthsOfMain / 10) * 100 + (tenthsOfMain % 10), 100), locale),
      },
      { misconception: 'money.factor-ten', answer: moneyAnswer(rational(tenthsOfMain), locale) },
    ],
  };
}

export const COIN_SKILLS: readonly Skill[] = [
  {
    id: 'money.coins.count',
    title: 'Count coins and notes',
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
          const start = day.kind === 'whole' ? (wholeOn(day, 1, 100) ?? 0) * 100 : minorOn(day, 5, 10_000);
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
          const count = wholeOn(day, 3, 400);
          if (count === null) return null;
          const coins = context.locale.currency.coins.filter(
            (value) => value >= 5 && (count <= 60 || value !== 25),
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
    title: 'Make an amount with as few coins and notes as possible',
    year: 2,
    fluentYear: 3,
    strand: 'money',
    prerequisites: ['money.coins.count'],
    codes: { ac9: ['AC9M3M06'], england: ['NC-Y2-measure-4'], ccss: ['2.MD.C.8'] },
    templates: [
      {
        id: 'fewest',
        ask: (context) => {
          const minor = context.rng.int(3, 19) * context.rng.pick([5, 10, 20]);
          return fewest(fewestPieces(minor, context.locale).length > 1 ? minor : minor + 15, context);
        },
        dayKinds: ['whole', 'money'],
        askOn: (day, context) => {
          const minor = day.kind === 'whole' ? (wholeOn(day, 1, 500) ?? 0) * 100 : minorOn(day, 5, 50_000);
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
  {
    id: 'money.compare',
    title: 'Say which amount of money is more',
    year: 2,
    fluentYear: 3,
    strand: 'money',
    prerequisites: ['money.coins.count', 'place.compare.1000'],
    codes: { ac9: ['AC9M3M06'], england: ['NC-Y2-measure-2', 'NC-Y2-measure-3'], ccss: ['2.MD.C.8'] },
    templates: [
      {
        id: 'units',
        ask: (context) => {
          const { rng, locale } = context;
          const dollars = rng.int(1, 9);
          return rng.chance(0.5)
            ? compareAmounts(
                writtenMain(dollars * 100, locale),
                writtenMinor(rng.int(1, 9) * 10 + dollars, locale),
                -0.4,
                context,
              )
            : compareOn(dollars * 100 + rng.int(1, 19) * 5, context);
        },
        dayKinds: ['whole', 'money'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const minor = minorOn(day, 5, 10_000);
          if (minor !== null)
            return using(compareOn(minor, context), `compares ${day.text} with another amount`);
          const whole = wholeOn(day, 1, 1000);
          if (whole === null) return null;
          const way = rng.int(0, 2);
          if (way === 0) {
            const other = whole + rng.pick([-1, 1]) * rng.int(1, Math.max(1, Math.floor(whole / 2)));
            const safe = other > 0 && other !== whole ? other : whole + 1;
            return using(
              compareAmounts(
                writtenMain(whole * 100, locale),
                writtenMain(safe * 100, locale),
                -1.2,
                context,
              ),
              `compares ${price(whole * 100, locale)} with another amount`,
            );
          }
          const others = way === 1 ? [whole * 10, whole + 5] : [whole * 100 + 5, whole * 100 - 5];
          return using(
            compareAmounts(
              writtenMain(whole * 100, locale),
              writtenMinor(rng.pick(others), locale),
              way === 1 ? -0.2 : 0.3,
              context,
            ),
            `compares ${price(whole * 100, locale)} with another amount`,
          );
        },
      },
    ],
  },
  {
    id: 'money.convert',
    title: 'Change between dollars and cents',
    year: 3,
    fluentYear: 4,
    strand: 'money',
    prerequisites: ['money.compare', 'money.coins.like'],
    codes: {
      ac9: ['AC9M3M06'],
      england: ['NC-Y3-measure-3', 'NC-Y4-measure-1'],
      ccss: ['4.MD.A.1', '2.MD.C.8'],
    },
    templates: [
      {
        id: 'to-small',
        ask: (context) => {
          const minor = context.rng.int(2, 19) * 50 + context.rng.pick([0, 5, 20, 35, 45]);
          return toMinor(
            quantity(rational(minor, 100), context.locale),
            price(minor, context.locale),
            context,
          );
        },
        dayKinds: ['whole', 'money', 'fraction', 'decimal'],
        askOn: (day, context) => {
          const { locale } = context;
          if (100 % day.value.d !== 0 || toNumber(day.value) > 1000) return null;
          if (day.kind === 'decimal' && (decimalPlaces(day.value) ?? 9) > 2) return null;
          const spoken =
            day.kind === 'fraction'
              ? toNumber(day.value) < 1
                ? `${day.text} of a ${locale.currency.mainName[0]}`
                : `${day.text} ${locale.currency.mainName[1]}`
              : day.kind === 'decimal'
                ? `${day.text} ${locale.currency.mainName[1]}`
                : price((day.value.n * 100) / day.value.d, locale);
          if (day.kind === 'money' && toNumber(day.value) < 1) return null;
          const item = quantity(day.value, locale, day.kind === 'fraction' ? 'fraction' : 'decimal');
          return using(
            toMinor(item, spoken, context),
            `changes ${spoken} to ${locale.currency.minorName[1]}`,
          );
        },
      },
      {
        id: 'to-large',
        ask: (context) =>
          toMain(context.rng.int(2, 19) * 50 + context.rng.pick([5, 20, 35, 45, 8, 3]), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const minor = wholeOn(day, 101, 20_000);
          return minor === null
            ? null
            : using(
                toMain(minor, context),
                `changes ${minorText(minor, context.locale)} to ${context.locale.currency.mainName[1]}`,
              );
        },
      },
    ],
  },
  {
    id: 'money.calculator',
    title: 'Read an amount of money from a calculator',
    year: 4,
    fluentYear: 5,
    strand: 'money',
    prerequisites: ['money.convert', 'dec.parts'],
    codes: { ac9: ['AC9M4N08'], england: ['NC-Y4-fractions-10'], ccss: ['4.MD.A.2'] },
    templates: [
      {
        id: 'display',
        ask: (context) => calculator(context.rng.int(1, 25) * 10 + context.rng.int(1, 9), context),
        dayKinds: ['decimal'],
        askOn: (day, context) => {
          const count = multiply(day.value, rational(10));
          if (count.d !== 1 || count.n < 10 || count.n > 10_000) return null;
          return using(calculator(count.n, context), `reads ${day.text} as an amount of money`);
        },
      },
    ],
  },
];
