// Quantities of the measuring strands: one exact value with the form in which a child meets it, so that one template
// serves whole numbers, decimals, fractions and money alike.
import type { DayNumber } from '../../numbers/day-number.js';
import { formatDecimal, formatMixed, formatMoney, formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { decimalPlaces, isWhole, type Rational, rational, toNumber } from '../../numbers/rational.js';
import { decimalAnswer, fractionAnswer } from '../../questions/answer.js';
import type { Draft } from '../../questions/draft.js';
import type { Answer } from '../../questions/question.js';

/** How a quantity is written: decimals ("3.6", also whole numbers) or fractions ("1 3/4"). */
export type QuantityStyle = 'decimal' | 'fraction';

export interface Quantity {
  readonly value: Rational;
  readonly style: QuantityStyle;
  /** As printed in the question. */
  readonly text: string;
  /** As a mathjs operand. */
  readonly expression: string;
}

/** A mathjs operand for an exact value: "47", "3.6", "(3/4)" or "(-5)". */
export function operand(value: Rational | number): string {
  const exact = typeof value === 'number' ? rational(value) : value;
  const places = decimalPlaces(exact);
  const text =
    exact.d === 1
      ? String(exact.n)
      : places !== null && places <= 3
        ? toNumber(exact).toFixed(places)
        : `${exact.n}/${exact.d}`;
  return exact.n < 0 || text.includes('/') ? `(${text})` : text;
}

/** The quantity of a value in the given style. A value without a finite decimal is always a fraction. */
export function quantity(
  value: Rational | number,
  locale: Locale,
  style: QuantityStyle = 'decimal',
): Quantity {
  const exact = typeof value === 'number' ? rational(value) : value;
  const written = decimalPlaces(exact) === null ? 'fraction' : style;
  const text =
    written === 'fraction' && exact.n >= 0 ? formatMixed(exact, locale) : formatDecimal(exact, locale);
  const expression = written === 'fraction' && exact.d > 1 ? `(${exact.n}/${exact.d})` : operand(exact);
  return { value: exact, style: written, text, expression };
}

/** The day's number as a quantity; money counts as a decimal. */
function dayQuantity(day: DayNumber, locale: Locale): Quantity {
  return quantity(day.value, locale, day.kind === 'fraction' ? 'fraction' : 'decimal');
}

/** An answer written like the quantity it comes from, with its unit when given. */
export function quantityAnswer(value: Rational, style: QuantityStyle, locale: Locale, unit?: string): Answer {
  const bare =
    (style === 'fraction' && value.n >= 0) || decimalPlaces(value) === null
      ? fractionAnswer(value, locale)
      : decimalAnswer(value, locale);
  if (unit === undefined) return bare;
  return { ...bare, text: bare.text + withGap(unit) };
}

/** The unit as it follows a number: degrees of angle directly, everything else after a no-break space. */
export function withGap(unit: string): string {
  return unit === '°' || unit === '%' ? unit : `\u00a0${unit}`;
}

/** The unit as this country's classrooms have it: a thermometer goes by Fahrenheit in American ones. */
export function unitIn(unit: string, locale: Locale): string {
  return unit === '°C' ? locale.degrees : unit;
}

/** "47 cm": a quantity's text with its unit. */
export function measured(item: Quantity | number, unit: string, locale: Locale): string {
  return (typeof item === 'number' ? formatWhole(item, locale) : item.text) + withGap(unit);
}

/** The printed form of an exact value in the style of a sentence: "13.6", "1 3/4". */
export function shown(value: Rational | number, locale: Locale, style: QuantityStyle = 'decimal'): string {
  return quantity(value, locale, style).text;
}

/** "$4.85" from a number of cents or pence. */
export function price(minor: number, locale: Locale): string {
  return formatMoney(rational(minor, 100), locale);
}

/** A mathjs operand, in main units, for a number of cents or pence. */
export function priceOperand(minor: number): string {
  return operand(rational(minor, 100));
}

/** The day's number as a whole number within the bounds, or null. */
export function wholeOn(day: DayNumber, low: number, high: number): number | null {
  return day.kind === 'whole' && isWhole(day.value) && day.value.n >= low && day.value.n <= high
    ? day.value.n
    : null;
}

/** The day's amount of money in cents or pence within the bounds, or null. */
export function minorOn(day: DayNumber, low: number, high: number): number | null {
  if (day.kind !== 'money' || 100 % day.value.d !== 0) return null;
  const minor = (day.value.n * 100) / day.value.d;
  return minor >= low && minor <= high ? minor : null;
}

/** As {@link minorOn}, but only amounts that can be paid with the coins in use. */
export function cashOn(day: DayNumber, locale: Locale, low: number, high: number): number | null {
  const minor = minorOn(day, low, high);
  return minor !== null && minor % smallestCoin(locale) === 0 ? minor : null;
}

/** Value in cents or pence of the smallest coin in use. */
export function smallestCoin(locale: Locale): number {
  return locale.currency.coins[0] ?? 1;
}

/** The day's whole, decimal or fractional number as a quantity within the bounds and decimal places, or null. */
export function quantityOn(
  day: DayNumber,
  locale: Locale,
  low: number,
  high: number,
  places = 3,
): Quantity | null {
  if (day.kind === 'money') return null;
  const size = toNumber(day.value);
  if (size < low || size > high) return null;
  if (day.kind === 'decimal' && (decimalPlaces(day.value) ?? 9) > places) return null;
  return dayQuantity(day, locale);
}

/** The draft with its verb phrase about the day's number. */
export function using(draft: Draft, phrase: string): Draft {
  return { ...draft, usesNumber: phrase };
}

/** Feature "size" of a whole number or amount: 0 up to 10, then a step for each noticeably bigger range. */
export function sizeOf(value: number): number {
  if (value <= 10) return 0;
  if (value <= 20) return 0.5;
  if (value <= 100) return 1;
  if (value <= 1000) return 2;
  return value <= 10_000 ? 3 : 4;
}

/** Number of carries when two whole numbers are added in columns. */
export function carriesIn(a: number, b: number): number {
  let carry = 0;
  let count = 0;
  for (let x = a, y = b; x > 0 || y > 0; x = Math.floor(x / 10), y = Math.floor(y / 10)) {
    carry = (x % 10) + (y % 10) + carry >= 10 ? 1 : 0;
    count += carry;
  }
  return count;
}

/** Number of borrows when the whole number b is taken from a (a >= b) in columns. */
export function borrowsIn(a: number, b: number): number {
  return carriesIn(a - b, b);
}
