// Questions for a sheet of practice: of one skill, or of several taken in turn.
import type { Locale } from '../numbers/locale.js';
import type { Skill } from '../skills/skill.js';
import { generateQuestions } from './generate.js';
import type { Question } from './question.js';

const SPARE = 6;

/**
 * `count` questions of the skills in turn, so that a sheet mixes them; the same arguments give the same questions. No two
 * have the same text while the skills' own spaces allow it. Empty for no skills.
 */
export function practiceQuestions(
  skills: readonly Skill[],
  count: number,
  seed: number,
  locale: Locale,
): Question[] {
  const [only] = skills;
  if (only && skills.length === 1) return generateQuestions(only, count, seed, locale);
  // Two skills may ask the same sum; some to spare replace it.
  const share = Math.ceil(count / Math.max(1, skills.length));
  const piles = skills.map((skill) => generateQuestions(skill, share + SPARE, seed, locale));
  const texts = new Set<string>();
  const out: Question[] = [];
  for (let turn = 0; out.length < count && piles.length > 0; turn++) {
    const pile = piles[turn % piles.length] ?? [];
    const isNew = (question: Question) => !texts.has(question.text);
    const at = Math.max(0, pile.findIndex(isNew));
    const [question] = pile.splice(at, 1);
    if (!question) continue;
    texts.add(question.text);
    out.push(question);
  }
  return out;
}
