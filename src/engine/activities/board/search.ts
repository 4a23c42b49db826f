// The search for a good ladder: a beam over rungs from easy to hard, then exchanges of one and of two rungs until none helps.
import { type CodedTask, codeTask, ladderEvaluator, mayFollow } from './ladder.js';
import { ANSWER_KINDS_WANTED, dueWeight, type LadderTask, STRANDS_WANTED, WEIGHTS } from './objective.js';

/** Partial ladders kept per rung, and how many of them may end in the same candidate. */
const BEAM = 40;
const BEAM_PER_CANDIDATE = 2;
/** Candidates looked at per rung, the cheapest ones; and in exchanges of two rungs. */
const BREADTH = 50;
const BREADTH_IN_PAIRS = 10;
/** Full ladders from the beam that are improved by exchanges. */
const FINALISTS = 2;

export interface FoundLadder {
  /** Index of the candidate on each rung, easiest first. */
  readonly ladder: readonly number[];
  readonly objective: number;
}

/** The best ladder found, or null when no ladder was found that keeps the rules. Deterministic. */
export function searchLadder(task: LadderTask): FoundLadder | null {
  const coded = codeTask(task);
  const choices = choicesPerRung(coded);
  const evaluate = ladderEvaluator(coded);
  let best: FoundLadder | null = null;
  for (const start of beam(coded, choices)) {
    const ladder = Int32Array.from(start);
    const objective = improve(coded, ladder, choices, evaluate);
    if (objective < (best?.objective ?? Infinity)) best = { ladder: [...ladder], objective };
  }
  return best;
}

/** For each rung the candidates worth looking at, cheapest first; those that no locked rung allows are left out. */
function choicesPerRung(coded: CodedTask): number[][] {
  const { candidates, locked } = coded.task;
  const n = candidates.length;
  const lockedSkills = new Set(locked.filter((c) => c >= 0).map((c) => coded.skill[c]));
  return coded.task.targets.map((_, rung) => {
    const lock = locked[rung] as number;
    if (lock >= 0) return [lock];
    const bounds = boundsFromLocks(coded, rung);
    const open: number[] = [];
    for (let c = 0; c < n; c++) {
      const predicted = coded.predicted[c] as number;
      const common = coded.common[c] as number;
      if (predicted > bounds.mostPredicted || predicted < bounds.leastPredicted) continue;
      if (common < bounds.leastCommon || common > bounds.mostCommon) continue;
      if (lockedSkills.has(coded.skill[c] as number)) continue;
      open.push(c);
    }
    const value = (c: number) => {
      const due = coded.due[c] as number;
      return (coded.cost[rung * n + c] as number) - (due >= 0 ? dueWeight(due) : 0);
    };
    return open.sort((a, b) => value(a) - value(b) || a - b).slice(0, BREADTH);
  });
}

function boundsFromLocks(coded: CodedTask, rung: number) {
  const bounds = { mostPredicted: 1, leastPredicted: 0, leastCommon: -Infinity, mostCommon: Infinity };
  coded.task.locked.forEach((c, at) => {
    if (c < 0) return;
    const predicted = coded.predicted[c] as number;
    const common = coded.common[c] as number;
    if (at < rung) {
      bounds.mostPredicted = Math.min(bounds.mostPredicted, predicted);
      bounds.leastCommon = Math.max(bounds.leastCommon, common);
    } else {
      bounds.leastPredicted = Math.max(bounds.leastPredicted, predicted);
      bounds.mostCommon = Math.min(bounds.mostCommon, common);
    }
  });
  return bounds;
}

interface Partial {
  readonly candidate: number;
  /** 0-based. */
  readonly rung: number;
  readonly before: Partial | null;
  /** Costs so far, less what has been earned of the whole-ladder terms. */
  readonly cost: number;
  readonly strands: number;
  readonly kinds: number;
  readonly hasFigure: boolean;
  /** Bit per due place that has been served. */
  readonly served: number;
}

