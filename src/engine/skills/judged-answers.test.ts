// Questions whose answer no expression gives, or that are read off a figure: judges that know nothing of the templates
// work out every answer that could be defended. There must be one, and it must be the printed one.
import { describe, expect, it } from 'vitest';
import { judgedByFigure } from '../../../test/support/figure-judges.js';
import { wordingJudge } from '../../../test/support/wording-judges.js';
import { LOCALES, localeOf } from '../numbers/locale.js';
import { checkAnswer } from '../questions/check-answer.js';
import { generateQuestions } from '../questions/generate.js';
import type { Question } from '../questions/question.js';
import { SKILLS } from './map.js';

/** Questions of each skill; AFTERBELL_SAMPLES=1000 for the long run. */
const SAMPLES = Number(process.env['AFTERBELL_SAMPLES'] ?? 60);

const drawn = (skill: (typeof SKILLS)[number]) =>
  LOCALES.flatMap((id, i) =>
    generateQuestions(skill, Math.ceil(SAMPLES / LOCALES.length), 40 + i, localeOf(id)).map((question) => ({
      question,
      locale: localeOf(id),
    })),
  );

/** The defensible answers: by the figure where it tells, else by the words. */
function defensible(question: Question): readonly string[] | null {
  return judgedByFigure(question) ?? wordingJudge(question)?.(question) ?? null;
}

describe('every answer that a judge works out', () => {
  const judged = new Map<string, number>();
  const unjudged = new Set<string>();

  it.each(SKILLS.map((skill) => [skill.id, skill] as const))(
    '%s: is the printed one, and the only one',
    (id, skill) => {
      for (const { question, locale } of drawn(skill)) {
        const byFigure = judgedByFigure(question);
        if (question.expression !== null && byFigure === null) continue;
        const answers = defensible(question);
        if (answers === null) {
          unjudged.add(`${id}: ${question.text}`);
          continue;
        }
        judged.set(id, (judged.get(id) ?? 0) + 1);
        const where = `${id}: ${question.text} ${JSON.stringify(question.figure)}`;
        expect(answers, where).toHaveLength(1);
        const [only = ''] = answers;
        expect(
          checkAnswer(question, only, locale).verdict,
          `${where}: ${only} for ${question.answer.text}`,
        ).toBe('right');
      }
    },
  );

  it('was worked out for every question without an expression', () => {
    expect([...unjudged]).toEqual([]);
    expect(judged.size).toBeGreaterThan(60);
  });
});
