// Exact numbers -> the text a child reads. The minus sign is U+2212, as printed; parsing accepts a hyphen too.
import type { Locale } from './locale.js';
import { decimalPlaces, floor, negate, type Rational, rational, subtract } from './rational.js';

/** The minus sign as printed. */
export const MINUS = '\u2212';

/** "4700", "12 500" (no-break space) or "12,500": a whole number grouped as the locale writes it. */
export function formatWhole(value: number, locale: Locale): string {
  const digits = String(Math.abs(value));
  const grouped =
    Math.abs(value) >= locale.groupFrom ? digits.replace(/\B(?=(\d{3})+$)/g, locale.groupSeparator) : digits;
  return value < 0 ? MINUS + grouped : grouped;
}

/** Digits after the point beyond which powers of ten are no longer exact. */
const MOST_PLACES = 15;

/**
 * "3.6", "0.05": a terminating decimal with at least `places` digits after the point.
 * Throws RangeError when the value does not terminate within 15 places.
 */
export function formatDecimal(value: Rational, locale: Locale, places = 0): string {
  const needed = decimalPlaces(value);
  const shown = Math.max(needed ?? 0, places);
  if (needed === null || shown > MOST_PLACES)
    throw new RangeError(`${value.n}/${value.d} has no short decimal`);
  const sign = value.n < 0 ? MINUS : '';
  const size = Math.abs(value.n);
  const whole = formatWhole(floor({ n: size, d: value.d }), locale);
  if (shown === 0) return sign + whole;
  const after = (size % value.d) * (10 ** shown / value.d);
  return `${sign}${whole}.${String(after).padStart(shown, '0')}`;
}

/** "3/4", "5/2" or "6": a fraction in lowest terms, never mixed. */
export function formatFraction(value: Rational): string {
  const sign = value.n < 0 ? MINUS : '';
  return value.d === 1 ? sign + Math.abs(value.n) : `${sign}${Math.abs(value.n)}/${value.d}`;
}

/** "1 3/4", "3/4" or "2": whole part and proper fraction; below zero one minus sign stands before both. */
export function formatMixed(value: Rational, locale: Locale): string {
  if (value.n < 0) return MINUS + formatMixed(negate(value), locale);
  const whole = floor(value);
  const rest = subtract(value, rational(whole));
  if (rest.n === 0) return formatWhole(whole, locale);
  return whole === 0 ? formatFraction(rest) : `${formatWhole(whole, locale)} ${formatFraction(rest)}`;
}

/** "$4.85", "$12", "85c": an amount in main units, exact to the minor unit. Throws RangeError for part-cents. */
export function formatMoney(value: Rational, locale: Locale): string {
  if (100 % value.d !== 0) throw new RangeError('an amount of money must be exact in its smallest unit');
  const minor = value.n * (100 / value.d);
  const { symbol, minorSymbol } = locale.currency;
  const sign = minor < 0 ? MINUS : '';
  const size = Math.abs(minor);
  if (size > 0 && size < 100) return `${sign}${size}${minorSymbol}`;
  const whole = formatWhole(Math.floor(size / 100), locale);
  return size % 100 === 0
    ? `${sign}${symbol}${whole}`
    : `${sign}${symbol}${whole}.${String(size % 100).padStart(2, '0')}`;
}

/** "7:45" (12-hour dial) or "19:45": minutes after midnight as a clock shows them. */
export function formatClock(minutes: number, hours: 12 | 24 = 12): string {
  const day = ((minutes % 1440) + 1440) % 1440;
  const hour = Math.floor(day / 60);
  const shown = hours === 24 ? String(hour).padStart(2, '0') : String(((hour + 11) % 12) + 1);
  return `${shown}:${String(day % 60).padStart(2, '0')}`;
}

/** "45 min", "2 h", "1 h 25 min": a length of time in whole minutes. */
export function formatDuration(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return `${rest}\u00a0min`;
  return rest === 0 ? `${hours}\u00a0h` : `${hours}\u00a0h ${rest}\u00a0min`;
}
