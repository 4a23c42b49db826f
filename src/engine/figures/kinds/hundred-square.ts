// A window of the hundred square: some rows and columns of it, one or more cells left blank.
import type { FigureSpec } from '../figure.js';
import { FINE_MM, line, LINE_MM, type Mark, rect, type Sketch, text } from '../svg.js';
import { countInWords, listOf } from '../words.js';

const CELL_MM = 8;
const LETTER_MM = 4;

/** Numbers run on by one to the right and by ten downwards, `from` at the top left. */
export function drawHundredSquare(spec: Extract<FigureSpec, { kind: 'hundred-square' }>): Sketch {
  const { from, rows, columns, hidden } = spec;
  const width = columns * CELL_MM;
  const height = rows * CELL_MM;
  const marks: Mark[] = [];
  const blanks: string[] = [];
  for (let row = 0; row < rows; row++) {
    if (row > 0) marks.push(line([0, row * CELL_MM], [width, row * CELL_MM], { widthMm: FINE_MM }));
    for (let column = 0; column < columns; column++) {
      const value = from + row * 10 + column;
      if (hidden.includes(value)) blanks.push(`row ${row + 1}, place ${column + 1}`);
      const shown = hidden.includes(value) ? '?' : String(value);
      marks.push(text(shown, [(column + 0.5) * CELL_MM, (row + 0.5) * CELL_MM], LETTER_MM));
    }
  }
  for (let column = 1; column < columns; column++)
    marks.push(line([column * CELL_MM, 0], [column * CELL_MM, height], { widthMm: FINE_MM }));
  marks.push(rect(0, 0, width, height, { widthMm: LINE_MM, part: 'frame' }));
  const told = blanks.length > 0 ? ` A question mark stands in ${listOf(blanks)}.` : '';
  return {
    marks,
    alt: `Part of a hundred square: ${countInWords(rows, 'row')} of ${columns} numbers, starting with ${from} at the top left.${told}`,
  };
}
