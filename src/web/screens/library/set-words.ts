// Kinds, bands and steps as this screen names them.
import type { LibrarySet, RotaSet } from '#api/sets.js';
import { type Band, yearsOfBand } from '#engine/curriculum/bands.js';
import type { SetKind, SetStep } from '#engine/planning/set-shelf.js';
import type { Words } from '../../app/use-words.js';

export const KIND_WORDS: Readonly<Record<SetKind, { readonly one: string; readonly many: string }>> = {
  chain: { one: 'chain', many: 'chains' },
  trail: { one: 'trail', many: 'trails' },
  jigsaw: { one: 'jigsaw', many: 'jigsaws' },
};

const BAND_WORDS: Readonly<Record<Band, string>> = { lower: 'Lower', middle: 'Middle', upper: 'Upper' };

/** "Lower", for a choice. */
export const bandWord = (band: Band): string => BAND_WORDS[band];

/** "Lower band, Years 1 and 2" */
export function bandTitle(band: Band, words: Words): string {
  return `${BAND_WORDS[band]} band, ${words.years(yearsOfBand(band))}`;
}

/** What a step is called once it is done. */
export const STEP_WORDS: Readonly<Record<SetStep, string>> = {
  printed: 'Printed',
  cut: 'Cut',
  laminated: 'Laminated',
  boxed: 'In its box',
};

/** "middle 7", as the bag and the pieces have it. */
export function setName({ band, number }: Pick<RotaSet | LibrarySet, 'band' | 'number'>): string {
  return `${band} ${number}`;
}

/** "1 chain", "4 chains" */
export function countOf(kind: SetKind, count: number): string {
  return `${count} ${count === 1 ? KIND_WORDS[kind].one : KIND_WORDS[kind].many}`;
}
