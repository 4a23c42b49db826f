// Sharing a board's rungs among columns and pages, in order. Pure, so that it can be tested without a browser.

/** Runs of rungs (as indexes) that each fill one column. A rung taller than a column stands alone. */
export function packColumns(heights: readonly number[], columnHeight: number): number[][] {
  const columns: number[][] = [];
  let current: number[] = [];
  let used = 0;
  heights.forEach((height, index) => {
    if (current.length > 0 && used + height > columnHeight) {
      columns.push(current);
      current = [];
      used = 0;
    }
    current.push(index);
    used += height;
  });
  if (current.length > 0) columns.push(current);
  return columns;
}

/** The same rungs in two columns as equal in height as their order allows. */
export function balanceTwo(heights: readonly number[]): number[][] {
  const total = heights.reduce((sum, height) => sum + height, 0);
  let best = heights.length;
  let bestTaller = total;
  let left = 0;
  heights.forEach((height, index) => {
    left += height;
    const taller = Math.max(left, total - left);
    if (taller < bestTaller) [best, bestTaller] = [index + 1, taller];
  });
  const all = heights.map((_, index) => index);
  return [all.slice(0, best), all.slice(best)].filter((column) => column.length > 0);
}

/** Columns grouped into pages of `perPage` columns. */
export function groupPages<T>(columns: readonly T[], perPage: number): T[][] {
  const pages: T[][] = [];
  for (let at = 0; at < columns.length; at += perPage) pages.push(columns.slice(at, at + perPage));
  return pages;
}
