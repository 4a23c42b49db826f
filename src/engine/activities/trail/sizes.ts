// How large the pieces of a trail are on paper.

/** Side of a square tile in mm: 40 up to four rows and columns, 30 beyond, so that the whole mat fits on A4 and on Letter. */
export function tileSideMm(rows: number, columns: number): number {
  return Math.max(rows, columns) <= 4 ? 40 : 30;
}
