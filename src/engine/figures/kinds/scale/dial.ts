// A round dial; like the clock's, its numbers stand outside the marks, clear of the pointer.
import { fitSize } from '../../label.js';
import {
  BOLD_MM,
  circle,
  FINE_MM,
  INK,
  line,
  type Mark,
  PALE,
  path,
  type Point,
  polar,
  route,
  text,
} from '../../svg.js';
import type { ScaleReading } from './scale-reading.js';

const CENTRE: Point = [0, 0];
const NUMBERS_MM = 15.7;
const RING_MM = 12;

export function drawDial({ spec, marked, labelled, name, share }: ScaleReading): Mark[] {
  const turn = (value: number) => -140 + 280 * share(value);
  const marks: Mark[] = [circle(CENTRE, 20, { fill: '#ffffff', widthMm: BOLD_MM, part: 'rim' })];
  if (/^k?g$/.test(spec.unit)) {
    const pan = route('M -15 -23.6 C -12 -18.6 12 -18.6 15 -23.6');
    marks.unshift(path(pan, { fill: PALE, widthMm: BOLD_MM }, true));
  }
  const tick = (value: number, lengthMm: number, widthMm: number, part: string) =>
    line(polar(CENTRE, RING_MM - lengthMm, turn(value)), polar(CENTRE, RING_MM, turn(value)), {
      widthMm,
      part,
    });
  for (const value of marked) marks.push(tick(value, 1.4, FINE_MM, 'tick'));
  const size = numberSize(labelled.map(name), turn(labelled[1] ?? spec.to) - turn(spec.from));
  for (const value of labelled) {
    marks.push(tick(value, 2.2, BOLD_MM, 'labelled-tick'));
    marks.push(text(name(value), polar(CENTRE, NUMBERS_MM, turn(value)), size));
  }
  marks.push(text(spec.unit, [0, 14.4], 4));
  marks.push(
    line(CENTRE, polar(CENTRE, 9.4, turn(spec.value)), { widthMm: 1, roundCap: true, part: 'pointer' }),
  );
  marks.push(circle(CENTRE, 1.5, { fill: INK, stroke: 'none' }));
  return marks;
}

/** A letter size at which the numbers clear each other, the ring of marks and the rim. */
function numberSize(numbers: readonly string[], degreesApart: number): number {
  const apart = 2 * NUMBERS_MM * Math.sin((degreesApart * Math.PI) / 360) - 0.7;
  const last = fitSize(numbers.at(-1) ?? '', 7.8, 4, 0);
  const inner = numbers.slice(1, -1).map((words) => fitSize(words, Math.min(6.6, apart), 4, 0));
  return Math.max(2.2, Math.min(last, ...inner));
}
