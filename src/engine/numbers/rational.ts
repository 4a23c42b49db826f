// Exact rational numbers in safe integers: enough for every primary-school quantity, and fast. An operation whose parts
// would leave the safe integers throws RangeError; it never returns a rounded number.

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
  exact(n);
  exact(d);
  if (d === 0) throw new RangeError('division by zero');
  const g = gcd(n, d) * (d < 0 ? -1 : 1);
  // Adding 0 turns the -0 of 0/-3 into 0.
  return { n: n / g + 0, d: d / g };
}

function exact(value: number): number {
  if (!Number.isSafeInteger(value)) throw new RangeError(`${value} is beyond the exact whole numbers`);
  return value;
}

export const ZERO = rational(0);

/** a + b. */
export function add(a: Rational, b: Rational): Rational {
  const g = gcd(a.d, b.d);
  // Each product is checked: two inexact ones could cancel to a sum that looks exact.
  const n = exact(exact(a.n * (b.d / g)) + exact(b.n * (a.d / g)));
  return rational(n, a.d * (b.d / g));
}

/** a - b. */
export function subtract(a: Rational, b: Rational): Rational {
  return add(a, negate(b));
}

/** a x b. */
export function multiply(a: Rational, b: Rational): Rational {
  const g = gcd(a.n, b.d);
  const h = gcd(b.n, a.d);
  return rational((a.n / g) * (b.n / h), (a.d / h) * (b.d / g));
}

/** a / b. Throws RangeError when b is 0. */
export function divide(a: Rational, b: Rational): Rational {
  return multiply(a, rational(b.d, b.n));
}

/** -a. */
export function negate(a: Rational): Rational {
  return { n: 0 - a.n, d: a.d };
}

/** True when a and b are the same number. */
export function equals(a: Rational, b: Rational): boolean {
  return a.n === b.n && a.d === b.d;
}

/** Negative, 0 or positive as a is below, equal to or above b; for any two numbers. */
export function compare(a: Rational, b: Rational): number {
  const [left, right] = [a.n * b.d, b.n * a.d];
  if (Number.isSafeInteger(left) && Number.isSafeInteger(right)) return left - right;
  const difference = BigInt(a.n) * BigInt(b.d) - BigInt(b.n) * BigInt(a.d);
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** True for whole numbers. */
export function isWhole(a: Rational): boolean {
  return a.d === 1;
}

/** Greatest whole number not above a. */
export function floor(a: Rational): number {
  const rest = a.n % a.d;
  const towardZero = (a.n - rest) / a.d;
  return (rest < 0 ? towardZero - 1 : towardZero) + 0;
}

/** The nearest binary floating-point number: for drawing and statistics, never for answers. */
export function toNumber(a: Rational): number {
  return a.n / a.d;
}

/** The wire form: "85" or "3/4" in lowest terms. */
export function toValue(a: Rational): string {
  return a.d === 1 ? String(a.n) : `${a.n}/${a.d}`;
}

/** Reads the wire form written by {@link toValue}, reducing it if need be; null for anything else. */
export function parseValue(text: string): Rational | null {
  const match = /^(-?\d{1,16})(?:\/(\d{1,16}))?$/.exec(text);
  if (!match) return null;
  const n = Number(match[1]);
  const d = match[2] === undefined ? 1 : Number(match[2]);
  return d === 0 || !Number.isSafeInteger(n) || !Number.isSafeInteger(d) ? null : rational(n, d);
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
  const steps = divide(a, unit);
  const size = floor(add({ n: Math.abs(steps.n), d: steps.d }, HALF));
  return multiply(rational(steps.n < 0 ? -size : size), unit);
}

const HALF = rational(1, 2);
