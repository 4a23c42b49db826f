// What a caller asks the print room for when timed practice is printed. Plain data: it crosses a thread boundary as it is.
import type { Timed } from '#engine/activities/timed/timed.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { Question } from '#engine/questions/question.js';
import type { PaperId } from './request.js';

/** pupil: the sheets, front and back. key: answers, a form a page. cover: the folded record of one child. spares: what to copy for tomorrow. */
export const TIMED_DOCUMENTS = ['pupil', 'key', 'cover', 'spares', 'kit'] as const;
export type TimedDocument = (typeof TIMED_DOCUMENTS)[number];

/** One child's sheet, or a spare one. */
export interface TimedSheetRequest {
  /** Index into `levels`, and into that level's forms. */
  readonly level: number;
  readonly form: number;
  /** Printed on the name line; without it the child writes it. */
  readonly name?: string;
  /** Opaque, for the QR code: 1 to 20 of 0-9, A-Z and " $%*+-./:". */
  readonly id?: string;
  /** Facts that were wrong last time; they stand first, outside the count. At most eight are printed. */
  readonly redo?: readonly Question[];
}

export interface TimedPrintRequest {
  readonly document: TimedDocument;
  readonly levels: readonly Timed[];
  /** Without them one unnamed sheet of every form is printed. */
  readonly sheets?: readonly TimedSheetRequest[];
  readonly paper: PaperId;
  readonly options: {
    readonly locale: LocaleId;
    readonly className?: string;
    /** ISO date. */
    readonly date?: string;
    /** Of each sheet and cover, 1 to 200. */
    readonly copies?: number;
    /** Letters about a third larger. */
    readonly largePrint?: boolean;
    /** Covers with these names; blank ones without. */
    readonly names?: readonly string[];
  };
}
