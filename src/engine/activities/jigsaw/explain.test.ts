import { describe, expect, it } from 'vitest';
import { must } from '../../../../test/support/must.js';
import { composeJigsaw } from './compose.js';
import { explainJigsaw } from './explain.js';
import { JIGSAW_LEVELS, ROW_KINDS } from './jigsaw.js';

const jigsaws = await Promise.all(
  ROW_KINDS.filter((kind) => kind !== 'equivalents' && kind !== 'steps' && kind !== 'missing').flatMap(
    (rowKind, i) =>
      JIGSAW_LEVELS.map((level) =>
        must(
          composeJigsaw({ years: [3, 4], rowKind, rows: 5, columns: 7, level, seed: i + 1, locale: 'en-AU' }),
        ),
      ),
  ),
);

describe('explainJigsaw', () => {
  it('lays every piece once, tells where and why, and fills every row once', () => {
    for (const jigsaw of jigsaws) {
      const steps = explainJigsaw(jigsaw);
      expect(steps.map(({ piece }) => piece).toSorted((a, b) => a - b)).toEqual(
        jigsaw.pieces.map((_, i) => i),
      );
      expect(steps.flatMap(({ rowsDone }) => rowsDone).toSorted()).toEqual(
        Array.from({ length: jigsaw.rows }, (_, i) => i),
      );
      for (const { text, name, cells, piece, reason } of steps) {
        expect(text).toMatch(/row \d+, column \d+/);
        expect(text, reason).toContain(`iece ${name}`);
        expect(cells).toEqual(jigsaw.pieces[piece]?.cells);
        expect(text).not.toMatch(/undefined|NaN|\s{2}/);
      }
    }
  });

  it('needs no trying where the jigsaw is easy, and trying where it is not', () => {
    for (const jigsaw of jigsaws) {
      const tried = explainJigsaw(jigsaw).filter(({ reason }) => reason === 'tried').length;
      if (jigsaw.proof.level === 'easy') expect(tried).toBe(0);
      else expect(tried).toBeGreaterThan(0);
    }
  });

  it('names the row that a wrong piece would make false', () => {
    const texts = jigsaws.flatMap((jigsaw) => explainJigsaw(jigsaw).map(({ text }) => text));
    expect(texts.some((text) => /With piece \w+ row \d+ would read .+, which is not true/.test(text))).toBe(
      true,
    );
    expect(texts.some((text) => /The mat shows .+: only piece \w+/.test(text))).toBe(true);
  });
});
