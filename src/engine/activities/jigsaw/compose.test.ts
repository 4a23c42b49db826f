import { describe, expect, it } from 'vitest';
import { must, refusalOf } from '../../../../test/support/must.js';
import { composeJigsaw } from './compose.js';
import { type Jigsaw, type Place, ROW_KINDS } from './jigsaw.js';
import { fitsAsked } from './outline-fits.js';
import { proveJigsaw } from './proof.js';
import type { JigsawRequest } from './request.js';
import { isRowPlainlyTrue } from './row-truth.js';

const usual: JigsawRequest = { years: [3, 4], rows: 5, columns: 7, seed: 1, locale: 'en-AU' };
const made = await Promise.all(
  ROW_KINDS.flatMap((rowKind) => [1, 2, 3].map((seed) => must(composeJigsaw({ ...usual, rowKind, seed })))),
);

function rowsOf({ cells, rows, columns }: Jigsaw) {
  return Array.from({ length: rows }, (_, row) => cells.slice(row * columns, (row + 1) * columns));
}

describe('composeJigsaw', () => {
  it('names the same jigsaw by the same seed, another by another', async () => {
    const again = await must(composeJigsaw({ ...usual, rowKind: 'mixed', seed: 1 }));
    expect(again).toEqual(made[0]);
    expect(made[1]?.cells).not.toEqual(made[0]?.cells);
  });

  it('states what its proof finds again from the finished jigsaw', () => {
    for (const jigsaw of made) {
      expect(proveJigsaw(jigsaw)).toEqual(jigsaw.proof);
      expect(jigsaw.proof).toMatchObject({ assemblies: 1, wrongTries: 0, level: 'easy' });
      expect(jigsaw.proof.outlineFits).toBeGreaterThanOrEqual(30);
    }
  });

  it('interlocks: at most a third of the pieces are rectangles', async () => {
    const large = [4, 7, 10].map((seed) =>
      must(composeJigsaw({ ...usual, years: [5, 6], rows: 8, columns: 10, seed })),
    );
    for (const { pieces } of [...made, ...(await Promise.all(large))]) {
      const rectangles = pieces.filter(({ cells }) => {
        const [down, across] = [0, 1].map((at) => new Set(cells.map((place) => place[at])).size);
        return cells.length === (down as number) * (across as number);
      });
      expect(rectangles.length).toBeLessThanOrEqual(pieces.length / 3);
    }
  });

  it('has different rows, all plainly true', () => {
    for (const jigsaw of made) {
      const rows = rowsOf(jigsaw);
      for (const row of rows) expect(isRowPlainlyTrue(row, jigsaw.rowRule)).toBe(true);
      expect(new Set(rows.map((row) => row.map(({ text }) => text).join(' '))).size).toBe(jigsaw.rows);
    }
  });

  it('prints every blank cell in the frame', () => {
    for (const jigsaw of made) {
      const printed = new Set(jigsaw.given.map((place) => place.join()));
      jigsaw.cells.forEach(({ text }, at) => {
        const place: Place = [Math.floor(at / jigsaw.columns), at % jigsaw.columns];
        if (text === '') expect(printed).toContain(place.join());
      });
    }
  });

  it('refuses at once what cannot be, and says what to change', async () => {
    expect(await refusalOf(composeJigsaw({ ...usual, years: [9] }))).toBe('jigsaw.years');
    expect(await refusalOf(composeJigsaw({ ...usual, rows: 2 }))).toBe('jigsaw.size');
    expect(await refusalOf(composeJigsaw({ ...usual, seed: 0.5 }))).toBe('jigsaw.seed');
  });
});

describe('fitsAsked', () => {
  it('is 10 for 4 x 5, 30 for 5 x 7 and 100 for 6 x 9, and grows with the size', () => {
    expect([fitsAsked(4, 5), fitsAsked(5, 7), fitsAsked(6, 9)]).toEqual([10, 30, 100]);
    expect(fitsAsked(8, 10)).toBeGreaterThan(100);
    expect(fitsAsked(3, 5)).toBeLessThan(10);
  });
});
