// A plain table: timetables, place-value charts, tables of values.
import type { FigureSpec } from '../figure.js';
import { label, labelWidth } from '../label.js';
import { BOLD_MM, FINE_MM, line, type Mark, PALE, rect, type Sketch } from '../svg.js';
import { capital, listOf, spoken } from '../words.js';

const LETTER_MM = 3.6;
const ROW_MM = 7;
const WIDEST_MM = 88;

type Table = Extract<FigureSpec, { kind: 'table' }>;

/** Heads on two sides and nothing in the corner between them. */
const isCrossed = ({ heads, rows }: Table): boolean => heads === 'both' && rows[0]?.[0] === '';

/** Cells in rows; the first row, the first column or both are heads and stand on grey. */
export function drawTable(spec: Table): Sketch {
  const columns = Math.max(...spec.rows.map((row) => row.length));
  const natural = (size: number) => {
    const needed = Array.from({ length: columns }, (_, i) =>
      Math.max(7, ...spec.rows.map((row) => labelWidth(row[i] ?? '', size) + 3.6)),
    );
    // The squares of a plan, or of a table with heads on two sides, are all of one size.
    return isCrossed(spec) ? needed.fill(Math.max(...needed.slice(1)), 1) : needed;
  };
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
  return { marks, alt: `A table. ${told(spec)}.` };
}

/** Under heads on two sides each row goes by its head, so that "row 3" of a plan is not the fourth row told. */
function told(spec: Table): string {
  const cells = (row: readonly string[]) => row.map(spoken).join(', ');
  if (!isCrossed(spec)) return spec.rows.map((row, i) => `Row ${i + 1}: ${cells(row)}`).join('. ');
  const [[, ...columns] = [], ...below] = spec.rows;
  const named = below.map(
    ([head = '', ...row]) => `${/^\d+$/.test(head) ? `Row ${head}` : capital(spoken(head))}: ${cells(row)}`,
  );
  return [`Its columns are ${listOf(columns.map(spoken))}`, ...named].join('. ');
}
