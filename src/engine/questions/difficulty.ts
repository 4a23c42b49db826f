// From features of a question to its difficulty in logits, relative to its skill's plain case.
// Directions follow the published effects named beside each weight; sizes are our own starting values
// ("common practice"), to be re-estimated from answers.

/** What a template says about one question. Leave out what does not apply. */
export interface Features {
  /** Operand size beyond the skill's smallest typical case, in steps of "noticeably bigger": 0 to 4. Problem-size effect (Campbell & Xue 2001; Ashcraft 1992). */
  readonly size?: number;
  /** Both operands equal: 6 + 6, 7 x 7. Ties are easier (Campbell & Gunter 2002). */
  readonly tie?: boolean;
  /** A rule answers it: x 0, x 1, x 10, + 0. From memory (LeFevre). */
  readonly rule?: boolean;
  /** The five-times family. From memory (LeFevre). */
  readonly fives?: boolean;
  /** Number of carries, or of borrows. From memory (Imbo & Vandierendonck; Ashcraft 1992). */
  readonly carries?: number;
  /** A borrow has to cross a zero. Brown & VanLehn's hard case; common practice. */
  readonly acrossZero?: boolean;
  /** Thinking steps beyond the first. Common practice. */
  readonly extraSteps?: number;
  /** The unknown is not the result: 7 + ? = 12. Common practice. */
  readonly unknownInside?: boolean;
  /** Wrapped in a one-sentence story. Common practice. */
  readonly story?: boolean;
  /** A drawing carries part of the work. Common practice. */
  readonly drawn?: boolean;
  /** Decimal or fraction parts of unequal kind: unlike denominators, ragged decimals. Fraction-subtraction data (Tatsuoka): common denominators raise difficulty. */
  readonly unlike?: boolean;
  /** The answer can be picked from two or three choices. */
  readonly fewChoices?: boolean;
  /** Anything the list lacks, in logits, with a comment at its use. */
  readonly adjust?: number;
}

/** Logits of a skill's plain case at the end of its year: about 73 % of typical pupils succeed. Common practice. */
export const PLAIN_CASE = -1;

const WEIGHTS = {
  size: 0.3,
  tie: -0.4,
  rule: -0.8,
  fives: -0.3,
  carries: 0.4,
  acrossZero: 0.4,
  extraSteps: 0.4,
  unknownInside: 0.4,
  story: 0.2,
  drawn: -0.2,
  unlike: 0.5,
  fewChoices: -0.6,
} as const;

const WEIGHT_LIST = Object.entries(WEIGHTS) as readonly (readonly [keyof typeof WEIGHTS, number])[];

/** Difficulty in logits (rounded to 0.01) for a skill whose plain case is shifted by `skillShift`. Clamped to -4..4. */
export function difficultyOf(features: Features, skillShift = 0): number {
  let logits = PLAIN_CASE + skillShift + (features.adjust ?? 0);
  for (const [name, weight] of WEIGHT_LIST) logits += weight * Number(features[name] ?? 0);
  return Math.round(Math.min(4, Math.max(-4, logits)) * 100) / 100 + 0;
}
