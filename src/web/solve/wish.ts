// What to solve, as it stands in the address: the same address gives the same pieces on every computer.
import { z } from 'zod';
import type { ChainRequest } from '#engine/activities/chain/chain-request.js';
import type { Pitch, SupplyOrder } from '#engine/activities/supply.js';
import type { LocaleId } from '#engine/numbers/locale.js';

// Written out, because their home brings the whole skill map along, which this page loads only to compose.
const PITCHES = ['lower', 'middle', 'upper'] as const satisfies readonly Pitch[];
const ORDERS = ['graded', 'mixed'] as const satisfies readonly SupplyOrder[];
const list = z.array(z.string()).optional();
const whole = z.coerce.number().int();

/** The part of an address after the question mark. */
export const SolveSearch = z.object({
  kind: z.enum(['chain']).catch('chain'),
  seed: whole.catch(1),
  /** The class's own years when left out. */
  years: z.array(whole).optional().catch(undefined),
  skills: list.catch(undefined),
  due: list.catch(undefined),
  pitch: z.enum(PITCHES).optional().catch(undefined),
  cards: whole.optional().catch(undefined),
  order: z.enum(ORDERS).optional().catch(undefined),
});
export type SolveSearch = z.infer<typeof SolveSearch>;

/** What a composer is asked, with the name of the activity. */
export type SolveWish = { readonly kind: 'chain' } & ChainRequest;

/** The wish of an address; years and locale are the class's and the school's where the address has none. */
export function wishOf(search: SolveSearch, years: readonly number[], locale: LocaleId): SolveWish {
  const { kind, seed, skills, due, pitch, cards, order } = search;
  return {
    kind,
    seed,
    years: search.years?.length ? search.years : years,
    locale,
    ...(skills ? { skills } : {}),
    ...(due ? { due } : {}),
    ...(pitch ? { pitch } : {}),
    ...(cards === undefined ? {} : { cards }),
    ...(order ? { order } : {}),
  };
}
