import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balanceTwo, groupPages, packColumns } from './packing.js';

const heights = fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 16 });
const sum = (indexes: readonly number[], of: readonly number[]) =>
  indexes.reduce((total, at) => total + (of[at] ?? 0), 0);

describe('packColumns', () => {
  it('keeps every rung once, in order, and no column too tall unless one rung alone is', () => {
    fc.assert(
      fc.property(heights, fc.integer({ min: 50, max: 900 }), (of, tall) => {
        const columns = packColumns(of, tall);
        expect(columns.flat()).toEqual(of.map((_, index) => index));
        for (const column of columns) expect(column.length === 1 || sum(column, of) <= tall).toBe(true);
      }),
    );
  });
});

describe('balanceTwo', () => {
  it('finds the split whose taller column is the shortest possible', () => {
    fc.assert(
      fc.property(heights, (of) => {
        const [left = [], right = []] = balanceTwo(of);
        expect([...left, ...right]).toEqual(of.map((_, index) => index));
        const taller = Math.max(sum(left, of), sum(right, of));
        for (let cut = 1; cut <= of.length; cut++) {
          const other = Math.max(
            ...[of.slice(0, cut), of.slice(cut)].map((part) => part.reduce((total, one) => total + one, 0)),
          );
          expect(taller).toBeLessThanOrEqual(other);
        }
      }),
    );
  });
});

describe('groupPages', () => {
  it('fills pages in order', () => {
    expect(groupPages(['a', 'b', 'c'], 2)).toEqual([['a', 'b'], ['c']]);
  });
});
