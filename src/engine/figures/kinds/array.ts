// Dots in rows and columns; a split shows how a product is broken in two.
import type { FigureSpec } from '../figure.js';
import { circle, INK, line, LINE_MM, type Mark, type Sketch } from '../svg.js';
import { countOf } from '../words.js';

const SPLIT_MM = 3;

export function drawArray(spec: Extract<FigureSpec, { kind: 'array' }>): Sketch {
  const { rows, columns, splitAfterColumn: split } = spec;
  const isSplit = split !== undefined && split > 0 && split < columns;
  const pitch = Math.min(6, 76 / Math.max(columns, 1), 42 / Math.max(rows, 1));
  const marks: Mark[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const beyond = isSplit && column >= split;
      const x = column * pitch + (beyond ? SPLIT_MM : 0);
      marks.push(
        circle(
          [x, row * pitch],
          pitch * 0.34,
          beyond ? { fill: '#ffffff', part: 'dot' } : { fill: INK, part: 'dot' },
        ),
      );
    }
  }
  if (isSplit) {
    const x = (split - 0.5) * pitch + SPLIT_MM / 2;
    marks.push(
      line([x, -pitch * 0.6], [x, (rows - 0.4) * pitch], {
        widthMm: LINE_MM,
        dash: [1.6, 1.2],
        part: 'split',
      }),
    );
  }
  const whole = `${countOf(rows, 'row')} of ${countOf(columns, 'dot')}`;
  const parts = isSplit
    ? ` A dashed line splits every row into ${countOf(split, 'dark dot')} and ${countOf(columns - split, 'light dot')}.`
    : '';
  return { marks, alt: `An array: ${whole}.${parts}` };
}
