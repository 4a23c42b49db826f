// Squares of a grid with a fold line down the middle: one half is coloured, the other is to be coloured.
import type { FigureSpec } from '../figure.js';
import { BOLD_MM, FINE_MM, line, type Mark, rect, SHADE, type Sketch } from '../svg.js';
import { countOf, listOf } from '../words.js';

const CELL_MM = 6;

/** `filled` lists column and row from the top left; the fold line runs upright through the middle. */
export function drawSymmetryGrid(spec: Extract<FigureSpec, { kind: 'symmetry-grid' }>): Sketch {
  const { columns, rows, filled } = spec;
  const width = columns * CELL_MM;
  const height = rows * CELL_MM;
  const marks: Mark[] = filled.map(([column, row]) =>
    rect(column * CELL_MM, row * CELL_MM, CELL_MM, CELL_MM, { fill: SHADE, stroke: 'none', part: 'filled' }),
  );
  for (let row = 0; row <= rows; row++)
    marks.push(line([0, row * CELL_MM], [width, row * CELL_MM], { widthMm: FINE_MM }));
  for (let column = 0; column <= columns; column++)
    marks.push(line([column * CELL_MM, 0], [column * CELL_MM, height], { widthMm: FINE_MM }));
  marks.push(
    line([width / 2, -2.5], [width / 2, height + 2.5], { widthMm: BOLD_MM, dash: [2, 1.4], part: 'fold' }),
  );
  const places = filled.map(([column, row]) => `column ${column + 1} of row ${row + 1}`);
  const told = places.length === 0 ? 'no square is coloured' : `coloured: ${listOf(places)}`;
  return {
    marks,
    alt: `A grid of ${countOf(rows, 'row')} and ${countOf(columns, 'column')} with an upright fold line in the middle; ${told}.`,
  };
}
