import { describe, expect, it } from 'vitest';
import { isBar, outlinesOfSize } from './outlines.js';

describe('outlinesOfSize', () => {
  it('finds every outline once: 1, 2, 6, 19, 63 (OEIS A001168)', () => {
    expect([1, 2, 3, 4, 5].map((size) => outlinesOfSize(size).length)).toEqual([1, 2, 6, 19, 63]);
  });

  it('has one lying and one standing bar of each size', () => {
    for (const size of [2, 3, 4, 5]) expect(outlinesOfSize(size).filter(isBar)).toHaveLength(2);
  });
});
