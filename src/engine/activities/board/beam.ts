// The beam: ladders grown rung by rung from easy to hard, the most promising kept.
import { type CodedTask, mayFollow, openingCost } from './ladder.js';
import { ANSWER_KINDS_WANTED, dueWeight, STRANDS_WANTED, WEIGHTS } from './objective.js';

/** Partial ladders kept per rung: of those that placed the same due reviews so many, and at most so many in all. */
const BEAM_PER_REVIEWS = 12;
const BEAM = 72;
/** How many of them may end in the same candidate. */
const BEAM_PER_CANDIDATE = 2;

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

/** Up to `count` full ladders (a candidate per rung, easiest first), the most promising first; `choices` lists the candidates to look at per rung. */
export function beamLadders(coded: CodedTask, choices: readonly number[][], count: number): number[][] {
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
    front = keepBest(next.map(({ partial }) => partial));
  }
  const full = front.filter((partial) => partial.strands >= coded.task.rules.leastStrands);
  return full.slice(0, count).map((partial) => {
    const ladder: number[] = [];
    for (let at: Partial | null = partial; at && at.candidate >= 0; at = at.before)
      ladder.unshift(at.candidate);
    return ladder;
  });
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
  if (partial.candidate >= 0) cost += openingCost(coded, partial.candidate, c);
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
