// The mistakes that wrong answers to a skill may tell of, most frequent first.
import { type LocaleId, localeOf } from '#engine/numbers/locale.js';
import { generateQuestions } from '#engine/questions/generate.js';
import { misconceptionOf } from '#engine/questions/misconceptions.js';
import type { Skill } from '#engine/skills/skill.js';

/** As many as show every template of a skill several times. */
const SAMPLE = 24;
const MOST = 5;

/** Up to five misconceptions of the skill, by how many of its questions they give a wrong answer to. */
export function typicalSlips(
  skill: Skill,
  locale: LocaleId,
): { readonly id: string; readonly does: string }[] {
  const counts = new Map<string, number>();
  for (const { slips } of generateQuestions(skill, SAMPLE, 1, localeOf(locale)))
    for (const { misconception } of slips) counts.set(misconception, (counts.get(misconception) ?? 0) + 1);
  return [...counts]
    .toSorted(([, a], [, b]) => b - a)
    .flatMap(([id]) => {
      const found = misconceptionOf(id);
      return found ? [{ id, does: found.does }] : [];
    })
    .slice(0, MOST);
}
