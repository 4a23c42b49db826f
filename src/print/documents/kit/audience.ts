// For whom a set is, in the words of backs and labels.
import type { Pitch } from '#engine/activities/supply.js';
import { yearsInWords } from '../page-data.js';

/** "Years 3 and 4", or "Years 3 and 4, upper part" for a set pitched above the middle of the class. */
export function audienceOf({
  years,
  pitch = 'middle',
}: {
  readonly years: readonly number[];
  readonly pitch?: Pitch;
}): string {
  return pitch === 'middle' ? yearsInWords(years) : `${yearsInWords(years)}, ${pitch} part`;
}
