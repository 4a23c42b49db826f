// What to solve, as it stands in the address: a wish of the Make room, which names its pieces by their seed, or a kept set.
import { z } from 'zod';
import { readWishSearch } from '../screens/make/wish-search.js';
import type { SolveSearch } from './solve-address.js';

// Sets after the first of a wish have seeds of their own, larger than any that is typed.
const Own = z.object({
  seed: z
    .int()
    .min(0)
    .max(2 ** 31 - 1)
    .optional()
    .catch(undefined),
  set: z.string().max(60).optional().catch(undefined),
});

/** What an address says; whatever is wrong with it, the rest counts. */
export function readSolveSearch(search: Record<string, unknown>): SolveSearch {
  return { ...readWishSearch(search), ...Own.parse(search) };
}
