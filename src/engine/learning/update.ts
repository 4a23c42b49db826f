// How belief changes: with time (growth and forgetting) and with each answer (one rank-one step).
import { remember } from './forgetting.js';
import { averagedLogistic, momentsAfterAnswer } from './logistic.js';
import { abilityMean, abilityVariance, type ChildState } from './state.js';

/** One answer as the model needs it. */
export interface Answered {
  readonly skill: string;
  /** The question's difficulty in logits, relative to its skill's year. */
  readonly difficulty: number;
  readonly right: boolean;
  /** ISO date. */
  readonly on: string;
  readonly questionId: string;
  /** Ids of the misconceptions whose typical wrong answer this was; empty when right, blank or unlike any. */
  readonly slips: readonly string[];
  /** Misconceptions that the question could have shown (those of its slips); absent when not known. */
  readonly chances?: readonly string[];
}

/** Share of the prior covariance that a year adds, since children do not all grow alike (common practice). */
const DRIFT_PER_YEAR = 0.1;

/** A right answer that was this likely counts as easy for the memory model; any other right answer as good. */
const EASY_FROM = 0.9;

/**
 * The state on a later day, before any new answer. An earlier or equal day returns the state itself. Growth comes with
 * `position`; forgetting is read off the memories (state.ts), so a pause counts the same in one step as in many.
 */
export function advance(state: ChildState, day: number, position: number): ChildState {
  if (day <= state.day) return state;
  const drift = DRIFT_PER_YEAR * Math.max(0, position - state.position);
  if (drift === 0) return { ...state, day, position };
  const prior = state.space.covariance;
  return {
    ...state,
    day,
    position,
    covariance: state.covariance.map((value, at) => value + drift * (prior[at] as number)),
  };
}

/** Chance that the child succeeds at a question, its uncertainty averaged in. */
export function chanceOf(state: ChildState, skill: number, difficulty: number): number {
  return averagedLogistic(abilityMean(state, skill) - difficulty, abilityVariance(state, skill));
}

/**
 * The state after an answer given on the state's day. The ability asked about (lead, less what is forgotten, whose
 * variance counts as noise) takes the exact mean and variance of Gaussian x logistic (assumed-density filtering; Minka
 * 2001, from memory); every lead follows through the gain vector covariance[., skill] / variance, so the whole step is
 * rank one and keeps the covariance symmetric and positive definite. Practice then counts as fresh again.
 */
export function afterAnswer(
  state: ChildState,
  skill: number,
  difficulty: number,
  right: boolean,
): ChildState {
  const n = state.space.skills.length;
  const variance = abilityVariance(state, skill);
  const mean = abilityMean(state, skill);
  const moments = momentsAfterAnswer(mean, variance, difficulty, right);
  const chanceRight = right ? moments.probability : 1 - moments.probability;
  const gain = Float64Array.from(
    { length: n },
    (_, i) => (state.covariance[i * n + skill] as number) / variance,
  );
  const lead = state.lead.map((value, i) => value + (gain[i] as number) * (moments.mean - mean));
  const covariance = Float64Array.from(state.covariance);
  const shrink = moments.variance - variance;
  for (let i = 0; i < n; i++) {
    const by = (gain[i] as number) * shrink;
    const row = i * n;
    for (let j = 0; j <= i; j++) {
      const value = (covariance[row + j] as number) + by * (gain[j] as number);
      covariance[row + j] = value;
      covariance[j * n + i] = value;
    }
  }
  const memories = [...state.memories];
  memories[skill] = remember(
    memories[skill] ?? null,
    right ? (chanceRight >= EASY_FROM ? 4 : 3) : 1,
    state.day,
  );
  const answered = Uint16Array.from(state.answered);
  answered[skill] = (answered[skill] as number) + 1;
  return { ...state, lead, covariance, memories, answered };
}
