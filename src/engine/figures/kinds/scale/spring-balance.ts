// A spring balance with a bag on its hook; its scale runs downwards.
import { fitSize } from '../../label.js';
import {
  BOLD_MM,
  circle,
  FINE_MM,
  INK,
  LINE_MM,
  line,
  type Mark,
  path,
  polygon,
  rect,
  route,
  SHADE,
  text,
} from '../../svg.js';
import { type ScaleReading, stackedSize } from './scale-reading.js';

const FIRST_MM = 7.6;
const LAST_MM = 25.4;

export function drawSpringBalance({ spec, marked, labelled, name, share }: ScaleReading): Mark[] {
  const level = (value: number) => FIRST_MM + (LAST_MM - FIRST_MM) * share(value);
  const marks: Mark[] = [
    circle([0, -1.9], 1.9, { widthMm: BOLD_MM }),
    rect(-12, 0, 24, 27.6, { fill: '#ffffff', widthMm: BOLD_MM }, 2),
    text(spec.unit, [0, 3.2], 4),
    line([-6.5, FIRST_MM - 1], [-6.5, LAST_MM + 1], { widthMm: FINE_MM }),
  ];
  for (const value of marked) {
    marks.push(line([-3.5, level(value)], [-1.5, level(value)], { widthMm: FINE_MM, part: 'tick' }));
  }
  const fits = labelled.map((value) => fitSize(name(value), 9.8, 4, 2.4));
  const size = Math.min(stackedSize(labelled, level), ...fits);
  for (const value of labelled) {
    marks.push(line([-3.5, level(value)], [0, level(value)], { widthMm: LINE_MM, part: 'labelled-tick' }));
    marks.push(text(name(value), [1, level(value)], size, 'start'));
  }
  const at = level(spec.value);
  const pointer = route(`M -3.7 ${at} L -8.5 ${at - 1.7} L -8.5 ${at + 1.7}`).map((segment) => segment.to);
  const bag = route(
    'M -4.6 34.4 L 4.6 34.4 C 7.2 39.8 5.5 39.8 4 39.8 L -4 39.8 C -5.5 39.8 -7.2 39.8 -4.6 34.4',
  );
  marks.push(
    polygon(pointer, { fill: INK, stroke: 'none', part: 'pointer' }),
    path(route('M 0 27.6 L 0 29.2 C 3 29.2 3 33.2 0 33.2'), { widthMm: BOLD_MM }),
    path(route('M -4.6 34.4 L 0 32.2 L 4.6 34.4'), { widthMm: FINE_MM }),
    path(bag, { fill: SHADE, widthMm: LINE_MM }, true),
  );
  return marks;
}
