// Every outline that a piece may have: connected cells, not turned, not flipped.
import type { JigsawPiece } from './jigsaw.js';

/** Cells relative to the first one in reading order: the top row's leftmost cell is [0, 0]. */
export type Outline = readonly (readonly [down: number, across: number])[];

/** All outlines of `size` connected cells: 2 of two cells, 6 of three, 19 of four, 63 of five (OEIS A001168). */
export function outlinesOfSize(size: number): readonly Outline[] {
  let grown = new Map<string, Outline>([['0,0', [[0, 0]]]]);
  for (let cells = 1; cells < size; cells++) {
    const next = new Map<string, Outline>();
    for (const outline of grown.values()) {
      for (const [down, across] of outline) {
        for (const [y, x] of [
          [down - 1, across],
          [down, across + 1],
          [down + 1, across],
          [down, across - 1],
        ] as const) {
          if (outline.some(([b, a]) => b === y && a === x)) continue;
          const larger = anchored([...outline, [y, x]]);
          next.set(larger.join(' '), larger);
        }
      }
    }
    grown = next;
  }
  return [...grown.values()];
}

function anchored(cells: Outline): Outline {
  const ordered = cells.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  const [top, left] = ordered[0] as readonly [number, number];
  return ordered.map(([down, across]) => [down - top, across - left]);
}

/** Whether all cells lie in one row or in one column. */
export function isBar(cells: readonly (readonly [number, number])[]): boolean {
  return (
    new Set(cells.map(([down]) => down)).size === 1 || new Set(cells.map(([, across]) => across)).size === 1
  );
}

/** Whether the cells fill a rectangle, bars included. */
export function isRectangle(cells: Outline): boolean {
  const down = new Set(cells.map(([row]) => row)).size;
  const across = new Set(cells.map(([, column]) => column)).size;
  return cells.length === down * across;
}

/** The piece's outline as text: equal for pieces that fit the same holes. */
export function outlineOf({ cells }: JigsawPiece): string {
  return anchored(cells).join(' ');
}
