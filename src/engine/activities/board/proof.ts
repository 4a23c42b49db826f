// Guarantee of the board, checked again from its JSON alone: nothing here shares code with the composer.
import { STRANDS } from '../../curriculum/strands.js';
import { answersEqual } from '../../questions/equivalence.js';
import type { Board, Relaxation, Rung } from './board.js';

export type BoardCheck =
  | { readonly ok: true; readonly value: Board }
  | { readonly ok: false; readonly error: BoardCheckError };

export interface BoardCheckError {
  readonly code: 'board.invalid';
  readonly message: string;
  readonly hint: string;
  /** Every broken promise, one sentence each. */
  readonly problems: readonly string[];
}

/**
 * The board itself when everything it promises holds, otherwise the list of broken promises: rungs numbered from 1,
 * targets falling, predicted success never rising, difficulty never falling and equal to year + question difficulty,
 * texts unequal, answers of neighbours unequal, no slip equal to the answer, every rung about the day's number or due
 * or declared, at least 4 strands with at most 4 rungs each and every skill once unless declared, misses within 0.08
 * or listed and said, reviews as listed.
 */
export function checkBoard(board: Board): BoardCheck {
  const problems = [
    ...checkLadder(board.rungs),
    ...checkQuestions(board),
    ...checkVariety(board),
    ...checkListed(board),
  ];
  if (problems.length === 0) return { ok: true, value: board };
  return {
    ok: false,
    error: {
      code: 'board.invalid',
      message: `This board breaks ${problems.length === 1 ? 'a promise' : `${problems.length} promises`}: ${problems[0]}`,
      hint: 'Compose it again, or replace the rung named.',
      problems,
    },
  };
}

function checkLadder(rungs: readonly Rung[]): string[] {
  const problems: string[] = [];
  rungs.forEach((rung, i) => {
    const { question, predicted, target } = rung;
    if (rung.rung !== i + 1) problems.push(`Rung ${i + 1} is numbered ${rung.rung}.`);
    if (!(predicted >= 0 && predicted <= 1 && target > 0 && target < 1))
      problems.push(`Rung ${i + 1} has a share outside 0 to 1.`);
    if (Math.abs(rung.commonDifficulty - question.year - question.difficulty) > 0.00501) {
      problems.push(`Rung ${i + 1} states another difficulty than its question.`);
    }
    const before = rungs[i - 1];
    if (!before) return;
    if (predicted > before.predicted) problems.push(`Rung ${i + 1} is predicted easier than the one before.`);
    if (rung.commonDifficulty < before.commonDifficulty)
      problems.push(`Rung ${i + 1} is less difficult than the one before.`);
    if (target >= before.target) problems.push(`The target of rung ${i + 1} does not fall.`);
    if (answersEqual(question.answer, before.question.answer))
      problems.push(`Rungs ${i} and ${i + 1} have the same answer.`);
  });
  return problems;
}

function checkQuestions(board: Board): string[] {
  const problems: string[] = [];
  const texts = new Set<string>();
  for (const { rung, question, why } of board.rungs) {
    const text = question.text.toLowerCase().replace(/\s+/g, ' ').trim();
    if (texts.has(text)) problems.push(`The question of rung ${rung} stands on the board twice.`);
    texts.add(text);
    if (!STRANDS.some((strand) => strand.id === question.strand))
      problems.push(`Rung ${rung} belongs to no strand.`);
    if (question.slips.some((slip) => answersEqual(slip, question.answer)))
      problems.push(`A slip of rung ${rung} is its answer.`);
    if (!/^[A-Z].*\.$/u.test(why)) problems.push(`Rung ${rung} does not say why it is there.`);
    const isDue = board.proof.reviewsDue.includes(question.skill);
    if (question.usesNumber === null && !isDue && !isDeclared(board, 'rungs without the number of the day')) {
      problems.push(`Rung ${rung} neither uses ${board.number} nor is due.`);
    }
  }
  return problems;
}

function checkVariety(board: Board): string[] {
  const problems: string[] = [];
  const strands = countBy(board.rungs, (rung) => rung.question.strand);
  const skills = countBy(board.rungs, (rung) => rung.question.skill);
  if (board.proof.strands !== strands.size)
    problems.push(`${strands.size} strands stand on it, not ${board.proof.strands}.`);
  if (strands.size < 4 && !isDeclared(board, 'fewer than 4 strands'))
    problems.push('Fewer than 4 strands stand on it.');
  for (const [strand, count] of strands) {
    if (count > 4 && !isDeclared(board, 'more than 4 rungs of one strand'))
      problems.push(`${count} rungs are ${strand}.`);
  }
  for (const [skill, count] of skills) {
    if (count > 1 && !isDeclared(board, 'a skill more than once'))
      problems.push(`${skill} stands on it ${count} times.`);
  }
  return problems;
}

function checkListed(board: Board): string[] {
  const problems: string[] = [];
  const misses = board.rungs.map((rung) => Math.abs(rung.predicted - rung.target));
  const missed = board.rungs.filter((_, i) => (misses[i] as number) > 0.08 + 1e-9);
  if (missed.map((rung) => rung.rung).join() !== board.proof.missedRungs.join())
    problems.push('The list of missed rungs is wrong.');
  for (const { rung, why } of missed)
    if (!/ this rung( is meant to be)?\.$/.test(why))
      problems.push(`Rung ${rung} does not say that it misses its target.`);
  if (Math.abs(Math.max(...misses) - board.proof.worstMiss) > 0.00011)
    problems.push('The worst miss is stated wrongly.');
  const placed = board.proof.reviewsDue.filter((id) =>
    board.rungs.some((rung) => rung.question.skill === id),
  );
  if (placed.join() !== board.proof.reviewsPlaced.join())
    problems.push('The list of placed reviews is wrong.');
  return problems;
}

function isDeclared(board: Board, rule: Relaxation): boolean {
  return board.proof.relaxed?.includes(rule) ?? false;
}

function countBy(rungs: readonly Rung[], key: (rung: Rung) => string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const rung of rungs) counts.set(key(rung), (counts.get(key(rung)) ?? 0) + 1);
  return counts;
}
