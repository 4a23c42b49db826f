// The chain: loose strips, each with an answer and the next question. From start to finish every strip is used, and only
// the right answers lead there.
import type { LocaleId } from '../../numbers/locale.js';
import type { Answer, Question } from '../../questions/question.js';
import type { Pitch, SupplyOrder } from '../supply.js';

export interface ChainCard {
  /** One letter for an adult's check at a glance; letters follow no order. */
  readonly label: string;
  /** What leads to this strip; null on the start strip. */
  readonly answer: Answer | null;
  /** What leads on from it; null on the finish strip. */
  readonly question: Question | null;
  /** Predicted share of these children that answers the question rightly, 0 to 1; null on the finish strip. */
  readonly predicted: number | null;
}

export interface Chain {
  readonly kind: 'chain';
  readonly seed: number;
  readonly years: readonly number[];
  readonly pitch: Pitch;
  readonly locale: LocaleId;
  readonly order: SupplyOrder;
  /** In solution order: start first, finish last. */
  readonly cards: readonly ChainCard[];
  /** The order in which strips are printed: places in `cards`. */
  readonly printOrder: readonly number[];
  readonly proof: ChainProof;
}

/**
 * at once: whatever typical slip comes first in a run, it leads to no strip or to one that lies there already.
 * single run: any number of typical slips leaves strips over or stops the run, perhaps late.
 * open: some combination of slips passes unseen; the composer never gives out such a chain.
 */
export const CHAIN_LEVELS = ['at once', 'single run', 'open'] as const;
export type ChainLevel = (typeof CHAIN_LEVELS)[number];

/** A slip whose answer stands on a strip. Places count from 0, the start strip. */
export interface SlipLanding {
  /** The strip whose question is answered wrongly. */
  readonly from: number;
  readonly misconception: string;
  /** The strip that carries the wrong answer. */
  readonly to: number;
}

export interface ChainProof {
  /** Paths from start to finish through every strip in the graph of all right answers and all slips. */
  readonly fullRuns: number;
  /** Slips of all questions. */
  readonly slips: number;
  /** Slips that stop the child there and then, when they are the first of a run. */
  readonly shownAtOnce: number;
  readonly level: ChainLevel;
  /** Slips that lead to a strip; all others lead nowhere. */
  readonly landings: readonly SlipLanding[];
  /** Strips whose answer is the only one of its form ($, o'clock, cm, word), so that it could be found by form alone. */
  readonly foundByForm: number;
}
