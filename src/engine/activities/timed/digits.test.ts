import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digitsCorrect, digitsIn, perMinute } from './digits.js';

// Examples built from the printed scoring rules of curriculum-based measurement (Fuchs 2005, scoring slides): a digit
// scores in its right place value, and in no other. No published worked sheet was at hand.
describe('digitsCorrect', () => {
  it.each([
    ['73', '73', 2, 2],
    ['73', '63', 1, 2],
    ['73', '613', 1, 2],
    ['138', '262', 0, 3],
    ['138', '138', 3, 3],
    ['56', '65', 0, 2],
    ['60', '6', 0, 2],
  ])('key %s, written %s: %i of %i', (key, written, correct, possible) => {
    expect(digitsCorrect(key, written)).toBe(correct);
    expect(digitsIn(key)).toBe(possible);
  });

  it('lines decimals up by the point', () => {
    expect(digitsCorrect('4.5', '45')).toBe(0);
    expect(digitsCorrect('13.8', '3.8')).toBe(2);
    expect(digitsCorrect('0.59', '0.5')).toBe(2);
  });

  it('passes over signs and spaces', () => {
    expect(digitsIn('−12 500')).toBe(5);
    expect(digitsCorrect('12 500', '12500')).toBe(5);
  });

  it('gives all to the right answer and never more than the key has', () => {
    fc.assert(
      fc.property(fc.nat(99_999), fc.nat(9_999_999), (key, written) => {
        expect(digitsCorrect(String(key), String(key))).toBe(String(key).length);
        expect(digitsCorrect(String(key), String(written))).toBeLessThanOrEqual(String(key).length);
      }),
    );
  });
});

describe('perMinute', () => {
  it('is the count over the minutes worked', () => {
    // 31 digits in two minutes.
    expect(perMinute(31, 2)).toBe(15.5);
    expect(() => perMinute(3, 0)).toThrow(RangeError);
  });
});
