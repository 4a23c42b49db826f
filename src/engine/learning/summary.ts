// From states to what a teacher reads: a word per skill, with how sure it is.
import { chanceOf } from './update.js';
import { logistic } from './logistic.js';
import { PLAIN_CASE } from '../questions/difficulty.js';
import type { ClassModel } from './class-model.js';
import { retrievability } from './forgetting.js';
import { abilityMean, abilityVariance, type ChildState } from './state.js';

export const SKILL_STANDINGS = ['not yet sure', 'secure', 'growing', 'needs teaching'] as const;
/**
 * How a child stands at a skill. "secure": would very likely do the plain case; "growing": about as likely as not;
 * "needs teaching": would likely not; "not yet sure": too little has been seen to say.
 */
export type SkillStanding = (typeof SKILL_STANDINGS)[number];

export interface SkillSummary {
  readonly skill: string;
  readonly standing: SkillStanding;
  /** Chance of success at the skill's plain case, 0 to 1. */
  readonly chance: number;
  /** Eight times in ten the true chance lies between these. */
  readonly low: number;
  readonly high: number;
  /** Answers given to this skill itself. */
  readonly answers: number;
  /** Day count of the last answer to it; null when there was none. */
  readonly lastDay: number | null;
  /** Chance that it is still remembered, 0 to 1; null when never practised. */
  readonly remembered: number | null;
}

export interface ClassSkillSummary {
  readonly skill: string;
  /** Predicted share of the class that does the plain case. */
  readonly chance: number;
  /** Number of children in each standing. */
  readonly counts: Readonly<Record<SkillStanding, number>>;
  /** Ids of children who need teaching, surest first. */
  readonly needTeaching: readonly string[];
}

/** Half-width of the middle 80 % of a standard normal. */
const EIGHTY_PERCENT = 1.2816;
/** Bounds of the standings on the chance of the plain case (common practice: 80 % is a usual mark of mastery). */
const SECURE_FROM = 0.8;
const TEACH_BELOW = 0.5;
/** A range wider than this says that too little is known. */
const WIDEST_SURE_RANGE = 0.5;

/** One summary per skill of the map for one child, in map order; empty for a child that the model does not know. */
export function skillSummaries(model: ClassModel, childId: string): readonly SkillSummary[] {
  const child = model.children.find((one) => one.id === childId);
  return child ? summariseState(child.state) : [];
}

/** One summary per skill of a state, in map order. */
export function summariseState(state: ChildState): readonly SkillSummary[] {
  return state.space.skills.map((skill, index) => {
    const gap = abilityMean(state, index) - PLAIN_CASE;
    const reach = EIGHTY_PERCENT * Math.sqrt(abilityVariance(state, index));
    const chance = chanceOf(state, index, PLAIN_CASE);
    const low = logistic(gap - reach);
    const high = logistic(gap + reach);
    const memory = state.memories[index] ?? null;
    return {
      skill: skill.id,
      standing: standingOf(chance, low, high),
      chance,
      low,
      high,
      answers: state.answered[index] as number,
      lastDay: memory?.day ?? null,
      remembered: memory ? retrievability(state.day - memory.day, memory.stabilityDays) : null,
    };
  });
}

/** The word for a chance and its 80 % range. Sure at either end needs the range to agree; a wide range is "not yet sure". */
export function standingOf(chance: number, low: number, high: number): SkillStanding {
  if (high - low > WIDEST_SURE_RANGE) return 'not yet sure';
  if (chance >= SECURE_FROM) return 'secure';
  return chance < TEACH_BELOW ? 'needs teaching' : 'growing';
}

/** One summary per skill of the map for the whole class, in map order. */
export function classSummary(model: ClassModel): readonly ClassSkillSummary[] {
  const children = model.children.map((child) => ({ id: child.id, skills: summariseState(child.state) }));
  return model.space.skills.map((skill, index) => {
    const counts: Record<SkillStanding, number> = {
      'not yet sure': 0,
      secure: 0,
      growing: 0,
      'needs teaching': 0,
    };
    const need: { id: string; chance: number }[] = [];
    let sum = 0;
    for (const { id, skills } of children) {
      const summary = skills[index] as SkillSummary;
      counts[summary.standing]++;
      sum += summary.chance;
      if (summary.standing === 'needs teaching') need.push({ id, chance: summary.chance });
    }
    need.sort((a, b) => a.chance - b.chance);
    return {
      skill: skill.id,
      chance: sum / Math.max(1, children.length),
      counts,
      needTeaching: need.map((child) => child.id),
    };
  });
}
