// Swapping one rung: what else could stand there while the rest of the board stays.
import type { Board, Relaxation, Rung } from './board.js';
import type { Candidate } from './candidates.js';
import { type BoardRequest, knownFor, ladderTask, problemWith } from './board-request.js';
import { makeRung, proofOf } from './compose.js';
import { codeTask, ladderEvaluator } from './ladder.js';
import { ladderCost, STRICT_RULES } from './objective.js';

/** Spreads a request's seed, so that an alternative is not only what composing had already seen. */
const OTHER_SEED = 0x2f6b3a91;

/**
 * Up to `count` rungs that could replace the one on `rung` (from 1) while the rest of the board stays and the ladder
 * keeps its rules, best first, each of a different skill. Empty when nothing fits or the board has no such rung.
 * `request` is the one the board was composed from; its number, side and rungs must be the board's.
 */
export function replaceRung(board: Board, rung: number, request: BoardRequest, count = 6): readonly Rung[] {
  const current = board.rungs[rung - 1];
  const others = board.rungs.filter((other) => other !== current);
  const base: BoardRequest = {
    ...request,
    seed: request.seed ^ OTHER_SEED,
    rungs: board.rungs.length,
    fixed: new Map(others.map((other) => [other.rung, other.question])),
    avoid: [...(request.avoid ?? []), current?.question.text ?? ''],
  };
  if (!current || problemWith(base)) return [];
  const onNumber = alternativesFor(base, board, rung, new Set());
  // A teacher who looks for something else may also choose a question without the day's number.
  const more =
    onNumber.length * 2 >= count
      ? []
      : alternativesFor(base, board, rung, new Set(knownFor(base).skills.map(({ id }) => id)));
  const skills = new Set(onNumber.map(({ question }) => question.skill));
  return [...onNumber, ...more.filter(({ question }) => !skills.has(question.skill))]
    .slice(0, count)
    .map((candidate) => makeRung(candidate, rung, { ...request, rungs: board.rungs.length }));
}

/**
 * The board with that rung in place of the one of the same number, and its proof made new. Everything else about the
 * other rungs is kept. `request` is the one the board was composed from.
 */
export function withRung(board: Board, rung: Rung, request: BoardRequest): Board {
  const rungs = board.rungs.map((other) => (other.rung === rung.rung ? rung : other));
  const fixed = new Map(rungs.map((one) => [one.rung, one.question]));
  const task = ladderTask({ ...request, rungs: rungs.length, fixed }, STRICT_RULES, new Set());
  const ladder = task.locked.map((at) => task.candidates[at] as Candidate);
  const { reviewsDue, candidates } = board.proof;
  return { ...board, rungs, proof: proofOf(rungs, reviewsDue, ladderCost(task, ladder), candidates) };
}

/** Candidates that keep the ladder's rules on that rung, the lowest objective first, one per skill. */
function alternativesFor(
  base: BoardRequest,
  board: Board,
  rung: number,
  free: ReadonlySet<string>,
): readonly Candidate[] {
  const declares = (rule: Relaxation) => board.proof.relaxed?.includes(rule) ?? false;
  const task = ladderTask(
    base,
    {
      leastStrands: declares('fewer than 4 strands') ? 1 : STRICT_RULES.leastStrands,
      mostPerStrand: declares('more than 4 rungs of one strand')
        ? board.rungs.length
        : STRICT_RULES.mostPerStrand,
      mostPerSkill: 1,
    },
    free,
  );
  const evaluate = ladderEvaluator(codeTask(task));
  const ladder = Int32Array.from(task.locked);
  const others = new Set(task.locked);
  const taken = new Set(
    board.rungs.filter((other) => other.rung !== rung).map(({ question }) => question.skill),
  );
  const scored = task.candidates.flatMap((candidate, at) => {
    if (others.has(at) || taken.has(candidate.question.skill)) return [];
    ladder[rung - 1] = at;
    const cost = evaluate(ladder);
    return cost < Infinity ? [{ candidate, cost }] : [];
  });
  scored.sort((a, b) => a.cost - b.cost);
  const best = new Map<string, Candidate>();
  for (const { candidate } of scored) {
    if (!best.has(candidate.question.skill)) best.set(candidate.question.skill, candidate);
  }
  return [...best.values()];
}
