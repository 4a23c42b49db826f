// The words that differ between Australian, British and US classrooms, by the school's setting.
import { useQuery } from '@tanstack/react-query';
import { yearName, yearShort, yearsName } from '#engine/curriculum/years.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import { stateQuery } from './queries.js';

export interface Words {
  readonly locale: LocaleId;
  /** "Foundation", "Year 4" or "Grade 4". */
  readonly year: (year: number) => string;
  /** "Years 4 and 5" or "Grades 4 and 5". */
  readonly years: (years: readonly number[]) => string;
  /** "F", "Y4" or "G4": under a heading that says what it is. */
  readonly yearShort: (year: number) => string;
  /** "Year" or "Grade", as a heading. */
  readonly yearWord: string;
  /** "Wednesday 25 November" in the order the country writes it. */
  readonly longDate: (iso: string) => string;
  /** "25 Nov" */
  readonly shortDate: (iso: string) => string;
}

/** The words of one locale. */
export function wordsOf(locale: LocaleId): Words {
  const date = (iso: string, options: Intl.DateTimeFormatOptions) =>
    new Date(`${iso}T12:00:00`).toLocaleDateString(locale, options);
  return {
    locale,
    year: (year) => yearName(year, locale),
    years: (years) => yearsName(years, locale),
    yearShort: (year) => (year === 0 ? yearShort(0, locale) : `${locale === 'en-US' ? 'G' : 'Y'}${year}`),
    yearWord: locale === 'en-US' ? 'Grade' : 'Year',
    longDate: (iso) => date(iso, { weekday: 'long', day: 'numeric', month: 'long' }),
    shortDate: (iso) => date(iso, { day: 'numeric', month: 'short' }),
  };
}

/** The words of the school's setting; Australian until it is known. */
export function useWords(): Words {
  const { data: state } = useQuery(stateQuery);
  return wordsOf(state?.settings.locale ?? 'en-AU');
}
