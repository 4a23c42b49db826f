// Which skills a view shows, and in which groups.
import type { SkillInfo, UnderstandingView } from '#api/understanding.js';
import { STRANDS } from '#engine/curriculum/strands.js';

export interface StrandGroup {
  readonly id: string;
  readonly title: string;
  readonly skills: readonly SkillInfo[];
}

/** Skills grouped by strand in the usual order, easier years first; without `isAll` only those that anyone answered. */
export function shownSkills(view: UnderstandingView, isAll: boolean): StrandGroup[] {
  const asked = new Set(view.class.filter(({ answers }) => answers > 0).map(({ skillId }) => skillId));
  return groupByStrand(view.skills.filter(({ id }) => isAll || asked.has(id)));
}

/** Skills by strand in the usual order; empty strands are left out. */
export function groupByStrand(skills: readonly SkillInfo[]): StrandGroup[] {
  return STRANDS.map(({ id, title }) => ({
    id,
    title,
    skills: skills.filter(({ strand }) => strand === id).sort((a, b) => a.year - b.year),
  })).filter((group) => group.skills.length > 0);
}
