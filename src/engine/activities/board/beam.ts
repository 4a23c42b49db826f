// The beam: ladders grown rung by rung, from the easy end or from the hard end, the most promising kept.
import { type CodedTask, mayFollow, openingCost } from './ladder.js';
import { ANSWER_KINDS_WANTED, dueWeight, STRANDS_WANTED, WEIGHTS } from './objective.js';

/** Partial ladders kept per rung: of those that placed the same due reviews so many, and at most so many in all. */
const BEAM_PER_REVIEWS = 12;
const BEAM = 72;
/** How many of them may end in the same candidate. */
const BEAM_PER_CANDIDATE = 3;

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

/** The end of the ladder that a beam starts from: what one beam crowds out, the other often keeps. */
export const BEAM_STARTS = ['easiest', 'hardest'] as const;

/** The most promising ladder (a candidate per rung, easiest first), or null; `choices` lists the candidates to look at per rung. */
export function beamLadder(
  coded: CodedTask,
  choices: readonly number[][],
  start: (typeof BEAM_STARTS)[number],
): number[] | null {
  const walk = walkFrom(coded, choices, start);
  const n = coded.task.candidates.length;
  let front: Partial[] = [
    { candidate: -1, rung: -1, before: null, cost: 0, strands: 0, kinds: 0, hasFigure: false, served: 0 },
  ];
  walk.rungs.forEach((rung, step) => {
    const next: { partial: Partial; rank: number }[] = [];
    for (const partial of front) {
      for (const c of choices[rung] as number[]) {
        const toCome = walk.toCome[rung * n + c] as number;
        if (toCome === Infinity) continue;
        const extended = extend(walk, partial, c, step);
        if (extended)
          next.push({ partial: extended, rank: extended.cost + toCome + hope(walk, extended, step) });
      }
    }
    next.sort((a, b) => a.rank - b.rank || a.partial.candidate - b.partial.candidate);
    front = keepBest(next.map(({ partial }) => partial));
  });
  const best = front.find((partial) => partial.strands >= coded.task.rules.leastStrands);
  if (!best) return null;
  const ladder = Array.from({ length: coded.rungs }, () => -1);
  for (let at: Partial | null = best; at && at.candidate >= 0; at = at.before) ladder[at.rung] = at.candidate;
  return ladder;
}

/** What one beam needs to know about the way it goes. */
interface Walk {
  readonly coded: CodedTask;
  /** The rungs (0-based) in the order in which they are filled. */
  readonly rungs: readonly number[];
  readonly mayJoin: (before: number, next: number) => boolean;
  readonly joinCost: (before: number, next: number) => number;
  readonly toCome: Float64Array;
  /** For each due place the last step where it fits well; -1 for none. */
  readonly lastStepForDue: readonly number[];
}

function walkFrom(coded: CodedTask, choices: readonly number[][], start: (typeof BEAM_STARTS)[number]): Walk {
  const upward = start === 'easiest';
  const rungs = coded.task.targets.map((_, i) => (upward ? i : coded.rungs - 1 - i));
  const mayJoin = (before: number, next: number) =>
    upward ? mayFollow(coded, before, next) : mayFollow(coded, next, before);
  const joinCost = (before: number, next: number) =>
    upward ? openingCost(coded, before, next) : openingCost(coded, next, before);
  const toCome = leastCostToCome(coded, choices, rungs, mayJoin, joinCost);
  return { coded, rungs, mayJoin, joinCost, toCome, lastStepForDue: lastChanceForDue(coded, choices, rungs) };
}

/** The front of the beam from partial ladders in order of rank. Without a share for each set of placed reviews, ladders
 * that place one a little off its best rung would be crowded out by the many that place none. */
