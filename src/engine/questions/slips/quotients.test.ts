// Quotients: typical wrong methods (common practice).
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../numbers/rational.js';
import { divideDigits, remainderAsTenths } from './quotients.js';

describe('wrong quotients', () => {
  it('divides each digit alone', () => {
    expect(divideDigits(84, 6)).toBe(10);
    expect(divideDigits(36, 2)).toBe(13);
    expect(divideDigits(305, 5)).toBeNull();
    expect(divideDigits(86, 2)).toBe(43);
  });

  it('is never above the true quotient', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 9999 }), fc.integer({ min: 2, max: 9 }), (n, k) => {
        const wrong = divideDigits(n, k);
        return wrong === null || wrong <= n / k;
      }),
    );
  });

  it('writes the remainder after a point', () => {
    expect(remainderAsTenths(47, 5)).toEqual(rational(92, 10));
    expect(remainderAsTenths(45, 5)).toBeNull();
    expect(remainderAsTenths(46, 12)).toBeNull();
  });
});
