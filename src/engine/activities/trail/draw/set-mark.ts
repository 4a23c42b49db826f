// The small number of the set on a tile, by which a lost tile finds its bag: wherever it stands clear of everything else.
import { textWidth } from '../../../figures/text-width.js';
import type { PlacedAnswer } from '../answer-shape.js';
import { discsOf, type Stroke } from '../tile-strokes.js';
import { num } from './drawing.js';

/** 6.5 points; smaller than any answer. */
const LETTERS_MM = 2.3;
/** White to a cut in mm, and to lines and the answer in hundredths of a tile's side. */
const CUT_WHITE_MM = 3.1;
const LINE_WHITE = 2;
const ANSWER_WHITE = 4;
const STEP = 2;
const GREY = '#555555';

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * Markup of "set 12" in tile units, as near to the bottom right corner as it can stand; of "12" where there is less room;
 * empty where there is none. `sideMm` is the side of the tile.
 */
export function setMark(
  set: number,
  strokes: readonly Stroke[],
  answer: PlacedAnswer,
  sideMm: number,
): string {
  const size = (LETTERS_MM / sideMm) * 100;
  const taken = boxOf(answer);
  const discs = strokes.flatMap(discsOf);
  for (const words of [`set ${set}`, String(set)]) {
    const box = spotFor(textWidth(words) * size, 0.74 * size, (CUT_WHITE_MM / sideMm) * 100, taken, discs);
    if (box)
      return `<text data-part="set" x="${num(box.left)}" y="${num(box.bottom)}" font-family="Andika" font-size="${num(size)}" fill="${GREY}">${words}</text>`;
  }
  return '';
}

function boxOf({ shape, size, x, y }: PlacedAnswer): Box {
  const [w, h] = [(shape.width * size) / 2, (shape.height * size) / 2];
  return { left: x - w, top: y - h, right: x + w, bottom: y + h };
}

function spotFor(
  width: number,
  height: number,
  margin: number,
  taken: Box,
  discs: readonly { readonly x: number; readonly y: number; readonly r: number }[],
): Box | null {
  const most = { right: 100 - margin, bottom: 100 - margin };
  let best: Box | null = null;
  let nearest = Number.POSITIVE_INFINITY;
  for (let bottom = most.bottom; bottom - height >= margin; bottom -= STEP) {
    for (let right = most.right; right - width >= margin; right -= STEP) {
      const away = most.right - right + (most.bottom - bottom);
      if (away >= nearest) break;
      const box = { left: right - width, top: bottom - height, right, bottom };
      const meetsAnswer =
        box.left < taken.right + ANSWER_WHITE &&
        box.right > taken.left - ANSWER_WHITE &&
        box.top < taken.bottom + ANSWER_WHITE &&
        box.bottom > taken.top - ANSWER_WHITE;
      if (meetsAnswer || discs.some(({ x, y, r }) => gapTo(box, x, y) < r + LINE_WHITE)) continue;
      best = box;
      nearest = away;
    }
  }
  return best;
}

function gapTo(box: Box, x: number, y: number): number {
  return Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
}
