// The drawing primitives every figure is made of: marks that know their own extent, so that the sheet can be cut to fit.
// Millimetres throughout, x to the right, y downwards.
import { textWidth } from './text-width.js';

export const INK = '#111111';
export const SHADE = '#b4b4b4';
export const PALE = '#e4e4e4';
export const FINE_MM = 0.35;
export const LINE_MM = 0.5;
export const BOLD_MM = 0.7;
/** Usual letter size of labels: 11 to 12 points at natural size. */
export const LABEL_MM = 4;

export type Point = readonly [x: number, y: number];

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** One drawn element: where it lies, and its markup once the sheet has been moved by (dx, dy). */
export interface Mark {
  readonly box: Box;
  readonly render: (dx: number, dy: number) => string;
  /** The letter size in mm of a text. */
  readonly letterMm?: number;
}

/** What a kind hands back: its marks in any coordinates, and what a screen reader says. */
export interface Sketch {
  readonly marks: readonly Mark[];
  readonly alt: string;
}

/** How a mark is painted; `part` names it in the markup (data-part) for highlighting and checking. */
export interface Paint {
  readonly fill?: string;
  readonly stroke?: string;
  readonly widthMm?: number;
  readonly dash?: readonly number[];
  readonly roundCap?: boolean;
  readonly part?: string;
}

/** A stretch of an outline. An arc runs on a circle from angle `from` to `to`, degrees clockwise from 12 o'clock. */
export type Segment =
  | { readonly to: Point; readonly move?: true }
  | { readonly curve: readonly [Point, Point]; readonly to: Point }
  | { readonly centre: Point; readonly radius: number; readonly from: number; readonly until: number };

/** The number as written in SVG: at most 3 decimals, never "-0" or exponent form. */
export function mm(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}

/** Text made safe inside SVG elements and attributes; characters XML forbids are dropped. */
export function escapeXml(text: string): string {
  return Array.from(text, (character) => (isAllowed(character) ? character : ''))
    .join('')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}

function isAllowed(character: string): boolean {
  const code = character.codePointAt(0) ?? 0;
  const isSurrogate = code >= 0xd800 && code <= 0xdfff;
  return (code >= 0x20 || code === 0x9 || code === 0xa || code === 0xd) && !isSurrogate && code < 0xfffe;
}

/** The point at `radius` from the centre, in degrees clockwise from 12 o'clock. */
export function polar(centre: Point, radius: number, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return [centre[0] + radius * Math.sin(angle), centre[1] - radius * Math.cos(angle)];
}

/** A straight line. */
export function line(from: Point, to: Point, paint: Paint = {}): Mark {
  const style = attributes({ stroke: INK, widthMm: LINE_MM, ...paint });
  return {
    box: around([from, to], half({ stroke: INK, widthMm: LINE_MM, ...paint })),
    render: (dx, dy) =>
      `<line x1="${mm(from[0] + dx)}" y1="${mm(from[1] + dy)}" x2="${mm(to[0] + dx)}" y2="${mm(to[1] + dy)}"${style}/>`,
  };
}

/** A rectangle from its top left corner, with rounded corners of radius `rounding`. */
export function rect(
  left: number,
  top: number,
  width: number,
  height: number,
  paint: Paint = {},
  rounding = 0,
): Mark {
  const full = outlined(paint);
  const style = (rounding > 0 ? ` rx="${mm(rounding)}"` : '') + attributes(full);
  return {
    box: around(
      [
        [left, top],
        [left + width, top + height],
      ],
      half(full),
    ),
    render: (dx, dy) =>
      `<rect x="${mm(left + dx)}" y="${mm(top + dy)}" width="${mm(width)}" height="${mm(height)}"${style}/>`,
  };
}

/** A circle, or an ellipse when a second radius is given. */
export function circle(centre: Point, radius: number, paint: Paint = {}, radiusY = radius): Mark {
  const full = outlined(paint);
  const style = attributes(full);
  const [x, y] = centre;
  return {
    box: around(
      [
        [x - radius, y - radiusY],
        [x + radius, y + radiusY],
      ],
      half(full),
    ),
    render: (dx, dy) =>
      radius === radiusY
        ? `<circle cx="${mm(x + dx)}" cy="${mm(y + dy)}" r="${mm(radius)}"${style}/>`
        : `<ellipse cx="${mm(x + dx)}" cy="${mm(y + dy)}" rx="${mm(radius)}" ry="${mm(radiusY)}"${style}/>`,
  };
}

/** A closed outline with straight sides. */
export function polygon(points: readonly Point[], paint: Paint = {}): Mark {
  const full = outlined(paint);
  const style = `${attributes(full)}${full.stroke === 'none' ? '' : ' stroke-linejoin="round"'}`;
  return {
    box: around(points, half(full)),
    render: (dx, dy) =>
      `<polygon points="${points.map(([x, y]) => `${mm(x + dx)},${mm(y + dy)}`).join(' ')}"${style}/>`,
  };
}

/** An outline of straight lines, curves and arcs; `closed` joins its end to its start. */
export function path(segments: readonly Segment[], paint: Paint = {}, closed = false): Mark {
  const full = outlined({ fill: 'none', ...paint });
  const style = `${attributes(full)}${full.stroke === 'none' ? '' : ' stroke-linejoin="round"'}`;
  const reach: Point[] = [];
  let here: Point = [0, 0];
  for (const segment of segments) {
    if ('centre' in segment) {
      for (let step = 0; step <= 24; step++) {
        const degrees = segment.from + ((segment.until - segment.from) * step) / 24;
        reach.push(polar(segment.centre, segment.radius, degrees));
      }
      here = polar(segment.centre, segment.radius, segment.until);
    } else {
      if ('curve' in segment) reach.push(...alongCurve(here, segment.curve, segment.to));
      reach.push(segment.to);
      here = segment.to;
    }
  }
  return {
    box: around(reach, half(full)),
    render: (dx, dy) =>
      `<path d="${segments.map((segment, index) => outline(segment, index === 0, dx, dy)).join(' ')}${closed ? ' Z' : ''}"${style}/>`,
  };
}

