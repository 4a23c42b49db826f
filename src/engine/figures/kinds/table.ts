// A plain table: timetables, place-value charts, tables of values.
import type { FigureSpec } from '../figure.js';
import { label, labelWidth } from '../label.js';
import { BOLD_MM, FINE_MM, line, type Mark, PALE, rect, type Sketch } from '../svg.js';
import { spoken } from '../words.js';

const LETTER_MM = 3.6;
const ROW_MM = 7;
const WIDEST_MM = 88;

/** Cells in rows; the first row, the first column or both are heads and stand on grey. */
export function drawTable(spec: Extract<FigureSpec, { kind: 'table' }>): Sketch {
  const columns = Math.max(...spec.rows.map((row) => row.length));
  const natural = (size: number) =>
    Array.from({ length: columns }, (_, i) =>
      Math.max(7, ...spec.rows.map((row) => labelWidth(row[i] ?? '', size) + 3.6)),
    );
  const sum = (widths: readonly number[]) => widths.reduce((all, one) => all + one, 0);
  const size = Math.max(2.4, Math.min(LETTER_MM, (LETTER_MM * WIDEST_MM) / sum(natural(LETTER_MM))));
  const widths = natural(size);
  const width = sum(widths);
  const height = spec.rows.length * ROW_MM;
  const headRow = spec.heads !== 'column';
  const headColumn = spec.heads !== 'row';
  const marks: Mark[] = [];
  if (headRow) marks.push(rect(0, 0, width, ROW_MM, { fill: PALE, stroke: 'none' }));
  if (headColumn) marks.push(rect(0, 0, widths[0] ?? 0, height, { fill: PALE, stroke: 'none' }));
  for (let row = 1; row < spec.rows.length; row++)
    marks.push(line([0, row * ROW_MM], [width, row * ROW_MM], { widthMm: FINE_MM }));
  let left = 0;
  for (let column = 0; column < columns; column++) {
    if (column > 0) marks.push(line([left, 0], [left, height], { widthMm: FINE_MM }));
    const middle = left + (widths[column] ?? 0) / 2;
    spec.rows.forEach((row, index) => {
      const words = row[column] ?? '';
      if (words !== '') marks.push(...label(words, [middle, (index + 0.5) * ROW_MM], size));
    });
    left += widths[column] ?? 0;
  }
  marks.push(rect(0, 0, width, height, { widthMm: BOLD_MM, part: 'frame' }));
  const rows = spec.rows.map((row, i) => `Row ${i + 1}: ${row.map(spoken).join(', ')}`);
  return { marks, alt: `A table. ${rows.join('. ')}.` };
}
