// The course of the trail over the cells: from a cell of the top row to one of the bottom row, never twice over a cell.
import type { Rng } from '../../random/rng.js';

/** The share of the cells that the trail runs over. */
export const COVERAGE = { least: 0.55, most: 0.8 } as const;

/**
 * Cells in the order of the trail, over 55 to 80 % of all. It begins as a short walk down the rows and grows: a step from
 * cell to cell is replaced by three around two free cells, so it winds more than a random walk does.
 */
export function drawRoute(rows: number, columns: number, rng: Rng): number[] {
  const cells = rows * columns;
  const [least, most] = [Math.ceil(COVERAGE.least * cells), Math.floor(COVERAGE.most * cells)];
  for (;;) {
    const wanted = rng.int(least, most);
    const route = grow(firstWalk(rows, columns, rng), wanted, rows, columns, rng);
    if (route.length >= least && route.length <= most && !isStraightDown(route, columns)) return route;
  }
}

/** One sideways stretch in every row, now and then of no length. */
function firstWalk(rows: number, columns: number, rng: Rng): number[] {
  let column = rng.int(0, columns - 1);
  const walk: number[] = [];
  for (let row = 0; row < rows; row++) {
    const goal = rng.int(0, columns - 1);
    walk.push(row * columns + column);
    while (row > 0 && row < rows - 1 && column !== goal) {
      column += Math.sign(goal - column);
      walk.push(row * columns + column);
    }
  }
  return walk;
}

function grow(walk: number[], wanted: number, rows: number, columns: number, rng: Rng): number[] {
  const used = new Set(walk);
  let route = walk;
  while (route.length < wanted) {
    const detours: [at: number, first: number, second: number][] = [];
    for (let at = 0; at + 1 < route.length; at++) {
      const [a, b] = [route[at] as number, route[at + 1] as number];
      for (const side of Math.abs(a - b) === columns ? [-1, 1] : [-columns, columns]) {
        const [first, second] = [a + side, b + side];
        const isNear = (from: number, to: number) =>
          to >= 0 &&
          to < rows * columns &&
          (Math.abs(side) > 1 || Math.floor(from / columns) === Math.floor(to / columns));
        if (isNear(a, first) && isNear(b, second) && !used.has(first) && !used.has(second))
          detours.push([at, first, second]);
      }
    }
    if (detours.length === 0) break;
    const [at, first, second] = rng.pick(detours);
    used.add(first).add(second);
    route = [...route.slice(0, at + 1), first, second, ...route.slice(at + 1)];
  }
  return route;
}

function isStraightDown(route: readonly number[], columns: number): boolean {
  return route.every((cell) => cell % columns === (route[0] as number) % columns);
}
