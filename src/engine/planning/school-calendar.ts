// When school is on: terms, closed days, and where a day stands among them.
import { addDays, daysBetween, parseIsoDate, weekdayOf } from '../numbers/calendar.js';
import type { SchoolYear } from '../learning/school-year.js';

export interface Term {
  readonly name: string;
  /** First and last day, ISO dates. */
  readonly start: string;
  readonly end: string;
}

/** A checked calendar; make it with {@link makeSchoolCalendar}. */
export interface SchoolCalendar {
  /** In order, none overlapping. */
  readonly terms: readonly Term[];
  /** Days off within terms: public holidays, staff days. */
  readonly closed: ReadonlySet<string>;
}

export interface PlanError {
  readonly code: 'calendar.date' | 'calendar.order' | 'calendar.overlap' | 'plan.years' | 'plan.seed';
  readonly message: string;
  readonly hint: string;
}

export type CalendarResult =
  | { readonly ok: true; readonly value: SchoolCalendar }
  | { readonly ok: false; readonly error: PlanError };

/** A calendar from terms in any order and closed days. Errors: impossible dates, a term ending before it starts, overlaps. */
export function makeSchoolCalendar(terms: readonly Term[], closed: readonly string[] = []): CalendarResult {
  for (const term of terms) {
    for (const [what, date] of [
      ['start', term.start],
      ['end', term.end],
    ] as const) {
      if (parseIsoDate(date) === null) return impossibleDate(`the ${what} of ${term.name}`, date);
    }
    if (term.end < term.start) {
      return refuse(
        'calendar.order',
        `${term.name} ends on ${term.end}, before it starts on ${term.start}.`,
        'Swap the two dates.',
      );
    }
  }
  for (const date of closed) if (parseIsoDate(date) === null) return impossibleDate('a closed day', date);
  const ordered = [...terms].sort((a, b) => (a.start < b.start ? -1 : 1));
  for (let i = 1; i < ordered.length; i++) {
    const [before, after] = [ordered[i - 1] as Term, ordered[i] as Term];
    if (after.start <= before.end) {
      return refuse(
        'calendar.overlap',
        `${after.name} starts on ${after.start}, while ${before.name} runs to ${before.end}.`,
        'Change one of these dates.',
      );
    }
  }
  return { ok: true, value: { terms: ordered, closed: new Set(closed) } };
}

function impossibleDate(what: string, date: string): { ok: false; error: PlanError } {
  return refuse(
    'calendar.date',
    `“${date.slice(0, 40)}”, given as ${what}, is not a day of the calendar.`,
    'Write dates like 2026-02-03: year, month, day.',
  );
}

function refuse(code: PlanError['code'], message: string, hint: string): { ok: false; error: PlanError } {
  return { ok: false, error: { code, message, hint } };
}

/** True on weekdays within a term that are not closed. */
export function isSchoolDay(calendar: SchoolCalendar, date: string): boolean {
  return weekdayOf(date) <= 5 && !calendar.closed.has(date) && termOf(calendar, date) !== null;
}

function termOf(calendar: SchoolCalendar, date: string): Term | null {
  return calendar.terms.find((term) => term.start <= date && date <= term.end) ?? null;
}

/** All school days of a calendar in order. */
export function schoolDays(calendar: SchoolCalendar): readonly string[] {
  return calendar.terms.flatMap((term) =>
    Array.from({ length: daysBetween(term.start, term.end) + 1 }, (_, i) => addDays(term.start, i)).filter(
      (date) => isSchoolDay(calendar, date),
    ),
  );
}

/** Which school day of the calendar a date is, from 1; null when it is none. */
export function schoolDayIndex(calendar: SchoolCalendar, date: string): number | null {
  if (!isSchoolDay(calendar, date)) return null;
  return schoolDays(calendar).filter((day) => day <= date).length;
}

/** The first school day after a date, or null when the calendar has no more. */
export function nextSchoolDay(calendar: SchoolCalendar, date: string): string | null {
  return schoolDays(calendar).find((day) => day > date) ?? null;
}

export interface PlaceInTerm {
  readonly term: Term;
  /** 1 for the week (Monday to Sunday) in which the term starts. */
  readonly week: number;
  /** "week 3 of Term 2" */
  readonly text: string;
}

/** Where a date stands in its term, or null outside terms. */
export function placeInTerm(calendar: SchoolCalendar, date: string): PlaceInTerm | null {
  const term = termOf(calendar, date);
  if (!term) return null;
  const firstMonday = addDays(term.start, 1 - weekdayOf(term.start));
  const week = Math.floor(daysBetween(firstMonday, date) / 7) + 1;
  return { term, week, text: `week ${week} of ${term.name}` };
}

/** First and last day of the calendar's terms around a date's year, for the learner model; null without terms. */
export function schoolYearOf(calendar: SchoolCalendar): SchoolYear | null {
  const [first, last] = [calendar.terms[0], calendar.terms[calendar.terms.length - 1]];
  return first && last ? { start: first.start, end: last.end } : null;
}
