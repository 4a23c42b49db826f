// A rectangle cut into parts: a product taken apart, each part with its own product.
import type { FigureSpec } from '../figure.js';
import { fitSize, label, labelHeight } from '../label.js';
import { BOLD_MM, LINE_MM, line, type Mark, PALE, rect, type Sketch } from '../svg.js';
import { listOf, spoken } from '../words.js';

const WIDTH_MM = 60;
const HEIGHT_MM = 24;
/** The narrowest part, so that its label stays readable; the model is not to scale. */
const LEAST = 0.24;

function shares(sizes: readonly number[]): number[] {
  const total = sizes.reduce((sum, size) => sum + size, 0);
  const raised = sizes.map((size) => Math.max(size / Math.max(total, 1), LEAST));
  const sum = raised.reduce((all, one) => all + one, 0);
  return raised.map((share) => share / sum);
}

/** Columns over `across`, rows over `down`; `cells` row by row, "?" or "" for what is not told. */
export function drawAreaModel(spec: Extract<FigureSpec, { kind: 'area-model' }>): Sketch {
  const { across, down, cells } = spec;
  const widths = shares(across).map((share) => share * WIDTH_MM);
  const height = down.length === 1 ? HEIGHT_MM * 0.6 : HEIGHT_MM;
  const heights = shares(down).map((share) => share * height);
  const marks: Mark[] = [];
  let left = 0;
  across.forEach((size, column) => {
    const width = widths[column] ?? 0;
    marks.push(...label(String(size), [left + width / 2, -labelHeight('0') / 2 - 1.4]));
    let top = 0;
    down.forEach((_, row) => {
      const tall = heights[row] ?? 0;
      const words = cells[row * across.length + column] ?? '';
      const isPale = (row + column) % 2 === 1;
      marks.push(rect(left, top, width, tall, { fill: isPale ? PALE : '#ffffff', stroke: 'none' }));
      if (words !== '')
        marks.push(...label(words, [left + width / 2, top + tall / 2], fitSize(words, width - 2)));
      top += tall;
    });
    left += width;
    if (column < across.length - 1) marks.push(line([left, 0], [left, height], { widthMm: LINE_MM }));
  });
  let top = 0;
  down.forEach((size, row) => {
    const tall = heights[row] ?? 0;
    marks.push(...label(String(size), [-1.8, top + tall / 2], undefined, 'end'));
    top += tall;
    if (row < down.length - 1) marks.push(line([0, top], [WIDTH_MM, top], { widthMm: LINE_MM }));
  });
  marks.push(rect(0, 0, WIDTH_MM, height, { widthMm: BOLD_MM, part: 'frame' }));
  return {
    marks,
    alt: `A rectangle cut into parts: ${listOf(across.map(String))} across, ${listOf(down.map(String))} down; inside: ${listOf(cells.map(spoken))}.`,
  };
}
