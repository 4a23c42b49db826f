// What an activity brings to its kit: words for its labels, and the pages that only it has.
import type { KitOptions, KitSet } from '../../kit-request.js';
import type { PaperId } from '../../request.js';
import type { NamePrinter } from '../names.js';
import type { PartData } from '../page-data.js';

/** What every builder of kit pages is handed. */
export interface KitComposer<T> {
  readonly sets: readonly KitSet<T>[];
  readonly paper: PaperId;
  readonly options: KitOptions;
  readonly names: NamePrinter;
}

export interface ActivityKit<T> {
  /** "Chain". */
  readonly name: string;
  /** Which document holds its loose parts. */
  readonly loose: 'cards' | 'tiles' | 'pieces';
  /** For whom a set is: "Years 3 and 4, upper part". */
  readonly audience: (activity: T) => string;
  /** What must be in the bag: "10 strips". */
  readonly contents: (activity: T) => string;
  /** How a child works with it, in two or three short sentences; stands on the bag. */
  readonly howTo: (activity: T) => string;
  /** What it practises: "Multiplication, Time". */
  readonly topics: (activity: T) => string;
  /** Loose parts with their backs, in pairs of pages; fronts alone when backs are left out. */
  readonly looseParts: (composer: KitComposer<T>) => Generator<PartData>;
  /** For an adult: all sets at a glance, then each in full. */
  readonly keyParts: (composer: KitComposer<T>) => Generator<PartData>;
  /** One sheet a set to cut and paste. */
  readonly pupilParts: (composer: KitComposer<T>) => Generator<PartData>;
}

/** "Set 3", or "Sets 1 to 10"; sets out of order are listed. */
export function setsInWords(sets: readonly { readonly number: number }[]): string {
  const numbers = sets.map(({ number }) => number);
  const first = numbers[0] ?? 0;
  if (numbers.length === 1) return `Set ${first}`;
  const isRun = numbers.every((number, at) => number === first + at);
  if (isRun && numbers.length > 2) return `Sets ${first} to ${numbers.at(-1)}`;
  return `Sets ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
}

/** The same words as part of a sentence: "sets 1 to 10". */
export function lowerFirst(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
