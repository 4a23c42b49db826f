// Typical wrong methods for decimals, as algorithms on the written digits.
import { decimalPlaces, type Rational, rational } from '../../numbers/rational.js';

/** A decimal as a child writes it: 8.10 is 8.1 with two places. */
export interface WrittenDecimal {
  readonly value: Rational;
  /** Digits after the point, zeros at the end included. */
  readonly places: number;
}

/** Digits before and after the point of a decimal not below zero; null when it has no end. */
function split(value: Rational): { whole: number; digits: number; places: number } | null {
  const places = decimalPlaces(value);
  if (places === null) return null;
  const scale = 10 ** places;
  const scaled = value.n * (scale / value.d);
  return { whole: Math.floor(scaled / scale), digits: scaled % scale, places };
}

/** Writes `digits` after the point as they stand. */
function join(whole: number, digits: number): WrittenDecimal {
  const places = digits === 0 ? 0 : String(digits).length;
  return { value: rational(whole * 10 ** places + digits, 10 ** places), places };
}

/** Parts before and after the point added as two whole numbers: 3.6 + 0.7 is written 3.13, 5.9 + 4.1 is written 9.10. */
export function addPartsApart(a: Rational, b: Rational): WrittenDecimal | null {
  const [x, y] = [split(a), split(b)];
  return x && y ? join(x.whole + y.whole, x.digits + y.digits) : null;
}

/** Parts before and after the point multiplied as two whole numbers: 3.6 × 4 is written 12.24. */
export function multiplyPartsApart(a: Rational, times: number): WrittenDecimal | null {
  const x = split(a);
  return x ? join(x.whole * times, x.digits * times) : null;
}

/** Digits lined up at the right end whatever the point says: 4.7 − 0.24 is written 0.23, from 47 − 24. */
export function rightAligned(a: Rational, sign: 1 | -1, b: Rational): WrittenDecimal | null {
  const [x, y] = [split(a), split(b)];
  if (!x || !y) return null;
  const total = x.whole * 10 ** x.places + x.digits + sign * (y.whole * 10 ** y.places + y.digits);
  const places = Math.max(x.places, y.places);
  return total < 0 ? null : { value: rational(total, 10 ** places), places };
}

/** A zero written at the end when multiplying by ten: 2.5 × 10 is written 2.50, which is still 2.5. */
export function appendZero(a: Rational): Rational | null {
  const x = split(a);
  return x === null ? null : x.places === 0 ? rational(a.n * 10) : a;
}

/** Only the part before the point multiplied by ten: 3.6 × 10 is written 30.6. */
export function tenTimesWholePart(a: Rational): Rational | null {
  const x = split(a);
  return x && x.digits > 0 ? rational(x.whole * 10 * 10 ** x.places + x.digits, 10 ** x.places) : null;
}

/** The point forgotten in the answer: a right product or sum of the digits, written without a point. */
export function withoutPoint(value: Rational): number | null {
  const x = split(value);
  return x && x.places > 0 ? x.whole * 10 ** x.places + x.digits : null;
}
