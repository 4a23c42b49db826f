// The three bands in which sets of cards, tiles and pieces are made (common practice: two school years each).
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
