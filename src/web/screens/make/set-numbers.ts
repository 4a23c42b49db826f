// The numbers that sets carry on paper.
import type { LibrarySet } from '#api/sets.js';
import { type Band, bandOfYear } from '#engine/curriculum/bands.js';

/** The band for which sets of these years are kept, unless the teacher says otherwise: that of the middle year. */
export function usualBand(years: readonly number[]): Band {
  const middle = years.toSorted((a, b) => a - b)[Math.floor((years.length - 1) / 2)];
  return bandOfYear(middle ?? 0);
}

/** The next free numbers of one kind and band, after all that are on the shelf. */
export function nextNumbers(
  shelf: readonly Pick<LibrarySet, 'kind' | 'band' | 'number'>[],
  kind: LibrarySet['kind'],
  band: Band,
  count: number,
): readonly number[] {
  const taken = shelf.filter((set) => set.kind === kind && set.band === band);
  const first = Math.max(0, ...taken.map(({ number }) => number)) + 1;
  return Array.from({ length: count }, (_, at) => first + at);
}

/** "7" or "11 to 20". */
export function numbersInWords(numbers: readonly number[]): string {
  const [first = 0] = numbers;
  const last = numbers.at(-1) ?? first;
  return first === last ? String(first) : `${first} to ${last}`;
}
