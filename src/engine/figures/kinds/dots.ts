// Small groups of dots to take in at a glance, as on dice or in a row.
import type { FigureSpec } from '../figure.js';
import { circle, FINE_MM, INK, type Mark, rect, type Sketch } from '../svg.js';
import { capital, countInWords, countOf, listOf } from '../words.js';

const CELL_MM = 5;
const BOX_MM = 18;
const GAP_MM = 4;

/** Places on a three by three grid, as dice show one to six; seven to nine fill the grid up. */
const DICE: readonly (readonly (readonly [number, number])[])[] = [
  [],
  [[1, 1]],
  [
    [0, 0],
    [2, 2],
  ],
  [
    [0, 0],
    [1, 1],
    [2, 2],
  ],
  [
    [0, 0],
    [2, 0],
    [0, 2],
    [2, 2],
  ],
  [
    [0, 0],
    [2, 0],
    [1, 1],
    [0, 2],
    [2, 2],
  ],
  [
    [0, 0],
    [0, 1],
    [0, 2],
    [2, 0],
    [2, 1],
    [2, 2],
  ],
];

function dicePlaces(count: number): readonly (readonly [number, number])[] {
  return DICE[count] ?? Array.from({ length: count }, (_, i) => [i % 3, Math.floor(i / 3)] as const);
}

/** One box of dots for each group, side by side. */
export function drawDots(spec: Extract<FigureSpec, { kind: 'dots' }>): Sketch {
  const marks: Mark[] = [];
  let left = 0;
  for (const count of spec.groups) {
    const inRow = spec.layout === 'row';
    const places = inRow ? Array.from({ length: count }, (_, i) => [i, 1] as const) : dicePlaces(count);
    const columns = inRow ? Math.max(count, 1) : 3;
    const width = inRow ? columns * CELL_MM + 3 : BOX_MM;
    const height = inRow ? CELL_MM + 3 : Math.max(BOX_MM, Math.ceil(count / 3) * CELL_MM + 3);
    marks.push(rect(left, 0, width, height, { widthMm: FINE_MM }, 2.5));
    for (const [column, row] of places)
      marks.push(
        circle([left + 4 + column * CELL_MM, inRow ? height / 2 : 4 + row * CELL_MM], 1.8, {
          fill: INK,
          part: 'dot',
        }),
      );
    left += width + GAP_MM;
  }
  const [only] = spec.groups;
  if (spec.groups.length === 1 && only !== undefined) return { marks, alt: aloneInWords(only, spec.layout) };
  const told = spec.groups.map((count) => countOf(count, 'dot'));
  const way = spec.layout === 'row' ? 'in a row' : 'set out as on dice';
  const groups = countInWords(spec.groups.length, 'group');
  return { marks, alt: capital(`${groups} of dots ${way}: ${listOf(told)}.`) };
}

/** Where the dots of each face of a die are. */
const FACES: readonly string[] = [
  'none',
  'one in the middle',
  'one in a corner and one in the opposite corner',
  'one in the middle, one in a corner and one in the opposite corner',
  'one in each corner',
  'one in the middle and one in each corner',
  'three down the left side and three down the right side',
];

/** A single group as it lies, without its number, which is what is asked for: a listener counts too. */
function aloneInWords(count: number, layout: 'dice' | 'row'): string {
  const face = layout === 'dice' ? FACES[count] : undefined;
  if (face !== undefined) return `Dots set out as on a die: ${face}.`;
  if (count === 1) return 'A card with a dot on it and nothing else.';
  const way = layout === 'row' ? 'in a row' : 'in rows of three';
  return `Dots ${way}, one after the other: ${Array.from({ length: count }, () => 'dot').join(', ')}.`;
}
