// Boards that need no composer: twelve plain additions.
import type { Board, Rung } from '#engine/activities/board/board.js';
import type { Question } from '#engine/questions/question.js';

function sampleQuestion(a: number, b: number): Question {
  const sum = String(a + b);
  return {
    id: `sample-${a}-${b}`,
    skill: 'sample',
    year: 2,
    strand: 'addition',
    text: `${a} + ${b}`,
    figure: null,
    answer: { kind: 'number', text: sum, value: sum },
    accepts: [sum],
    expression: `${a} + ${b}`,
    difficulty: 0,
    slips: [],
    strategy: [`${a} + ${b} = ${sum}`],
    usesNumber: null,
  };
}

/** A board that asks for seed + 1, seed + 2, …; different seeds give different boards. */
export function sampleBoard(seed: number, side: 'front' | 'back' = 'front'): Board {
  const rungs = Array.from(
    { length: 12 },
    (_, i): Rung => ({
      rung: i + 1,
      question: sampleQuestion(seed, i + 1),
      target: 0.9,
      predicted: 0.9,
      commonDifficulty: 2,
      why: 'A sample.',
    }),
  );
  const proof = {
    objective: 0,
    candidates: 12,
    strands: 1,
    worstMiss: 0,
    missedRungs: [],
    reviewsDue: [],
    reviewsPlaced: [],
  };
  return { kind: 'board', seed, number: String(seed), years: [4, 5], side, locale: 'en-AU', rungs, proof };
}
