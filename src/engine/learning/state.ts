// What is believed about one child on one day. States are never changed once returned: a new day or answer makes a new one.
import { type Memory, retrievability } from './forgetting.js';
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
  /** Per skill: mean ability, practice fresh, above a typical child at `position`, in logits. */
  readonly lead: Float64Array;
  /** Covariance of the leads, n x n, row by row. Shared between states until an answer changes it. */
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
    covariance: shiftedCovariance(space, general),
    memories: Array.from({ length: n }, () => null),
    answered: new Uint16Array(n),
  };
}

const SHIFTED = new WeakMap<SkillSpace, Map<number, Float64Array>>();

/** The prior covariance with another variance of general ability; one array per variance, since states share them. */
function shiftedCovariance(space: SkillSpace, by: number): Float64Array {
  if (by === 0) return space.covariance;
  let known = SHIFTED.get(space);
  if (!known) SHIFTED.set(space, (known = new Map()));
  let covariance = known.get(by);
  // Placements of a whole school would fill memory: only the first few variances are kept.
  if (!covariance) {
    covariance = space.covariance.map((value) => value + by);
    if (known.size < 8) known.set(by, covariance);
  }
  return covariance;
}

/**
 * Logits that a practised skill would lose if nothing of the practice were left: it sinks toward this far below where
 * practice had brought it, and the next practice lifts it again. Half a school year's growth or so, the order of loss
 * over a long summer break (from memory).
 */
const FORGETTING_DEPTH = 0.6;

/** Variance that full forgetting adds, since children do not all forget alike (common practice). */
const FORGETTING_VARIANCE = 0.3;

/** Share of a skill's practice that is lost on the state's day, 0 to 1; 0 for a skill never practised. */
function lostShare(state: ChildState, skill: number): number {
  const memory = state.memories[skill];
  return memory ? 1 - retrievability(state.day - memory.day, memory.stabilityDays) : 0;
}

/** Mean ability at a skill (by index) on the state's day, relative to the skill's year, in logits. */
export function abilityMean(state: ChildState, skill: number): number {
  const typical = priorMean(state.space.skills[skill]?.year ?? 0, state.position);
  return typical + (state.lead[skill] as number) - FORGETTING_DEPTH * lostShare(state, skill);
}

/** Variance of ability at a skill (by index) on the state's day, in squared logits. */
export function abilityVariance(state: ChildState, skill: number): number {
  const lead = state.covariance[skill * state.space.skills.length + skill] as number;
  return lead + forgettingVariance(state, skill);
}

/** What forgetting adds to the variance at a skill on the state's day. */
export function forgettingVariance(state: ChildState, skill: number): number {
  return FORGETTING_VARIANCE * lostShare(state, skill);
}
