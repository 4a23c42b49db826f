// Drawing classroom fractions, and which fractions a question takes.
import { rational, type Rational } from '../../numbers/rational.js';
import type { Rng } from '../../random/rng.js';

const CLASSROOM_PARTS = [2, 3, 4, 5, 6, 8, 10, 12] as const;

/** A proper fraction in lowest terms with a classroom denominator. */
export function properFraction(rng: Rng, parts: readonly number[] = CLASSROOM_PARTS): Rational {
  const d = rng.pick(parts);
  return rational(rng.int(1, d - 1), d);
}

/** Below one, with a bottom that classes meet. */
export const isProper = (value: Rational): boolean => value.n < value.d && value.d <= 100;

/** With a bottom up to 25, and not above a hundred. */
export const isSmallFraction = (value: Rational): boolean =>
  value.d >= 2 && value.d <= 25 && value.n <= 100 * value.d;
