// A grid with two axes and named points: the first quadrant, or all four.
import type { Locale } from '../../numbers/locale.js';
import type { FigureSpec } from '../figure.js';
import { BOLD_MM, circle, INK, line, type Mark, rect, type Sketch, text } from '../svg.js';
import { listOf, numberText } from '../words.js';

const PLOT_MM = 36;
const LETTER_MM = 3.2;
const GRID = '#9a9a9a';

/** Grid lines at every whole number, bold axes, numbers along them, and a dot with its letter for each point. */
export function drawCoordinates(spec: Extract<FigureSpec, { kind: 'coordinates' }>, locale: Locale): Sketch {
  const { from, to, points } = spec;
  const cell = PLOT_MM / (to - from);
  const x = (value: number) => (value - from) * cell;
  const y = (value: number) => (to - value) * cell;
  // Below zero the numbers stand inside the grid, where they need more room.
  const every = from < 0 || cell < 3.4 ? 2 : 1;
  const marks: Mark[] = [];
  for (let at = from; at <= to; at++) {
    marks.push(line([x(at), y(from)], [x(at), y(to)], { widthMm: 0.25, stroke: GRID }));
    marks.push(line([x(from), y(at)], [x(to), y(at)], { widthMm: 0.25, stroke: GRID }));
  }
  marks.push(
    line([x(from), y(0)], [x(to), y(0)], { widthMm: BOLD_MM, part: 'x-axis' }),
    line([x(0), y(from)], [x(0), y(to)], { widthMm: BOLD_MM, part: 'y-axis' }),
  );
  // The numbers keep clear of a dot on the axis they stand along.
  const aside = points.some((point) => point.x === 0) ? 2 : 1.2;
  const below = points.some((point) => point.y === 0) ? 3.4 : 2.6;
  for (let at = from; at <= to; at++) {
    if (at % every !== 0 || at === 0) continue;
    const name = numberText(at, locale);
    const numbers = [
      text(name, [x(at), y(0) + below], LETTER_MM * 0.85),
      text(name, [x(0) - aside, y(at)], LETTER_MM * 0.85, 'end'),
    ];
    marks.push(...(from < 0 ? numbers.flatMap(onPaper) : numbers));
  }
  if (from === 0) marks.push(text('0', [x(0) - aside, y(0) + below], LETTER_MM * 0.85, 'end'));
  for (const point of points) {
    // Left of the upright axis the letter stands on the far side, clear of the numbers along it.
    const [aside, anchor] = point.x < 0 ? ([-1.8, 'end'] as const) : ([1.8, 'start'] as const);
    // Just under the level axis it hangs below its point, clear of the numbers there.
    const away = from < 0 && point.y === -1 ? 2.6 : -2;
    marks.push(...onPaper(text(point.name, [x(point.x) + aside, y(point.y) + away], LETTER_MM, anchor)));
  }
  // After all the letters, so that the ground of none covers a dot.
  for (const point of points)
    marks.push(
      circle([x(point.x), y(point.y)], 1.1, { fill: INK, stroke: '#ffffff', widthMm: 0.3, part: 'point' }),
    );
  const told = points.map(
    ({ name, x: across, y: up }) => `${name}:${steps(across, 'right', 'left')}${steps(up, 'up', 'down')}`,
  );
  const named = points.length === 0 ? 'No point is marked' : listOf(told);
  const reach = `from ${numberText(from, locale)} to ${numberText(to, locale)} on both axes`;
  const grid =
    every === 1 ? `A grid with numbers ${reach}` : `A grid ${reach}; every second number is written`;
  return { marks, alt: `${grid}. From zero: ${named}.` };
}

/** Writing on a patch of white, so that a grid line runs neither through a letter nor into a minus sign. */
function onPaper(writing: Mark): Mark[] {
  const { left, top, right, bottom } = writing.box;
  const patch = rect(left - 0.2, top, right - left + 0.4, bottom - top, { fill: '#ffffff', stroke: 'none' });
  return [patch, writing];
}

function steps(count: number, forward: string, back: string): string {
  return ` ${Math.abs(count)} ${count < 0 ? back : forward}`;
}
