// Three sentences at most: who to see, what to reteach, who to stretch.
import type { ChildStanding, Saying } from '#api/understanding.js';
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
): Saying[] {
  const marked = children.filter(({ answers }) => answers > 0);
  if (marked.length === 0) return [];
  const together = bringTogether(marked);
  // A child of the group is seen with the group; another child may need a look of its own.
  const grouped = new Set(together?.members.map(({ childId }) => childId));
  const alone = marked.filter(({ childId }) => !grouped.has(childId));
  return [seeToday(alone), together?.saying ?? reteach(marked, standings, years), stretch(marked)].filter(
    (saying) => saying !== null,
  );
}

/** Three or more children for whom the same misconception is named, the largest group first. */
function bringTogether(
  children: readonly ChildStanding[],
): { readonly saying: Saying; readonly members: readonly ChildStanding[] } | null {
  const groups = new Map<string, ChildStanding[]>();
  for (const child of children)
    for (const { misconception } of child.findings)
      groups.set(misconception, [...(groups.get(misconception) ?? []), child]);
  const [group] = [...groups]
    .filter(([, members]) => members.length >= SMALLEST_GROUP)
    .toSorted((a, b) => b[1].length - a[1].length || (a[0] < b[0] ? -1 : 1));
  const finding = group?.[1][0]?.findings.find(({ misconception }) => misconception === group[0]);
  const first = group?.[1][0];
  if (!group || !finding || !first) return null;
  return {
    members: group[1].slice(0, LARGEST_GROUP),
    saying: {
      text: `Bring together ${joinNames(group[1])}: of each it looks as if the child ${finding.does}. ${finding.help}`,
      childId: first.childId,
      skillId: null,
    },
  };
}

function seeToday(children: readonly ChildStanding[]): Saying | null {
  const found = children
    .flatMap((child) => child.findings.map((finding) => ({ child, finding })))
    .sort((a, b) => b.finding.seen - a.finding.seen)[0];
  if (!found) return null;
  const { child, finding } = found;
  return {
    text: `See ${child.shownAs}: it looks as if the child ${finding.does} (${finding.seen} of ${finding.chances} times). ${finding.help}`,
    childId: child.childId,
    skillId: null,
  };
}

function reteach(
  children: readonly ChildStanding[],
  standings: readonly ClassSkillSummary[],
  years: readonly number[],
): Saying | null {
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
  return {
    text: `Reteach “${title}” to ${joinNames(group.members)}.`,
    childId: group.members[0]?.childId ?? null,
    skillId: group.skill,
  };
}

function stretch(children: readonly ChildStanding[]): Saying | null {
  const ready = children
    .map((child) => ({
      child,
      share: child.skills.filter(({ state }) => state === 'secure').length / Math.max(1, child.skills.length),
    }))
    .filter(({ child, share }) => share > 0.6 && child.answers >= 12)
    .sort((a, b) => b.share - a.share)
    .map(({ child }) => child);
  const [first] = ready;
  if (!first) return null;
  return {
    text: `Ready for more: ${joinNames(ready.slice(0, LARGEST_GROUP))} could start on the harder side.`,
    childId: first.childId,
    skillId: null,
  };
}

function joinNames(children: readonly ChildStanding[]): string {
  const names = children.slice(0, LARGEST_GROUP).map(({ shownAs }) => shownAs);
  const more = children.length - names.length;
  if (more > 0) return `${names.join(', ')} and ${more} more`;
  const last = names.pop() ?? '';
  return names.length > 0 ? `${names.join(', ')} and ${last}` : last;
}
