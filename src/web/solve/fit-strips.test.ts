import { describe, expect, it } from 'vitest';
import { fitStrips, rowsNeeded } from './fit-strips.js';

describe('rowsNeeded', () => {
  it('counts the worst split between chain and loose strips', () => {
    expect(rowsNeeded(10, 1)).toBe(11);
    expect(rowsNeeded(10, 3)).toBe(5);
    expect(rowsNeeded(16, 2)).toBe(9);
    expect(rowsNeeded(6, 6)).toBe(2);
  });
});

describe('fitStrips', () => {
  /** Text of `letters` letters of half their height, wrapped, in 70 % of the strip. */
  const holding = (letters: number) => (fit: { widthPx: number; heightPx: number; letterPx: number }) => {
    const perLine = Math.floor((0.7 * fit.widthPx) / (0.5 * fit.letterPx));
    return perLine >= 8 && Math.ceil(letters / perLine) * 1.14 * fit.letterPx <= fit.heightPx - 14;
  };
  it('never needs more room than there is, on a tablet, a laptop and a television', () => {
    for (const [widthPx, heightPx] of [
      [780, 850],
      [960, 680],
      [1370, 960],
    ] as const) {
      for (const strips of [6, 10, 16]) {
        const fit = fitStrips(strips, { widthPx, heightPx }, holding(60));
        expect(fit.columns * fit.widthPx).toBeLessThanOrEqual(widthPx);
        expect(rowsNeeded(strips, fit.columns) * fit.heightPx).toBeLessThanOrEqual(heightPx);
        expect(holding(60)(fit)).toBe(true);
        expect(fit.letterPx).toBeGreaterThanOrEqual(12);
      }
    }
  });
  it('takes larger letters for shorter texts', () => {
    const ground = { widthPx: 1370, heightPx: 960 };
    expect(fitStrips(10, ground, holding(20)).letterPx).toBeGreaterThan(
      fitStrips(10, ground, holding(90)).letterPx,
    );
  });
});
