// Skill + seed -> questions: free ones for practice and "questions", and those about the day's number for boards.
import type { DayNumber } from '../numbers/day-number.js';
import type { Locale } from '../numbers/locale.js';
import { Rng } from '../random/rng.js';
import type { Skill } from '../skills/skill.js';
import { finishQuestion } from './finish.js';
import type { Question } from './question.js';

/** Repeats in a row after which a skill's space is taken to be used up: ten number bonds, say, run out soon. */
const PATIENCE = 40;

/** `count` questions of a skill, templates in turn, unequal while the skill's space allows it; then it begins again. */
export function generateQuestions(skill: Skill, count: number, seed: number, locale: Locale): Question[] {
  const rng = new Rng(seed).fork(skill.id);
  const seen = new Set<string>();
  const out: Question[] = [];
  let repeats = 0;
  for (let i = 0; out.length < count; i++) {
    const template = skill.templates[i % skill.templates.length] ?? skill.templates[0];
    const question = finishQuestion(skill, template.id, template.ask({ rng, locale }), locale);
    if (seen.has(question.id) && repeats < PATIENCE) {
      repeats++;
      continue;
    }
    if (repeats >= PATIENCE) seen.clear();
    repeats = 0;
    seen.add(question.id);
    out.push(question);
  }
  return out;
}

/** Up to `tries` different questions per template of a skill about the day's number; empty when none suits it. */
export function questionsAbout(
  skill: Skill,
  day: DayNumber,
  rng: Rng,
  locale: Locale,
  tries: number,
): Question[] {
  const out = new Map<string, Question>();
  for (const template of skill.templates) {
    if (!template.askOn || !template.dayKinds?.includes(day.kind)) continue;
    for (let i = 0; i < tries; i++) {
      const draft = template.askOn(day, { rng, locale });
      if (draft === null) break;
      const question = finishQuestion(skill, template.id, draft, locale);
      out.set(question.text, question);
    }
  }
  return [...out.values()];
}
