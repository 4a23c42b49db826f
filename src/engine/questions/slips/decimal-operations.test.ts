// Decimals: worked wrong answers, some seen as quoted by other texts, the rest common practice.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, equals, rational } from '../../numbers/rational.js';
import {
  addPartsApart,
  appendZero,
  multiplyPartsApart,
  rightAligned,
  tenTimesWholePart,
  withoutPoint,
} from './decimal-operations.js';

describe('wrong decimal methods', () => {
  it('reproduces the worked examples', () => {
    // Seen as quoted by another text: 2.5 × 10 written 2.50; 4.7 − 0.24 answered 0.23, from 47 − 24.
    expect(appendZero(rational(25, 10))).toEqual(rational(250, 100));
    expect(rightAligned(rational(47, 10), -1, rational(24, 100))).toEqual({
      value: rational(23, 100),
      places: 2,
    });
    expect(addPartsApart(rational(36, 10), rational(7, 10))).toEqual({
      value: rational(313, 100),
      places: 2,
    });
    expect(multiplyPartsApart(rational(36, 10), 4)).toEqual({ value: rational(1224, 100), places: 2 });
    expect(multiplyPartsApart(rational(36, 10), 2)).toEqual({ value: rational(612, 100), places: 2 });
    expect(tenTimesWholePart(rational(36, 10))).toEqual(rational(306, 10));
    expect(withoutPoint(rational(144, 10))).toBe(144);
    expect(withoutPoint(rational(14))).toBeNull();
  });

  it('keeps the zeros at the end that a child writes', () => {
    const nineTen = { value: rational(91, 10), places: 2 };
    expect(addPartsApart(rational(59, 10), rational(41, 10))).toEqual(nineTen);
    expect(multiplyPartsApart(rational(455, 100), 2)).toEqual({ value: rational(811, 100), places: 3 });
    expect(rightAligned(rational(3108, 100), 1, rational(2, 10))).toEqual({
      value: rational(311, 10),
      places: 2,
    });
  });

  it('appends a zero rightly only to whole numbers', () => {
    expect(appendZero(rational(47))).toEqual(rational(470));
  });

  it('gives nothing for numbers without a finite decimal', () => {
    const third = rational(1, 3);
    expect(addPartsApart(third, third)).toBeNull();
    expect(multiplyPartsApart(third, 2)).toBeNull();
    expect(rightAligned(third, 1, third)).toBeNull();
    expect(rightAligned(rational(1, 10), -1, rational(5, 10))).toBeNull();
  });

  it('adds parts apart rightly exactly when no ten tenths meet, for one place', () => {
    const tenths = fc.integer({ min: 0, max: 300 });
    fc.assert(
      fc.property(tenths, tenths, (a, b) => {
        const [x, y] = [rational(a, 10), rational(b, 10)];
        const right = equals(addPartsApart(x, y)?.value ?? rational(-1), add(x, y));
        return right === (a % 10) + (b % 10) < 10;
      }),
    );
  });
});
