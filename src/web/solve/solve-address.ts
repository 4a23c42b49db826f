// Addresses at which pieces lie ready to be solved on the screen.
import type { WishChange } from '../screens/make/wish.js';

/** A wish of the Make room for a single set; or the id of a kept set, with which nothing else counts. */
export interface SolveSearch extends Omit<WishChange, 'count'> {
  readonly set?: string | undefined;
}

/**
 * Where the set of a wish can be solved, in the form that links and `navigate` take. `seed` is the set's own, which tells
 * it from other sets of the same wish.
 */
export function solveAddress(classId: string, wish: WishChange, seed: number) {
  const { count: _, ...one } = wish;
  return {
    to: '/solve/$classId',
    params: { classId },
    search: { ...one, seed } satisfies SolveSearch,
  } as const;
}

/** Where a kept set can be solved. */
export function solveSetAddress(classId: string, setId: string) {
  return {
    to: '/solve/$classId',
    params: { classId },
    search: { set: setId } satisfies SolveSearch,
  } as const;
}
