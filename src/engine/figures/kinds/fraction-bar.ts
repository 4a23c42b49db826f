// Bars cut into equal parts, some shaded; shading runs on from one bar to the next.
import type { FigureSpec } from '../figure.js';
import { BOLD_MM, LINE_MM, line, type Mark, rect, SHADE, type Sketch } from '../svg.js';
import { capital, countInWords, countOf, listOf } from '../words.js';

const WIDTH_MM = 64;
const HEIGHT_MM = 12;
const GAP_MM = 4;

export function drawFractionBar(spec: Extract<FigureSpec, { kind: 'fraction-bar' }>): Sketch {
  const { parts, shaded } = spec;
  const bars = Math.max(spec.bars ?? 1, Math.ceil(shaded / parts), 1);
  const share = WIDTH_MM / parts;
  const marks: Mark[] = [];
  for (let bar = 0; bar < bars; bar++) {
    const top = bar * (HEIGHT_MM + GAP_MM);
    const filled = shadedIn(bar, parts, shaded);
    for (let part = 0; part < filled; part++) {
      marks.push(rect(part * share, top, share, HEIGHT_MM, { fill: SHADE, stroke: 'none', part: 'shaded' }));
    }
    for (let cut = 1; cut < parts; cut++) {
      marks.push(line([cut * share, top], [cut * share, top + HEIGHT_MM], { widthMm: LINE_MM, part: 'cut' }));
    }
    marks.push(rect(0, top, WIDTH_MM, HEIGHT_MM, { widthMm: BOLD_MM, part: 'bar' }));
  }
  return { marks, alt: tellShares('bar', parts, shaded, bars) };
}

/** How many of a whole's parts are shaded when shading runs on from whole to whole. */
export function shadedIn(whole: number, parts: number, shaded: number): number {
  return Math.max(0, Math.min(parts, shaded - whole * parts));
}

/** "A bar cut into equal parts: 3 shaded parts and 1 plain part." for one whole or several. */
export function tellShares(noun: string, parts: number, shaded: number, wholes: number): string {
  const one = (whole: number) => {
    const filled = shadedIn(whole, parts, shaded);
    const told = [
      filled > 0 ? countOf(filled, 'shaded part') : '',
      filled < parts ? countOf(parts - filled, 'plain part') : '',
    ].filter(Boolean);
    return listOf(told);
  };
  if (wholes === 1) {
    return parts === 1
      ? `A ${noun} in one piece, ${shaded > 0 ? 'shaded' : 'not shaded'}.`
      : `A ${noun} cut into equal parts: ${one(0)}.`;
  }
  const each = Array.from({ length: wholes }, (_, whole) => `${noun} ${whole + 1}: ${one(whole)}`);
  return `${capital(countInWords(wholes, noun))} of the same size${parts > 1 ? ', each cut into equal parts' : ''}. ${capital(each.join('; '))}.`;
}
