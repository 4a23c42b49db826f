import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addOnSteps, addSteps, countUpSteps, placeParts } from './adding.js';
import { subtractSteps } from './subtracting.js';

const plain = String;

/** The last number a list of steps reaches. */
function reached(steps: readonly string[]): number {
  return Number(/(\d+)\D*$/.exec(steps.at(-1) ?? '')?.[1]);
}

describe('mental steps', () => {
  it('add as children are taught to', () => {
    expect(addSteps(47, 38, plain)).toEqual(['47 + 40 = 87', '87 − 2 = 85']);
    expect(addSteps(47, 36, plain)).toEqual(['47 + 30 = 77', '77 + 6 = 83']);
    expect(addSteps(28, 5, plain)).toEqual(['28 + 2 = 30', '30 + 3 = 33']);
    expect(addSteps(7, 8, plain)).toEqual(['7 + 7 = 14', '14 + 1 = 15']);
  });

  it('subtract as children are taught to', () => {
    expect(subtractSteps(54, 7, plain)).toEqual(['54 − 4 = 50', '50 − 3 = 47']);
    expect(subtractSteps(74, 29, plain)).toEqual(['74 − 30 = 44', '44 + 1 = 45']);
    expect(subtractSteps(83, 47, plain)).toEqual(['83 − 40 = 43', '43 − 7 = 36']);
  });

  it('go on from a total reached before', () => {
    expect(addOnSteps(78, 11, plain)).toEqual(['78 + 10 = 88', '88 + 1 = 89']);
    expect(addOnSteps(78, 20, plain)).toEqual(['78 + 20 = 98']);
    expect(addOnSteps(8, 7, plain)).toEqual(['8 + 2 = 10', '10 + 5 = 15']);
    fc.assert(
      fc.property(fc.nat(9999), fc.nat(9999), (a, b) => {
        const steps = addOnSteps(a, b, plain);
        expect(reached(steps)).toBe(a + b);
        expect(steps[0]).toMatch(new RegExp(`^(?:.*(?:, so|:) )?${a} \\+ |^Double ${a} `));
      }),
    );
  });

  it('count up over round numbers', () => {
    expect(countUpSteps(47, 300, plain)).toEqual([
      '47 + 3 = 50',
      '50 + 50 = 100',
      '100 + 200 = 300',
      '3 + 50 + 200 = 253',
    ]);
    expect(placeParts(308)).toEqual([300, 8]);
  });

  it('count up in the places that change where the last digits stay', () => {
    expect(countUpSteps(2026, 5026, plain)).toEqual(['Only the thousands change: 2026 + 3000 = 5026']);
    expect(countUpSteps(347, 437, plain)).toEqual(['34 tens and 9 tens are 43 tens, so 347 + 90 = 437']);
    expect(countUpSteps(2026, 6326, plain)).toEqual([
      '2026 + 4000 = 6026',
      '6026 + 300 = 6326',
      '4000 + 300 = 4300',
    ]);
    expect(countUpSteps(2026, 5030, plain)).toEqual([
      '2026 + 3000 = 5026',
      '5026 + 4 = 5030',
      '3000 + 4 = 3004',
    ]);
    expect(countUpSteps(2000, 5000, plain)).toEqual(['2000 + 3000 = 5000']);
    expect(countUpSteps(66, 104, plain)).toEqual([
      '66 + 4 = 70',
      '70 + 30 = 100',
      '100 + 4 = 104',
      '4 + 30 + 4 = 38',
    ]);
  });

  it('always arrive', () => {
    fc.assert(
      fc.property(fc.nat(999_999), fc.nat(999_999), (x, y) => {
        const [a, b] = x >= y ? [x, y] : [y, x];
        expect(reached(addSteps(x, y, plain))).toBe(x + y);
        if (a === b) return;
        // Close numbers are counted up instead; that is looked at below.
        if (a - b > 9 || b < 10) expect(reached(subtractSteps(a, b, plain))).toBe(a - b);
        const up = countUpSteps(b, a, plain);
        expect(reached(up)).toBe(up.length === 1 ? a : a - b);
        expect(up.length).toBeLessThanOrEqual(8);
      }),
    );
  });
});
