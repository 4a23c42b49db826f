// The JSON that the templates read: what stands on a page, with every measure that must be exact already decided.
import type { Board } from '#engine/activities/board/board.js';
import { drawFigure } from '#engine/figures/draw.js';
import type { FigureSpec } from '#engine/figures/figure.js';
import { monthName, parseIsoDate } from '#engine/numbers/calendar.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { Question } from '#engine/questions/question.js';
import { paperSize } from '../paper.js';
import type { PaperId, PrintOptions } from '../request.js';
import { type TextPiece, textPieces } from '../text/rich-text.js';
import { type AnswerForm, answerForm } from './answer-form.js';

export interface FigureData {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** The part of its natural width below which its smallest letters are too small to read in print. */
  readonly least: number;
  readonly alt: string;
}

/** One rung or loose question as the templates set it. */
export interface QuestionData {
  readonly n: number;
  readonly text: readonly TextPiece[];
  /** Long texts are set a little smaller than sums. */
  readonly long: boolean;
  readonly figure: FigureData | null;
  readonly answer: readonly TextPiece[];
  readonly form: AnswerForm;
}

/** Fields that every part has; the rest belongs to its template. */
export interface PartData {
  readonly kind: string;
  /** How many pages the part makes, or about how many; long jobs are cut by it. */
  readonly pages: number;
  readonly paper: { readonly width: number; readonly height: number };
  readonly [field: string]: unknown;
}

/** Parts of more pages than this are cut, so that typesetting stays within its memory. */
export const MOST_PAGES_A_PART = 48;

/** Everyone is meant to reach this rung: a line is drawn below it (common practice: the first 5 of 12). */
export const MINIMUM_RUNG = 5;

/** Width and height of the paper as the templates name them, in millimetres. */
export function paperData(paper: PaperId): PartData['paper'] {
  const { widthMm, heightMm } = paperSize(paper);
  return { width: widthMm, height: heightMm };
}

/** The drawn figure, or null when there is none. */
export function figureData(spec: FigureSpec | null, locale: LocaleId): FigureData | null {
  if (!spec) return null;
  const { svg, widthMm, heightMm, leastWidthMm, alt } = drawFigure(spec, { locale });
  return { svg, width: widthMm, height: heightMm, least: leastWidthMm / widthMm, alt };
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

/** The line at the foot from which the page can be made again: number, years, side, seed and date. */
export function footLine(board: Board, options: PrintOptions): string {
  const parts = [
    board.number,
    yearsInWords(board.years),
    sideInWords(board),
    `seed ${board.seed}`,
    dateInWords(options),
  ];
  return parts.filter(Boolean).join('  \u00b7  ');
}

/** "25 November 2026" (or "November 25, 2026" in the US) for the request's date; empty without one. */
export function dateInWords(options: PrintOptions): string {
  const date = parseIsoDate(options.date ?? '');
  if (date === null) return '';
  const { year, month, day } = date;
  const name = monthName(month);
  return options.locale === 'en-US' ? `${name} ${day}, ${year}` : `${day} ${name} ${year}`;
}

const LONG_TEXT = 52;

/** A question, numbered. */
export function questionData(question: Question, n: number, locale: LocaleId): QuestionData {
  return {
    n,
    text: textPieces(question.text),
    long: question.text.length > LONG_TEXT,
    figure: figureData(question.figure, locale),
    answer: textPieces(question.answer.text),
    form: answerForm(question),
  };
}

/** The board's rungs, easiest first. */
export function rungsData(board: Board): readonly QuestionData[] {
  return board.rungs.map((rung) => questionData(rung.question, rung.rung, board.locale));
}
