// Halving a number of any kind, for the skills of all years.
import { add, multiply, rational } from '../../numbers/rational.js';
import { divideDigits } from '../../questions/slips/quotients.js';
import type { Sketch, Subject } from '../sketch.js';

export const HALF = rational(1, 2);

/**
 * Halving any quantity; whole numbers are split into an even number of tens (or hundreds) and the rest, others into wholes and
 * the part after them. Classes in Year 1 know no ÷ yet.
 */
export function half(x: Subject, features: Sketch['features'], knowsDividing = true): Sketch {
  const answer = multiply(x.value, HALF);
  const step = 10 ** (String(x.n).length - 1);
  const whole = Math.floor(x.n / x.d);
  const big = x.d === 1 ? whole - (whole % (2 * step)) : whole;
  const small = add(x.value, rational(-big));
  const bigHalf = rational(big, 2);
  const splits = big > 0 && small.n > 0;
  return {
    text: x.rng.chance(0.5)
      ? `Half of ${x.text}`
      : knowsDividing
        ? `${x.text} ÷ 2`
        : `What is half of ${x.text}?`,
    value: answer,
    expression: `${x.expr} / 2`,
    features,
    strategy: splits
      ? [
          `${x.t(big)} ÷ 2 = ${x.t(bigHalf)}`,
          `${x.t(small)} ÷ 2 = ${x.t(multiply(small, HALF))}`,
          `${x.t(bigHalf)} + ${x.t(multiply(small, HALF))} = ${x.t(answer)}`,
        ]
      : [`${x.t(answer)} + ${x.t(answer)} = ${x.text}`],
    slips: [
      ['divide.digits-alone', x.d === 1 ? divideDigits(x.n, 2) : null],
      ['divide.as-minus', add(x.value, rational(-2))],
      ['divide.as-times', multiply(x.value, rational(2))],
      ['divide.one-part-only', splits ? add(bigHalf, small) : null],
      ['divide.neighbour', x.n > 2 * x.d ? add(answer, rational(-1)) : null],
    ],
    uses: `halves ${x.text}`,
  };
}

/** Digits before the last that are odd: each leaves ten to be halved with the next digit. */
export function oddDigits(n: number): number {
  return [...String(n)].slice(0, -1).filter((digit) => Number(digit) % 2 === 1).length;
}
