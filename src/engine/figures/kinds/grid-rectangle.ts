// A rectangle on a grid of squares, for area and perimeter.
import type { FigureSpec } from '../figure.js';
import { label, labelHeight, labelWidth } from '../label.js';
import { BOLD_MM, FINE_MM, line, type Mark, PALE, rect, type Sketch } from '../svg.js';
import { countOf, listOf, spoken } from '../words.js';

export function drawGridRectangle(spec: Extract<FigureSpec, { kind: 'grid-rectangle' }>): Sketch {
  const { rows, columns, labelRows, labelColumns } = spec;
  const cell = Math.min(6, 64 / columns, 36 / rows);
  const width = columns * cell;
  const height = rows * cell;
  const marks: Mark[] = [rect(0, 0, width, height, { fill: PALE, stroke: 'none' })];
  for (let row = 1; row < rows; row++)
    marks.push(line([0, row * cell], [width, row * cell], { widthMm: FINE_MM }));
  for (let column = 1; column < columns; column++) {
    marks.push(line([column * cell, 0], [column * cell, height], { widthMm: FINE_MM }));
  }
  marks.push(rect(0, 0, width, height, { widthMm: BOLD_MM, part: 'outline' }));
  const told: string[] = [];
  if (labelRows) {
    marks.push(...label(labelRows, [-1.8 - labelWidth(labelRows) / 2, height / 2]));
    told.push(`the left side is labelled ${spoken(labelRows)}`);
  }
  if (labelColumns) {
    marks.push(...label(labelColumns, [width / 2, height + 1.8 + labelHeight(labelColumns) / 2]));
    told.push(`the bottom side is labelled ${spoken(labelColumns)}`);
  }
  const labels = told.length > 0 ? `; ${listOf(told)}` : '';
  return {
    marks,
    alt: `A rectangle on a square grid, ${countOf(rows, 'square')} high and ${countOf(columns, 'square')} wide${labels}.`,
  };
}
