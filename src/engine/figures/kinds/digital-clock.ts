// A digital clock: the time as its digits show it.
import type { FigureSpec } from '../figure.js';
import { BOLD_MM, FINE_MM, type Mark, PALE, rect, type Sketch, text } from '../svg.js';
import { textWidth } from '../text-width.js';

export function drawDigitalClock(spec: Extract<FigureSpec, { kind: 'digital-clock' }>): Sketch {
  const size = 10;
  const width = Math.max(34, textWidth(spec.text) * size + 12);
  const marks: Mark[] = [
    rect(5, 17, 6, 2.2, { fill: PALE, widthMm: FINE_MM }, 0.8),
    rect(width - 11, 17, 6, 2.2, { fill: PALE, widthMm: FINE_MM }, 0.8),
    rect(0, 0, width, 17.5, { fill: PALE, widthMm: BOLD_MM }, 3),
    rect(2.5, 2.5, width - 5, 12.5, { fill: '#ffffff', widthMm: FINE_MM }, 1.5),
    text(spec.text, [width / 2, 8.75], size),
  ];
  return { marks, alt: `A digital clock showing ${spec.text}.` };
}
