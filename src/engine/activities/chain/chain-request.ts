// What the chain composer is asked, and the errors it may answer with.
import type { SupplyError, SupplyMend, SupplyOrder, SupplyRequest } from '../supply.js';
import type { Chain } from './chain.js';

export interface ChainRequest extends Omit<SupplyRequest, 'suits'> {
  /** Strips with start and finish, 6 to 16; 10 when left out. A chain of N strips asks N - 1 questions. */
  readonly cards?: number;
  /** "graded" (when left out) goes from easy to hard; "mixed" in any order. */
  readonly order?: SupplyOrder;
}

export interface ChainError {
  readonly code:
    | SupplyError['code']
    | 'chain.cards'
    | 'chain.few'
    | 'chain.room'
    | 'chain.place'
    | 'chain.swap';
  readonly message: string;
  readonly hint: string;
  readonly mend?: SupplyMend;
}

export type ChainResult =
  | { readonly ok: true; readonly value: Chain }
  | { readonly ok: false; readonly error: ChainError };

export const FEWEST_CARDS = 6;
export const MOST_CARDS = 16;
export const USUAL_CARDS = 10;

/** What is wrong with the number of strips, or null. */
export function problemWithCards(cards: number): ChainError | null {
  if (Number.isInteger(cards) && cards >= FEWEST_CARDS && cards <= MOST_CARDS) return null;
  return {
    code: 'chain.cards',
    message: `A chain has ${FEWEST_CARDS} to ${MOST_CARDS} strips, not ${cards}.`,
    hint: `Choose ${USUAL_CARDS} for a usual chain.`,
  };
}
