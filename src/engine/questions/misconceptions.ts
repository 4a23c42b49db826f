// The catalogue of misconceptions: what a wrong answer may tell, in words a teacher would use. One file per group of
// strands adds its own entries; ids are dotted and stable, since marks refer to them.
import { ADDITIVE_MISCONCEPTIONS } from './misconceptions/additive.js';
import { EXTENDING_MISCONCEPTIONS } from './misconceptions/extending.js';
import { MULTIPLICATIVE_MISCONCEPTIONS } from './misconceptions/multiplicative.js';
import { MEASURING_MISCONCEPTIONS } from './misconceptions/measuring.js';
import { PICTURING_MISCONCEPTIONS } from './misconceptions/picturing.js';

export interface Misconception {
  /** What the child seems to do, plain and kind: "forgets to add what was carried". Reads after "It looks as if the child ". */
  readonly does: string;
  /** One sentence of what may help. */
  readonly help: string;
  /** Where the misconception is described, or "common practice". */
  readonly source: string;
}

export const MISCONCEPTIONS = {
  ...ADDITIVE_MISCONCEPTIONS,
  ...MULTIPLICATIVE_MISCONCEPTIONS,
  ...MEASURING_MISCONCEPTIONS,
  ...EXTENDING_MISCONCEPTIONS,
  ...PICTURING_MISCONCEPTIONS,
} as const satisfies Record<string, Misconception>;

export type MisconceptionId = keyof typeof MISCONCEPTIONS;

/** The catalogue entry, or null for an id that this version does not know (older data). */
export function misconceptionOf(id: string): Misconception | null {
  return (MISCONCEPTIONS as Record<string, Misconception>)[id] ?? null;
}
