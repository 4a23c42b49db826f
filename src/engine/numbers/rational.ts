// Exact rational numbers in safe integers: enough for every primary-school quantity, and fast.

/** n/d in lowest terms with d > 0; n and d are safe integers. Make one with {@link rational}, never by hand. */
export interface Rational {
  readonly n: number;
  readonly d: number;
}

/** Greatest common divisor of two whole numbers, never negative; gcd(0, 0) is 0. */
export function gcd(a: number, b: number): number {
  let x = Math.abs(a);
  let y = Math.abs(b);
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

/** Least common multiple of two positive whole numbers. */
export function lcm(a: number, b: number): number {
  return (a / gcd(a, b)) * b;
}

/** The exact number n/d in lowest terms. Throws RangeError for d = 0 or parts beyond the safe integers. */
export function rational(n: number, d = 1): Rational {
  if (!Number.isSafeInteger(n) || !Number.isSafeInteger(d)) throw new RangeError(`${n}/${d} is not exact`);
  if (d === 0) throw new RangeError('division by zero');
  const g = gcd(n, d) * (d < 0 ? -1 : 1) || 1;
  return { n: n / g + 0, d: d / g };
}

export const ZERO = rational(0);
export const ONE = rational(1);

export function add(a: Rational, b: Rational): Rational {
  return rational(a.n * b.d + b.n * a.d, a.d * b.d);
}

export function subtract(a: Rational, b: Rational): Rational {
  return rational(a.n * b.d - b.n * a.d, a.d * b.d);
}

export function multiply(a: Rational, b: Rational): Rational {
  return rational(a.n * b.n, a.d * b.d);
}

/** a / b. Throws RangeError when b is 0. */
export function divide(a: Rational, b: Rational): Rational {
  return rational(a.n * b.d, a.d * b.n);
}

export function negate(a: Rational): Rational {
  return { n: 0 - a.n, d: a.d };
}

export function equals(a: Rational, b: Rational): boolean {
  return a.n === b.n && a.d === b.d;
}

/** Negative, 0 or positive as a is below, equal to or above b. */
export function compare(a: Rational, b: Rational): number {
  return a.n * b.d - b.n * a.d;
}

export function isWhole(a: Rational): boolean {
  return a.d === 1;
}

/** Greatest whole number not above a. */
export function floor(a: Rational): number {
  return Math.floor(a.n / a.d);
}

/** The nearest binary floating-point number: for drawing and statistics, never for answers. */
export function toNumber(a: Rational): number {
  return a.n / a.d;
}

/** The wire form: "85" or "3/4" in lowest terms. */
export function toValue(a: Rational): string {
  return a.d === 1 ? String(a.n) : `${a.n}/${a.d}`;
}

/** Reads the wire form written by {@link toValue}; null for anything else. */
export function parseValue(text: string): Rational | null {
  const match = /^(-?\d{1,15})(?:\/(\d{1,15}))?$/.exec(text);
  if (!match) return null;
  const d = match[2] === undefined ? 1 : Number(match[2]);
  return d === 0 ? null : rational(Number(match[1]), d);
}

/** Digits after the point of the terminating decimal equal to a, or null when it does not terminate. */
export function decimalPlaces(a: Rational): number | null {
  let d = a.d;
  let twos = 0;
  let fives = 0;
  while (d % 2 === 0) {
    d /= 2;
    twos++;
  }
  while (d % 5 === 0) {
    d /= 5;
    fives++;
  }
  return d === 1 ? Math.max(twos, fives) : null;
}

/** a rounded to a multiple of `unit` (a positive rational), halves away from zero. */
export function roundTo(a: Rational, unit: Rational): Rational {
  const scaled = divide(a, unit);
  const sign = scaled.n < 0 ? -1 : 1;
  const rounded = sign * Math.floor((2 * Math.abs(scaled.n) + scaled.d) / (2 * scaled.d));
  return multiply(rational(rounded), unit);
}
