// The three bands in which sets of cards, tiles and pieces are made (common practice: two school years each).
import type { LocaleId } from '../numbers/locale.js';
import { yearsName } from './years.js';

export const BANDS = ['lower', 'middle', 'upper'] as const;
export type Band = (typeof BANDS)[number];

const YEARS: Readonly<Record<Band, readonly [number, number]>> = {
  lower: [1, 2],
  middle: [3, 4],
  upper: [5, 6],
};

/** The two school years that a band is made for. */
export function yearsOfBand(band: Band): readonly [number, number] {
  return YEARS[band];
}

/** The band of a school year from 0 (Foundation, which shares the lower band) to 6. */
export function bandOfYear(year: number): Band {
  return year <= 2 ? 'lower' : year <= 4 ? 'middle' : 'upper';
}

/** The band for a heading: "Lower (Years 1 and 2)". */
export function bandName(band: Band, locale: LocaleId): string {
  return `${band.charAt(0).toUpperCase()}${band.slice(1)} (${yearsName(YEARS[band], locale)})`;
}
