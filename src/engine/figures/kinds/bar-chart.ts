// A column chart with a numbered axis and a line across at every step.
import type { Locale } from '../../numbers/locale.js';
import type { FigureSpec } from '../figure.js';
import { BOLD_MM, LINE_MM, LABEL_MM, line, type Mark, rect, SHADE, type Sketch, text } from '../svg.js';
import { textWidth } from '../text-width.js';
import { capital, columnGraph, countOf, numberText } from '../words.js';

const PLOT_MM = 27;
const LETTER_MM = 3.6;

export function drawBarChart(spec: Extract<FigureSpec, { kind: 'bar-chart' }>, locale: Locale): Sketch {
  const highest = Math.max(...spec.bars.map((bar) => bar.value), spec.step);
  const steps = Math.ceil(highest / spec.step - 1e-9);
  const rise = PLOT_MM / steps;
  const widest = Math.max(...spec.bars.map((bar) => textWidth(bar.label) * LETTER_MM));
  const slot = Math.max(10, widest + 2.5);
  const width = spec.bars.length * slot + 2;
  const every = rise >= 3.4 ? 1 : rise >= 1.8 ? 2 : 5;
  const marks: Mark[] = [];
  for (let step = 0; step <= steps; step++) {
    const y = -step * rise;
    if (step > 0)
      marks.push(line([0, y], [width, y], { widthMm: 0.25, stroke: '#8a8a8a', part: 'gridline' }));
    if (step % every === 0)
      marks.push(text(numberText(step * spec.step, locale), [-1.8, y], LETTER_MM, 'end'));
  }
  spec.bars.forEach((bar, index) => {
    const middle = 1 + (index + 0.5) * slot;
    const height = (bar.value / spec.step) * rise;
    const broad = Math.min(8, slot * 0.6);
    if (height > 0)
      marks.push(
        rect(middle - broad / 2, -height, broad, height, { fill: SHADE, widthMm: LINE_MM, part: 'bar' }),
      );
    marks.push(text(bar.label, [middle, 3.4], LETTER_MM));
  });
  marks.push(
    line([0, -PLOT_MM - 2], [0, 0], { widthMm: BOLD_MM }),
    line([0, 0], [width, 0], { widthMm: BOLD_MM }),
  );
  const labelled = spec.unit ? text(spec.unit, [0, -PLOT_MM - 4.8], LETTER_MM, 'start') : null;
  if (labelled) marks.push(labelled);
  if (spec.title) marks.push(text(spec.title, [width / 2, -PLOT_MM - (labelled ? 10.2 : 6)], LABEL_MM + 0.2));
  return { marks, alt: describe(spec, every, locale) };
}

function describe(spec: Extract<FigureSpec, { kind: 'bar-chart' }>, every: number, locale: Locale): string {
  const name = (steps: number) => numberText(steps * spec.step, locale);
  const near = (lines: number) => {
    const labelled = lines - (lines % every);
    return lines === labelled
      ? `the line for ${name(lines)}`
      : `${countOf(lines - labelled, 'line')} above the one for ${name(labelled)}`;
  };
  const bars = spec.bars.map((bar) => {
    const height = bar.value / spec.step;
    const below = Math.floor(height + 1e-9);
    if (bar.value === 0) return `${bar.label}: no bar`;
    if (Math.abs(height - below) < 1e-9) return `${bar.label}: up to ${near(below)}`;
    const share = height - below;
    const place =
      Math.abs(share - 0.5) < 1e-9 ? 'halfway' : share < 0.5 ? 'less than halfway' : 'more than halfway';
    return `${bar.label}: ${place} from ${near(below)} to the next line`;
  });
  const title = spec.title ? ` with the title "${spec.title}"` : '';
  const unit = spec.unit ? ` (${spec.unit})` : '';
  return `A ${columnGraph(locale)}${title}. The lines across go up in steps of ${numberText(spec.step, locale)}${unit}. ${capital(bars.join('; '))}.`;
}
