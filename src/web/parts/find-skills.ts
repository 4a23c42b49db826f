// Finding skills by a few typed letters.
import type { SkillChoice } from '#api/make.js';
import { STRANDS, strandTitle } from '#engine/curriculum/strands.js';

/** As many as one activity draws on. */
export const MOST_SKILLS = 24;

export interface SkillGroup {
  readonly id: string;
  readonly title: string;
  readonly skills: readonly SkillChoice[];
}

/**
 * The skills that have every typed word in their title, strand or id, each as the beginning of a word, grouped by strand in
 * the map's order. `near` keeps skills of these years and the two before; null keeps all.
 */
export function findSkills(
  skills: readonly SkillChoice[],
  typed: string,
  near: readonly number[] | null,
): readonly SkillGroup[] {
  const wanted = wordsOf(typed);
  const low = near ? Math.min(...near) - 2 : 0;
  const high = near ? Math.max(...near) : 6;
  const found = skills.filter(({ id, title, strand, year }) => {
    if (near && (year < low || year > high)) return false;
    const words = wordsOf(`${title} ${strandTitle(strand)} ${id}`);
    return wanted.every((part) => words.some((word) => word.startsWith(part)));
  });
  return STRANDS.map(({ id, title }) => ({
    id,
    title,
    skills: found.filter(({ strand }) => strand === id),
  })).filter(({ skills: own }) => own.length > 0);
}

function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}$%/]+/gu) ?? [];
}
