// Loose pieces mixed by chance: what lies where on the table is no part of a set and need not come out the same again.

/** The items in a random order. */
export function shuffled<T>(items: readonly T[]): T[] {
  return items
    .map((item) => ({ item, rank: Math.random() }))
    .toSorted((a, b) => a.rank - b.rank)
    .map(({ item }) => item);
}
