// Three sentences at most: who to see, what to reteach, who to stretch.
import type { ChildStanding } from '#api/understanding.js';
import type { ClassSkillSummary } from '#engine/learning/summary.js';
import { skillById } from '#engine/skills/map.js';

/** A group worth teaching together has 3 to 6 children (common practice). */
const SMALLEST_GROUP = 3;
const LARGEST_GROUP = 6;
/** Skills further below the class's lowest year than this are not offered for reteaching. */
const YEARS_BACK = 2;

/** Plain sentences from the standings; none before anything was marked. */
export function sentencesFor(
  children: readonly ChildStanding[],
  standings: readonly ClassSkillSummary[],
  years: readonly number[],
): string[] {
  const marked = children.filter(({ answers }) => answers > 0);
  if (marked.length === 0) return [];
  return [seeToday(marked), reteach(marked, standings, years), stretch(marked)].filter(
    (sentence) => sentence !== null,
  );
}

function seeToday(children: readonly ChildStanding[]): string | null {
  const found = children
    .flatMap((child) => child.findings.map((finding) => ({ child, finding })))
    .sort((a, b) => b.finding.seen - a.finding.seen)[0];
  if (!found) return null;
  const { child, finding } = found;
  return `See ${child.shownAs}: it looks as if the child ${finding.does} (${finding.seen} of ${finding.chances} times). ${finding.help}`;
}

function reteach(
  children: readonly ChildStanding[],
  standings: readonly ClassSkillSummary[],
  years: readonly number[],
): string | null {
  const lowest = Math.min(...years) - YEARS_BACK;
  const asked = new Set(
    children.flatMap(({ skills }) =>
      skills.filter(({ answers }) => answers > 0).map(({ skillId }) => skillId),
    ),
  );
  const group = standings
    .filter(
      ({ skill, needTeaching }) =>
        asked.has(skill) && needTeaching.length >= SMALLEST_GROUP && (skillById(skill)?.year ?? 0) >= lowest,
    )
    .map(({ skill, needTeaching }) => ({
      skill,
      members: children.filter(({ childId }) => needTeaching.includes(childId)),
    }))
    .filter(({ members }) => members.length >= SMALLEST_GROUP)
    .sort(
      (a, b) =>
        (skillById(a.skill)?.year ?? 0) - (skillById(b.skill)?.year ?? 0) ||
        b.members.length - a.members.length,
    )[0];
  if (!group) return null;
  const title = skillById(group.skill)?.title.toLowerCase() ?? group.skill;
  return `Reteach “${title}” to ${joinNames(group.members)}.`;
}

function stretch(children: readonly ChildStanding[]): string | null {
  const ready = children
    .map((child) => ({
      child,
      share: child.skills.filter(({ state }) => state === 'secure').length / Math.max(1, child.skills.length),
    }))
    .filter(({ child, share }) => share > 0.6 && child.answers >= 12)
    .sort((a, b) => b.share - a.share)
    .map(({ child }) => child);
  return ready.length === 0
    ? null
    : `Ready for more: ${joinNames(ready.slice(0, LARGEST_GROUP))} could start on the harder side.`;
}

function joinNames(children: readonly ChildStanding[]): string {
  const names = children.slice(0, LARGEST_GROUP).map(({ shownAs }) => shownAs);
  const more = children.length - names.length;
  if (more > 0) return `${names.join(', ')} and ${more} more`;
  const last = names.pop() ?? '';
  return names.length > 0 ? `${names.join(', ')} and ${last}` : last;
}
