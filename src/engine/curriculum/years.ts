// What a school year is called: Foundation, Year 0, Reception or Kindergarten, then Year 1 or Grade 1 and up.
// Year numbers are each country's own and 0 is the year before 1; children of Year 1 in England and New Zealand are about a year younger
// than those of an Australian Year 1 or a US Grade 1 (from memory).
import type { LocaleId } from '../numbers/locale.js';

/** The years of primary school, 0 being the first. */
export const SCHOOL_YEARS = [0, 1, 2, 3, 4, 5, 6] as const;

interface YearWords {
  readonly first: string;
  readonly firstShort: string;
  readonly one: string;
  readonly many: string;
}

const WORDS: Readonly<Record<LocaleId, YearWords>> = {
  'en-AU': { first: 'Foundation', firstShort: 'F', one: 'Year', many: 'Years' },
  'en-NZ': { first: 'Year 0', firstShort: '0', one: 'Year', many: 'Years' },
  'en-GB': { first: 'Reception', firstShort: 'R', one: 'Year', many: 'Years' },
  'en-US': { first: 'Kindergarten', firstShort: 'K', one: 'Grade', many: 'Grades' },
};

/** "Foundation", "Year 4" or "Grade 4". */
export function yearName(year: number, locale: LocaleId): string {
  const words = WORDS[locale];
  return year === 0 ? words.first : `${words.one} ${year}`;
}

/** "F", "R", "K" or "4": for narrow columns under a heading that says what it is. */
export function yearShort(year: number, locale: LocaleId): string {
  return year === 0 ? WORDS[locale].firstShort : String(year);
}

/**
 * "Year 4", "Years 4 and 5", "Years 3, 4 and 5", "Foundation and Year 1", "Foundation, Years 1 and 2": the years of a
 * class in ascending order, each once; empty for no years.
 */
export function yearsName(years: readonly number[], locale: LocaleId): string {
  const ordered = [...new Set(years)].toSorted((a, b) => a - b);
  const numbered = ordered.filter((year) => year > 0);
  if (numbered.length === ordered.length) return numberedYears(numbered, locale);
  if (numbered.length === 0) return yearName(0, locale);
  const join = numbered.length === 1 ? ' and ' : ', ';
  return yearName(0, locale) + join + numberedYears(numbered, locale);
}

function numberedYears(years: readonly number[], locale: LocaleId): string {
  const last = years.at(-1);
  if (last === undefined) return '';
  if (years.length === 1) return yearName(last, locale);
  return `${WORDS[locale].many} ${years.slice(0, -1).join(', ')} and ${last}`;
}
