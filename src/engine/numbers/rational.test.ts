import fc from 'fast-check';
import { Fraction } from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { fractionMath as math } from '../../../test/support/exact-math.js';
import {
  add,
  compare,
  decimalPlaces,
  divide,
  equals,
  floor,
  gcd,
  lcm,
  multiply,
  negate,
  parseValue,
  type Rational,
  rational,
  roundTo,
  subtract,
  toValue,
  ZERO,
} from './rational.js';

// Outside judges: fraction.js (big integers) and mathjs with its own fraction type.

const part = fc.oneof(fc.integer({ min: -60, max: 60 }), fc.integer({ min: -100_000, max: 100_000 }));
const rationals = fc
  .tuple(
    part,
    part.filter((d) => d !== 0),
  )
  .map(([n, d]) => rational(n, d));
const judged = (a: Rational) => new Fraction(a.n, a.d);
const same = (a: Rational, b: Fraction) => expect(toValue(a)).toBe(b.toFraction());

describe('exact arithmetic', () => {
  it('agrees with fraction.js', () => {
    fc.assert(
      fc.property(rationals, rationals, (a, b) => {
        same(add(a, b), judged(a).add(judged(b)));
        same(subtract(a, b), judged(a).sub(judged(b)));
        same(multiply(a, b), judged(a).mul(judged(b)));
        if (b.n !== 0) same(divide(a, b), judged(a).div(judged(b)));
        same(negate(a), judged(a).neg());
        expect(Math.sign(compare(a, b))).toBe(judged(a).compare(judged(b)));
        expect(equals(a, b)).toBe(judged(a).equals(judged(b)));
        expect(floor(a)).toBe(Number(judged(a).floor().toFraction()));
      }),
      { numRuns: 4000 },
    );
  });

  it('agrees with mathjs on whole expressions', () => {
    fc.assert(
      fc.property(rationals, rationals, rationals, (a, b, c) => {
        const expected = math.evaluate(`(${toValue(a)}) + (${toValue(b)}) * (${toValue(c)})`) as Fraction;
        const isExact = [expected.n, expected.d].every((value) => value <= BigInt(Number.MAX_SAFE_INTEGER));
        fc.pre(isExact && [a, b, c].every(({ n, d }) => Math.abs(n) < 1000 && d < 1000));
        same(add(a, multiply(b, c)), expected);
      }),
      { numRuns: 1500 },
    );
  });

  it('is in lowest terms with a positive denominator and no negative zero', () => {
    fc.assert(
      fc.property(part, part, (n, d) => {
        fc.pre(d !== 0);
        const a = rational(n, d);
        expect(gcd(a.n, a.d)).toBe(1);
        expect(a.d).toBeGreaterThan(0);
        expect(Object.is(a.n, -0)).toBe(false);
      }),
    );
    expect(rational(0, -3)).toEqual(ZERO);
    expect(negate(ZERO)).toEqual({ n: 0, d: 1 });
  });

  it('is exact or throws near the end of the safe integers', () => {
    const large = fc.integer({ min: -Number.MAX_SAFE_INTEGER, max: Number.MAX_SAFE_INTEGER });
    const operations = [
      [add, (x: Fraction, y: Fraction) => x.add(y)],
      [subtract, (x: Fraction, y: Fraction) => x.sub(y)],
      [multiply, (x: Fraction, y: Fraction) => x.mul(y)],
    ] as const;
    fc.assert(
      fc.property(
        large,
        large,
        large,
        large,
        fc.constantFrom(...operations),
        (an, ad, bn, bd, [ours, theirs]) => {
          fc.pre(ad !== 0 && bd !== 0);
          const [a, b] = [rational(an, ad), rational(bn, bd)];
          expect(Math.sign(compare(a, b))).toBe(judged(a).compare(judged(b)));
          expect(floor(a)).toBe(Number(judged(a).floor().toFraction()));
          try {
            same(ours(a, b), theirs(judged(a), judged(b)));
          } catch (error) {
            if (!(error instanceof RangeError)) throw error;
          }
        },
      ),
      { numRuns: 3000 },
    );
    const most = Number.MAX_SAFE_INTEGER;
    // Neighbours whose cross products are the same floating-point number.
    expect(compare(rational(most - 1, most - 2), rational(most, most - 1))).toBeGreaterThan(0);
    expect(() => rational(2 ** 53)).toThrow(RangeError);
    expect(() => rational(0.5)).toThrow(RangeError);
    expect(() => rational(1, 0)).toThrow(RangeError);
    expect(() => divide(rational(1), ZERO)).toThrow(RangeError);
    expect(() => add(rational(Number.MAX_SAFE_INTEGER), rational(1))).toThrow(RangeError);
  });
});

describe('wire form, decimals, rounding', () => {
  it('reads back what it writes', () => {
    fc.assert(
      fc.property(rationals, (a) => {
        expect(parseValue(toValue(a))).toEqual(a);
      }),
    );
    expect(parseValue(toValue(rational(Number.MAX_SAFE_INTEGER)))).toEqual(rational(Number.MAX_SAFE_INTEGER));
    for (const text of ['', '1.5', '1/0', '1/-2', ' 1', '--1', '9999999999999999', 'NaN', '1e3'])
      expect(parseValue(text), text).toBeNull();
  });

  it('knows the decimal places: the least power of ten that the denominator divides', () => {
    const twosAndFives = fc
      .tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 5 }), part)
      .map(([twos, fives, n]) => rational(n, 2 ** twos * 5 ** fives));
    fc.assert(
      fc.property(fc.oneof(rationals, twosAndFives), (a) => {
        const places = Array.from({ length: 60 }, (_, k) => k).find(
          (k) => 10n ** BigInt(k) % BigInt(a.d) === 0n,
        );
        expect(decimalPlaces(a)).toBe(places ?? null);
      }),
      { numRuns: 2000 },
    );
  });

  it('rounds halves away from zero, as fraction.js rounds the size', () => {
    const units = fc.constantFrom(rational(1), rational(10), rational(100), rational(1, 10), rational(1, 4));
    fc.assert(
      fc.property(rationals, units, (a, unit) => {
        const steps = judged(a).div(judged(unit));
        const rounded = steps
          .abs()
          .add(new Fraction(1, 2))
          .floor()
          .mul(steps.s < 0n ? -1 : 1);
        same(roundTo(a, unit), rounded.mul(judged(unit)));
      }),
      { numRuns: 2000 },
    );
    expect(roundTo(rational(-5, 2), rational(1))).toEqual(rational(-3));
    expect(roundTo(rational(45), rational(10))).toEqual(rational(50));
  });

  it('finds common multiples', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000 }), fc.integer({ min: 1, max: 10_000 }), (a, b) => {
        expect(lcm(a, b)).toBe(new Fraction(a).lcm(b).valueOf());
        expect(gcd(-a, b)).toBe(new Fraction(a).gcd(b).valueOf());
      }),
    );
  });
});
