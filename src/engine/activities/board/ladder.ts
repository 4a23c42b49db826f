// A ladder-composing task in numbers: rules and objective evaluated without allocation, for the search.
import type { Candidate } from './candidates.js';
import {
  ANSWER_KINDS_WANTED,
  dueWeight,
  type LadderTask,
  rungCost,
  STRANDS_WANTED,
  WEIGHTS,
} from './objective.js';

/** Codes of one task: equal text, equal code. Due places are -1 for skills that are not due. */
export interface CodedTask {
  readonly task: LadderTask;
  readonly rungs: number;
  readonly predicted: Float64Array;
  readonly common: Float64Array;
  readonly skill: Int32Array;
  readonly strand: Int32Array;
  readonly kind: Int32Array;
  readonly family: Int32Array;
  /** -1 for bare sums, which may follow each other. */
  readonly opening: Int32Array;
  readonly answerText: Int32Array;
  readonly answerValue: Int32Array;
  readonly due: Int32Array;
  readonly hasFigure: Uint8Array;
  /** rungCost of candidate c on rung r (0-based) at [r * candidates + c]. */
  readonly cost: Float64Array;
  /** Locked rungs per strand code and per skill code: they stay, whatever the rules say, but they count. */
  readonly lockedOfStrand: Uint8Array;
  readonly lockedOfSkill: Uint8Array;
  /** How many different codes there are, for counting arrays. */
  readonly sizes: {
    readonly skill: number;
    readonly strand: number;
    readonly kind: number;
    readonly family: number;
  };
  /** The objective's terms about the whole ladder when nothing is placed: each piece earned is taken off. */
  readonly unearned: number;
}

/** The task with its candidates coded. */
export function codeTask(task: LadderTask): CodedTask {
  const { candidates, targets } = task;
  const skill = codes(candidates, (candidate) => candidate.question.skill);
  const strand = codes(candidates, (candidate) => candidate.question.strand);
  const kind = codes(candidates, (candidate) => candidate.question.answer.kind);
  const family = codes(candidates, (candidate) => candidate.family);
  const cost = new Float64Array(targets.length * candidates.length);
  targets.forEach((target, rung) => {
    candidates.forEach((candidate, c) => {
      cost[rung * candidates.length + c] = rungCost(candidate, target);
    });
  });
  const duePlace = new Map(task.due.map((id, place) => [id, place]));
  return {
    task,
    rungs: targets.length,
    predicted: Float64Array.from(candidates, (candidate) => candidate.predicted),
    common: Float64Array.from(candidates, (candidate) => candidate.common),
    skill: skill.code,
    strand: strand.code,
    kind: kind.code,
    family: family.code,
    opening: codes(candidates, (candidate) => candidate.opening).code.map((code, c) =>
      candidates[c]?.opening === '' ? -1 : code,
    ),
    answerText: codes(candidates, (candidate) => candidate.answerText).code,
    answerValue: codes(candidates, (candidate) => candidate.answerValue).code,
    due: Int32Array.from(candidates, (candidate) => duePlace.get(candidate.question.skill) ?? -1),
    hasFigure: Uint8Array.from(candidates, (candidate) => (candidate.question.figure ? 1 : 0)),
    cost,
    lockedOfStrand: countLocks(task, strand),
    lockedOfSkill: countLocks(task, skill),
    sizes: { skill: skill.size, strand: strand.size, kind: kind.size, family: family.size },
    unearned:
      WEIGHTS.strand * STRANDS_WANTED +
      WEIGHTS.answerKind * ANSWER_KINDS_WANTED +
      WEIGHTS.figure +
      task.due.reduce((sum, _, place) => sum + dueWeight(place), 0),
  };
}

function codes(candidates: readonly Candidate[], key: (candidate: Candidate) => string) {
  const known = new Map<string, number>();
  const code = Int32Array.from(candidates, (candidate) => {
    const text = key(candidate);
    let number = known.get(text);
    if (number === undefined) known.set(text, (number = known.size));
    return number;
  });
  return { code, size: known.size };
}

function countLocks(
  task: LadderTask,
  coded: { readonly code: Int32Array; readonly size: number },
): Uint8Array {
  const counts = new Uint8Array(coded.size);
  for (const c of task.locked) if (c >= 0) countUp(counts, coded.code[c] as number);
  return counts;
}

/** True when candidate `upper` may stand on the rung after `lower`. */
export function mayFollow(coded: CodedTask, lower: number, upper: number): boolean {
  return (
    (coded.predicted[upper] as number) <= (coded.predicted[lower] as number) &&
    (coded.common[upper] as number) >= (coded.common[lower] as number) &&
    coded.answerText[upper] !== coded.answerText[lower] &&
    coded.answerValue[upper] !== coded.answerValue[lower]
  );
}

/** What it costs that candidate `upper` stands right after `lower`: the same opening words, or nothing. */
export function openingCost(coded: CodedTask, lower: number, upper: number): number {
  const opening = coded.opening[upper] as number;
  return opening >= 0 && opening === coded.opening[lower] ? WEIGHTS.opening : 0;
}

/** Adds one to a count and returns what it was. */
function countUp(counts: Uint8Array, at: number): number {
  const before = counts[at] as number;
  counts[at] = before + 1;
  return before;
}

/** A function giving the objective of a full ladder (candidate index per rung), or Infinity when it breaks a rule. */
export function ladderEvaluator(coded: CodedTask): (ladder: Int32Array) => number {
  const { rules, candidates } = coded.task;
  const n = candidates.length;
  const used = {
    skill: new Uint8Array(coded.sizes.skill),
    strand: new Uint8Array(coded.sizes.strand),
    kind: new Uint8Array(coded.sizes.kind),
    family: new Uint8Array(coded.sizes.family),
  };
  return (ladder) => {
    for (let r = 1; r < coded.rungs; r++) {
      if (ladder[r] === ladder[r - 1] || !mayFollow(coded, ladder[r - 1] as number, ladder[r] as number))
        return Infinity;
    }
    used.skill.fill(0);
    used.strand.fill(0);
    used.kind.fill(0);
    used.family.fill(0);
    let cost = coded.unearned;
    let strands = 0;
    let kinds = 0;
    let hasFigure = false;
    for (let r = 0; r < coded.rungs; r++) {
      const c = ladder[r] as number;
      cost += coded.cost[r * n + c] as number;
      const timesSkill = countUp(used.skill, coded.skill[c] as number);
      const timesStrand = countUp(used.strand, coded.strand[c] as number);
      const strand = coded.strand[c] as number;
      const skill = coded.skill[c] as number;
      if (timesStrand >= Math.max(rules.mostPerStrand, coded.lockedOfStrand[strand] as number))
        return Infinity;
      if (timesSkill >= Math.max(rules.mostPerSkill, coded.lockedOfSkill[skill] as number)) return Infinity;
      if (timesStrand === 0 && ++strands <= STRANDS_WANTED) cost -= WEIGHTS.strand;
      if (countUp(used.kind, coded.kind[c] as number) === 0 && ++kinds <= ANSWER_KINDS_WANTED)
        cost -= WEIGHTS.answerKind;
      if (countUp(used.family, coded.family[c] as number) > 0) cost += WEIGHTS.family;
      if (r > 0) cost += openingCost(coded, ladder[r - 1] as number, c);
      if (!hasFigure && coded.hasFigure[c] === 1) {
        hasFigure = true;
        cost -= WEIGHTS.figure;
      }
      const due = coded.due[c] as number;
      if (due >= 0 && timesSkill === 0) cost -= dueWeight(due);
    }
    return strands >= rules.leastStrands ? cost : Infinity;
  };
}
