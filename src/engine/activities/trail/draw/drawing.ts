// What the drawing of a trail hands out: one SVG picture in the face and the ink of the figures, with its size in mm.
import { escapeXml, INK, mm } from '../../../figures/svg.js';

export interface Drawing {
  readonly svg: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** What a screen reader says. */
  readonly alt: string;
}

/** A drawing of `body`, which is drawn in `units` wide and high and shown at the given size. */
export function drawingOf(
  body: string,
  units: readonly [width: number, height: number],
  sizeMm: readonly [width: number, height: number],
  alt: string,
): Drawing {
  const [widthMm, heightMm] = sizeMm;
  const size = `width="${mm(widthMm)}mm" height="${mm(heightMm)}mm" viewBox="0 0 ${mm(units[0])} ${mm(units[1])}"`;
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" aria-label="${escapeXml(alt)}">${body}</svg>`,
    widthMm,
    heightMm,
    alt,
  };
}

/** A number in markup, with two decimals. */
export function num(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}

/** Markup moved, then scaled. */
export function placed(body: string, x: number, y: number, scale = 1): string {
  const scaled = scale === 1 ? '' : ` scale(${mm(scale)})`;
  return `<g transform="translate(${num(x)} ${num(y)})${scaled}">${body}</g>`;
}

/** A path filled with ink. */
export function inked(d: string, part?: string): string {
  return `<path${part ? ` data-part="${part}"` : ''} d="${d}" fill="${INK}"/>`;
}
