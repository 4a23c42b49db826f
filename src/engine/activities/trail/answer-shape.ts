// How an answer is set on a tile: in one to three lines, fractions stacked, as large as its room allows. In letter sizes.
import { textWidth } from '../../figures/text-width.js';
import type { Room } from './tile-layout.js';

/** A stretch of a line: words, or a stacked fraction. */
export type AnswerPart =
  | { readonly text: string /** A stop that follows a fraction without a space. */; readonly isTight?: true }
  | { readonly over: string; readonly under: string };

export interface AnswerLine {
  readonly parts: readonly AnswerPart[];
  readonly width: number;
  readonly height: number;
}

/** One way to break an answer into lines. */
export interface AnswerShape {
  readonly lines: readonly AnswerLine[];
  readonly width: number;
  readonly height: number;
}

/** An answer in its room: letter size and middle, in tile units. */
export interface PlacedAnswer {
  readonly shape: AnswerShape;
  readonly size: number;
  readonly x: number;
  readonly y: number;
}

/** Bold letters are wider than the regular ones whose widths are known (measured on Andika: up to 11 %). */
const BOLD = 1.12;
export const FRACTION_SIZE = 0.78;
/** From the middle of one line to the next. */
const LEADING = 1.12;
/** Cap height with a little air. */
const LINE_HEIGHT = 0.86;
const FRACTION_HEIGHT = 1.5;
/** How far the tail of a y or a comma reaches below a line. */
const TAIL = 0.17;
/** Letters larger than this look out of place beside the path. */
const LARGEST = 21;

/** All ways to set an answer in up to three lines, broken at spaces only. */
export function answerShapes(text: string): AnswerShape[] {
  const words = text.replaceAll('\u00a0', ' ').split(' ');
  const shapes = [shapeOf([words])];
  for (let first = 1; first < words.length; first++) {
    shapes.push(shapeOf([words.slice(0, first), words.slice(first)]));
    for (let second = first + 1; second < words.length; second++)
      shapes.push(shapeOf([words.slice(0, first), words.slice(first, second), words.slice(second)]));
  }
  // A whole number and its fraction stay together, and so do a number and its unit.
  return shapes.filter(({ lines }) =>
    lines.slice(0, -1).every((line, i) => !isTorn(line, lines[i + 1] as AnswerLine)),
  );
}

function shapeOf(rows: readonly (readonly string[])[]): AnswerShape {
  const lines = rows.map(lineOf);
  const below = lines.slice(1).reduce((sum, line, i) => sum + gapBetween(lines[i] as AnswerLine, line), 0);
  const [first, last] = [lines[0] as AnswerLine, lines.at(-1) as AnswerLine];
  return {
    lines,
    width: Math.max(...lines.map(({ width }) => width)),
    height: below + (first.height + last.height) / 2 + (hasTail(last) ? 2 * TAIL : 0),
  };
}

function hasTail({ parts }: AnswerLine): boolean {
  return parts.some((part) => 'text' in part && /[gjpqyQ,;]/.test(part.text));
}

/** From the middle of a line to the middle of the next. */
export function gapBetween(above: AnswerLine, below: AnswerLine): number {
  return Math.max(LEADING, (above.height + below.height) / 2 + 0.2);
}

/** One line of words, fractions stacked; a word such as 3/4 is a fraction. Words may be pairs that stay together. */
export function lineOf(words: readonly string[]): AnswerLine {
  const parts: AnswerPart[] = [];
  for (const word of words.flatMap((pair) => pair.split('\u00a0'))) {
    const match = /^(\d+|\?)\/(\d+|\?)([,;.?:]?)$/.exec(word);
    if (match)
      parts.push(
        { over: match[1] as string, under: match[2] as string },
        ...(match[3] ? [{ text: match[3], isTight: true as const }] : []),
      );
    else parts.push({ text: word });
  }
  return {
    parts,
    width: parts.reduce((sum, part, i) => sum + partWidth(part) + (i > 0 ? spaceBefore(part) : 0), 0),
    height: parts.some((part) => 'over' in part) ? FRACTION_HEIGHT : LINE_HEIGHT,
  };
}

export function partWidth(part: AnswerPart): number {
  if ('text' in part) return textWidth(part.text) * BOLD;
  return Math.max(textWidth(part.over), textWidth(part.under)) * BOLD * FRACTION_SIZE + 0.16;
}

export function spaceBefore(part: AnswerPart): number {
  return 'over' in part ? 0.14 : part.isTight ? 0 : 0.27;
}

function isTorn(line: AnswerLine, next: AnswerLine): boolean {
  const [last, first] = [line.parts.at(-1), next.parts[0]];
  const isNumber = last !== undefined && 'text' in last && /^[$£]?\d[\d.]*$/.test(last.text);
  return isNumber && first !== undefined && ('over' in first || /^[\p{L}%°²³]{1,3}$|^\d/u.test(first.text));
}

/** Where and how large an answer stands in the best of the rooms; null when it fits none at `least` units or more. */
export function placeAnswer(
  shapes: readonly AnswerShape[],
  rooms: readonly Room[],
  least: number,
): PlacedAnswer | null {
  let best: PlacedAnswer | null = null;
  let bestWorth = 0;
  for (const shape of shapes) {
    for (const room of rooms) {
      const size = Math.min(LARGEST, room.w / shape.width, room.h / shape.height);
      if (size < least || size <= bestWorth) continue;
      // Between rooms of the same size of letters the one nearer the middle looks calmer.
      const x = room.x + room.w / 2;
      const y = room.y + room.h / 2;
      const worth = size - 0.02 * Math.sqrt((x - 50) ** 2 + (y - 50) ** 2) - 0.6 * (shape.lines.length - 1);
      if (worth <= bestWorth) continue;
      best = { shape, size, x, y };
      bestWorth = worth;
    }
  }
  return best;
}
