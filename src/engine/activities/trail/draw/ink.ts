// The hand in the drawing: outlines that swell and sway a little along a course, the same for the same seed, and that
// meet exactly at the edges of a tile.
import type { Rng } from '../../../random/rng.js';
import { type XY, WOBBLE } from '../tile-strokes.js';

/** A smooth unevenness along a course, from -1 to 1. */
export type Sway = (at: number) => number;

/** A sway of waves 20 to 55 units long. */
export function makeSway(rng: Rng): Sway {
  const waves = [54, 33, 21].map((length) => ({
    pace: (2 * Math.PI) / (length * (0.85 + 0.3 * rng.unit())),
    phase: 2 * Math.PI * rng.unit(),
  }));
  const [slow, middle, quick] = waves as [Wave, Wave, Wave];
  return (at) => 0.5 * wave(slow, at) + 0.3 * wave(middle, at) + 0.2 * wave(quick, at);
}

interface Wave {
  readonly pace: number;
  readonly phase: number;
}

const wave = ({ pace, phase }: Wave, at: number) => Math.sin(pace * at + phase);

/** A course with the lengths along it. */
export interface Course {
  readonly points: readonly XY[];
  readonly lengths: readonly number[];
  readonly length: number;
  /** True when the course leaves the tile at its end too, so that nothing may sway there. */
  readonly isThrough: boolean;
}

export function courseOf(points: readonly XY[], isThrough: boolean): Course {
  const lengths = [0];
  for (let i = 1; i < points.length; i++)
    lengths.push((lengths[i - 1] as number) + distance(points[i - 1], points[i]));
  return { points, lengths, length: lengths.at(-1) as number, isThrough };
}

function distance(a: XY | undefined, b: XY | undefined): number {
  return a && b ? Math.hypot(a[0] - b[0], a[1] - b[1]) : 0;
}

/** Sway dies away over this length before an edge. */
const CALM = 12;

/** How much of the sway is left at a place of the course: none at an edge, so that neighbours meet. */
export function calmed({ length, isThrough }: Course, at: number): number {
  const near = Math.min(at, isThrough ? length - at : Number.POSITIVE_INFINITY);
  const t = Math.min(1, Math.max(0, near / CALM));
  return t * t * (3 - 2 * t);
}

/** Unit direction of the course at point `i`. */
export function heading({ points }: Course, i: number): XY {
  const before = points[Math.max(0, i - 1)] as XY;
  const after = points[Math.min(points.length - 1, i + 1)] as XY;
  const size = distance(before, after) || 1;
  return [(after[0] - before[0]) / size, (after[1] - before[1]) / size];
}

/**
 * The line beside a course: `half` units to its left (negative: right), drawn as by hand. It never leaves the exact line
 * by more than `reach`.
 */
export function beside(course: Course, half: number, sway: Sway, reach: number): XY[] {
  const last = course.points.length - 1;
  return course.points.map(([x, y], i) => {
    const [dx, dy] = squared(course, i, last);
    const at = course.lengths[i] as number;
    const off = half + reach * calmed(course, at) * sway(at);
    return [x + dy * off, y - dx * off];
  });
}

/** At an edge of the tile a line crosses squarely, whatever the first points of its curve say. */
function squared(course: Course, i: number, last: number): XY {
  const [dx, dy] = heading(course, i);
  if (i === 0 || (i === last && course.isThrough))
    return Math.abs(dx) > Math.abs(dy) ? [Math.sign(dx), 0] : [0, Math.sign(dy)];
  return [dx, dy];
}

/** The place on a course at a length along it, with the direction there. */
export function placeAt(
  course: Course,
  at: number,
): { readonly x: number; readonly y: number; readonly turn: number } {
  let i = 1;
  while (i < course.points.length - 1 && (course.lengths[i] as number) < at) i++;
  const [a, b] = [course.points[i - 1] as XY, course.points[i] as XY];
  const [from, to] = [course.lengths[i - 1] as number, course.lengths[i] as number];
  const share = to > from ? (at - from) / (to - from) : 0;
  const turn = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
  return { x: a[0] + (b[0] - a[0]) * share, y: a[1] + (b[1] - a[1]) * share, turn };
}

/** A tenth of a unit is finer than any printer; whole tenths keep the markup short, and sums of them exact. */
const tenths = (value: number) => Math.round(value * 10);

/** Markup of a smooth line through the points; it begins with `start`, a move or a line. */
export function smooth(points: readonly XY[], start: 'M' | 'L' = 'M'): string {
  const [first] = points as readonly [XY];
  let [x, y] = [tenths(first[0]), tenths(first[1])];
  let d = `${start}${x / 10} ${y / 10}c`;
  for (let i = 0; i + 1 < points.length; i++) {
    const [p, q] = [points[i] as XY, points[i + 1] as XY];
    const before = points[i - 1] ?? p;
    const after = points[i + 2] ?? q;
    const next = [
      p[0] + (q[0] - before[0]) / 6,
      p[1] + (q[1] - before[1]) / 6,
      q[0] - (after[0] - p[0]) / 6,
      q[1] - (after[1] - p[1]) / 6,
      q[0],
      q[1],
    ].map((value, axis) => tenths(value) - (axis % 2 === 0 ? x : y));
    d += next.map((value, k) => (k > 0 || i > 0 ? (value < 0 ? '' : ' ') : '') + value / 10).join('');
    x += next[4] as number;
    y += next[5] as number;
  }
  return d;
}

/** A filled stroke between two lines that run the same way. */
export function ribbon(one: readonly XY[], other: readonly XY[]): string {
  return `${smooth(one)}${smooth([...other].reverse(), 'L')}Z`;
}

/** A circle drawn as by hand, from angle to angle (degrees, clockwise from east), both ends exact when `isOpen`. */
export function roundAbout(
  [x, y]: XY,
  radius: number,
  from: number,
  until: number,
  sway: Sway,
  reach = WOBBLE,
): XY[] {
  const steps = Math.max(6, Math.ceil((Math.abs(until - from) * radius * Math.PI) / 180 / 4));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = ((from + ((until - from) * i) / steps) * Math.PI) / 180;
    const r = radius + reach * sway((i * 2 * Math.PI * radius) / steps);
    return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
  });
}
