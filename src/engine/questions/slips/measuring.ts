// Typical wrong methods with units, rectangles, scales, change and averages.
import { add, compare, divide, multiply, type Rational, rational, subtract } from '../../numbers/rational.js';

/** Converting by a factor ten times too small or too large, or in the wrong direction. */
export function wrongConversions(
  value: Rational,
  factor: number,
): { tenTooFew: Rational; tenTooMany: Rational; reversed: Rational } {
  return {
    tenTooFew: multiply(value, rational(factor, 10)),
    tenTooMany: multiply(value, rational(factor * 10)),
    reversed: divide(value, rational(factor)),
  };
}

/** 3 hours 6 minutes from 3.6 hours: the digits after the point read as small units. Null when there are none. */
export function pointReadAsUnits(value: Rational, factor: number): Rational | null {
  const text = String(value.n / value.d);
  const point = text.indexOf('.');
  if (point < 0 || text.length - point > 4) return null;
  return rational(Number(text.slice(0, point)) * factor + Number(text.slice(point + 1)));
}

/** Change when dollars and cents are taken to the next full amount separately: $10 - $4.85 = $6.15. In cents. */
export function changeCountedApart(paid: number, cost: number): number {
  const cents = cost % 100;
  return paid - (cost - cents) + (cents === 0 ? 0 : 100 - cents);
}

/** Change when the smaller is taken from the larger in each part, dollars and cents: $10.00 - $4.85 = $6.85. In cents. */
export function changeLargerLessSmaller(paid: number, cost: number): number {
  return Math.floor(paid / 100) * 100 - Math.floor(cost / 100) * 100 + (cost % 100);
}

/** Half the way round: one length and one width only. */
export function halfPerimeter(length: Rational, width: Rational): Rational {
  return add(length, width);
}

/** The way round a rectangle. */
export function perimeter(length: Rational, width: Rational): Rational {
  return multiply(add(length, width), rational(2));
}

/** The area of a rectangle. */
export function area(length: Rational, width: Rational): Rational {
  return multiply(length, width);
}

/** A scale read as if every small mark stood for one. */
export function scaleReadByOnes(from: number, step: number, labelEvery: number, value: number): number {
  const label = from + Math.floor((value - from) / labelEvery) * labelEvery;
  return label + (value - label) / step;
}

/** The middle item of a list as it stands, unsorted (odd length). */
export function unsortedMedian(values: readonly Rational[]): Rational {
  return values[Math.floor(values.length / 2)] ?? rational(0);
}

/** The sum of a list. */
export function sum(values: readonly Rational[]): Rational {
  return values.reduce((total, value) => add(total, value), rational(0));
}

/** A list in rising order. */
export function sorted(values: readonly Rational[]): Rational[] {
  return [...values].sort(compare);
}

/** Largest less smallest. */
export function range(values: readonly Rational[]): Rational {
  const order = sorted(values);
  return subtract(order[order.length - 1] ?? rational(0), order[0] ?? rational(0));
}
