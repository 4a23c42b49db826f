// Base-ten blocks: flat squares of a hundred, sticks of ten, single cubes.
import type { FigureSpec } from '../figure.js';
import { FINE_MM, LINE_MM, line, type Mark, PALE, rect, type Sketch, text } from '../svg.js';
import { countOf, listOf } from '../words.js';

const GAP_MM = 1.6;
const GROUP_GAP_MM = 5;

export function drawBaseTen(spec: Extract<FigureSpec, { kind: 'base-ten' }>): Sketch {
  const { hundreds, tens, ones } = spec;
  const unit = hundreds > 6 ? 1.3 : hundreds > 0 ? 1.6 : tens > 0 ? 2.4 : 5;
  const side = unit * 10;
  const marks: Mark[] = [];
  let left = 0;
  const perRow = hundreds > 4 ? 3 : hundreds > 2 ? 2 : Math.max(hundreds, 1);
  for (let index = 0; index < hundreds; index++) {
    marks.push(
      ...block(
        left + (index % perRow) * (side + GAP_MM),
        Math.floor(index / perRow) * (side + GAP_MM),
        10,
        unit,
        'hundred',
      ),
    );
  }
  if (hundreds > 0) left += Math.min(hundreds, perRow) * (side + GAP_MM) - GAP_MM + GROUP_GAP_MM;
  for (let index = 0; index < tens; index++) {
    const row = Math.floor(index / 10);
    marks.push(...block(left + (index % 10) * (unit + GAP_MM), row * (side + GAP_MM), 1, unit, 'ten'));
  }
  if (tens > 0) left += Math.min(tens, 10) * (unit + GAP_MM) - GAP_MM + GROUP_GAP_MM;
  const isLoose = hundreds === 0 && tens === 0;
  for (let index = 0; index < ones; index++) {
    // Alone, cubes lie in rows of five; beside sticks they stand in columns of five.
    const [column, row] = isLoose ? [index % 5, Math.floor(index / 5)] : [Math.floor(index / 5), index % 5];
    const pitch = unit + GAP_MM;
    marks.push(
      rect(left + column * pitch, row * pitch, unit, unit, { fill: PALE, widthMm: FINE_MM, part: 'one' }),
    );
  }
  const parts = [
    hundreds > 0 ? countOf(hundreds, 'flat square of one hundred', 'flat squares of one hundred') : '',
    tens > 0 ? countOf(tens, 'stick of ten', 'sticks of ten') : '',
    ones > 0 ? countOf(ones, 'single cube') : '',
  ].filter(Boolean);
  if (parts.length === 0) {
    return { marks: [text('no blocks', [0, 0])], alt: 'Base-ten blocks: none.' };
  }
  return { marks, alt: `Base-ten blocks: ${listOf(parts)}.` };
}

function block(left: number, top: number, columns: number, unit: number, part: string): Mark[] {
  const marks: Mark[] = [rect(left, top, columns * unit, 10 * unit, { fill: PALE, stroke: 'none' })];
  const inner = { widthMm: 0.22, stroke: '#555555' };
  for (let row = 1; row < 10; row++) {
    marks.push(line([left, top + row * unit], [left + columns * unit, top + row * unit], inner));
  }
  for (let column = 1; column < columns; column++) {
    marks.push(line([left + column * unit, top], [left + column * unit, top + 10 * unit], inner));
  }
  marks.push(rect(left, top, columns * unit, 10 * unit, { widthMm: LINE_MM, part }));
  return marks;
}
