// What makes one ladder better than another, as one sum of penalties: 0 would be perfect. Every term is linear in
// "candidate c stands on rung r" (with helper variables), so that an exact solver can be asked the same question.
import type { Candidate } from './candidates.js';

/** The weights. A miss of 0.1 from a rung's target costs 1; everything else is stated against that. */
export const WEIGHTS = {
  /** Times the squared miss between predicted and target share. */
  miss: 100,
  /** For the most urgent due review that finds no place; each next one counts 0.9 of the one before. */
  due: 2,
  dueFading: 0.9,
  /** For each strand short of the number wanted. */
  strand: 0.3,
  /** For each kind of answer (number, fraction, time, word...) short of the number wanted. */
  answerKind: 0.15,
  /** When no rung has a figure. */
  figure: 0.2,
  /** For each rung beyond the first of a skill family. */
  family: 0.3,
  /** For two neighbouring rungs that open with the same three words. */
  opening: 0.5,
  /** Times how well the class is known at a skill, so that a rung also tells the teacher something. */
  known: 0.15,
  /** For a question that neither uses the day's number nor is due. */
  free: 3,
  /** For a due review that cannot use the day's number: still worth a rung, but less so than one that can. */
  dueFree: 0.6,
  /** For each line that a question takes beyond the first on the display, a figure counting as two: a board is to be
   * seen whole, and young readers do arithmetic here, not reading. */
  reading: 0.07,
  /** For a question that offers its answers ("odd or even") on a rung meant for fewer than guess it right. */
  guess: 2,
  /** For an answer that only repeats the day's number, or is 0 or 1, above the first rungs: x 1, 100 %, divided by itself. */
  echo: 0.5,
} as const;

export const STRANDS_WANTED = 7;
export const ANSWER_KINDS_WANTED = 3;
/** Due reviews that a board of 12 tries to place, the first of the list first; other sizes in proportion. */
export const REVIEWS_WANTED = 3;

/** What no ladder may break. Loosened step by step only when the candidates allow no ladder; see compose.ts. */
export interface LadderRules {
  readonly leastStrands: number;
  readonly mostPerStrand: number;
  readonly mostPerSkill: number;
}

export const STRICT_RULES: LadderRules = { leastStrands: 4, mostPerStrand: 4, mostPerSkill: 1 };

/** One composing task: which candidates, which targets, what is locked. */
export interface LadderTask {
  readonly candidates: readonly Candidate[];
  readonly targets: readonly number[];
  /** Per rung: the index of the candidate locked there, or -1. */
  readonly locked: readonly number[];
  /** Due skills to place, most urgent first, each with at least one candidate. */
  readonly due: readonly string[];
  readonly rules: LadderRules;
}

/** The part of the objective that a candidate on a rung brings by itself. */
export function rungCost(candidate: Candidate, target: number): number {
  const miss = candidate.predicted - target;
  const free = candidate.isDue ? WEIGHTS.dueFree : WEIGHTS.free;
  return (
    WEIGHTS.miss * miss * miss +
    WEIGHTS.known * candidate.known +
    (candidate.question.usesNumber === null ? free : 0) +
    WEIGHTS.reading * candidate.extraLines +
    (candidate.isOffered && target < GUESSED_BY_MANY ? WEIGHTS.guess : 0) +
    (candidate.isEcho && target < TRIVIAL_FROM ? WEIGHTS.echo : 0)
  );
}

/** With two answers on offer half of a class guesses right; a little room is left for knowing. Common practice. */
const GUESSED_BY_MANY = 0.6;
/** Rungs meant for more than this share may be trivial: the first two of twelve. Common practice. */
const TRIVIAL_FROM = 0.965;

/** Penalty when the due review at this place of the list finds no rung. */
export function dueWeight(place: number): number {
  return WEIGHTS.due * WEIGHTS.dueFading ** place;
}

/** The objective of a full ladder (candidate per rung, easiest first): lower is better, never below 0. */
export function ladderCost(task: LadderTask, ladder: readonly Candidate[]): number {
  const counts = {
    strands: new Set<string>(),
    kinds: new Set<string>(),
    families: new Set<string>(),
    skills: new Set<string>(),
  };
  let cost = 0;
  let figures = 0;
  ladder.forEach((candidate, i) => {
    cost += rungCost(candidate, task.targets[i] as number);
    if (candidate.opening !== '' && candidate.opening === ladder[i - 1]?.opening) cost += WEIGHTS.opening;
    counts.strands.add(candidate.question.strand);
    counts.kinds.add(candidate.question.answer.kind);
    counts.families.add(candidate.family);
    counts.skills.add(candidate.question.skill);
    if (candidate.question.figure) figures++;
  });
  cost += WEIGHTS.strand * Math.max(0, STRANDS_WANTED - counts.strands.size);
  cost += WEIGHTS.answerKind * Math.max(0, ANSWER_KINDS_WANTED - counts.kinds.size);
  cost += WEIGHTS.family * (ladder.length - counts.families.size);
  if (figures === 0) cost += WEIGHTS.figure;
  task.due.forEach((skill, place) => {
    if (!counts.skills.has(skill)) cost += dueWeight(place);
  });
  return cost;
}
