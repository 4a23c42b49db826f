// Questions of every skill in all four classrooms, and whether what is said of their wrong answers fits.
import { localeOf } from '#engine/numbers/locale.js';
import { generateQuestions } from '#engine/questions/generate.js';
import type { MisconceptionId } from '#engine/questions/misconceptions.js';
import type { Question, Slip } from '#engine/questions/question.js';
import { SKILLS } from '#engine/skills/map.js';
import { daySamples, freeSamples, type Sample } from './samples.js';

/** Twenty questions of every skill in each classroom, and those about numbers of the day. */
export const SAMPLES: readonly Sample[] = [...freeSamples(23), ...daySamples(23)];

/** Every wrong answer of the samples. */
export const SLIPS = SAMPLES.flatMap((sample) => sample.question.slips.map((slip) => ({ ...sample, slip })));

/** More questions of one skill, for what comes up too seldom in twenty. */
export function questionsOf(id: string, count: number): Question[] {
  return SKILLS.filter((skill) => skill.id === id).flatMap((skill) =>
    generateQuestions(skill, count, 23, localeOf('en-AU')),
  );
}

/** A value as a number: "3/4" is 0.75; NaN for words. */
export function sizeOf(value: string | null): number {
  const [top, bottom = '1'] = (value ?? 'none').split('/');
  return Number(top) / Number(bottom);
}

/** The whole numbers that a text offers, however their digits are grouped: "Which is greater: 61 or 51?" */
export function offered(text: string): number[] {
  return [...text.replace(/(?<=\d)[\u00a0,](?=\d{3}\b)/g, '').matchAll(/\d+/g)].map(Number);
}

/**
 * Wrong answers with one of these misconceptions that do not fit it, as a teacher would read them; null marks what cannot
 * be told. Throws where none can be told, since such a test could not fail.
 */
export function misfits(
  ids: MisconceptionId | readonly MisconceptionId[],
  fits: (question: Question, wrong: number, slip: Slip) => boolean | null,
): string[] {
  const meant: readonly string[] = typeof ids === 'string' ? [ids] : ids;
  const told = SLIPS.filter(({ slip }) => meant.includes(slip.misconception)).flatMap(
    ({ skill, question, slip }) => {
      const isFit = fits(question, sizeOf(slip.value), slip);
      const line = `${skill.id}: ${question.text} [${slip.text}, ${slip.misconception}]`;
      return isFit === null ? [] : [{ line, isFit }];
    },
  );
  if (told.length === 0) throw new Error(`no wrong answer with ${meant.join(' or ')} can be told`);
  return [...new Set(told.filter(({ isFit }) => !isFit).map(({ line }) => line))];
}