/** Full ladders, the most promising first. */
function beam(coded: CodedTask, choices: readonly number[][]): number[][] {
  const lastRungForDue = lastChanceForDue(coded, choices);
  let front: Partial[] = [
    { candidate: -1, rung: -1, before: null, cost: 0, strands: 0, kinds: 0, hasFigure: false, served: 0 },
  ];
  for (let rung = 0; rung < coded.rungs; rung++) {
    const next: { partial: Partial; rank: number }[] = [];
    for (const partial of front) {
      for (const c of choices[rung] as number[]) {
        const extended = extend(coded, partial, c, rung);
        if (extended)
          next.push({ partial: extended, rank: extended.cost + hope(coded, extended, rung, lastRungForDue) });
      }
    }
    next.sort((a, b) => a.rank - b.rank || a.partial.candidate - b.partial.candidate);
    const endings = new Map<number, number>();
    front = [];
    for (const { partial } of next) {
      const times = endings.get(partial.candidate) ?? 0;
      if (times >= BEAM_PER_CANDIDATE && rung < coded.rungs - 1) continue;
      endings.set(partial.candidate, times + 1);
      front.push(partial);
      if (front.length === BEAM) break;
    }
  }
  const full = front.filter((partial) => partial.strands >= coded.task.rules.leastStrands);
  return full.slice(0, FINALISTS).map((partial) => {
    const ladder: number[] = [];
    for (let at: Partial | null = partial; at && at.candidate >= 0; at = at.before)
      ladder.unshift(at.candidate);
    return ladder;
  });
}

function extend(coded: CodedTask, partial: Partial, c: number, rung: number): Partial | null {
  const { rules, locked } = coded.task;
  if (partial.candidate >= 0 && !mayFollow(coded, partial.candidate, c)) return null;
  let timesSkill = 0;
  let timesStrand = 0;
  let chosenOfStrand = 0;
  let isNewKind = true;
  let isNewFamily = true;
  for (let at: Partial | null = partial; at && at.candidate >= 0; at = at.before) {
    if (at.candidate === c) return null;
    if (coded.skill[at.candidate] === coded.skill[c]) timesSkill++;
    if (coded.strand[at.candidate] === coded.strand[c]) {
      timesStrand++;
      if (locked[at.rung] === -1) chosenOfStrand++;
    }
    if (coded.kind[at.candidate] === coded.kind[c]) isNewKind = false;
    if (coded.family[at.candidate] === coded.family[c]) isNewFamily = false;
  }
  const lockedOfStrand = coded.lockedOfStrand[coded.strand[c] as number] as number;
  if (
    locked[rung] === -1 &&
    (timesSkill >= rules.mostPerSkill || chosenOfStrand + lockedOfStrand >= rules.mostPerStrand)
  ) {
    return null;
  }
  const strands = partial.strands + (timesStrand === 0 ? 1 : 0);
  if (strands + (coded.rungs - 1 - rung) < rules.leastStrands) return null;
  const kinds = partial.kinds + (isNewKind ? 1 : 0);
  const due = coded.due[c] as number;
  const servesDue = due >= 0 && timesSkill === 0;
  let cost = partial.cost + (coded.cost[rung * coded.task.candidates.length + c] as number);
  if (timesStrand === 0 && strands <= STRANDS_WANTED) cost -= WEIGHTS.strand;
  if (isNewKind && kinds <= ANSWER_KINDS_WANTED) cost -= WEIGHTS.answerKind;
  if (!isNewFamily) cost += WEIGHTS.family;
  const hasFigure = partial.hasFigure || coded.hasFigure[c] === 1;
  if (hasFigure && !partial.hasFigure) cost -= WEIGHTS.figure;
  if (servesDue) cost -= dueWeight(due);
  return {
    candidate: c,
    rung,
    before: partial,
    cost,
    strands,
    kinds,
    hasFigure,
    served: servesDue ? partial.served | (1 << due) : partial.served,
  };
}

