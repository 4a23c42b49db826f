// How large the pieces of a trail are on paper.

/** The cells of a mat are at most so wide and high together, so that with its scene it fits on A4 and on Letter. */
const MOST_MM = 180;
/** Larger tiles would be larger than a child's hand needs. */
const LARGEST_MM = 45;

/** Side of a square tile in mm: 45 up to four rows and columns, 36 for five, 30 for six. */
export function tileSideMm(rows: number, columns: number): number {
  return Math.min(LARGEST_MM, MOST_MM / Math.max(rows, columns));
}
