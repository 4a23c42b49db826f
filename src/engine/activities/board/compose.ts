// The board composer: request -> board, by search over hundreds of candidates (see objective.ts for what is sought).
import { predictClass } from '../../learning/class-model.js';
import { PLAIN_CASE } from '../../questions/difficulty.js';
import type { Skill } from '../../skills/skill.js';
import { type Board, type BoardProof, RELAXATIONS, type Relaxation, type Rung } from './board.js';
import {
  type BoardError,
  type BoardRequest,
  knownFor,
  ladderTask,
  nothingFits,
  problemWith,
} from './board-request.js';
import { type Candidate, isInReach } from './candidates.js';
import { type LadderRules, type LadderTask, STRICT_RULES } from './objective.js';
import { type FoundLadder, searchLadder } from './search.js';
import { GREATEST_MISS, targetCurve } from './target-curve.js';
import { explainRung } from './why.js';

export type BoardResult =
  | { readonly ok: true; readonly value: Board }
  | { readonly ok: false; readonly error: BoardError };

/** What is tried when the day's number alone allows no ladder, or only one far off the targets. */
const LOOSER_STEPS: readonly LadderRules[] = [
  STRICT_RULES,
  { ...STRICT_RULES, mostPerStrand: 6 },
  { leastStrands: 1, mostPerStrand: 16, mostPerSkill: 2 },
];

/** A ladder that misses a target by more than this is compared with one that may leave the day's number. */
const FAR_OFF = 0.15;
const NEAR = 0.03;

/**
 * The board for a request. The same request gives the same board. Errors: years outside 0 to 6, rungs outside 6 to 16,
 * a seed beyond 32 bits, locked rungs that contradict each other, too few candidates.
 */
export function composeBoard(request: BoardRequest): BoardResult {
  const problem = problemWith(request);
  if (problem) return { ok: false, error: problem };
  // Composing may need several tries: a typical class is made once for all of them.
  const settled: BoardRequest = { ...request, ...knownFor(request) };
  const strict = compose(ladderTask(settled, STRICT_RULES, new Set()));
  const free = skillsForGaps(settled, strict);
  if (strict && free.size === 0) return { ok: true, value: makeBoard(settled, strict) };
  for (const rules of LOOSER_STEPS) {
    const looser = compose(ladderTask(settled, rules, free));
    if (strict && (!looser || looser.objective >= strict.objective)) break;
    if (looser) return { ok: true, value: makeBoard(settled, looser) };
  }
  return strict
    ? { ok: true, value: makeBoard(settled, strict) }
    : { ok: false, error: nothingFits(request) };
}

/** Skills that could fill the rungs which are far off when asked without the day's number; all when there is no ladder. */
function skillsForGaps(request: BoardRequest, composed: Composed | null): ReadonlySet<string> {
  const { skills, classModel } = knownFor(request);
  if (!composed) return new Set(skills.map((skill) => skill.id));
  const gaps = composed.task.targets.filter((target, i) => {
    return Math.abs((composed.candidates[i] as Candidate).predicted - target) > FAR_OFF;
  });
  // A skill helps when questions one logit either side of its plain case come near a target that is missed.
  const helps = ({ id, shift = 0 }: Skill): boolean => {
    const [most, least] = [-1, 1].map(
      (logits) => predictClass(classModel, id, PLAIN_CASE + shift + logits).mean,
    );
    return gaps.some((target) => target < (most as number) + NEAR && target > (least as number) - NEAR);
  };
  return new Set(
    skills.filter((skill) => isInReach(skill, request.years) && helps(skill)).map((skill) => skill.id),
  );
}

interface Composed extends FoundLadder {
  readonly task: LadderTask;
  readonly candidates: readonly Candidate[];
}

function compose(task: LadderTask): Composed | null {
  const found = searchLadder(task);
  return found && { ...found, task, candidates: found.ladder.map((at) => task.candidates[at] as Candidate) };
}

function makeBoard(request: BoardRequest, { task, candidates, objective }: Composed): Board {
  const rungs = candidates.map((candidate, i) => makeRung(candidate, i + 1, request));
  return {
    kind: 'board',
    seed: request.seed,
    number: request.number.text,
    years: request.years,
    side: request.side,
    locale: request.locale,
    rungs,
    proof: proofOf(rungs, [...new Set(request.due ?? [])], objective, task.candidates.length),
  };
}

/** What is stated about a board with these rungs, easiest first. */
export function proofOf(
  rungs: readonly Rung[],
  due: readonly string[],
  objective: number,
  candidates: number,
): BoardProof {
  const skills = new Set(rungs.map((rung) => rung.question.skill));
  const relaxed = relaxationsOf(rungs, due);
  const misses = rungs.map((rung) => Math.abs(rung.predicted - rung.target));
  return {
    objective: Math.round(objective * 10_000) / 10_000,
    candidates,
    strands: new Set(rungs.map((rung) => rung.question.strand)).size,
    worstMiss: Math.round(Math.max(...misses) * 10_000) / 10_000,
    missedRungs: rungs.filter(isMissed).map((rung) => rung.rung),
    reviewsDue: due,
    reviewsPlaced: due.filter((id) => skills.has(id)),
    ...(relaxed.length > 0 ? { relaxed } : {}),
  };
}

/** True when a rung's prediction is further from its target than a board promises. */
export function isMissed(rung: Pick<Rung, 'predicted' | 'target'>): boolean {
  return Math.abs(rung.predicted - rung.target) > GREATEST_MISS + 1e-9;
}

/** A candidate as the rung (from 1) of a board for this request. */
export function makeRung(candidate: Candidate, rung: number, request: BoardRequest): Rung {
  const target = targetCurve(request.side, request.rungs ?? 12)[rung - 1] as number;
  return {
    rung,
    question: candidate.question,
    target,
    predicted: candidate.predicted,
    commonDifficulty: candidate.common,
    why: explainRung(candidate, target, rung + Math.abs(request.seed), request.number.text, request.locale),
  };
}

/** Which rules a ladder does not keep, whatever the reason. */
function relaxationsOf(rungs: readonly Rung[], due: readonly string[]): Relaxation[] {
  const questions = rungs.map((rung) => rung.question);
  const strands = new Map<string, number>();
  for (const { strand } of questions) strands.set(strand, (strands.get(strand) ?? 0) + 1);
  const broken: Readonly<Record<Relaxation, boolean>> = {
    'a skill more than once': new Set(questions.map(({ skill }) => skill)).size < rungs.length,
    'more than 4 rungs of one strand': Math.max(...strands.values()) > STRICT_RULES.mostPerStrand,
    'fewer than 4 strands': strands.size < STRICT_RULES.leastStrands,
    'rungs without the number of the day': questions.some(
      ({ usesNumber, skill }) => usesNumber === null && !due.includes(skill),
    ),
  };
  return RELAXATIONS.filter((rule) => broken[rule]);
}
