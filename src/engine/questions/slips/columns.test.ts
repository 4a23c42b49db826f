import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDroppingCarries, addLeftAligned, addWritingCarries, carriesOf } from './column-addition.js';
import { borrowsOf, columnSubtract, type SubtractionBug } from './column-subtraction.js';

const PRODUCTION_SYSTEM = 'public production-system model after Brown & VanLehn 1980, test table';
const REPAIR_STORY = 'public code after "the buggy repair step story"';

const SEEN: readonly (readonly [
  a: number,
  b: number,
  wrong: number,
  bugs: readonly SubtractionBug[],
  source: string,
])[] = [
  [63, 29, 46, ['smaller-from-larger'], 'Ben-Zeev, citing VanLehn 1983, 1986'],
  [143, 24, 121, ['smaller-from-larger'], REPAIR_STORY],
  [81, 38, 57, ['smaller-from-larger'], PRODUCTION_SYSTEM],
  [50, 23, 33, ['smaller-from-larger'], PRODUCTION_SYSTEM],
  [305, 9, 304, ['smaller-from-larger'], PRODUCTION_SYSTEM],
  [143, 28, 125, ['borrow-no-decrement'], REPAIR_STORY],
  [81, 38, 53, ['borrow-no-decrement'], PRODUCTION_SYSTEM],
  [50, 23, 37, ['borrow-no-decrement'], PRODUCTION_SYSTEM],
  [305, 9, 306, ['borrow-no-decrement'], PRODUCTION_SYSTEM],
  [1300, 522, 878, ['borrow-from-zero'], REPAIR_STORY],
  [305, 9, 396, ['borrow-from-zero'], PRODUCTION_SYSTEM],
  [4002, 5, 4097, ['borrow-from-zero'], PRODUCTION_SYSTEM],
  [305, 9, 206, ['borrow-across-zero'], PRODUCTION_SYSTEM],
  [4002, 5, 3007, ['borrow-across-zero'], PRODUCTION_SYSTEM],
  [140, 21, 121, ['zero-minus-n-is-n'], REPAIR_STORY],
  // From memory, not verified outside; each follows from the rule's definition.
  [253, 118, 145, ['smaller-from-larger'], 'from memory (Brown & Burton 1978)'],
  [62, 44, 28, ['borrow-no-decrement'], 'from memory (VanLehn 1990)'],
  [103, 45, 158, ['borrow-from-zero'], 'from memory (Brown & Burton 1978)'],
  [602, 327, 225, ['borrow-across-zero', 'zero-minus-n-is-n'], 'from memory (Brown & VanLehn 1980)'],
  [804, 456, 308, ['borrow-across-zero', 'zero-minus-n-is-zero'], 'from memory'],
  [703, 678, 175, ['stops-borrow-at-zero', 'zero-minus-n-is-n'], 'from memory'],
  [709, 352, 457, ['zero-minus-n-is-n'], 'from memory'],
  [804, 462, 402, ['zero-minus-n-is-zero'], 'from memory'],
];

describe('column subtraction', () => {
  it.each(SEEN)('%i - %i gives %i by %s (%s)', (a, b, wrong, bugs) => {
    expect(columnSubtract(a, b, ...bugs)).toBe(wrong);
  });

  it('is right without bugs, and counts borrows as carries of the sum back', () => {
    fc.assert(
      fc.property(fc.nat(99_999), fc.nat(99_999), (x, y) => {
        const [a, b] = x >= y ? [x, y] : [y, x];
        expect(columnSubtract(a, b)).toBe(a - b);
        // A borrow in a - b happens in exactly the columns where (a - b) + b carries.
        expect(borrowsOf(a, b).borrows).toBe(carriesOf(a - b, b));
      }),
    );
  });
});

describe('column addition', () => {
  it('gives the wrong sums children write (from memory)', () => {
    expect(addDroppingCarries(47, 38)).toBe(75);
    expect(addWritingCarries(47, 38)).toBe(715);
    expect(addLeftAligned(47, 6)).toBe(107);
  });

  it('differs from the true sum exactly when a carry is lost', () => {
    fc.assert(
      fc.property(fc.nat(9999), fc.nat(9999), (a, b) => {
        const columns = Math.max(String(a).length, String(b).length);
        const innerCarries = carriesOf(a % 10 ** (columns - 1), b % 10 ** (columns - 1));
        expect(addDroppingCarries(a, b) === a + b).toBe(innerCarries === 0);
        expect(addWritingCarries(a, b) === a + b).toBe(innerCarries === 0);
      }),
    );
  });
});
