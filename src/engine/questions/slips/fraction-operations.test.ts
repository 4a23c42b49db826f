// Fractions: the published wrong answers, reproduced exactly.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, equals } from '../../numbers/rational.js';
import {
  addOverLargerBottom,
  addTopsAndBottoms,
  multiplyBoth,
  subtractTopsAndBottoms,
  type Written,
  writtenValue,
} from './fraction-operations.js';

const fraction = (top: number, bottom: number): Written => ({ top, bottom });

describe('wrong fraction sums', () => {
  it('adds tops and bottoms as published', () => {
    // Young-Loveridge et al. 2006, abstract: almost a quarter of Year 7 and 8 students on 3/4 + 7/8.
    expect(addTopsAndBottoms(fraction(3, 4), fraction(7, 8))).toEqual(fraction(10, 12));
    expect(addTopsAndBottoms(fraction(1, 2), fraction(1, 3))).toEqual(fraction(2, 5));
    // NFER commentary: 6/14 where 6/7 was right.
    expect(addTopsAndBottoms(fraction(2, 7), fraction(4, 7))).toEqual(fraction(6, 14));
  });

  it('is never right for positive fractions', () => {
    const part = fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 2, max: 20 }));
    fc.assert(
      fc.property(part, part, ([a, b], [c, d]) => {
        const wrong = writtenValue(addTopsAndBottoms(fraction(a, b), fraction(c, d)));
        return !equals(wrong, add(writtenValue(fraction(a, b)), writtenValue(fraction(c, d))));
      }),
    );
  });

  it('takes tops and bottoms apart, adds over the larger bottom, multiplies both', () => {
    expect(subtractTopsAndBottoms(fraction(5, 6), fraction(1, 3))).toEqual(fraction(4, 3));
    expect(subtractTopsAndBottoms(fraction(6, 7), fraction(4, 7))).toBeNull();
    expect(addOverLargerBottom(fraction(3, 4), fraction(1, 8))).toEqual(fraction(4, 8));
    expect(multiplyBoth(fraction(2, 5), 3)).toEqual(fraction(6, 15));
  });
});