function keepBest(ranked: readonly Partial[]): Partial[] {
  const endings = new Map<number, number>();
  const perReviews = new Map<number, number>();
  const front: Partial[] = [];
  for (const partial of ranked) {
    const ending = partial.candidate * 64 + partial.served;
    const [ends, shares] = [endings.get(ending) ?? 0, perReviews.get(partial.served) ?? 0];
    if (ends >= BEAM_PER_CANDIDATE || shares >= BEAM_PER_REVIEWS) continue;
    endings.set(ending, ends + 1);
    perReviews.set(partial.served, shares + 1);
    front.push(partial);
    if (front.length === BEAM) break;
  }
  return front;
}

function extend(walk: Walk, partial: Partial, c: number, step: number): Partial | null {
  const { coded } = walk;
  const { rules, locked } = coded.task;
  const rung = walk.rungs[step] as number;
  if (partial.candidate >= 0 && !walk.mayJoin(partial.candidate, c)) return null;
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
  if (strands + (coded.rungs - 1 - step) < rules.leastStrands) return null;
  const kinds = partial.kinds + (isNewKind ? 1 : 0);
  const due = coded.due[c] as number;
  const servesDue = due >= 0 && timesSkill === 0;
  let cost = partial.cost + (coded.cost[rung * coded.task.candidates.length + c] as number);
  if (timesStrand === 0 && strands <= STRANDS_WANTED) cost -= WEIGHTS.strand;
  if (isNewKind && kinds <= ANSWER_KINDS_WANTED) cost -= WEIGHTS.answerKind;
  if (!isNewFamily) cost += WEIGHTS.family;
  if (partial.candidate >= 0) cost += walk.joinCost(partial.candidate, c);
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

/**
 * For each rung and candidate, at [rung * candidates + candidate], the least that the rungs still to come must cost when
 * only neighbours limit each other; Infinity where no ladder can go on. It keeps the beam from ladders that start well
 * and end nowhere.
 */
function leastCostToCome(
  coded: CodedTask,
  choices: readonly number[][],
  rungs: readonly number[],
  mayJoin: Walk['mayJoin'],
  joinCost: Walk['joinCost'],
): Float64Array {
  const n = coded.task.candidates.length;
  const least = new Float64Array(coded.rungs * n);
  for (let step = coded.rungs - 2; step >= 0; step--) {
    const [rung, next] = [rungs[step] as number, rungs[step + 1] as number];
    for (const c of choices[rung] as number[]) {
      let best = Infinity;
      for (const d of choices[next] as number[]) {
        const alone = (coded.cost[next * n + d] as number) + (least[next * n + d] as number);
        if (alone >= best || d === c || !mayJoin(c, d)) continue;
        best = Math.min(best, alone + joinCost(c, d));
      }
      least[rung * n + c] = best;
    }
  }
  return least;
}

/** For each due place the last step where a question of it would miss its target by little; -1 for none. */
function lastChanceForDue(
  coded: CodedTask,
  choices: readonly number[][],
  rungs: readonly number[],
): number[] {
  return coded.task.due.map((_, place) =>
    rungs.findLastIndex((rung) => {
      const target = coded.task.targets[rung] as number;
      return choices[rung]?.some(
        (c) => coded.due[c] === place && Math.abs((coded.predicted[c] as number) - target) < 0.06,
      );
    }),
  );
}

/** What a partial ladder may still earn, so that one which waits for a better rung is not dropped too soon. */
function hope({ coded, lastStepForDue }: Walk, partial: Partial, step: number): number {
  const left = coded.rungs - 1 - step;
  let earn = 0;
  lastStepForDue.forEach((last, place) => {
    if (last > step && (partial.served & (1 << place)) === 0) earn += dueWeight(place);
  });
  // About every second rung to come can bring a new strand.
  earn += WEIGHTS.strand * Math.min(left / 2, Math.max(0, STRANDS_WANTED - partial.strands));
  earn += WEIGHTS.answerKind * Math.min(left / 4, Math.max(0, ANSWER_KINDS_WANTED - partial.kinds));
  if (!partial.hasFigure && left > 3) earn += WEIGHTS.figure;
  return -earn;
}
