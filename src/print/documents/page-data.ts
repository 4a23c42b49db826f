// The JSON that the templates read: what stands on a page, with every measure that must be exact already decided.
import type { FigureSpec } from '#engine/figures/figure.js';
import type { Board } from '#engine/activities/board/board.js';
import { paperSize } from '../paper.js';
import type { PaperId, PrintOptions, PrintRequest } from '../request.js';
import { textPieces, type TextPiece } from '../text/rich-text.js';

export interface FigureData {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  readonly alt: string;
}

/** Fields that every part has; the rest belongs to its template. */
export interface PartData {
  readonly kind: string;
  readonly paper: { readonly width: number; readonly height: number };
  readonly foot: string;
  readonly [field: string]: unknown;
}

/** Everyone is meant to reach this rung: a line is drawn below it (common practice: the first 5 of 12). */
export const MINIMUM_RUNG = 5;

/** Width and height of the paper as the templates name them, in millimetres. */
export function paperData(paper: PaperId): PartData['paper'] {
  const { widthMm, heightMm } = paperSize(paper);
  return { width: widthMm, height: heightMm };
}

/** The drawn figure, or null when there is none. */
export function figureData(_spec: FigureSpec | null): FigureData | null {
  return null;
}

/** "Years 4 and 5", "Year 3", "Foundation and Year 1". */
export function yearsInWords(years: readonly number[]): string {
  const names = years.map((year) => (year === 0 ? 'Foundation' : `Year ${year}`));
  if (years.length > 1 && years.every((year) => year > 0)) return `Years ${listInWords(years.map(String))}`;
  return listInWords(names);
}

/** "a", "a and b", "a, b and c". */
export function listInWords(items: readonly string[]): string {
  return items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/** "easier side" or "harder side". */
export function sideInWords(board: Board): string {
  return board.side === 'front' ? 'easier side' : 'harder side';
}

/** The line at the foot from which the page can be made again. */
export function footLine(board: Board, request: PrintRequest): string {
  const date = dateInWords(request.options);
  return [`${board.number}`, yearsInWords(board.years), sideInWords(board), `seed ${board.seed}`, ...(date ? [date] : [])].join('  \u00b7  ');
}

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

/** "25 November 2026" (or "November 25, 2026" in the US) for the request's date; empty without one. */
export function dateInWords(options: PrintOptions): string {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(options.date ?? '');
  const month = match ? MONTHS[Number(match[2]) - 1] : undefined;
  if (!match || !month) return '';
  const day = Number(match[3]);
  return options.locale === 'en-US' ? `${month} ${day}, ${match[1]}` : `${day} ${month} ${match[1]}`;
}

/** The board's rungs with their text in pieces and their figures drawn. */
export function rungsData(board: Board): readonly { n: number; text: readonly TextPiece[]; figure: FigureData | null }[] {
  return board.rungs.map((rung) => ({
    n: rung.rung,
    text: textPieces(rung.question.text),
    figure: figureData(rung.question.figure),
  }));
}
