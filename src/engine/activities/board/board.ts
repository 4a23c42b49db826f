// The board: one number, twelve rungs from trivial to hard. Immutable once composed; everything printed or shown derives from it.
import type { LocaleId } from '../../numbers/locale.js';
import type { Question } from '../../questions/question.js';

export type BoardSide = 'front' | 'back';

export interface Rung {
  /** 1 is the easiest. */
  readonly rung: number;
  readonly question: Question;
  /** The share of the class that this rung is meant for, 0 to 1. */
  readonly target: number;
  /** The share of the class that is predicted to succeed, 0 to 1. */
  readonly predicted: number;
  /** Difficulty on the scale common to all years, in logits; never falls from rung to rung. */
  readonly commonDifficulty: number;
  /** One plain sentence: why this question stands here. */
  readonly why: string;
  /** Kept by the teacher when the rest of the board is chosen anew. */
  readonly locked?: boolean;
}

export interface Board {
  readonly kind: 'board';
  readonly seed: number;
  /** The day's number as printed: "47", "3.6", "$4.85", "3/4". */
  readonly number: string;
  readonly years: readonly number[];
  readonly side: BoardSide;
  readonly locale: LocaleId;
  readonly rungs: readonly Rung[];
  readonly proof: BoardProof;
}

/** Rules that a board may have to loosen, because of a teacher's locks or because too little can be asked about a number. */
export const RELAXATIONS = [
  'a skill more than once',
  'more than 4 rungs of one strand',
  'fewer than 4 strands',
  'rungs without the number of the day',
] as const;
export type Relaxation = (typeof RELAXATIONS)[number];

/** What was computed about the board, so that another program can check it again. */
export interface BoardProof {
  /** Value of the composer's objective (lower is better). */
  readonly objective: number;
  readonly candidates: number;
  readonly strands: number;
  /** Largest |predicted - target| over the rungs. */
  readonly worstMiss: number;
  /** Rungs whose prediction misses its target by more than 0.08, with the reason in the rung's `why`. */
  readonly missedRungs: readonly number[];
  /** Due reviews asked for, and those that found a place. */
  readonly reviewsDue: readonly string[];
  readonly reviewsPlaced: readonly string[];
  /** Rules that this board does not keep; absent when it keeps all. */
  readonly relaxed?: readonly Relaxation[];
}
