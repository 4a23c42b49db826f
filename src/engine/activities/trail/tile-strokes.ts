// The lines that can run inside a tile, as geometry: a tile is 100 units wide and high, x to the right, y downwards.
// Screen, print and the rule of what may be drawn together all use these same points.
import { EAST, NORTH, SOUTH, styleOf, WEST } from './codes.js';

export type XY = readonly [x: number, y: number];

/** Where a line crosses an edge, from its left or top end: far enough apart that a crooked cut does not join them. */
export const LOW = 30;
export const HIGH = 70;
/** Half the width of the path with its rims, and of the second line. */
export const HALF_PATH = 9;
export const HALF_LINE = 4.2;
/** The mark at the end of a line lies within this radius. */
export const END_RADIUS = { path: 12.5, line: 9 } as const;
/** White between two drawings of a tile, and between a drawing and a cut that it does not cross. */
export const CLEARANCE = 4.5;
/** How far a hand-made wobble may carry a line from its course. */
export const WOBBLE = 0.7;

/** A line from edge to edge, or from an edge to its end mark. */
export interface Stroke {
  readonly style: 'path' | 'line';
  readonly from: number;
  /** The other side, or null for a line that ends in the tile. */
  readonly to: number | null;
  /** The course, evenly spread, at most 3 units from point to point. */
  readonly points: readonly XY[];
}

/** Where the code crosses the side, and the direction into the tile. */
export function crossing(side: number, code: number): { readonly at: XY; readonly inward: XY } {
  const along = code % 2 === 1 ? LOW : HIGH;
  if (side === NORTH) return { at: [along, 0], inward: [0, 1] };
  if (side === SOUTH) return { at: [along, 100], inward: [0, -1] };
  if (side === WEST) return { at: [0, along], inward: [1, 0] };
  if (side === EAST) return { at: [100, along], inward: [-1, 0] };
  throw new RangeError(`no side ${side}`);
}

/** The line that joins two edges; both codes are of one style. */
export function joinStroke(from: number, fromCode: number, to: number, toCode: number): Stroke {
  const [a, b] = [crossing(from, fromCode), crossing(to, toCode)];
  const isOpposite = (from + 2) % 4 === to;
  const gap = Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]);
  // 0.55 of the radius makes a quarter circle.
  const reach = (towards: XY, other: XY, inward: XY) =>
    isOpposite
      ? 50
      : Math.max(
          0.3 * gap,
          0.55 * Math.abs((other[0] - towards[0]) * inward[0] + (other[1] - towards[1]) * inward[1]),
        );
  const first = reach(a.at, b.at, a.inward);
  const second = reach(b.at, a.at, b.inward);
  const points = curve(
    a.at,
    [a.at[0] + a.inward[0] * first, a.at[1] + a.inward[1] * first],
    [b.at[0] + b.inward[0] * second, b.at[1] + b.inward[1] * second],
    b.at,
  );
  return { style: styleOf(fromCode) as 'path' | 'line', from, to, points };
}

/** The line that ends `length` units inside the tile, `lean` units to one side of where it came in. */
export function endStroke(from: number, code: number, length: number, lean: number): Stroke {
  const { at, inward } = crossing(from, code);
  const sideways: XY = [Math.abs(inward[1]), Math.abs(inward[0])];
  const end: XY = [
    at[0] + inward[0] * length + sideways[0] * lean,
    at[1] + inward[1] * length + sideways[1] * lean,
  ];
  const points = curve(
    at,
    [at[0] + inward[0] * length * 0.55, at[1] + inward[1] * length * 0.55],
    [end[0] - inward[0] * length * 0.3, end[1] - inward[1] * length * 0.3],
    end,
  );
  return { style: styleOf(code) as 'path' | 'line', from, to: null, points };
}

export function halfWidth(stroke: Stroke): number {
  return stroke.style === 'path' ? HALF_PATH : HALF_LINE;
}

/** The middle of the end mark; null for a line that runs through. */
export function endPoint(stroke: Stroke): XY | null {
  return stroke.to === null ? (stroke.points.at(-1) as XY) : null;
}

/** White between two strokes with their end marks, in units; negative when they overlap. */
export function whiteBetween(a: Stroke, b: Stroke): number {
  let least = Number.POSITIVE_INFINITY;
  for (const p of discsOf(a))
    for (const q of discsOf(b)) least = Math.min(least, Math.hypot(p.x - q.x, p.y - q.y) - p.r - q.r);
  return least;
}

/** White between a stroke and the cuts it does not cross, in units. At its own edges only the middle of the line counts. */
export function whiteToCuts(stroke: Stroke): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { x, y, r } of discsOf(stroke)) {
    const whites = [y - r, 100 - x - r, 100 - y - r, x - r];
    whites.forEach((white, side) => {
      if (side !== stroke.from && side !== stroke.to) least = Math.min(least, white);
    });
  }
  const end = endPoint(stroke);
  if (end) {
    const r = END_RADIUS[stroke.style];
    least = Math.min(least, end[0] - r, 100 - end[0] - r, end[1] - r, 100 - end[1] - r);
  }
  return least;
}

export interface Disc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** The ink of a stroke as discs: along its course, and its end mark. */
export function discsOf(stroke: Stroke): Disc[] {
  const r = halfWidth(stroke);
  const discs = stroke.points.map(([x, y]) => ({ x, y, r }));
  const end = endPoint(stroke);
  return end ? [...discs, { x: end[0], y: end[1], r: END_RADIUS[stroke.style] }] : discs;
}

/** Points on a cubic curve, spread evenly along it, both ends among them. */
function curve(a: XY, b: XY, c: XY, d: XY): XY[] {
  const fine: XY[] = [];
  for (let i = 0; i <= 60; i++) {
    const t = i / 60;
    const [p, q, r, s] = [(1 - t) ** 3, 3 * (1 - t) ** 2 * t, 3 * (1 - t) * t ** 2, t ** 3];
    fine.push([p * a[0] + q * b[0] + r * c[0] + s * d[0], p * a[1] + q * b[1] + r * c[1] + s * d[1]]);
  }
  return spread(fine, 3);
}

/** The same course with points at even distances of at most `step`. */
export function spread(course: readonly XY[], step: number): XY[] {
  const lengths = [0];
  for (let i = 1; i < course.length; i++) {
    const [p, q] = [course[i - 1] as XY, course[i] as XY];
    lengths.push((lengths[i - 1] as number) + Math.hypot(q[0] - p[0], q[1] - p[1]));
  }
  const whole = lengths.at(-1) as number;
  const count = Math.max(1, Math.ceil(whole / step));
  const out: XY[] = [];
  let at = 0;
  for (let i = 0; i <= count; i++) {
    const wanted = (whole * i) / count;
    while (at + 2 < lengths.length && (lengths[at + 1] as number) < wanted) at++;
    const [p, q] = [course[at] as XY, course[Math.min(at + 1, course.length - 1)] as XY];
    const span = (lengths[at + 1] ?? whole) - (lengths[at] as number);
    const share = span > 0 ? Math.min(1, (wanted - (lengths[at] as number)) / span) : 0;
    out.push([p[0] + (q[0] - p[0]) * share, p[1] + (q[1] - p[1]) * share]);
  }
  return out;
}
