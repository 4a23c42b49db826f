// Another question for one cell of a trail, its answer on the same tile. The picture stays as it is, and so does its proof.
import { localeOf } from '../../numbers/locale.js';
import { foldText } from '../../questions/equivalence.js';
import { hashText, Rng } from '../../random/rng.js';
import { answerMarks, shareMark } from '../sameness.js';
import { drawQuestions, planSupply } from '../supply.js';
import { answerShapes, placeAnswer } from './answer-shape.js';
import { fitsCell, LEAST_LETTER_MM, longestTextOn, type TrailRequest, type TrailResult } from './compose.js';
import { layoutOf } from './draw/layout-of.js';
import { tileSideMm } from './sizes.js';
import type { Trail } from './trail.js';

/** Draws before the trail is said to have room for nothing else there. */
const MOST_DRAWS = 300;
const LONGEST_ANSWER = 14;

/**
 * The trail with another question on `place` (a cell, row by row from 0) whose answer is unlike all others and fits the
 * tile. `request` is the one the trail was composed from; `turn` counts the wishes, so that asking again brings something
 * else. Errors: a place outside the trail, nothing that fits there.
 */
export function replaceTrailQuestion(
  trail: Trail,
  place: number,
  request: TrailRequest,
  turn: number,
): TrailResult {
  const tile = trail.tiles[place];
  if (!tile) {
    return {
      ok: false,
      error: {
        code: 'trail.place',
        message: `This trail has no cell ${place + 1}.`,
        hint: `Choose a cell from 1 to ${trail.tiles.length}.`,
      },
    };
  }
  const seed = hashText(`${request.seed}/${place}/${turn}`) | 0;
  const side = tileSideMm(trail.rows, trail.columns);
  const due = request.due ? { due: new Rng(seed).fork('due').shuffle(request.due) } : {};
  const plan = planSupply({
    ...request,
    ...due,
    seed,
    longestText: longestTextOn(side),
    longestAnswer: LONGEST_ANSWER,
    suits: (question) => fitsCell(question, side, trail.locale),
  });
  if (!plan.ok) return plan;
  const locale = localeOf(trail.locale);
  const texts = new Set(trail.cells.map(({ question }) => foldText(question.text)));
  const taken = trail.tiles.flatMap(({ answer }, at) => (at === place ? [] : answerMarks(answer, locale)));
  const rooms = layoutOf(trail, place)?.rooms ?? [];
  const least = (LEAST_LETTER_MM / side) * 100;
  for (const { question, rightMarks } of drawQuestions(plan.value, MOST_DRAWS)) {
    if (texts.has(foldText(question.text)) || shareMark(rightMarks, taken)) continue;
    if (placeAnswer(answerShapes(question.answer.text), rooms, least) === null) continue;
    return {
      ok: true,
      value: {
        ...trail,
        cells: trail.cells.map((cell, at) => (at === place ? { question } : cell)),
        tiles: trail.tiles.map((one, at) => (at === place ? { ...one, answer: question.answer } : one)),
      },
    };
  }
  return {
    ok: false,
    error: {
      code: 'trail.swap',
      message: 'Nothing else fits on this tile while the others stay.',
      hint: 'Swap another question first, or make another trail.',
    },
  };
}
