// A level and a wish -> equal forms. Form C is the same whether three forms are asked for or thirty.
import { localeOf, type LocaleId } from '../../numbers/locale.js';
import type { Question } from '../../questions/question.js';
import { Rng } from '../../random/rng.js';
import { arrangeForm } from './arrange.js';
import { dealForms } from './deal.js';
import { digitsIn } from './digits.js';
import { LADDER, type LevelPlan } from './ladder.js';
import { areEven, mean, proveForms } from './proof.js';
import { type SpaceQuestion, spaceOf } from './space.js';
import type { Timed, TimedError, TimedForm, TimedResult } from './timed.js';

export interface TimedRequest {
  /** A level of the ladder by its place from 1, or one described in full. */
  readonly level: number | LevelPlan;
  /** How many forms, 1 to 100. */
  readonly forms: number;
  /** Questions on a form, front and back together, 60 to 120; 60 when left out. */
  readonly questions?: number;
  /** A whole number that fits in 32 bits. */
  readonly seed: number;
  readonly locale: LocaleId;
}

/** Thirty a side. On shorter forms one or two digits more than on another would be over three in a hundred. */
export const FEWEST_QUESTIONS = 60;
export const MOST_QUESTIONS = 120;
export const USUAL_QUESTIONS = 60;
export const MOST_FORMS = 100;

/** Usual minutes by school year, 0 to 6. Common practice: two to five minutes by age. */
const USUAL_MINUTES = [2, 2, 2, 3, 4, 5, 5] as const;

/** Equal forms of one level, with the figures that show it. */
export function composeTimed(request: TimedRequest): TimedResult<Timed> {
  const problem = problemWith(request);
  if (problem) return { ok: false, error: problem };
  const { seed, questions: size = USUAL_QUESTIONS } = request;
  const level = typeof request.level === 'number' ? LADDER[request.level - 1] : request.level;
  if (!level) throw new Error('a level that was checked is missing');
  const space = spaceOf(level, localeOf(request.locale));
  if (!space.ok) return space;
  const rng = new Rng(seed).fork(`timed/${level.id}/${size}`);
  const forms: TimedForm[] = [];
  for (const places of dealForms(space.value, size, rng.fork('deal'))) {
    forms.push(finishForm(places, space.value, forms.length, rng));
    if (forms.length === request.forms) break;
  }
  const proof = proveForms(forms, space.value.length);
  if (!areEven(proof)) return { ok: false, error: uneven(level, space.value.length, size) };
  const place = LADDER.indexOf(level);
  return {
    ok: true,
    value: {
      kind: 'timed',
      seed,
      locale: request.locale,
      level: place < 0 ? null : place + 1,
      levelId: level.id,
      title: level.title,
      room: level.room,
      minutes: USUAL_MINUTES[level.year] ?? 5,
      forms,
      proof,
    },
  };
}

function finishForm(
  places: readonly number[],
  space: readonly SpaceQuestion[],
  number: number,
  rng: Rng,
): TimedForm {
  const questions: Question[] = arrangeForm(places, space, rng.fork('order').fork(number)).flatMap(
    (place) => space[place]?.question ?? [],
  );
  return {
    form: formName(number),
    questions,
    meanDifficulty: Math.round(1000 * mean(questions.map(({ difficulty }) => difficulty))) / 1000,
    digits: questions.reduce((total, { answer }) => total + digitsIn(answer.text), 0),
  };
}

/** "A" for 0, "Z" for 25, "AA" for 26. */
export function formName(number: number): string {
  const letter = String.fromCharCode(65 + (number % 26));
  return number < 26 ? letter : formName(Math.floor(number / 26) - 1) + letter;
}

function problemWith({ level, forms, questions = USUAL_QUESTIONS, seed }: TimedRequest): TimedError | null {
  if (typeof level === 'number' && !LADDER[level - 1])
    return {
      code: 'timed.level',
      message: `The ladder has levels 1 to ${LADDER.length}; there is no level ${level}.`,
      hint: `Choose a whole number from 1 to ${LADDER.length}.`,
    };
  if (!Number.isInteger(forms) || forms < 1 || forms > MOST_FORMS)
    return {
      code: 'timed.forms',
      message: `A level is made in 1 to ${MOST_FORMS} forms, not ${forms}.`,
      hint: 'Choose 2 for a change from day to day.',
    };
  if (!Number.isInteger(questions) || questions < FEWEST_QUESTIONS || questions > MOST_QUESTIONS)
    return {
      code: 'timed.questions',
      message: `A form has ${FEWEST_QUESTIONS} to ${MOST_QUESTIONS} questions, not ${questions}.`,
      hint: `Choose ${USUAL_QUESTIONS} for a usual sheet, front and back.`,
    };
  if (!Number.isInteger(seed) || (seed | 0) !== seed)
    return {
      code: 'timed.seed',
      message: `The seed ${seed} is not a whole number that fits in 32 bits.`,
      hint: 'Use a whole number such as 1.',
    };
  return null;
}

function uneven(level: LevelPlan, space: number, size: number): TimedError {
  return {
    code: 'timed.uneven',
    message: `The ${space} questions of “${level.title}” are too unlike to make equal forms of ${size}.`,
    hint: 'Ask for more questions on a form, or choose skills that are closer to one another.',
  };
}
