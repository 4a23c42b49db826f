// Lines of text with stacked fractions as markup, and the breaking of a question into lines that fill a cell well.
import { escapeXml, INK } from '../../../figures/svg.js';
import {
  type AnswerLine,
  type AnswerPart,
  FRACTION_SIZE,
  gapBetween,
  lineOf,
  partWidth,
  spaceBefore,
} from '../answer-shape.js';
import { num } from './drawing.js';

export type Weight = 'regular' | 'bold';

/** Markup of lines one below the other, the whole centred on `x`, `y`; `size` is the letter size in the units of the drawing. */
export function setLines(
  lines: readonly AnswerLine[],
  x: number,
  y: number,
  size: number,
  weight: Weight,
): string {
  const gaps = lines.slice(1).map((line, i) => gapBetween(lines[i] as AnswerLine, line));
  const [first, last] = [lines[0] as AnswerLine, lines.at(-1) as AnswerLine];
  const height = gaps.reduce((sum, gap) => sum + gap, (first.height + last.height) / 2);
  let middle = y + (first.height / 2 - height / 2) * size;
  return lines
    .map((line, i) => {
      if (i > 0) middle += (gaps[i - 1] as number) * size;
      return setLine(line, x, middle, size, weight);
    })
    .join('');
}

function setLine({ parts, width }: AnswerLine, x: number, y: number, size: number, weight: Weight): string {
  let from = x - (width * size) / 2;
  let words: { text: string; from: number } | null = null;
  let markup = '';
  const flush = (until: number) => {
    if (words) markup += letters(words.text, (words.from + until) / 2, y, size, weight);
    words = null;
  };
  parts.forEach((part, i) => {
    const space = i > 0 ? spaceBefore(part) * size : 0;
    const wide = partWidth(part) * size;
    if ('text' in part) {
      const joined: { text: string; from: number } = words ?? { text: '', from: from + space };
      words = { text: `${joined.text}${joined.text && space > 0 ? ' ' : ''}${part.text}`, from: joined.from };
    } else {
      flush(from);
      markup += stacked(part, from + space + wide / 2, y, size, weight);
    }
    from += space + wide;
  });
  flush(from);
  return markup;
}

function letters(words: string, x: number, y: number, size: number, weight: Weight): string {
  const bold = weight === 'bold' ? ' font-weight="700"' : '';
  return `<text x="${num(x)}" y="${num(y + 0.356 * size)}" font-family="Andika" font-size="${num(size)}"${bold} text-anchor="middle" fill="${INK}">${escapeXml(words)}</text>`;
}

function stacked(
  part: Extract<AnswerPart, { over: string }>,
  x: number,
  y: number,
  size: number,
  weight: Weight,
): string {
  const [wide, thick] = [(partWidth(part) - 0.06) * size, 0.075 * size];
  const bar = `<rect x="${num(x - wide / 2)}" y="${num(y - thick / 2)}" width="${num(wide)}" height="${num(thick)}" fill="${INK}"/>`;
  const small = FRACTION_SIZE * size;
  return `${letters(part.over, x, y - 0.46 * size, small, weight)}${bar}${letters(part.under, x, y + 0.46 * size, small, weight)}`;
}

/** Lines of a question and the letter size at which they fit. */
export interface FittedLines {
  readonly lines: readonly AnswerLine[];
  readonly size: number;
  /** Height of all lines in the units of the size. */
  readonly height: number;
  readonly fits: boolean;
}

/** The question in the largest letters, from `most` down to `least`, at which it fits the room in `mostLines`; at `least` it may stand out. */
export function fitLines(
  text: string,
  width: number,
  height: number,
  most: number,
  least: number,
  mostLines = 20,
): FittedLines {
  const words = text.split(' ');
  for (let size = most; ; size -= 0.1) {
    const lines = breakLines(words, width / size);
    const tall = heightOf(lines) * size;
    const fits =
      lines.length <= mostLines && tall <= height && lines.every((line) => line.width * size <= width);
    if (fits || size - 0.1 < least) return { lines, size, height: tall, fits };
  }
}

function heightOf(lines: readonly AnswerLine[]): number {
  const [first, last] = [lines[0] as AnswerLine, lines.at(-1) as AnswerLine];
  return lines
    .slice(1)
    .reduce(
      (sum, line, i) => sum + gapBetween(lines[i] as AnswerLine, line),
      (first.height + last.height) / 2,
    );
}

/** Breaks of the fewest lines with the least ragged edge; sums and numbers with their units stay together where they can. */
function breakLines(words: readonly string[], width: number): AnswerLine[] {
  const best: { cost: number; from: number }[] = [{ cost: 0, from: 0 }];
  for (let end = 1; end <= words.length; end++) {
    best[end] = { cost: Number.POSITIVE_INFINITY, from: end - 1 };
    for (let from = end - 1; from >= 0; from--) {
      const line = lineOf(words.slice(from, end));
      const over = Math.max(0, line.width - width);
      if (over > 0 && from < end - 1) break;
      const slack = end === words.length ? 0.3 * (width - line.width) : width - line.width;
      const cost =
        (best[from] as { cost: number }).cost +
        40 +
        slack ** 2 +
        1000 * over +
        tearing(words[end - 1], words[end]);
      if (cost < (best[end] as { cost: number }).cost) best[end] = { cost, from };
    }
  }
  const lines: AnswerLine[] = [];
  for (let end = words.length; end > 0; end = (best[end] as { from: number }).from)
    lines.unshift(lineOf(words.slice((best[end] as { from: number }).from, end)));
  return lines;
}

const SIGN = /^[+\u2212×÷=<>]$/;

function tearing(last: string | undefined, next: string | undefined): number {
  if (last === undefined || next === undefined) return 0;
  if (SIGN.test(next)) return 60;
  if (SIGN.test(last)) return 25;
  return /\d$/.test(last) && /^(\d|\p{L}{1,2}$|\p{L}{1,2}[.,?])/u.test(next) ? 50 : 0;
}
