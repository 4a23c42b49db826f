// What is believed about one child on one day. States are never changed once returned: a new day or answer makes a new one.
import type { Memory } from './forgetting.js';
import { priorMean, type SkillSpace, VARIANCES } from './prior.js';

/** A child's starting point, from a placement check or the teacher's word. */
export interface Placement {
  /** Logits (about: school years) above a typical child of the class year; negative below. */
  readonly shift: number;
  /** Standard deviation of that, in logits; 1 when nothing is known. */
  readonly deviation: number;
}

export interface ChildState {
  readonly space: SkillSpace;
  /** Day count (calendar.ts) this state speaks about. */
  readonly day: number;
  /** Place in schooling: class year - 1 + share of the school year done. */
  readonly position: number;
  readonly placementShift: number;
  /** Per skill: mean ability above the prior mean of a typical child at `position`, in logits. */
  readonly lead: Float64Array;
  /** n x n, row by row. Shared between states until an answer changes it. */
  readonly covariance: Float64Array;
  readonly memories: readonly (Memory | null)[];
  /** Per skill: how many answers were given to it. */
  readonly answered: Uint16Array;
}

/** The state of a child before any answer. */
export function startState(
  space: SkillSpace,
  day: number,
  position: number,
  placement?: Placement,
): ChildState {
  const n = space.skills.length;
  const shift = placement?.shift ?? 0;
  // A placement replaces what the year level says about general ability, so only that part of the covariance changes.
  const general = placement ? placement.deviation ** 2 - VARIANCES.general : 0;
  return {
    space,
    day,
    position,
    placementShift: shift,
    lead: new Float64Array(n).fill(shift),
    covariance: general === 0 ? space.covariance : space.covariance.map((value) => value + general),
    memories: new Array<Memory | null>(n).fill(null),
    answered: new Uint16Array(n),
  };
}

/** Mean ability at a skill (by index), relative to the skill's year, in logits. */
export function abilityMean(state: ChildState, skill: number): number {
  return priorMean(state.space.skills[skill]?.year ?? 0, state.position) + (state.lead[skill] as number);
}

/** Variance of ability at a skill (by index), in squared logits. */
export function abilityVariance(state: ChildState, skill: number): number {
  return state.covariance[skill * state.space.skills.length + skill] as number;
}
