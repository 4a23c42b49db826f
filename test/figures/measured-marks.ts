// What a child would read off a drawn figure, measured back from its markup.
import { drawFigure } from '#engine/figures/draw.js';
import type { FigureSpec } from '#engine/figures/figure.js';
import { type Element, numberOf, partsOf, readSvg } from './read-svg.js';

/** The marks of a drawn figure. */
export function drawn(spec: FigureSpec): Element[] {
  return readSvg(drawFigure(spec).svg).children;
}

/** The one mark of a part; throws where there is none or more. */
export function only(children: readonly Element[], part: string): Element {
  const [found, ...others] = partsOf(children, part);
  if (!found || others.length > 0) throw new Error(`${others.length + (found ? 1 : 0)} of part ${part}`);
  return found;
}

/** Degrees clockwise from 12 o'clock of a line from its start to its end, 0 to 360. */
export function bearing(line: Element): number {
  const dx = numberOf(line, 'x2') - numberOf(line, 'x1');
  const dy = numberOf(line, 'y2') - numberOf(line, 'y1');
  return ((Math.atan2(dx, -dy) * 180) / Math.PI + 360) % 360;
}

/** Degrees between two bearings, 0 to 180. */
export function apart(a: number, b: number): number {
  const off = Math.abs(a - b) % 360;
  return Math.min(off, 360 - off);
}

export const texts = (children: readonly Element[]) => children.filter((element) => element.name === 'text');
/** A printed number as a number: "−3", "12 500". */
export const numeric = (words: string) => Number(words.replace('\u2212', '-').replace(/\u00a0/g, ''));

/** The value at a position, by the straight line through the first and last of the known positions. */
export function interpolate(
  known: readonly (readonly [position: number, value: number])[],
  position: number,
): number {
  const [first, last] = [known[0], known.at(-1)];
  if (!first || !last || first === last) throw new Error('a scale needs two numbers');
  return first[1] + ((position - first[0]) / (last[0] - first[0])) * (last[1] - first[1]);
}

export function polygonArea(points: readonly (readonly [number, number])[]): number {
  const doubled = points.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = points[(index + 1) % points.length] ?? [x, y];
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(doubled) / 2;
}
