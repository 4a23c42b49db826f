// A line graph: points over evenly spaced labels, joined by straight lines.
import type { Locale } from '../../numbers/locale.js';
import type { FigureSpec } from '../figure.js';
import { BOLD_MM, circle, INK, LABEL_MM, line, type Mark, type Sketch, text } from '../svg.js';
import { textWidth } from '../text-width.js';
import { capital, numberText } from '../words.js';

const PLOT_MM = 27;
const LETTER_MM = 3.4;

/** Steps from `from` up to above the highest value; every value of a warm-up lies on a line or halfway. */
export function drawLineGraph(spec: Extract<FigureSpec, { kind: 'line-graph' }>, locale: Locale): Sketch {
  const { points, step, from } = spec;
  const highest = Math.max(...points.map((point) => point.value), from + step);
  const steps = Math.max(1, Math.ceil((highest - from) / step - 1e-9));
  const rise = PLOT_MM / steps;
  const widest = Math.max(...points.map((point) => textWidth(point.label) * LETTER_MM));
  const slot = Math.max(9, widest + 2.5);
  const width = points.length * slot;
  const every = rise >= 3.4 ? 1 : rise >= 1.8 ? 2 : 5;
  const x = (index: number) => (index + 0.5) * slot;
  const y = (value: number) => -((value - from) / step) * rise;
  const marks: Mark[] = [];
  for (let at = 0; at <= steps; at++) {
    if (at > 0)
      marks.push(
        line([0, -at * rise], [width, -at * rise], { widthMm: 0.25, stroke: '#8a8a8a', part: 'gridline' }),
      );
    if (at % every === 0)
      marks.push(text(numberText(from + at * step, locale), [-1.8, -at * rise], LETTER_MM, 'end'));
  }
  points.forEach((point, index) => {
    marks.push(line([x(index), 0], [x(index), 1.2], { widthMm: BOLD_MM }));
    marks.push(text(point.label, [x(index), 3.8], LETTER_MM));
    const next = points[index + 1];
    if (next)
      marks.push(
        line([x(index), y(point.value)], [x(index + 1), y(next.value)], {
          widthMm: BOLD_MM,
          part: 'stretch',
        }),
      );
  });
  points.forEach((point, index) => {
    marks.push(circle([x(index), y(point.value)], 1.2, { fill: INK, part: 'point' }));
  });
  marks.push(
    line([0, -PLOT_MM - 2], [0, 0], { widthMm: BOLD_MM }),
    line([0, 0], [width, 0], { widthMm: BOLD_MM }),
  );
  if (spec.unit) marks.push(text(spec.unit, [0, -PLOT_MM - 4.8], LETTER_MM, 'start'));
  if (spec.title)
    marks.push(text(spec.title, [width / 2, -PLOT_MM - (spec.unit ? 10.2 : 6)], LABEL_MM + 0.2));
  const told = points.map((point) => `${point.label} at ${numberText(point.value, locale)}`);
  const title = spec.title ? ` with the title "${spec.title}"` : '';
  const unit = spec.unit ? ` (${spec.unit})` : '';
  return {
    marks,
    alt: `A line graph${title}. The lines across go up in steps of ${numberText(step, locale)} from ${numberText(from, locale)}${unit}. ${capital(told.join('; '))}.`,
  };
}
