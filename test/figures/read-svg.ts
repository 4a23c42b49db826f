// Reads a figure back from its markup, without the code that drew it: elements, attributes and how far each one reaches.
import { type GlyphBox, glyphBoxes } from './font-metrics.js';

export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
}

export interface Extent {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The root and its children, in order. Throws on markup that is not well formed, or nested deeper than a figure is. */
export function readSvg(svg: string): { readonly root: Element; readonly children: Element[] } {
  const token = /<(\/?)([a-z]+)((?: [a-zA-Z][a-zA-Z0-9:-]*="[^"<>]*")*)(\/?)>|([^<>]+)/gy;
  const open: { name: string; attributes: Record<string, string>; text: string }[] = [];
  const children: Element[] = [];
  let root: Element | undefined;
  while (token.lastIndex < svg.length) {
    const at = token.lastIndex;
    const found = token.exec(svg);
    if (!found) throw new Error(`not well formed at ${at}: ${svg.slice(at, at + 40)}`);
    const [, closing, name = '', attributes = '', empty, words] = found;
    if (words !== undefined) {
      const parent = open.at(-1);
      if (!parent || parent.name !== 'text') throw new Error(`stray text "${words}"`);
      parent.text += unescape(words);
    } else if (closing) {
      const element = open.pop();
      if (element?.name !== name) throw new Error(`</${name}> closes <${element?.name}>`);
      if (open.length === 0) root = element;
      else children.push(element);
    } else {
      if (root) throw new Error('a second root');
      const element = { name, attributes: readAttributes(attributes), text: '' };
      if (!empty) open.push(element);
      else children.push(element);
      if (open.length > 2) throw new Error('nested too deep');
    }
  }
  if (!root || open.length > 0) throw new Error('an element is not closed');
  return { root, children };
}

/** The elements that were drawn as the named part. */
export function partsOf(children: readonly Element[], part: string): Element[] {
  return children.filter((element) => element.attributes['data-part'] === part);
}

/** A numeric attribute; throws when it is missing or not a finite number. */
export function numberOf(element: Element, attribute: string): number {
  const value = Number(element.attributes[attribute] ?? 'missing');
  if (!Number.isFinite(value)) {
    throw new Error(`${element.name} ${attribute}="${element.attributes[attribute]}"`);
  }
  return value;
}

/** The corners of a polygon, or the points a path is drawn through (curves and arcs sampled). */
export function pointsOf(element: Element): [number, number][] {
  if (element.name === 'polygon') {
    return (element.attributes['points'] ?? '').split(' ').map((pair) => {
      const [x = Number.NaN, y = Number.NaN] = pair.split(',').map(Number);
      return [x, y];
    });
  }
  return pathPoints(element.attributes['d'] ?? '');
}

/** How far the element reaches, with half its stroke; text by the face's own glyphs. */
export function extentOf(element: Element): Extent {
  const margin = element.attributes['stroke'] ? numberOf(element, 'stroke-width') / 2 : 0;
  const at = (attribute: string) => numberOf(element, attribute);
  switch (element.name) {
    case 'line':
      return around(
        [
          [at('x1'), at('y1')],
          [at('x2'), at('y2')],
        ],
        margin,
      );
    case 'rect':
      return around(
        [
          [at('x'), at('y')],
          [at('x') + at('width'), at('y') + at('height')],
        ],
        margin,
      );
    case 'circle':
      return around(
        [
          [at('cx') - at('r'), at('cy') - at('r')],
          [at('cx') + at('r'), at('cy') + at('r')],
        ],
        margin,
      );
    case 'ellipse':
      return around(
        [
          [at('cx') - at('rx'), at('cy') - at('ry')],
          [at('cx') + at('rx'), at('cy') + at('ry')],
        ],
        margin,
      );
    case 'polygon':
    case 'path':
      return around(pointsOf(element), margin);
    case 'text':
      return textExtent(element);
    default:
      throw new Error(`unexpected <${element.name}>`);
  }
}

function textExtent(element: Element): Extent {
  const size = numberOf(element, 'font-size');
  const glyphs: GlyphBox[] = glyphBoxes(element.text);
  const width = glyphs.reduce((sum, glyph) => sum + glyph.advance, 0) * size;
  const x = numberOf(element, 'x');
  const anchor = element.attributes['text-anchor'] ?? 'start';
  const left = anchor === 'middle' ? x - width / 2 : anchor === 'end' ? x - width : x;
  const y = numberOf(element, 'y');
  return {
    left,
    top: y - Math.max(0, ...glyphs.map((glyph) => glyph.top)) * size,
    right: left + width,
    bottom: y - Math.min(0, ...glyphs.map((glyph) => glyph.bottom)) * size,
  };
}

function around(points: readonly (readonly [number, number])[], margin: number): Extent {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    left: Math.min(...xs) - margin,
    top: Math.min(...ys) - margin,
    right: Math.max(...xs) + margin,
    bottom: Math.max(...ys) + margin,
  };
}

function pathPoints(d: string): [number, number][] {
  const points: [number, number][] = [];
  for (const [, letter, rest = ''] of d.matchAll(/([A-Z])([^A-Z]*)/g)) {
    const n = rest.trim().split(/[ ,]+/).filter(Boolean).map(Number);
    if (n.some((value) => !Number.isFinite(value))) throw new Error(`bad path ${d}`);
    const [a = 0, b = 0, c = 0, e = 0, f = 0, g = 0, h = 0] = n;
    const here = points.at(-1) ?? [0, 0];
    if (letter === 'M' || letter === 'L') points.push([a, b]);
    else if (letter === 'C') {
      for (let i = 1; i <= 32; i++) points.push(bezier(here, [a, b], [c, e], [f, g], i / 32));
    } else if (letter === 'A') {
      for (let i = 1; i <= 32; i++) points.push(alongArc(here, a, e === 1, f === 1, [g, h], i / 32));
    } else if (letter !== 'Z') throw new Error(`unexpected path command ${letter}`);
  }
  return points;
}

function bezier(
  p: readonly number[],
  q: readonly number[],
  r: readonly number[],
  s: readonly number[],
  t: number,
): [number, number] {
  const lerp = (from: number, to: number) => from + (to - from) * t;
  const mix = (axis: number) => {
    const [pq, qr, rs] = [
      lerp(p[axis] ?? 0, q[axis] ?? 0),
      lerp(q[axis] ?? 0, r[axis] ?? 0),
      lerp(r[axis] ?? 0, s[axis] ?? 0),
    ];
    return lerp(lerp(pq, qr), lerp(qr, rs));
  };
  return [mix(0), mix(1)];
}

/** A point on a circular arc, from the endpoint form of the SVG specification (its implementation note on arcs). */
function alongArc(
  [x0, y0]: readonly [number, number],
  r: number,
  large: boolean,
  sweep: boolean,
  [x1, y1]: readonly [number, number],
  t: number,
): [number, number] {
  const [mx, my] = [(x0 - x1) / 2, (y0 - y1) / 2];
  const half = mx * mx + my * my;
  const k = Math.sqrt(Math.max(0, (r * r - half) / half)) * (large === sweep ? -1 : 1);
  const [cx, cy] = [k * my + (x0 + x1) / 2, -k * mx + (y0 + y1) / 2];
  const start = Math.atan2(y0 - cy, x0 - cx);
  let turn = Math.atan2(y1 - cy, x1 - cx) - start;
  if (sweep && turn < 0) turn += 2 * Math.PI;
  if (!sweep && turn > 0) turn -= 2 * Math.PI;
  return [cx + r * Math.cos(start + turn * t), cy + r * Math.sin(start + turn * t)];
}

function readAttributes(source: string): Record<string, string> {
  const out: Record<string, string> = {};
  for (const [, name = '', value = ''] of source.matchAll(/ ([a-zA-Z][a-zA-Z0-9:-]*)="([^"]*)"/g)) {
    if (name in out) throw new Error(`attribute ${name} twice`);
    out[name] = unescape(value);
  }
  return out;
}

function unescape(words: string): string {
  if (/&(?!(?:amp|lt|gt|quot);)/.test(words)) throw new Error(`bare & in "${words}"`);
  return words
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');
}
