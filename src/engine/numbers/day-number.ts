// The day's number: what a teacher may type, parsed once at the edge into a closed set of kinds.
import { foldText } from './fold-text.js';
import { formatDecimal, formatFraction, formatMixed, formatMoney, formatWhole } from './format.js';
import type { Locale } from './locale.js';
import { add, compare, type Rational, rational } from './rational.js';

export const DAY_KINDS = ['whole', 'decimal', 'money', 'fraction'] as const;
export type DayKind = (typeof DAY_KINDS)[number];

/** The number a board is about. `text` is its one printed form: "47", "3.6", "$4.85", "3/4", "1 3/4". */
export interface DayNumber {
  readonly kind: DayKind;
  readonly value: Rational;
  readonly text: string;
}

export type DayNumberResult =
  | { ok: true; value: DayNumber }
  | { ok: false; error: { code: string; message: string; hint: string } };

const LARGEST = rational(1_000_000);
const LARGEST_DENOMINATOR = 100;

type Groups = Readonly<Record<string, string | undefined>>;

/** What a form means: an exact value, or why it cannot be used (the message reads after the typed text). */
type Reading = Pick<DayNumber, 'kind' | 'value'> | { readonly code: string; readonly why: string };

/** Digits in groups of three after commas or spaces, or plain; a bounded length keeps every value exact. */
const DIGITS = String.raw`\d{1,3}(?:,\d{3}){1,2}|\d{1,3}(?: \d{3}){1,2}|\d{1,9}`;

/** Every form of a day's number, tried in this order on folded text. */
const FORMS: readonly {
  readonly pattern: RegExp;
  readonly read: (groups: Groups, locale: Locale) => Reading;
}[] = [
  {
    // "47", "12 500", "12,500"
    pattern: new RegExp(`^(?<whole>${DIGITS})$`),
    read: ({ whole }) => ({ kind: 'whole', value: rational(digitsOf(whole)) }),
  },
  {
    // "3.6", ".05", "1,250.5"
    pattern: new RegExp(String.raw`^(?<whole>${DIGITS})?\.(?<places>\d{1,3})$`),
    read: ({ whole, places }) => ({ kind: 'decimal', value: decimalOf(whole, places) }),
  },
  {
    // "$4.85", "£12"
    pattern: new RegExp(String.raw`^(?<symbol>[$£€]) ?(?<whole>${DIGITS})?(?:\.(?<places>\d{2}))?$`),
    read: ({ symbol, whole, places }, locale) =>
      symbol === locale.currency.symbol && (whole ?? places)
        ? { kind: 'money', value: decimalOf(whole, places) }
        : otherCurrency(locale),
  },
  {
    // "85c", "485p", "85¢"
    pattern: /^(?<minor>\d{1,5}) ?(?<symbol>[cp¢])$/,
    read: ({ minor, symbol }, locale) =>
      (symbol === 'p') === (locale.currency.minorSymbol === 'p')
        ? { kind: 'money', value: rational(digitsOf(minor), 100) }
        : otherCurrency(locale),
  },
  {
    // "3/4", "1 3/4", "1¾"
    pattern: /^(?:(?<whole>\d{1,4}) )?(?<n>\d{1,4}) ?\/ ?(?<d>\d{1,4})$/,
    read: ({ whole, n, d }) => fractionOf(whole, digitsOf(n), digitsOf(d)),
  },
  {
    pattern: /^- ?[\d.$£]/,
    read: () => ({ code: 'number.range', why: 'is below zero, and a board needs a number above it' }),
  },
];

function digitsOf(text: string | undefined): number {
  return Number((text ?? '0').replace(/\D/g, ''));
}

function decimalOf(whole: string | undefined, places: string | undefined): Rational {
  return add(rational(digitsOf(whole)), rational(digitsOf(places), 10 ** (places?.length ?? 0)));
}

function fractionOf(whole: string | undefined, n: number, d: number): Reading {
  if (d < 2 || d > LARGEST_DENOMINATOR)
    return { code: 'number.denominator', why: `needs a bottom number from 2 to ${LARGEST_DENOMINATOR}` };
  if (whole !== undefined && n >= d)
    return { code: 'number.mixed', why: 'has a fraction part of 1 or more beside its whole number' };
  return { kind: 'fraction', value: add(rational(digitsOf(whole)), rational(n, d)) };
}

function otherCurrency(locale: Locale): Reading {
  return {
    code: 'number.currency',
    why: `cannot be used, since this class counts in ${locale.currency.mainName[1]}`,
  };
}

/** A decimal or fraction that comes out whole is a whole number: 5.0 and 10/2 are 5. */
function settledKind(kind: DayKind, value: Rational): DayKind {
  return kind !== 'money' && value.d === 1 ? 'whole' : kind;
}

const WRITE: Readonly<Record<DayKind, (value: Rational, locale: Locale) => string>> = {
  whole: (value, locale) => formatWhole(value.n, locale),
  decimal: (value, locale) => formatDecimal(value, locale),
  money: (value, locale) => formatMoney(value, locale),
  fraction: (value, locale) => (value.n < value.d ? formatFraction(value) : formatMixed(value, locale)),
};

/**
 * Reads the day's number: a whole number, a decimal of up to 3 places, an amount of money in the locale's currency, or
 * a fraction or mixed number with denominator 2 to 100; above 0 and up to 1 000 000. Anything else gives an error whose
 * code starts with "number.".
 */
export function parseDayNumber(input: string, locale: Locale): DayNumberResult {
  const shown = input.trim().slice(0, 40);
  const refuse = (code: string, message: string): DayNumberResult => ({
    ok: false,
    error: {
      code,
      message,
      hint: `Try a number like 47, 3.6, ${formatMoney(rational(97, 20), locale)} or 3/4.`,
    },
  });
  const text = foldText(input);
  if (text === '') return refuse('number.unread', 'The day’s number is missing.');
  for (const { pattern, read } of FORMS) {
    const match = pattern.exec(text);
    if (!match) continue;
    const reading = read(match.groups ?? {}, locale);
    if ('why' in reading) return refuse(reading.code, `“${shown}” ${reading.why}.`);
    const { value } = reading;
    if (value.n === 0)
      return refuse('number.zero', `“${shown}” is nothing, and a board needs a number above zero.`);
    if (compare(value, LARGEST) > 0)
      return refuse(
        'number.range',
        `“${shown}” is more than ${formatWhole(LARGEST.n, locale)}, the largest number for a board.`,
      );
    const kind = settledKind(reading.kind, value);
    return { ok: true, value: { kind, value, text: WRITE[kind](value, locale) } };
  }
  return refuse('number.unread', `“${shown}” is not a number that a board can be about.`);
}
