// Labels inside the corners of a plane shape, each with a small arc; a triangle whose angles are named is drawn true.
import { label, labelHeight, labelWidth } from '../label.js';
import { LINE_MM, type Mark, path, type Point, polar } from '../svg.js';

const LETTER_MM = 3.6;
const NARROW_LETTER_MM = 2.8;
const ARC_MM = 3.4;

/** The arc and the label of the corner between its neighbours; corners run clockwise. */
export function cornerLabel(words: string, before: Point, corner: Point, after: Point): Mark[] {
  const from = bearing(corner, after);
  const until = from + ((bearing(corner, before) - from + 360) % 360);
  const middle = (from + until) / 2;
  const half = ((until - from) * Math.PI) / 360;
  const letter = half < 0.22 ? NARROW_LETTER_MM : LETTER_MM;
  const [halfWidth, halfHeight] = [labelWidth(words, letter) / 2, labelHeight(words, letter) / 2];
  const [wayX, wayY] = polar([0, 0], 1, middle).map(Math.abs) as [number, number];
  // Narrow corners need the label further in, to keep it clear of both sides.
  const clear = (wayY * halfWidth + wayX * halfHeight + 1) / Math.sin(Math.min(half, Math.PI / 2));
  const beyondArc = ARC_MM + 0.8 + wayX * halfWidth + wayY * halfHeight;
  const at = polar(corner, Math.min(20, Math.max(clear, beyondArc)), middle);
  const arc = path([{ centre: corner, radius: ARC_MM, from, until }], {
    widthMm: LINE_MM,
    part: 'corner-arc',
  });
  return [arc, ...label(words, at, letter)];
}

/**
 * Corners of a triangle with the angles that the labels name ("79°"; one may be unknown), apex first, then clockwise;
 * null when the labels do not fix a triangle with angles of at least 15 degrees.
 */
export function trueTriangle(labels: readonly string[]): Point[] | null {
  const named = [0, 1, 2].map((index) => {
    const degrees = /^(\d+(?:\.\d+)?)°$/.exec(labels[index] ?? '');
    return degrees ? Number(degrees[1]) : null;
  });
  const known = named.reduce<number>((sum, angle) => sum + (angle ?? 0), 0);
  const missing = named.filter((angle) => angle === null).length;
  if (missing > 1 || (missing === 0 && known !== 180)) return null;
  const angles = named.map((angle) => angle ?? 180 - known);
  if (angles.some((angle) => angle < 15)) return null;
  const [apex, right, left] = angles.map((angle) => (angle * Math.PI) / 180) as [number, number, number];
  // Sine rule with a base of 1.
  const slant = Math.sin(right) / Math.sin(apex);
  const [x, height] = [slant * Math.cos(left), slant * Math.sin(left)];
  const width = Math.max(1, x) - Math.min(0, x);
  const scale = Math.min(46 / width, 32 / height);
  return [
    [x * scale, 0],
    [scale, height * scale],
    [0, height * scale],
  ];
}

/** Degrees clockwise from the top of the way from one point to another. */
function bearing(from: Point, to: Point): number {
  return (Math.atan2(to[0] - from[0], from[1] - to[1]) * 180) / Math.PI;
}
