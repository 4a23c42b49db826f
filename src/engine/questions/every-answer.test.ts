import { describe, expect, it } from 'vitest';
import { LOCALES, localeOf } from '../numbers/locale.js';
import { SKILLS } from '../skills/map.js';
import { checkAnswer } from './check-answer.js';
import { generateQuestions } from './generate.js';

const PER_SKILL = 12;

// What the map asks and what marking understands must agree: typing a key's answer is right, typing a slip is not.
describe.each(LOCALES)('typing into every skill’s questions, %s', (id) => {
  const locale = localeOf(id);
  const questions = SKILLS.flatMap((skill) => generateQuestions(skill, PER_SKILL, 20, locale));

  it('finds the printed answer, every accepted form and the exact value right', () => {
    const refused = questions.flatMap((question) => {
      const { answer, accepts } = question;
      const forms = [
        answer.text,
        ...accepts,
        ...(answer.value !== null && answer.kind !== 'time' ? [answer.value] : []),
      ];
      return forms
        .filter((form) => checkAnswer(question, form, locale).verdict !== 'right')
        .map((form) => `${question.skill}: ${question.text} [${form}]`);
    });
    expect(questions.length).toBe(SKILLS.length * PER_SKILL);
    expect(refused).toEqual([]);
  });

  it('finds every slip wrong, and knows it', () => {
    const missed = questions.flatMap((question) =>
      question.slips
        .filter((slip) => {
          const { verdict, slips } = checkAnswer(question, slip.text, locale);
          return verdict !== 'wrong' || !slips.includes(slip);
        })
        .map((slip) => `${question.skill}: ${question.text} [${slip.text}, ${slip.misconception}]`),
    );
    expect(missed).toEqual([]);
  });
});
