import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitMat, GAP_PX, type Size } from './fit-mat.js';

const tiles = (count: number): Size[] => Array.from({ length: count }, () => ({ width: 1, height: 1 }));

describe('fitMat', () => {
  it('lays the loose pieces beside the mat on a wide screen and below it on an upright one', () => {
    const mat = { width: 4.4, height: 5.4 };
    expect(fitMat(mat, tiles(16), { width: 1880, height: 990 }).isBeside).toBe(true);
    expect(fitMat(mat, tiles(16), { width: 800, height: 1100 }).isBeside).toBe(false);
  });

  it('gives a finger room on a tablet and letters size on a television', () => {
    const mat = { width: 4.4, height: 5.4 };
    expect(fitMat(mat, tiles(16), { width: 800, height: 1090 }).cellPx).toBeGreaterThanOrEqual(100);
    expect(fitMat(mat, tiles(16), { width: 1880, height: 990 }).cellPx).toBeGreaterThanOrEqual(170);
    expect(
      fitMat({ width: 6.5, height: 7.9 }, tiles(36), { width: 800, height: 1090 }).cellPx,
    ).toBeGreaterThan(60);
  });

  it('has everything on the ground, no piece on another', () => {
    const size = fc.record({ width: fc.integer({ min: 1, max: 4 }), height: fc.integer({ min: 1, max: 3 }) });
    fc.assert(
      fc.property(
        fc.array(size, { minLength: 4, maxLength: 20 }),
        fc.integer({ min: 700, max: 2000 }),
        fc.integer({ min: 700, max: 1200 }),
        (pieces, width, height) => {
          const mat = { width: 7, height: 5 };
          const { cellPx, isBeside, spots, trayPx } = fitMat(mat, pieces, { width, height });
          const boxes = spots.map(({ x, y }, at) => ({
            left: x,
            top: y,
            right: x + (pieces[at]?.width ?? 0) * cellPx,
            bottom: y + (pieces[at]?.height ?? 0) * cellPx,
          }));
          const trayHeight = isBeside ? height : height - mat.height * cellPx - 2 * GAP_PX;
          for (const [i, a] of boxes.entries()) {
            expect(a.right).toBeLessThanOrEqual(trayPx);
            expect(a.bottom).toBeLessThanOrEqual(trayHeight);
            for (const b of boxes.slice(i + 1))
              expect(a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top).toBe(
                true,
              );
          }
        },
      ),
    );
  });
});
