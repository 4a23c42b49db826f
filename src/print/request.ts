// What a caller asks the print room for, and what it gets back. Plain data: it crosses a thread boundary as it is.
import type { Board } from '#engine/activities/board/board.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { Question } from '#engine/questions/question.js';

export const DOCUMENTS = ['poster', 'sheet', 'slips', 'key', 'relief', 'practice', 'rota', 'kit'] as const;
export type DocumentKind = (typeof DOCUMENTS)[number];

export const PAPERS = ['A4', 'A3', 'Letter'] as const;
export type PaperId = (typeof PAPERS)[number];

/** One recording slip. `id` is opaque and goes into the QR code: 1 to 20 of 0-9, A-Z and " $%*+-./:". */
export interface SlipRequest {
  readonly id: string;
  /** Printed on the name line; without it the child writes it. */
  readonly name?: string;
  /** Index into `boards` of the board this child works on; 0 unless given. */
  readonly board?: number;
}

/** A set as a rota names it. */
export interface RotaCell {
  readonly band: string;
  readonly number: number;
  readonly box: number;
}

/** Who has which set: the first cell of a row is the set of today, those that follow come after it. */
export interface RotaSheet {
  readonly title: string;
  readonly rows: readonly {
    readonly name: string;
    readonly isAway: boolean;
    readonly cells: readonly (RotaCell | null)[];
  }[];
}

/** Children who share a sheet: the title and names stand small in a corner. */
export interface SheetGroup {
  readonly title: string;
  readonly names: readonly string[];
}

export interface PrintOptions {
  readonly locale: LocaleId;
  /** Poster only: cut into 2 (true) or 4 sheets of the chosen paper, 10 mm overlap, trim marks. */
  readonly tiled?: boolean | 2 | 4;
  /** Slips to a page; 8 unless given, 6 in large print. */
  readonly perPage?: 6 | 8;
  /** One entry a slip; without it a page of slips with a name line each is made, and no QR code. */
  readonly slips?: readonly SlipRequest[];
  /** Sheets: one two-sided sheet a group; without it one unlabelled sheet. */
  readonly groups?: readonly SheetGroup[];
  /** How many of each sheet or practice page; 1 to 200. */
  readonly copies?: number;
  readonly className?: string;
  /** ISO date, 2026-11-25; printed in words. */
  readonly date?: string;
  /** Outlines instead of solid areas. */
  readonly lowInk?: boolean;
  /** Letters about a third larger where the page has room; a document may take more pages. */
  readonly largePrint?: boolean;
  /** Practice sheet only: what it practises, under the heading. */
  readonly about?: string;
  /** Practice sheet only: a last page with the answers; true unless given. */
  readonly withKey?: boolean;
  /** How long the class works on it, in minutes: 5 to 15; 10 unless given. */
  readonly minutes?: number;
}

export interface PrintRequest {
  readonly document: DocumentKind;
  /** Sheets: front then back. Key: one board, or two side by side. Poster: one poster each. May be empty for `practice` and `rota`. */
  readonly boards: readonly Board[];
  /** Practice sheet only: loose questions; the boards' questions are used without it. */
  readonly questions?: readonly Question[];
  /** What a `rota` shows; it needs no board. */
  readonly rota?: RotaSheet;
  readonly paper: PaperId;
  readonly options: PrintOptions;
}

export interface PrintError {
  readonly code: string;
  readonly message: string;
  readonly hint: string;
}

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: PrintError };

/** A finished PDF. `warnings` are plain sentences for the teacher: a name the typeface cannot print, a text that had to shrink. */
export interface PrintedBoard {
  readonly pdf: Uint8Array;
  readonly pages: number;
  readonly warnings: readonly string[];
}

/** The same pages as SVG, one string a page; figures are inlined, so that the page's own fonts apply. */
export interface PreviewedBoard {
  readonly pages: readonly string[];
  /** Whether the print has more pages than the preview shows (40). */
  readonly isCut: boolean;
  readonly warnings: readonly string[];
}

/** A refusal in the shape that callers hand on to people. */
export function refuse(
  code: string,
  message: string,
  hint: string,
): { readonly ok: false; readonly error: PrintError } {
  return { ok: false, error: { code, message, hint } };
}