/** The straight lines and curves of a fixed outline, written as in SVG with absolute M, L and C and spaces between all parts. */
export function route(commands: string): Exclude<Segment, { radius: number }>[] {
  const segments: Exclude<Segment, { radius: number }>[] = [];
  for (const [, letter, numbers = ''] of commands.matchAll(/([MLC]) ([^MLC]+)/g)) {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers.trim().split(' ').map(Number);
    if (letter === 'C')
      segments.push({
        curve: [
          [a, b],
          [c, d],
        ],
        to: [e, f],
      });
    else segments.push(letter === 'M' ? { to: [a, b], move: true } : { to: [a, b] });
  }
  return segments;
}

export type Anchor = 'start' | 'middle' | 'end';

/** A line of text whose capitals and digits are centred on y. */
export function text(
  words: string,
  at: Point,
  sizeMm = LABEL_MM,
  anchor: Anchor = 'middle',
  fill = INK,
): Mark {
  const width = textWidth(words) * sizeMm;
  const left = anchor === 'start' ? at[0] : anchor === 'end' ? at[0] - width : at[0] - width / 2;
  const baseline = at[1] + 0.356 * sizeMm;
  const below = /^[\d\s.:+×÷=%°?\u2212A-IK-PR-Zabcdehiklmnorstuvwxz-]*$/.test(words) ? 0.02 : 0.24;
  const anchored = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  return {
    box: { left, top: baseline - 0.78 * sizeMm, right: left + width, bottom: baseline + below * sizeMm },
    letterMm: sizeMm,
    render: (dx, dy) =>
      `<text x="${mm(at[0] + dx)}" y="${mm(baseline + dy)}" font-family="Andika" font-size="${mm(sizeMm)}"${anchored} fill="${fill}">${escapeXml(words)}</text>`,
  };
}

/** The smallest box around all the marks; a single point at the origin when there are none. */
export function boxOf(marks: readonly Mark[]): Box {
  return marks.reduce<Box>((box, mark, index) => (index === 0 ? mark.box : union(box, mark.box)), {
    left: 0,
    top: 0,
    right: 0,
    bottom: 0,
  });
}

/** The marks moved by (x, y). */
export function moved(marks: readonly Mark[], x: number, y: number): Mark[] {
  return marks.map((mark) => ({
    ...mark,
    box: {
      left: mark.box.left + x,
      top: mark.box.top + y,
      right: mark.box.right + x,
      bottom: mark.box.bottom + y,
    },
    render: (dx, dy) => mark.render(dx + x, dy + y),
  }));
}

function union(a: Box, b: Box): Box {
  return {
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
  };
}

function around(points: readonly Point[], margin: number): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    left: Math.min(...xs) - margin,
    top: Math.min(...ys) - margin,
    right: Math.max(...xs) + margin,
    bottom: Math.max(...ys) + margin,
  };
}

function outlined(paint: Paint): Paint {
  return { fill: 'none', stroke: INK, widthMm: LINE_MM, ...paint };
}

function half(paint: Paint): number {
  return paint.stroke === 'none' ? 0 : (paint.widthMm ?? LINE_MM) / 2;
}

function attributes(paint: Paint): string {
  const drawn = paint.stroke !== undefined && paint.stroke !== 'none';
  return [
    paint.part === undefined ? '' : ` data-part="${escapeXml(paint.part)}"`,
    paint.fill === undefined ? '' : ` fill="${paint.fill}"`,
    drawn ? ` stroke="${paint.stroke}" stroke-width="${mm(paint.widthMm ?? LINE_MM)}"` : '',
    drawn && paint.dash ? ` stroke-dasharray="${paint.dash.map(mm).join(' ')}"` : '',
    drawn && paint.roundCap ? ' stroke-linecap="round"' : '',
  ].join('');
}

function outline(segment: Segment, first: boolean, dx: number, dy: number): string {
  const at = ([x, y]: Point) => `${mm(x + dx)} ${mm(y + dy)}`;
  if ('centre' in segment) {
    const { centre, radius, from, until } = segment;
    const sweep = until > from ? 1 : 0;
    const large = Math.abs(until - from) > 180 ? 1 : 0;
    const start = `${first ? 'M' : 'L'} ${at(polar(centre, radius, from))}`;
    return `${start} A ${mm(radius)} ${mm(radius)} 0 ${large} ${sweep} ${at(polar(centre, radius, until))}`;
  }
  if ('curve' in segment) return `C ${segment.curve.map(at).join(' ')} ${at(segment.to)}`;
  return `${first || segment.move ? 'M' : 'L'} ${at(segment.to)}`;
}

function alongCurve(start: Point, [one, two]: readonly [Point, Point], end: Point): Point[] {
  return Array.from({ length: 15 }, (_, index) => {
    const t = (index + 1) / 16;
    const mix = (axis: 0 | 1) =>
      (1 - t) ** 3 * start[axis] +
      3 * (1 - t) ** 2 * t * one[axis] +
      3 * (1 - t) * t ** 2 * two[axis] +
      t ** 3 * end[axis];
    return [mix(0), mix(1)] as const;
  });
}
