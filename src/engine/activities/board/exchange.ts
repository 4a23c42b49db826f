// Exchanges: a full ladder made better by changing one rung, two rungs, or by taking one out and putting another in.
import { type CodedTask, mayFollow } from './ladder.js';

/** Candidates tried per rung in exchanges of two rungs, and where one is put in. */
const BREADTH_IN_PAIRS = 10;

/** Exchanges as long as any helps; changes `ladder` (a candidate per rung) and returns its objective. */
export function improveLadder(
  coded: CodedTask,
  ladder: Int32Array,
  choices: readonly (readonly number[])[],
  evaluate: (ladder: Int32Array) => number,
): number {
  const n = coded.task.candidates.length;
  const few = choices.map((list) => list.slice(0, BREADTH_IN_PAIRS));
  const costAt = (rung: number, c: number) => coded.cost[rung * n + c] as number;
  let objective = Infinity;
  // What the terms about the whole ladder cost now: no exchange can win more than that from them.
  let winnable = 0;
  const settle = (now: number) => {
    objective = now;
    winnable = now;
    ladder.forEach((c, rung) => {
      winnable -= costAt(rung, c);
    });
  };
  const fits = (rung: number): boolean =>
    (rung === 0 || mayFollow(coded, ladder[rung - 1] as number, ladder[rung] as number)) &&
    (rung === ladder.length - 1 || mayFollow(coded, ladder[rung] as number, ladder[rung + 1] as number));
  const isBetter = (): boolean => {
    const now = evaluate(ladder);
    if (now >= objective - 1e-9) return false;
    settle(now);
    return true;
  };
  const tryAt = (rung: number, c: number, spent: number): boolean => {
    const before = ladder[rung] as number;
    if (c === before || costAt(rung, c) + spent >= costAt(rung, before) + winnable) return false;
    ladder[rung] = c;
    if (fits(rung) && isBetter()) return true;
    ladder[rung] = before;
    return false;
  };
  const one = (): boolean => {
    let helped = false;
    choices.forEach((list, rung) => {
      for (const c of list) if (tryAt(rung, c, 0)) helped = true;
    });
    return helped;
  };
  const two = (): boolean => {
    for (let first = 0; first < ladder.length; first++) {
      const before = ladder[first] as number;
      for (const c of few[first] as number[]) {
        const spent = costAt(first, c) - costAt(first, before);
        ladder[first] = c;
        for (let second = first + 1; second < ladder.length; second++) {
          for (const d of few[second] as number[]) if (tryAt(second, d, spent)) return true;
        }
      }
      ladder[first] = before;
    }
    return false;
  };
  // Taking out rung `from` and putting a candidate in at `to` moves every rung between by one.
  const move = (): boolean => {
    const before = Int32Array.from(ladder);
    for (let from = 0; from < ladder.length; from++) {
      for (let to = 0; to < ladder.length; to++) {
        if (from === to || hasLockBetween(coded, from, to)) continue;
        ladder.set(before);
        if (to > from) ladder.copyWithin(from, from + 1, to + 1);
        else ladder.copyWithin(to + 1, to, from);
        for (const c of few[to] as number[]) {
          ladder[to] = c;
          if (fits(to) && isBetter()) return true;
        }
      }
    }
    ladder.set(before);
    return false;
  };
  settle(evaluate(ladder));
  while (one() || two() || move()) continue;
  return objective;
}

function hasLockBetween(coded: CodedTask, from: number, to: number): boolean {
  for (let rung = Math.min(from, to); rung <= Math.max(from, to); rung++) {
    if (coded.task.locked[rung] !== -1) return true;
  }
  return false;
}
