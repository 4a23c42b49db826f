// The questions that a level can ask: every fact of its space, or a large fixed sample of its skills' questions.
import type { Locale } from '../../numbers/locale.js';
import type { OwnQuestion } from '../../own-questions/own-question.js';
import { drawOwn } from '../../own-questions/own-supply.js';
import { commonDifficulty, type Question } from '../../questions/question.js';
import { Rng } from '../../random/rng.js';
import { skillById } from '../../skills/map.js';
import { drawQuestions, planSupply } from '../supply.js';
import type { Arrangeable } from './arrange.js';
import type { Weight } from './deal.js';
import { digitsIn } from './digits.js';
import { factQuestion } from './fact.js';
import type { LevelPlan } from './ladder.js';
import type { TimedResult } from './timed.js';

/** A question of a level with what balance and order need to know. */
export interface SpaceQuestion extends Weight, Arrangeable {
  readonly question: Question;
}

/** Fewest different questions that a level needs for practice to be more than a list learnt by heart. */
export const SMALLEST_SPACE = 8;
/** Different questions sampled for a level made of skills; twice a long form. */
const SAMPLE = 160;
/** Longest question and answer that fit on a timed sheet, in characters. */
const LONGEST_TEXT = 34;
const LONGEST_ANSWER = 9;
/** The sample belongs to the level, not to one printing: every seed deals the same questions out. */
const SAMPLE_SEED = 1;

/** The space of a level, in a fixed order; an error when it cannot serve timed sheets. */
export function spaceOf(level: LevelPlan, locale: Locale): TimedResult<readonly SpaceQuestion[]> {
  const { source } = level;
  if (source.kind === 'facts')
    return { ok: true, value: distinct(source.facts().map((fact) => factQuestion(fact, locale))) };
  if (source.kind === 'own') return spaceOfOwn(level.title, source.questions, locale);
  const unknown = source.skills.find((id) => skillById(id) === null);
  if (unknown !== undefined || source.skills.length === 0)
    return {
      ok: false,
      error: {
        code: 'timed.skill',
        message:
          unknown === undefined
            ? `The level “${level.title}” has no skills.`
            : `There is no skill “${unknown}” in the skill map.`,
        hint: 'Choose skills by their ids from the skill map, such as mult.table.7.',
      },
    };
  const plan = planSupply({
    years: [level.year],
    skills: source.skills,
    seed: SAMPLE_SEED,
    locale: locale.id,
    longestText: LONGEST_TEXT,
    longestAnswer: LONGEST_ANSWER,
    suits: (question) => question.figure === null || isBare(question.text),
  });
  if (!plan.ok)
    return { ok: false, error: { code: 'timed.skill', message: plan.error.message, hint: plan.error.hint } };
  const drawn: Question[] = [];
  for (const { question } of drawQuestions(plan.value, 20 * SAMPLE)) {
    // A sheet of short facts has no room for drawings, and none of these needs one to be understood.
    drawn.push({ ...question, figure: null });
    if (drawn.length >= SAMPLE) break;
  }
  const space = distinct(drawn);
  if (space.length >= SMALLEST_SPACE) return { ok: true, value: space };
  return {
    ok: false,
    error: {
      code: 'timed.few',
      message: `The level “${level.title}” has only ${space.length} short questions that need no drawing; a timed sheet needs ${SMALLEST_SPACE} or more.`,
      hint: 'Add a skill with short questions, such as mult.table.7.',
    },
  };
}

/** What a teacher's own questions give to a timed sheet: those short enough for its columns, a sample of many. */
export function shortOwn(questions: readonly OwnQuestion[], locale: Locale): Question[] {
  const drawn: Question[] = [];
  for (const question of drawOwn({ questions }, new Rng(SAMPLE_SEED), locale)) {
    if (question.text.length > LONGEST_TEXT || question.answer.text.length > LONGEST_ANSWER) continue;
    drawn.push(question);
    if (drawn.length >= SAMPLE) break;
  }
  return drawn;
}

/** The space of a teacher's own questions, as far as they are short. */
function spaceOfOwn(
  title: string,
  questions: readonly OwnQuestion[],
  locale: Locale,
): TimedResult<readonly SpaceQuestion[]> {
  const space = distinct(shortOwn(questions, locale));
  if (space.length >= SMALLEST_SPACE) return { ok: true, value: space };
  return {
    ok: false,
    error: {
      code: 'timed.few',
      message: `“${title}” gives only ${space.length} ${space.length === 1 ? 'question' : 'questions'} of at most ${LONGEST_TEXT} letters; a timed sheet needs ${SMALLEST_SPACE} or more.`,
      hint: 'Add a short question with a formula in it, such as “{n} + 9”, or choose skills.',
    },
  };
}

/** Numbers and signs alone, which can be read without a drawing beside them. */
function isBare(text: string): boolean {
  return !/\p{L}{2}/u.test(text);
}

function distinct(questions: readonly Question[]): readonly SpaceQuestion[] {
  const byText = new Map(questions.map((question) => [question.text, question]));
  return [...byText.values()].map((question) => ({
    question,
    difficulty: question.difficulty,
    year: question.year,
    digits: digitsIn(question.answer.text),
    common: commonDifficulty(question),
    answer: question.answer.text,
  }));
}
