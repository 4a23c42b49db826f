// Where in the school year a day stands, for the learner model's growth.
import { dateOf, dayCount } from '../numbers/calendar.js';
import type { LocaleId } from '../numbers/locale.js';

/** First and last school day of one school year, ISO dates. */
export interface SchoolYear {
  readonly start: string;
  readonly end: string;
}

/** The school year around a date when a school has not said: 28 January to 18 December in the south (common practice
 * in Australia and New Zealand), September to mid July in Britain, mid August to mid June in the US. */
export function usualSchoolYear(on: string, locale: LocaleId = 'en-AU'): SchoolYear {
  const { year, month } = dateOf(on);
  if (locale === 'en-AU' || locale === 'en-NZ')
    return { start: onDay(year, '01-28'), end: onDay(year, '12-18') };
  const first = month >= 8 ? year : year - 1;
  return locale === 'en-GB'
    ? { start: onDay(first, '09-01'), end: onDay(first + 1, '07-20') }
    : { start: onDay(first, '08-20'), end: onDay(first + 1, '06-10') };
}

function onDay(year: number, monthDay: string): string {
  return `${String(year).padStart(4, '0')}-${monthDay}`;
}

/**
 * Place in schooling on a day: class year - 1 + share of the school year done. Earlier school years count back one
 * each, so a history that spans years grows without a jump; between two years it stands still.
 */
export function schoolPosition(classYear: number, day: number, schoolYear: SchoolYear): number {
  const start = dayCount(schoolYear.start);
  const length = Math.max(1, dayCount(schoolYear.end) - start);
  const yearsAway = Math.floor((day - start) / 365.25);
  const share = Math.min(1, Math.max(0, (day - start - yearsAway * 365.25) / length));
  return classYear - 1 + yearsAway + share;
}
