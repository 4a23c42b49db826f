// Labels of figures: a line of text, or a number with a stacked fraction where the text says "3/4" or "1 3/4".
import { INK, type Anchor, LABEL_MM, line, type Mark, type Point, text } from './svg.js';
import { textWidth } from './text-width.js';

const FRACTION = /^(?:(\d+)[ \u00a0])?(\d+)\/(\d+)$/;
/** Parts of a stacked fraction are set smaller than the text around them. */
const PART = 0.82;

/** Width in mm of the label at the given letter size. */
export function labelWidth(words: string, sizeMm = LABEL_MM): number {
  const parts = FRACTION.exec(words);
  if (!parts) return textWidth(words) * sizeMm;
  const [, whole, top = '', bottom = ''] = parts;
  return (whole ? (textWidth(whole) + 0.12) * sizeMm : 0) + stackWidth(top, bottom, sizeMm);
}

/** Height in mm of the label: one line, or two and a bar for a fraction. */
export function labelHeight(words: string, sizeMm = LABEL_MM): number {
  return FRACTION.test(words) ? sizeMm * 1.75 : sizeMm * 0.8;
}

/** The label's marks, centred on the height of `at`. */
export function label(
  words: string,
  at: Point,
  sizeMm = LABEL_MM,
  anchor: Anchor = 'middle',
  fill = INK,
): Mark[] {
  const parts = FRACTION.exec(words);
  if (!parts) return [text(words, at, sizeMm, anchor, fill)];
  const [, whole, top = '', bottom = ''] = parts;
  const width = labelWidth(words, sizeMm);
  const left = anchor === 'start' ? at[0] : anchor === 'end' ? at[0] - width : at[0] - width / 2;
  const stack = stackWidth(top, bottom, sizeMm);
  const centre = left + width - stack / 2;
  const off = sizeMm * 0.48;
  const marks = [
    text(top, [centre, at[1] - off], sizeMm * PART, 'middle', fill),
    line([centre - stack / 2, at[1]], [centre + stack / 2, at[1]], { stroke: fill, widthMm: sizeMm * 0.09 }),
    text(bottom, [centre, at[1] + off], sizeMm * PART, 'middle', fill),
  ];
  return whole ? [text(whole, [left, at[1]], sizeMm, 'start', fill), ...marks] : marks;
}

/** The largest letter size up to `sizeMm`, not below `leastMm`, at which the label fits the width. */
export function fitSize(words: string, widthMm: number, sizeMm = LABEL_MM, leastMm = 2.4): number {
  const natural = labelWidth(words, 1);
  return natural * sizeMm <= widthMm ? sizeMm : Math.max(leastMm, widthMm / natural);
}

function stackWidth(top: string, bottom: string, sizeMm: number): number {
  return (Math.max(textWidth(top), textWidth(bottom)) * PART + 0.1) * sizeMm;
}
