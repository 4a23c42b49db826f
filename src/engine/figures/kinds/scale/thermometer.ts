// A thermometer with a dark column.
import { circle, FINE_MM, LINE_MM, line, type Mark, path, rect, type Segment, text } from '../../svg.js';
import { type ScaleReading, stackedSize } from './scale-reading.js';

const LOW_MM = 31.5;
const HIGH_MM = 2;
const BULB_MM = 36.8;
const DARK = '#4a4a4a';

export function drawThermometer({ spec, marked, labelled, name, share }: ScaleReading): Mark[] {
  const level = (value: number) => LOW_MM - (LOW_MM - HIGH_MM) * share(value);
  const tube: Segment[] = [
    { to: [-2, BULB_MM - 2] },
    { centre: [0, -1], radius: 2, from: -90, until: 90 },
    { to: [2, BULB_MM - 2] },
  ];
  const surface = level(spec.value);
  // Marks keep more paper than ink between them.
  const pitchMm = level(spec.from) - level(spec.from + spec.step);
  const tickMm = Math.min(FINE_MM, pitchMm * 0.35);
  const labelMm = Math.min(LINE_MM, pitchMm * 0.5);
  const marks: Mark[] = [
    path(tube, { fill: '#ffffff', widthMm: LINE_MM }),
    circle([0, BULB_MM], 3.7, { fill: DARK, widthMm: LINE_MM }),
    rect(-1.2, surface, 2.4, BULB_MM - surface, { fill: DARK, stroke: 'none', part: 'column' }),
  ];
  for (const value of marked) {
    marks.push(line([3, level(value)], [5, level(value)], { widthMm: tickMm, part: 'tick' }));
  }
  const size = stackedSize(labelled, level);
  for (const value of labelled) {
    marks.push(line([3, level(value)], [6.5, level(value)], { widthMm: labelMm, part: 'labelled-tick' }));
    marks.push(text(name(value), [7.6, level(value)], size, 'start'));
  }
  marks.push(text(spec.unit, [-4.2, 2], 4, 'end'));
  return marks;
}
