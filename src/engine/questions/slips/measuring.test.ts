import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational, toValue } from '../../numbers/rational.js';
import {
  area,
  changeCountedApart,
  changeLargerLessSmaller,
  halfPerimeter,
  perimeter,
  pointReadAsUnits,
  range,
  scaleReadByOnes,
  sorted,
  sum,
  unsortedMedian,
  wrongConversions,
} from './measuring.js';

describe('change', () => {
  it('from $10 for $4.85 is $6.15 when dollars and cents are counted up apart', () => {
    expect(changeCountedApart(1000, 485)).toBe(615);
  });

  it('from $10 for $4.85 is $6.85 when the smaller is taken from the larger in each part', () => {
    expect(changeLargerLessSmaller(1000, 485)).toBe(685);
  });

  it('counted up apart is always one whole too much, or right where the price is whole', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), (cost) => {
        expect(changeCountedApart(1000, cost) - (1000 - cost)).toBe(cost % 100 === 0 ? 0 : 100);
      }),
    );
  });
});

describe('units', () => {
  it('are changed by a tenth or ten times of the factor, or the wrong way', () => {
    const wrong = wrongConversions(rational(18, 5), 100);
    expect([wrong.tenTooFew, wrong.tenTooMany, wrong.reversed].map(toValue)).toEqual(['36', '3600', '9/250']);
  });

  it('lose the place of the point: 3.6 hours as 3 hours 6 minutes', () => {
    expect(pointReadAsUnits(rational(18, 5), 60)).toEqual(rational(186));
    expect(pointReadAsUnits(rational(3), 60)).toBeNull();
    expect(pointReadAsUnits(rational(1, 3), 60)).toBeNull();
  });
});

describe('rectangles', () => {
  it('of 7 by 3 have 20 around, 10 for two sides, 21 inside', () => {
    const [length, width] = [rational(7), rational(3)];
    expect([perimeter, halfPerimeter, area].map((way) => way(length, width).n)).toEqual([20, 10, 21]);
  });
});

describe('scales', () => {
  it('read by ones turn 350 mL, two marks of 25 after 300, into 302', () => {
    expect(scaleReadByOnes(0, 25, 100, 350)).toBe(302);
    expect(scaleReadByOnes(0, 25, 100, 300)).toBe(300);
  });
});

describe('lists of numbers', () => {
  const list = [9, 2, 30, 4, 5].map((value) => rational(value));

  it('give the middle one as it stands, unsorted', () => {
    expect(unsortedMedian(list).n).toBe(30);
    expect(sorted(list).map((value) => value.n)).toEqual([2, 4, 5, 9, 30]);
  });

  it('have a sum and a range, as JavaScript numbers agree', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 1, maxLength: 9 }), (numbers) => {
        const values = numbers.map((value) => rational(value));
        expect(sum(values).n).toBe(numbers.reduce((all, value) => all + value, 0));
        expect(range(values).n).toBe(Math.max(...numbers) - Math.min(...numbers));
      }),
    );
  });
});
