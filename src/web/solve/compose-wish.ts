// From a wish to its activity. Runs in a worker; pure.
import type { Chain } from '#engine/activities/chain/chain.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import type { SolveWish } from './wish.js';

export type SolveActivity = Chain;

export type Composed =
  | { readonly ok: true; readonly value: SolveActivity }
  | { readonly ok: false; readonly error: { readonly message: string; readonly hint: string } };

export function composeWish(wish: SolveWish): Composed {
  const { kind: _, ...request } = wish;
  return composeChain(request);
}
