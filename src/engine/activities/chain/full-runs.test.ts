// Counts known from elsewhere: (n-2)! runs in a complete graph, Fibonacci numbers, and a plain listing of all orders.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countFullRuns } from './full-runs.js';

/** Every order of the inner strips, tried one by one. */
function countByListing(arrows: readonly number[]): number {
  const last = arrows.length - 1;
  const has = (from: number, to: number) => (((arrows[from] as number) >> to) & 1) === 1;
  const visit = (at: number, open: readonly number[]): number =>
    open.length === 0
      ? Number(has(at, last))
      : open
          .filter((to) => has(at, to))
          .reduce(
            (sum, to) =>
              sum +
              visit(
                to,
                open.filter((one) => one !== to),
              ),
            0,
          );
  return visit(
    0,
    Array.from({ length: last - 1 }, (_, i) => i + 1),
  );
}

describe('countFullRuns', () => {
  it('finds (n - 2)! runs in a complete graph', () => {
    for (const [size, runs] of [
      [2, 1],
      [3, 1],
      [6, 24],
      [10, 40_320],
      [14, 479_001_600],
    ] as const)
      expect(countFullRuns(Array.from({ length: size }, () => 2 ** size - 1))).toBe(runs);
  });

  it('finds Fibonacci numbers where each strip leads one or two on, or one back', () => {
    // Runs either step on or skip one and come back for it: tilings of a row with pieces of 1 and 3.
    const runsOf = (size: number) =>
      countFullRuns(
        Array.from({ length: size }, (_, i) =>
          [i - 1, i + 1, i + 2].filter((j) => j >= 0 && j < size).reduce((bits, j) => bits | (1 << j), 0),
        ),
      );
    const sizes = [4, 5, 6, 7, 8, 9, 10, 11];
    const counts = sizes.map(runsOf);
    for (let i = 3; i < counts.length; i++)
      expect(counts[i]).toBe((counts[i - 1] as number) + (counts[i - 3] as number));
  });

  it('agrees with a listing of all orders', () => {
    const graph = fc
      .integer({ min: 2, max: 8 })
      .chain((size) => fc.array(fc.nat(2 ** size - 1), { minLength: size, maxLength: size }));
    fc.assert(
      fc.property(graph, (arrows) => {
        expect(countFullRuns(arrows)).toBe(countByListing(arrows));
      }),
      {
        numRuns: 400,
      },
    );
  });

  it('allows no run with exactly one or two wrong turns, whatever the wrong turns are', () => {
    // The theorem behind the chain: with unlike answers, one or two mistakes always show.
    for (let size = 4; size <= 9; size++) {
      const right = Array.from({ length: size }, (_, i) => (i < size - 1 ? 1 << (i + 1) : 0));
      for (let a = 0; a < size - 1; a++)
        for (let b = a + 1; b < size - 1; b++) {
          const arrows = right.map((bits, i) => (i === a || i === b ? 2 ** size - 1 - bits : bits));
          expect(countFullRuns(arrows)).toBe(0);
        }
    }
  });

  it('refuses graphs too large to count', () => {
    expect(() => countFullRuns(Array.from({ length: 21 }, () => 0))).toThrow(RangeError);
  });
});
