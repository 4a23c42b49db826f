// A larger and a smaller unit of time: changing one into the other.
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { multiply, rational, toNumber } from '../../numbers/rational.js';
import { unitAnswer, wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { pointReadAsUnits } from '../../questions/slips/measuring.js';
import { type Quantity, quantity, quantityOn, sizeOf } from '../measuring/quantity.js';

/** A larger and a smaller unit of time. */
export interface UnitPair {
  readonly large: readonly [one: string, many: string];
  readonly small: string;
  readonly smallUnit: string;
  readonly factor: number;
  /** Another number of the calendar that is easily taken for the factor. */
  readonly confused: number;
}

/** Hours and minutes. */
export const HOURS: UnitPair = {
  large: ['hour', 'hours'],
  small: 'minutes',
  smallUnit: 'min',
  factor: 60,
  confused: 24,
};
/** Minutes and seconds. */
export const MINUTES: UnitPair = {
  large: ['minute', 'minutes'],
  small: 'seconds',
  smallUnit: 's',
  factor: 60,
  confused: 24,
};
/** Days and hours. */
export const DAYS: UnitPair = {
  large: ['day', 'days'],
  small: 'hours',
  smallUnit: 'h',
  factor: 24,
  confused: 60,
};
/** The slip of a child who takes a hundred of the small units for one large one. */
function ofHundred(pair: UnitPair): 'time.hundred-seconds' | 'time.hundred-minutes' {
  return pair === MINUTES ? 'time.hundred-seconds' : 'time.hundred-minutes';
}

/** Weeks and days. */
export const WEEKS: UnitPair = {
  large: ['week', 'weeks'],
  small: 'days',
  smallUnit: 'days',
  factor: 7,
  confused: 5,
};
/** Years and months. */
export const YEARS: UnitPair = {
  large: ['year', 'years'],
  small: 'months',
  smallUnit: 'months',
  factor: 12,
  confused: 52,
};

function article(word: string): string {
  return word === 'hour' ? 'an' : 'a';
}

/** "3/4 of an hour", "3.6 hours", "1 hour". */
export function largeText(amount: Quantity, pair: UnitPair): string {
  if (amount.style === 'fraction' && toNumber(amount.value) < 1)
    return `${amount.text} of ${article(pair.large[0])} ${pair.large[0]}`;
  return `${amount.text}\u00a0${amount.text === '1' ? pair.large[0] : pair.large[1]}`;
}

/** "days", but "day" for 1; abbreviations stay as they are. */
function unitFor(value: number, pair: UnitPair): string {
  return value === 1 ? pair.smallUnit.replace(/(?<=day|month)s$/, '') : pair.smallUnit;
}

/** The product of a whole amount and the factor: in one step, or by tens and ones where it is beyond the tables. */
function wholeSteps(n: number, d: number, factor: number, text: string, locale: Locale): string[] {
  const show = (value: number) => formatWhole(value, locale);
  const ones = n % 10;
  if (d > 1 || n <= 12 || ones === 0) return [`${text} × ${factor} = ${show((n * factor) / d)}`];
  return [
    `${show(n - ones)} × ${factor} = ${show((n - ones) * factor)}`,
    `${ones} × ${factor} = ${show(ones * factor)}`,
    `${show((n - ones) * factor)} + ${show(ones * factor)} = ${show(n * factor)}`,
  ];
}

/** "How many minutes are in 3/4 of an hour?" The small units must come out whole. */
export function toSmall(amount: Quantity, pair: UnitPair, { locale }: TemplateContext): Draft {
  const total = multiply(amount.value, rational(pair.factor)).n;
  const { n, d } = amount.value;
  const whole = Math.floor(n / d);
  const isFraction = amount.style === 'fraction';
  const units = pointReadAsUnits(amount.value, pair.factor);
  const answer = (value: number) => unitAnswer(value, unitFor(value, pair), locale);
  const part = total - whole * pair.factor;
  const strategy =
    d === 1 || whole === 0
      ? isFraction && d > 1
        ? [
            `${pair.factor} ÷ ${d} = ${pair.factor / d}`,
            ...(n > 1 ? [`${n} × ${pair.factor / d} = ${total}`] : []),
          ]
        : wholeSteps(n, d, pair.factor, amount.text, locale)
      : [
          `${whole} × ${pair.factor} = ${formatWhole(whole * pair.factor, locale)}`,
          `${quantity(rational(n - whole * d, d), locale, amount.style).text} × ${pair.factor} = ${part}`,
          `${formatWhole(whole * pair.factor, locale)} + ${part} = ${formatWhole(total, locale)}`,
        ];
  return {
    text: `How many ${pair.small} are in ${largeText(amount, pair)}?`,
    answer: answer(total),
    expression: `${amount.expression} * ${pair.factor}`,
    features: {
      size: d === 1 ? sizeOf(n) * 0.7 : whole > 0 ? 1 : 0.5,
      extraSteps:
        (d === 1 ? (n > 12 && n % 10 > 0 ? 1 : 0) : d === 2 ? 0 : isFraction && n % d === 1 ? 0.5 : 1) +
        (whole > 0 && d > 1 ? 1 : 0),
      carries: d === 1 && n > 12 && n % 10 > 1 ? 1 : 0,
      rule: d === 1 && (n === 1 || n === 10),
      unlike: !isFraction && d > 1,
      adjust: d === 2 && whole === 0 ? -0.8 : -0.2,
    },
    strategy: [`1\u00a0${pair.large[0]} = ${pair.factor}\u00a0${pair.small}`, ...strategy],
    slips: [
      ...(units !== null && d > 1 && !isFraction
        ? [{ misconception: 'time.point-as-units' as const, answer: answer(toNumber(units)) }]
        : []),
      ...(isFraction && n === 1
        ? [{ misconception: 'part.bottom-as-amount' as const, answer: answer(d) }]
        : []),
      ...(isFraction && n % d > 1
        ? [{ misconception: 'part.one-only' as const, answer: answer(whole * pair.factor + pair.factor / d) }]
        : []),
      ...((100 * n) % d === 0 && pair.factor === 60
        ? [{ misconception: ofHundred(pair), answer: answer((100 * n) / d) }]
        : (10 * n) % d === 0
          ? [{ misconception: 'time.ten-in-group' as const, answer: answer((10 * n) / d) }]
          : []),
      ...((pair.confused * n) % d === 0
        ? [
            {
              misconception:
                pair.factor === 7 ? ('time.week-of-five' as const) : ('time.wrong-sixty' as const),
              answer: answer((pair.confused * n) / d),
            },
          ]
        : []),
    ],
  };
}

/** "305 minutes is 5 hours and how many minutes?" */
export function split(total: number, pair: UnitPair, { locale }: TemplateContext): Draft {
  const large = Math.floor(total / pair.factor);
  const rest = total % pair.factor;
  const totalText = `${formatWhole(total, locale)}\u00a0${pair.small}`;
  const largeWord = `${large}\u00a0${large === 1 ? pair.large[0] : pair.large[1]}`;
  const wrong = total - large * pair.confused;
  const answer = (value: number) => unitAnswer(value, unitFor(value, pair), locale);
  return {
    text: `${totalText} is ${largeWord} and how many ${pair.small}?`,
    answer: answer(rest),
    expression: `${total} - ${large} * ${pair.factor}`,
    features: {
      size: sizeOf(large) + (total > 100 ? 0.7 : 0),
      carries: total % 10 < (large * pair.factor) % 10 ? 1 : 0,
      adjust: large === 1 ? -0.6 : 0,
    },
    strategy: [
      `${large} × ${pair.factor} = ${formatWhole(large * pair.factor, locale)}`,
      `${formatWhole(total, locale)} − ${formatWhole(large * pair.factor, locale)} = ${rest}`,
    ],
    slips: [
      ...(pair.factor === 60
        ? total < 100
          ? []
          : [{ misconception: ofHundred(pair), answer: answer(total % 100) }]
        : // Fewer than ten small units make no group of ten.
          total < 10
          ? []
          : [{ misconception: 'time.ten-in-group' as const, answer: answer(total % 10) }]),
      ...(wrong > 0
        ? [
            {
              misconception:
                pair.factor === 7 ? ('time.week-of-five' as const) : ('time.wrong-sixty' as const),
              answer: answer(wrong),
            },
          ]
        : []),
      { misconception: 'group.left-over-given', answer: answer(large) },
      { misconception: 'part.rest-given', answer: answer(pair.factor - rest) },
    ],
  };
}

/** How many full large units: "How many full weeks are in 47 days?" */
export function fullOnes(total: number, pair: UnitPair, { locale }: TemplateContext): Draft {
  const large = Math.floor(total / pair.factor);
  const rest = total % pair.factor;
  return {
    text: `How many full ${pair.large[1]} are in ${formatWhole(total, locale)}\u00a0${pair.small}?`,
    answer: wholeAnswer(large, locale),
    expression: `floor(${total} / ${pair.factor})`,
    features: { size: sizeOf(large) + (total > 100 ? 0.7 : 0), extraSteps: rest === 0 ? 0 : 0.5 },
    strategy: [
      `${large} × ${pair.factor} = ${formatWhole(large * pair.factor, locale)}`,
      ...(rest === 0 ? [] : [`${rest} left over, too few for another one`]),
    ],
    slips: [
      ...(rest > 0
        ? [{ misconception: 'group.rounds-up' as const, answer: wholeAnswer(large + 1, locale) }]
        : []),
      {
        misconception: pair.factor === 60 ? ofHundred(pair) : 'time.ten-in-group',
        answer: wholeAnswer(Math.floor(total / (pair.factor === 60 ? 100 : 10)), locale),
      },
      ...(rest > 0
        ? [{ misconception: 'group.left-over-given' as const, answer: wholeAnswer(rest, locale) }]
        : []),
    ],
  };
}

/** The day's number as an amount of a large unit whose small units come out whole, or null. */
export function largeOn(
  day: Parameters<typeof quantityOn>[0],
  locale: Locale,
  pair: UnitPair,
  high: number,
): Quantity | null {
  const amount = quantityOn(day, locale, 0.01, high, 2);
  return amount !== null && pair.factor % amount.value.d === 0 && day.kind !== 'money' ? amount : null;
}

/** Everyday parts of a larger unit. */
export const PARTS = [
  rational(1, 2),
  rational(1, 4),
  rational(3, 4),
  rational(1, 3),
  rational(2, 3),
  rational(3, 2),
];
