// Published rates of digits right in a minute, shown as a band beside a chart: where many children learn best, never a
// label on one child. Two printed versions contradict each other, so the one used is named wherever the band is shown.
import type { LocaleId } from '../../numbers/locale.js';

/** A band of rates: from `low` to `high` digits right in a minute, both included. */
export interface RateBand {
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

/** Burns, VanDerHeyden and Jiban 2006, School Psychology Review 35(3), 401-418, abstract: instructional level, 434 pupils. */
const SOURCE = 'Burns, VanDerHeyden and Jiban 2006, grades 2 to 5';
const BY_GRADE: ReadonlyMap<number, readonly [low: number, high: number]> = new Map([
  [2, [14, 31]],
  [3, [14, 31]],
  [4, [24, 49]],
  [5, [24, 49]],
]);

/** The published band for a school year, or null where none was published (grades below 2 and above 5). */
export function rateBand(year: number, locale: LocaleId): RateBand | null {
  // An English school year is one higher than the grade of the same age. Common practice.
  const grade = locale === 'en-GB' ? year - 1 : year;
  const band = BY_GRADE.get(grade);
  return band ? { low: band[0], high: band[1], source: SOURCE } : null;
}
