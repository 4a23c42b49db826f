// Drawing decimals, and how many places they have.
import { decimalPlaces, rational, type Rational } from '../../numbers/rational.js';
import type { Rng } from '../../random/rng.js';

/** A decimal with the given places whose last digit is not zero. */
export function drawDecimal(rng: Rng, places: 1 | 2 | 3, low: number, high: number): Rational {
  const scale = 10 ** places;
  const digits = rng.int(1, (high - low) * scale - 1);
  return rational(low * scale + digits + (digits % 10 === 0 ? 1 : 0), scale);
}

/** Places after the point, 9 when the decimal has no end. */
export function placesOf(value: Rational): number {
  return decimalPlaces(value) ?? 9;
}
