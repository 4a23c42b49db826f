// The catalogue of misconceptions: what a wrong answer may tell, in words a teacher would use. One file a subject adds its
// own entries; ids are dotted and stable, since marks refer to them.
import { ALGEBRA_MISCONCEPTIONS } from './misconceptions/algebra.js';
import { DATA_MISCONCEPTIONS } from './misconceptions/data.js';
import { DECIMAL_MISCONCEPTIONS } from './misconceptions/decimals.js';
import { DIVISION_MISCONCEPTIONS } from './misconceptions/division.js';
import { FRACTION_MISCONCEPTIONS } from './misconceptions/fractions.js';
import { MEASURE_MISCONCEPTIONS } from './misconceptions/measures.js';
import { MONEY_MISCONCEPTIONS } from './misconceptions/money.js';
import { PLACE_VALUE_MISCONCEPTIONS } from './misconceptions/place-value.js';
import { PRODUCT_MISCONCEPTIONS } from './misconceptions/products.js';
import { SHAPE_MISCONCEPTIONS } from './misconceptions/shape.js';
import { SUM_MISCONCEPTIONS } from './misconceptions/sums.js';
import { TIME_MISCONCEPTIONS } from './misconceptions/time.js';

export interface Misconception {
  /** What the child seems to do, plain and kind: "forgets to add what was carried". Reads after "It looks as if the child ". */
  readonly does: string;
  /** One sentence of what may help. */
  readonly help: string;
  /** Where the misconception is described, or "common practice". */
  readonly source: string;
}

export const MISCONCEPTIONS = {
  ...PLACE_VALUE_MISCONCEPTIONS,
  ...SUM_MISCONCEPTIONS,
  ...ALGEBRA_MISCONCEPTIONS,
  ...PRODUCT_MISCONCEPTIONS,
  ...DIVISION_MISCONCEPTIONS,
  ...FRACTION_MISCONCEPTIONS,
  ...DECIMAL_MISCONCEPTIONS,
  ...MONEY_MISCONCEPTIONS,
  ...TIME_MISCONCEPTIONS,
  ...MEASURE_MISCONCEPTIONS,
  ...SHAPE_MISCONCEPTIONS,
  ...DATA_MISCONCEPTIONS,
} as const satisfies Record<string, Misconception>;

export type MisconceptionId = keyof typeof MISCONCEPTIONS;

/** The catalogue entry, or null for an id that this version does not know (older data). */
export function misconceptionOf(id: string): Misconception | null {
  return (MISCONCEPTIONS as Record<string, Misconception>)[id] ?? null;
}