/** For each due place the last rung (0-based) where a question of it would miss its target by little; -1 for none. */
function lastChanceForDue(coded: CodedTask, choices: readonly number[][]): number[] {
  return coded.task.due.map((_, place) => {
    for (let rung = coded.rungs - 1; rung >= 0; rung--) {
      const target = coded.task.targets[rung] as number;
      const fits = (c: number) =>
        coded.due[c] === place && Math.abs((coded.predicted[c] as number) - target) < 0.06;
      if (choices[rung]?.some(fits)) return rung;
    }
    return -1;
  });
}

/** What a partial ladder may still earn, so that one which waits for a better rung is not dropped too soon. */
function hope(coded: CodedTask, partial: Partial, rung: number, lastRungForDue: readonly number[]): number {
  const left = coded.rungs - 1 - rung;
  let earn = 0;
  lastRungForDue.forEach((last, place) => {
    if (last > rung && (partial.served & (1 << place)) === 0) earn += dueWeight(place);
  });
  // About every second rung to come can bring a new strand.
  earn += WEIGHTS.strand * Math.min(left / 2, Math.max(0, STRANDS_WANTED - partial.strands));
  earn += WEIGHTS.answerKind * Math.min(left / 4, Math.max(0, ANSWER_KINDS_WANTED - partial.kinds));
  if (!partial.hasFigure && left > 3) earn += WEIGHTS.figure;
  return -earn;
}

/** Exchanges one rung, then two at a time, as long as that helps; changes `ladder` and returns its objective. */
function improve(
  coded: CodedTask,
  ladder: Int32Array,
  choices: readonly number[][],
  evaluate: (ladder: Int32Array) => number,
): number {
  const n = coded.task.candidates.length;
  const costAt = (rung: number) => coded.cost[rung * n + (ladder[rung] as number)] as number;
  let objective = evaluate(ladder);
  // What the terms about the whole ladder cost now: no exchange can win more than that from them.
  let winnable = 0;
  const settle = (now: number) => {
    objective = now;
    winnable = now;
    for (let rung = 0; rung < ladder.length; rung++) winnable -= costAt(rung);
  };
  settle(objective);
  const fits = (rung: number): boolean =>
    (rung === 0 || mayFollow(coded, ladder[rung - 1] as number, ladder[rung] as number)) &&
    (rung === ladder.length - 1 || mayFollow(coded, ladder[rung] as number, ladder[rung + 1] as number));
  const tryAt = (rung: number, c: number, spent: number): boolean => {
    const before = ladder[rung] as number;
    if (c === before || (coded.cost[rung * n + c] as number) + spent >= costAt(rung) + winnable) return false;
    ladder[rung] = c;
    if (fits(rung)) {
      const now = evaluate(ladder);
      if (now < objective - 1e-9) {
        settle(now);
        return true;
      }
    }
    ladder[rung] = before;
    return false;
  };
  const single = (): boolean => {
    let helped = false;
    for (let rung = 0; rung < ladder.length; rung++) {
      for (const c of choices[rung] as number[]) if (tryAt(rung, c, 0)) helped = true;
    }
    return helped;
  };
  const pair = (): boolean => {
    for (let first = 0; first < ladder.length; first++) {
      const before = ladder[first] as number;
      const costBefore = costAt(first);
      for (const c of (choices[first] as number[]).slice(0, BREADTH_IN_PAIRS)) {
        const spent = (coded.cost[first * n + c] as number) - costBefore;
        ladder[first] = c;
        for (let second = first + 1; second < ladder.length; second++) {
          for (const d of (choices[second] as number[]).slice(0, BREADTH_IN_PAIRS))
            if (tryAt(second, d, spent)) return true;
        }
      }
      ladder[first] = before;
    }
    return false;
  };
  while (single() || pair()) continue;
  return objective;
}
