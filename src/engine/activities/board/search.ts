// The search for a good ladder: a beam from either end, then exchanges of one and of two rungs until none helps.
import { BEAM_STARTS, beamLadder } from './beam.js';
import { improveLadder } from './exchange.js';
import { type CodedTask, codeTask, ladderEvaluator } from './ladder.js';
import { dueWeight, type LadderTask } from './objective.js';

/** Candidates looked at per rung, the cheapest ones. */
const BREADTH = 50;

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
  for (const start of BEAM_STARTS) {
    const grown = beamLadder(coded, choices, start);
    if (!grown) continue;
    const ladder = Int32Array.from(grown);
    const objective = improveLadder(coded, ladder, choices, evaluate);
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
