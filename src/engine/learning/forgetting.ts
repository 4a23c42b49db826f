// How well a practised skill is still remembered: the FSRS-6 memory model with its published default weights
// (open-spaced-repetition, MIT; package ts-fsrs 5.4.2 computes the same). A skill stands in the place of a flash card.

const WEIGHTS = [
  0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835, 0.0614, 0.2629,
  1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542,
] as const;

const DECAY = -WEIGHTS[20];
const FACTOR = 0.9 ** (1 / DECAY) - 1;

/** How an answer went, as the memory model counts: forgotten, hard, good, easy. */
export type RecallGrade = 1 | 2 | 3 | 4;

/** The memory of one skill. */
export interface Memory {
  /** Days until the chance of recall falls to 90 %. */
  readonly stabilityDays: number;
  /** 1 (easy to keep) to 10. */
  readonly difficulty: number;
  /** Day count of the last practice. */
  readonly day: number;
}

/** Chance of recall after `days` for a given stability: (1 + F t / S)^D, 1 at 0 days and 0.9 after S days. */
export function retrievability(days: number, stabilityDays: number): number {
  return (1 + (FACTOR * Math.max(0, days)) / stabilityDays) ** DECAY;
}

/** Days until the chance of recall falls to `floor` (above 0, below 1). */
export function daysUntil(floor: number, stabilityDays: number): number {
  return (stabilityDays / FACTOR) * (floor ** (1 / DECAY) - 1);
}

/** The memory after an answer on `day`; `before` is null for the first. A second answer on the same day counts little. */
export function remember(before: Memory | null, grade: RecallGrade, day: number): Memory {
  if (before === null) {
    return {
      stabilityDays: WEIGHTS[grade - 1] as number,
      difficulty: bound(firstDifficulty(grade), 1, 10),
      day,
    };
  }
  const difficulty = nextDifficulty(before.difficulty, grade);
  const elapsed = Math.max(0, day - before.day);
  const stability =
    elapsed === 0
      ? sameDayStability(before.stabilityDays, grade)
      : grade === 1
        ? stabilityForgotten(before, elapsed)
        : stabilityRecalled(before, elapsed, grade);
  return { stabilityDays: bound(stability, 0.001, 36_500), difficulty, day };
}

function firstDifficulty(grade: RecallGrade): number {
  return WEIGHTS[4] - Math.exp(WEIGHTS[5] * (grade - 1)) + 1;
}

function nextDifficulty(difficulty: number, grade: RecallGrade): number {
  const damped = difficulty - (WEIGHTS[6] * (grade - 3) * (10 - difficulty)) / 9;
  return bound(WEIGHTS[7] * firstDifficulty(4) + (1 - WEIGHTS[7]) * damped, 1, 10);
}

function stabilityRecalled(before: Memory, elapsed: number, grade: RecallGrade): number {
  const { stabilityDays: s, difficulty } = before;
  const recall = retrievability(elapsed, s);
  const bonus = grade === 2 ? WEIGHTS[15] : grade === 4 ? WEIGHTS[16] : 1;
  return (
    s *
    (1 +
      Math.exp(WEIGHTS[8]) *
        (11 - difficulty) *
        s ** -WEIGHTS[9] *
        (Math.exp(WEIGHTS[10] * (1 - recall)) - 1) *
        bonus)
  );
}

function stabilityForgotten(before: Memory, elapsed: number): number {
  const { stabilityDays: s, difficulty } = before;
  const recall = retrievability(elapsed, s);
  const after =
    WEIGHTS[11] *
    difficulty ** -WEIGHTS[12] *
    ((s + 1) ** WEIGHTS[13] - 1) *
    Math.exp(WEIGHTS[14] * (1 - recall));
  return Math.min(after, s / Math.exp(WEIGHTS[17] * WEIGHTS[18]));
}

function sameDayStability(s: number, grade: RecallGrade): number {
  const change = Math.exp(WEIGHTS[17] * (grade - 3 + WEIGHTS[18])) * s ** -WEIGHTS[19];
  return s * (grade >= 3 ? Math.max(1, change) : change);
}

function bound(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
