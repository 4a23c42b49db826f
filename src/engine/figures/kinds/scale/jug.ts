// A measuring jug with liquid in it.
import { BOLD_MM, FINE_MM, LINE_MM, line, type Mark, path, rect, route, text } from '../../svg.js';
import { textWidth } from '../../text-width.js';
import { type ScaleReading, stackedSize } from './scale-reading.js';

const FLOOR_MM = 36.5;
const TOP_MM = 5;
const WIDTH_MM = 27;

export function drawJug({ spec, marked, labelled, name, share }: ScaleReading): Mark[] {
  const level = (value: number) => FLOOR_MM - (FLOOR_MM - TOP_MM) * share(value);
  const size = stackedSize(labelled, level);
  // A line across the jug stops short of the number that stands at its height; the number's mark goes on from there.
  const across = (value: number, widthMm: number, part: string): Mark => {
    const near = labelled.find((one) => Math.abs(level(one) - level(value)) < size * 0.5);
    const end = near === undefined ? WIDTH_MM : WIDTH_MM - 7 - textWidth(name(near)) * size;
    return line([0, level(value)], [end, level(value)], { widthMm, part });
  };
  const surface = level(spec.value);
  // A line of water near the top would run through the unit's letters.
  const unitMm = surface < TOP_MM + 4.5 ? surface + 3.2 : TOP_MM + 1;
  const marks: Mark[] = [];
  if (surface < FLOOR_MM) {
    marks.push(
      rect(0, surface, WIDTH_MM, FLOOR_MM - surface, { fill: '#cfcfcf', stroke: 'none', part: 'liquid' }),
    );
    marks.push(across(spec.value, BOLD_MM, 'level'));
  }
  marks.push(across(spec.from, FINE_MM, 'floor'));
  for (const value of marked) {
    marks.push(
      line([WIDTH_MM - 3, level(value)], [WIDTH_MM, level(value)], { widthMm: FINE_MM, part: 'tick' }),
    );
  }
  for (const value of labelled) {
    const paint = { widthMm: LINE_MM, part: 'labelled-tick' };
    marks.push(line([WIDTH_MM - 5, level(value)], [WIDTH_MM, level(value)], paint));
    marks.push(text(name(value), [WIDTH_MM - 6, level(value)], size, 'end'));
  }
  marks.push(
    text(spec.unit, [6, unitMm], 4),
    path(route('M 27 0 L 27 39.5 L 0 39.5 L 0 3.5 L -3.5 0'), { widthMm: BOLD_MM }, true),
    path(route('M 27 8 C 37 8 37 28 27 28'), { widthMm: BOLD_MM }),
    path(route('M 27 11 C 33 11 33 25 27 25'), { widthMm: FINE_MM }),
  );
  return marks;
}
