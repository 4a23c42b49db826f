import { describe, expect, it } from 'vitest';
import { localeOf } from '../../numbers/locale.js';
import { answerMarks } from '../sameness.js';
import { composeTrail, type TrailRequest } from './compose.js';
import { drawSolved } from './draw/draw-mat.js';
import { proveTrail } from './proof.js';
import { replaceTrailQuestion } from './replace-question.js';

const BASE: TrailRequest = { years: [3, 4], rows: 4, columns: 4, seed: 1, locale: 'en-AU' };

function trailOf(request: TrailRequest) {
  const made = composeTrail(request);
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

describe('replaceTrailQuestion', () => {
  it('changes one question and the answer on its tile, and nothing of the picture', () => {
    let swapped = 0;
    for (let seed = 1; seed <= 4; seed++) {
      const request = { ...BASE, seed };
      const trail = trailOf(request);
      for (const place of [0, 5, 15]) {
        const result = replaceTrailQuestion(trail, place, request, 1);
        if (!result.ok) continue;
        swapped++;
        const made = result.value;
        expect(made.cells[place]?.question.text).not.toBe(trail.cells[place]?.question.text);
        expect(made.tiles[place]?.answer).toEqual(made.cells[place]?.question.answer);
        const { answer: _, ...lines } = made.tiles[place] ?? {};
        expect(trail.tiles[place]).toMatchObject(lines);
        made.cells.forEach((cell, at) => at !== place && expect(cell).toEqual(trail.cells[at]));
        expect(proveTrail(made)).toEqual(trail.proof);
        const marks = made.tiles.flatMap(({ answer }) => [
          ...new Set(answerMarks(answer, localeOf('en-AU'))),
        ]);
        expect(new Set(marks).size).toBe(marks.length);
        // It can be drawn: throws when the answer has no room on its tile.
        expect(drawSolved(made).svg).toContain('<svg');
      }
    }
    expect(swapped).toBeGreaterThanOrEqual(10);
  });

  it('brings something else each time, and says when nothing fits', () => {
    const trail = trailOf(BASE);
    const texts = [1, 2, 3, 4].flatMap((turn) => {
      const result = replaceTrailQuestion(trail, 3, BASE, turn);
      return result.ok ? [result.value.cells[3]?.question.text] : [];
    });
    expect(new Set(texts).size).toBeGreaterThanOrEqual(3);
    expect(replaceTrailQuestion(trail, 16, BASE, 1)).toMatchObject({
      ok: false,
      error: { code: 'trail.place' },
    });
    expect(replaceTrailQuestion(trail, 0, { ...BASE, success: [1, 1] }, 1)).toMatchObject({
      ok: false,
      error: { code: 'trail.swap' },
    });
  });
});
