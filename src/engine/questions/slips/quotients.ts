// Typical wrong methods for quotients, as algorithms.
import { type Rational, rational } from '../../numbers/rational.js';

/**
 * Each digit divided alone, what is left over dropped: 84 ÷ 6 gives 10, 36 ÷ 2 gives 13.
 * Null when the first digit is too small to be divided.
 */
export function divideDigits(n: number, divisor: number): number | null {
  if (Number(String(n)[0]) < divisor) return null;
  return Number([...String(n)].map((digit) => String(Math.floor(Number(digit) / divisor))).join(''));
}

/** The remainder written after a decimal point: 47 ÷ 5 gives 9.2. Null when nothing is left over or it needs two digits. */
export function remainderAsTenths(n: number, divisor: number): Rational | null {
  const rest = n % divisor;
  return rest === 0 || rest > 9 ? null : rational(Math.floor(n / divisor) * 10 + rest, 10);
}
