// One day's plan: is there school, which number, what is due, and the seeds from which the boards are made.
import type { ClassModel } from '../learning/class-model.js';
import { dayAndMonth, dateOf, dayNameOf, monthName, parseIsoDate } from '../numbers/calendar.js';
import type { BoardSide } from '../activities/board/board.js';
import { type DayNumber } from '../numbers/day-number.js';
import type { LocaleId } from '../numbers/locale.js';
import { hashText } from '../random/rng.js';
import { suggestDayNumber } from './day-number-choice.js';
import { type DueSkill, dueSkills, type Exposure } from './due.js';
import {
  makeSchoolCalendar,
  nextSchoolDay,
  type PlanError,
  placeInTerm,
  schoolDayIndex,
  type Term,
} from './school-calendar.js';

export interface DayRequest {
  /** ISO date. */
  readonly date: string;
  /** Empty when the teacher has not set any: then every weekday is a school day. */
  readonly terms: readonly Term[];
  readonly closed?: readonly string[];
  readonly classModel: ClassModel;
  readonly settings: { readonly years: readonly number[]; readonly locale: LocaleId };
  readonly seed: number;
  /** Texts of the numbers of the last weeks. */
  readonly recentNumbers?: readonly string[];
  readonly exposures?: readonly Exposure[];
  /** The teacher's own choice; suggested when left out. */
  readonly number?: DayNumber;
}

export interface DayPlan {
  readonly date: string;
  /** Which school day of the year it is, from 1; null on days without school, 0 when no terms are set. */
  readonly schoolDay: number | null;
  /** "week 3 of Term 2", or null outside terms. */
  readonly place: string | null;
  /** The next school day after this one; null when none is known. */
  readonly nextSchoolDay: string | null;
  /** The day in one sentence. */
  readonly sentence: string;
  readonly number: DayNumber;
  /** Most urgent first, at most 6: what a day's boards can take in. */
  readonly due: readonly DueSkill[];
  /** One seed per side of the board. */
  readonly boards: readonly { readonly side: BoardSide; readonly seed: number }[];
}

export type DayPlanResult =
  | { readonly ok: true; readonly value: DayPlan }
  | { readonly ok: false; readonly error: PlanError };

const MOST_DUE = 6;

/** The plan of a day. A day without school has one too, so that a teacher can prepare. Errors: bad dates, terms, years. */
export function planDay(request: DayRequest): DayPlanResult {
  const { date, settings, seed } = request;
  if (parseIsoDate(date) === null) {
    return refuse(
      'calendar.date',
      `“${date.slice(0, 40)}” is not a day of the calendar.`,
      'Write dates like 2026-02-03: year, month, day.',
    );
  }
  if (
    settings.years.length === 0 ||
    settings.years.some((year) => !Number.isInteger(year) || year < 0 || year > 6)
  ) {
    return refuse(
      'plan.years',
      'The class has no year level from Foundation to Year 6.',
      'Choose the class years first.',
    );
  }
  if (!Number.isSafeInteger(seed))
    return refuse('plan.seed', `The seed ${seed} is not a whole number.`, 'Use a whole number.');
  const calendar = makeSchoolCalendar(request.terms, request.closed ?? []);
  if (!calendar.ok) return calendar;
  const hasTerms = request.terms.length > 0;
  const number =
    request.number ??
    suggestDayNumber(settings.years, date, seed, request.recentNumbers ?? [], settings.locale);
  const due = dueSkills(request.classModel, date, request.exposures ?? []).slice(0, MOST_DUE);
  const schoolDay = hasTerms
    ? schoolDayIndex(calendar.value, date)
    : dayNameOf(date).startsWith('S')
      ? null
      : 0;
  const place = placeInTerm(calendar.value, date)?.text ?? null;
  const spoken = (day: string) => spokenDate(day, settings.locale);
  const next = hasTerms ? nextSchoolDay(calendar.value, date) : null;
  return {
    ok: true,
    value: {
      date,
      schoolDay,
      place,
      nextSchoolDay: next,
      sentence:
        schoolDay === null
          ? noSchoolSentence(spoken(date), next === null ? null : spoken(next))
          : schoolSentence(place ? `${spoken(date)}, ${place}` : spoken(date), number, due.length),
      number,
      due,
      boards: (['front', 'back'] as const).map((side) => ({ side, seed: daySeed(seed, date, side) })),
    },
  };
}

/** The seed of a board: the same class seed, date and side give the same, a positive 31-bit number. */
export function daySeed(seed: number, date: string, side: BoardSide): number {
  return hashText(`${seed}/${date}/${side}`) >>> 1 || 1;
}

/** "Tuesday 10 March", or "Tuesday, March 10" in the United States. */
function spokenDate(date: string, locale: LocaleId): string {
  const { day, month } = dateOf(date);
  return `${dayNameOf(date)}${locale === 'en-US' ? ',' : ''} ${dayAndMonth(day, monthName(month), locale)}`;
}

function schoolSentence(when: string, number: DayNumber, due: number): string {
  const back =
    due === 0
      ? 'nothing needs bringing back'
      : due === 1
        ? '1 topic is due again'
        : `${due} topics are due again`;
  return `${when}: a board about ${number.text}; ${back}.`;
}

function noSchoolSentence(day: string, next: string | null): string {
  return `${day} has no school; ${next ? `the next school day is ${next}` : 'no later school day is set'}.`;
}

function refuse(code: PlanError['code'], message: string, hint: string): { ok: false; error: PlanError } {
  return { ok: false, error: { code, message, hint } };
}
