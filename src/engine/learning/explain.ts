// Why the model believes what it believes: every change of a skill traced to the answers, or the time, that caused it.
import { dayCount } from '../numbers/calendar.js';
import { SKILLS } from '../skills/map.js';
import { type ChildRecord, foldSteps } from './class-model.js';
import { type SkillNode, skillSpaceOf } from './prior.js';
import { type SchoolYear, usualSchoolYear } from './school-year.js';
import { abilityMean } from './state.js';

/** One cause of a change at a skill. */
export interface Change {
  /** The answer that caused it; null when time did (growth with the school year, less what was forgotten). */
  readonly questionId: string | null;
  /** The skill that was asked; the same as the explained one, or a neighbour that moves with it. */
  readonly askedSkill: string | null;
  readonly right: boolean | null;
  /** Day count. */
  readonly day: number;
  /** Change of the mean ability at the explained skill, in logits. */
  readonly by: number;
}

export interface Explanation {
  /** Mean ability before any answer, in logits relative to the skill's year. */
  readonly start: number;
  /** Mean ability on the day asked about: start plus all changes. */
  readonly now: number;
  /** In the order in which they happened. */
  readonly changes: readonly Change[];
}

/** How belief about one skill of one child came about, or null when the skill is unknown. */
export function explainSkill(
  child: ChildRecord,
  skillId: string,
  on: string,
  skills: readonly SkillNode[] = SKILLS,
  schoolYear: SchoolYear = usualSchoolYear(on),
): Explanation | null {
  const space = skillSpaceOf(skills);
  const skill = space.indexOf.get(skillId);
  if (skill === undefined) return null;
  const changes: Change[] = [];
  let start: number | null = null;
  let now = 0;
  for (const { before, after, answer } of foldSteps(space, child, dayCount(on), schoolYear)) {
    const from = abilityMean(before, skill);
    now = abilityMean(after, skill);
    start ??= from;
    if (answer || now !== from) {
      changes.push({
        questionId: answer?.questionId ?? null,
        askedSkill: answer?.skill ?? null,
        right: answer?.right ?? null,
        day: after.day,
        by: now - from,
      });
    }
  }
  return { start: start ?? now, now, changes };
}
