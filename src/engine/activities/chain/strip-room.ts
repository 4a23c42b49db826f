// What a strip has room for. Strips of usual print on A4 are the smallest: two columns, five or six to a column.
import type { LocaleId } from '../../numbers/locale.js';
import type { Question } from '../../questions/question.js';
import { type PictureRoom, pictureFits } from '../picture-room.js';

/** Strips side by side on a sheet. */
export const STRIP_COLUMNS = 2;
/** Lower strips would leave a picture too small to read. */
export const MOST_STRIP_ROWS = 6;
/** Width of a strip on A4, and on Letter within a millimetre or two. */
export const STRIP_WIDTH_MM = 95;
/** A sheet of A4 less what printers leave free, and the tallest strip that looks well. */
const SHEET_MM = 273;
const TALLEST_MM = 54;
/** Sets cut as a stack lie five to a column, however many strips one of them has. */
const STACKED_ROWS = 5;

/** What a strip of that size leaves to its question: beside the ring and the answer's box, off the cuts. */
export function stripRoom(widthMm: number, heightMm: number): PictureRoom {
  return { widthMm: 0.73 * widthMm - 20, heightMm: heightMm - 8.4, gapMm: 3.5, besideMm: 20 };
}

/** The rows of a sheet when a chain of `cards` strips has sheets of its own: as few sheets as possible, equally full. */
export function rowsOfStrips(cards: number): number {
  const sheets = Math.ceil(cards / (STRIP_COLUMNS * MOST_STRIP_ROWS));
  return Math.ceil(Math.ceil(cards / sheets) / STRIP_COLUMNS);
}

/** Whether the question's picture, if it has one, stays readable on a strip of a chain of so many strips. */
export function fitsStrip(question: Question, cards: number, locale: LocaleId): boolean {
  const rows = Math.max(STACKED_ROWS, rowsOfStrips(cards));
  const heightMm = Math.min(TALLEST_MM, Math.floor(SHEET_MM / rows));
  return pictureFits(question, stripRoom(STRIP_WIDTH_MM, heightMm), locale);
}
