// How belief changes: with time (growth and forgetting) and with each answer (one rank-one step).
import { type Memory, remember } from './forgetting.js';
import { averagedLogistic, momentsAfterAnswer } from './logistic.js';
import { abilityMean, abilityVariance, type ChildState, forgettingVariance } from './state.js';

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
  /** Predicted chance of success when it was asked, 0 to 1; absent when not known. */
  readonly expected?: number;
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
  const covariance = position > state.position ? Float64Array.from(state.covariance) : state.covariance;
  addDrift(covariance, state.space.covariance, position - state.position);
  return { ...state, day, position, covariance };
}

function addDrift(covariance: Float64Array, prior: Float64Array, years: number): void {
  if (years <= 0) return;
  const share = DRIFT_PER_YEAR * years;
  for (let at = 0; at < covariance.length; at++) {
    covariance[at] = (covariance[at] as number) + share * (prior[at] as number);
  }
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
  return afterAnswers(state, [{ skill, difficulty, right, day: state.day, position: state.position }]);
}

/** A state whose arrays nobody else holds. */
type OwnState = { -readonly [Key in keyof ChildState]: ChildState[Key] } & { memories: (Memory | null)[] };

function ownCopy(state: ChildState): OwnState {
  return {
    ...state,
    lead: Float64Array.from(state.lead),
    covariance: Float64Array.from(state.covariance),
    memories: [...state.memories],
    answered: Uint16Array.from(state.answered),
  };
}

/**
 * Takes one answer into a state. What it takes off the covariance is an outer product of one vector with itself; that
 * vector is returned, to be written off together with others.
 */
function takeIn(
  state: OwnState,
  pending: readonly Float64Array[],
  { skill, difficulty, right }: DatedAnswer,
): Float64Array {
  const shared = pendingColumn(state.covariance, pending, skill, state.lead.length);
  const variance = (shared[skill] as number) + forgettingVariance(state, skill);
  const mean = abilityMean(state, skill);
  const moments = momentsAfterAnswer(mean, variance, difficulty, right);
  const step = (moments.mean - mean) / variance;
  const shrink = Math.sqrt(Math.max(0, variance - moments.variance)) / variance;
  for (let i = 0; i < shared.length; i++) {
    state.lead[i] = (state.lead[i] as number) + (shared[i] as number) * step;
    shared[i] = (shared[i] as number) * shrink;
  }
  const chanceRight = right ? moments.probability : 1 - moments.probability;
  const grade = right ? (chanceRight >= EASY_FROM ? 4 : 3) : 1;
  state.memories[skill] = remember(state.memories[skill] ?? null, grade, state.day);
  state.answered[skill] = (state.answered[skill] as number) + 1;
  return shared;
}

/** One column of the covariance with what is pending taken off. */
function pendingColumn(
  covariance: Float64Array,
  pending: readonly Float64Array[],
  skill: number,
  n: number,
): Float64Array {
  const column = covariance.slice(skill * n, (skill + 1) * n);
  for (const taken of pending) {
    const by = taken[skill] as number;
    for (let i = 0; i < n; i++) column[i] = (column[i] as number) - by * (taken[i] as number);
  }
  return column;
}

/** Takes the outer products of pending vectors off the covariance, four in one pass over its memory. */
function writeOff(covariance: Float64Array, pending: readonly Float64Array[], n: number): void {
  const none = new Float64Array(n);
  for (let k = 0; k < pending.length; k += 4) {
    const [a, b, c, d] = [0, 1, 2, 3].map((next) => pending[k + next] ?? none) as [
      Vector,
      Vector,
      Vector,
      Vector,
    ];
    for (let i = 0; i < n; i++) {
      const [ai, bi, ci, di] = [a[i] as number, b[i] as number, c[i] as number, d[i] as number];
      const row = i * n;
      for (let j = 0; j < n; j++) {
        const off =
          ai * (a[j] as number) + bi * (b[j] as number) + ci * (c[j] as number) + di * (d[j] as number);
        covariance[row + j] = (covariance[row + j] as number) - off;
      }
    }
  }
}

type Vector = Float64Array;

/** Answers after which what is pending is written off. */
const MOST_PENDING = 16;

/** One answer with its day and the child's place in schooling on that day. */
export interface DatedAnswer {
  readonly skill: number;
  readonly difficulty: number;
  readonly right: boolean;
  readonly day: number;
  readonly position: number;
}

/** The state after many answers in order of days: the same as {@link advance} and {@link afterAnswer} in turn, faster. */
export function afterAnswers(state: ChildState, answers: readonly DatedAnswer[]): ChildState {
  if (answers.length === 0) return state;
  const after = ownCopy(state);
  const n = after.lead.length;
  let pending: Float64Array[] = [];
  for (const answer of answers) {
    if (answer.day > after.day) {
      addDrift(after.covariance, after.space.covariance, answer.position - after.position);
      after.day = answer.day;
      after.position = answer.position;
    }
    pending.push(takeIn(after, pending, answer));
    if (pending.length < MOST_PENDING) continue;
    writeOff(after.covariance, pending, n);
    pending = [];
  }
  writeOff(after.covariance, pending, n);
  return after;
}
