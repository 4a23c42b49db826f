// How far numbers reach in each school year: the ranges that rows are made in. Common practice, in step with the skill map.
import type { Rng } from '../../../random/rng.js';
import type { JigsawLevel } from '../jigsaw.js';
import type { SkillPool } from './skill-pool.js';
import type { Locale } from '../../../numbers/locale.js';

export interface YearReach {
  /** Largest total of adding and taking away. */
  readonly largest: number;
  /** Factors that are known; none in the first years. */
  readonly tables: readonly number[];
}

const UP_TO_TEN = [2, 3, 4, 5, 6, 7, 8, 9, 10] as const;

const REACH: readonly YearReach[] = [
  { largest: 10, tables: [] },
  { largest: 20, tables: [] },
  { largest: 50, tables: [2, 5, 10] },
  { largest: 100, tables: [2, 3, 4, 5, 10] },
  { largest: 120, tables: UP_TO_TEN },
  { largest: 200, tables: [...UP_TO_TEN, 11, 12] },
  { largest: 300, tables: [...UP_TO_TEN, 11, 12] },
];

/** What rows of one year may use; the year is 0 to 6. */
export function reachOf(year: number): YearReach {
  return REACH[year] as YearReach;
}

/** What every row maker is handed. */
export interface RowContext {
  readonly years: readonly number[];
  readonly locale: Locale;
  readonly rng: Rng;
  /** Easy rows are short and differ much; hard ones are long and share numbers. */
  readonly level: JigsawLevel;
  /** What chosen skills give; without it rows are made from the ranges of the years. */
  readonly pool: SkillPool | null;
}
