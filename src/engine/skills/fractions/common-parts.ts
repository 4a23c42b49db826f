// Non-unit fractions that are asked of quantities.

/** Top and bottom. */
export const PARTS = [
  [2, 3],
  [3, 4],
  [2, 5],
  [3, 5],
  [4, 5],
  [5, 6],
  [3, 8],
  [5, 8],
  [7, 8],
  [3, 10],
  [7, 10],
] as const;
