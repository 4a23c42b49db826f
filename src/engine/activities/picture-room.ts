// Whether a question's picture stays readable on a piece of a set: the composers ask, so that print never has to shrink
// letters in a picture below six points.
import { measureFigure } from '../figures/draw.js';
import type { LocaleId } from '../numbers/locale.js';
import type { Question } from '../questions/question.js';

/** The room for words and picture together, in mm. */
export interface PictureRoom {
  readonly widthMm: number;
  readonly heightMm: number;
  /** White between words and picture. */
  readonly gapMm: number;
  /** Narrowest column of words beside the picture; null where they always stand above it. */
  readonly besideMm: number | null;
}

/** Width of a letter and height of a line of words of 10 points, in mm. */
const LETTER_MM = 1.9;
const LINE_MM = 4.4;

/** True without a picture, or if it can be as large as its letters need while the words stand above it or beside it. */
export function pictureFits({ figure, text }: Question, room: PictureRoom, locale: LocaleId): boolean {
  if (!figure) return true;
  const { leastWidthMm, widthMm, heightMm } = measureFigure(figure, { locale });
  const leastHeightMm = (heightMm * leastWidthMm) / widthMm;
  const linesIn = (columnMm: number) => LINE_MM * Math.ceil((text.length * LETTER_MM) / columnMm);
  const isAbove =
    leastWidthMm <= room.widthMm && leastHeightMm <= room.heightMm - linesIn(room.widthMm) - room.gapMm;
  if (isAbove || room.besideMm === null) return isAbove;
  const columnMm = room.widthMm - leastWidthMm - room.gapMm;
  return columnMm >= room.besideMm && Math.max(leastHeightMm, linesIn(columnMm)) <= room.heightMm;
}
