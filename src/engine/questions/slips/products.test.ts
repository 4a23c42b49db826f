// Products: worked wrong answers of the trade, and properties that tell each method from the right one.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  multiplyColumns,
  multiplyTensOnly,
  multiplyWithoutCarry,
  multiplyWithoutCross,
  tableNeighbours,
} from './products.js';

const twoDigits = fc.integer({ min: 11, max: 99 });
const digit = fc.integer({ min: 2, max: 9 });

describe('wrong products', () => {
  it('multiplies columns apart', () => {
    // From memory: 23 × 45 answered 815, from 2 × 4 and 3 × 5.
    expect(multiplyColumns(23, 45)).toBe(815);
    expect(multiplyColumns(123, 45)).toBeNull();
  });

  it('multiplies only the tens', () => {
    expect(multiplyTensOnly(47, 6)).toBe(247);
    fc.assert(fc.property(twoDigits, digit, (a, k) => a * k - multiplyTensOnly(a, k) === (a % 10) * (k - 1)));
  });

  it('forgets carries, and agrees with the right product exactly when there are none', () => {
    expect(multiplyWithoutCarry(47, 6)).toBe(242);
    expect(multiplyWithoutCarry(305, 7)).toBe(2105);
    fc.assert(
      fc.property(twoDigits, digit, (a, k) => (multiplyWithoutCarry(a, k) === a * k) === (a % 10) * k < 10),
    );
  });

  it('leaves out the cross products', () => {
    expect(multiplyWithoutCross(47, 23)).toBe(821);
    fc.assert(
      fc.property(twoDigits, twoDigits, (a, b) => {
        const cross = (a - (a % 10)) * (b % 10) + (a % 10) * (b - (b % 10));
        return a * b - multiplyWithoutCross(a, b) === cross;
      }),
    );
  });

  it('names the facts next door, never the fact itself', () => {
    expect(tableNeighbours(7, 8)).toEqual([49, 63, 48, 64]);
    fc.assert(
      fc.property(digit, digit, (a, b) =>
        tableNeighbours(a, b).every((wrong) => wrong !== a * b && wrong > 0),
      ),
    );
  });
});
