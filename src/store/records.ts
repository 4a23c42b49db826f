// The records the store keeps, as everyone above it sees them. Types and closed lists only: no Node, no database.
import type { Board } from '#engine/activities/board/board.js';
import type { Room } from '#engine/activities/timed/ladder.js';
import type { Timed } from '#engine/activities/timed/timed.js';
import type { Band } from '#engine/curriculum/bands.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import type { SetKind, SetStep } from '#engine/planning/set-shelf.js';
import type { Question } from '#engine/questions/question.js';

/** A calendar day, "2026-11-25"; no time zone, no time. */
export type IsoDate = string;
/** A moment in UTC, "2026-11-25T09:30:00.000Z". */
export type IsoInstant = string;

export type JsonValue = null | boolean | number | string | readonly JsonValue[] | JsonObject;
export interface JsonObject {
  readonly [key: string]: JsonValue;
}

export const HOME_PAPERS = ['A4', 'A3', 'Letter'] as const;
export type HomePaper = (typeof HOME_PAPERS)[number];

/** A run of days, both ends included: a school term, or days on which the school is closed. */
export interface DaySpan {
  readonly name: string;
  readonly first: IsoDate;
  readonly last: IsoDate;
}

/** What a teacher sets once for the school. `activities` is free for each activity's own settings, keyed by activity. */
export interface Settings {
  readonly schoolName: string;
  readonly locale: LocaleId;
  readonly paper: HomePaper;
  readonly terms: readonly DaySpan[];
  readonly closedDays: readonly DaySpan[];
  readonly activities: JsonObject;
  /** True while the invented demo class is loaded. */
  readonly demo: boolean;
}

export const DEFAULT_SETTINGS: Settings = {
  schoolName: '',
  locale: 'en-AU',
  paper: 'A4',
  terms: [],
  closedDays: [],
  activities: {},
  demo: false,
};

/** A document with the version that a later write must name, so that two editors cannot overwrite each other unseen. */
export interface Versioned<T> {
  readonly version: number;
  readonly value: T;
}

export interface ClassInput {
  readonly name: string;
  /** School years taught in the class, 0 (Foundation) to 6, ascending. */
  readonly years: readonly number[];
}
export interface SchoolClass extends ClassInput {
  readonly id: string;
}

export interface ChildInput {
  readonly givenName: string;
  readonly familyName: string;
  /** Printed in place of the name when not empty. */
  readonly alias: string;
  /** School year, 0 (Foundation) to 6. */
  readonly year: number;
  readonly joined: IsoDate | null;
}
export interface Child extends ChildInput {
  readonly id: string;
  readonly classId: string;
  /** Place in the class list, from 0. */
  readonly position: number;
  /** The last day in the class; null while the child is in it. */
  readonly left: IsoDate | null;
}

/** How many rows of each kind an erasure deleted. */
export interface Erased {
  readonly children: number;
  readonly marks: number;
  readonly markEvents: number;
  readonly slips: number;
  readonly placements: number;
  readonly absences: number;
  readonly loans: number;
  readonly bands: number;
  readonly timedSheets: number;
  readonly timedResults: number;
  readonly timedMoves: number;
}

export const SHEET_KINDS = ['board'] as const;
export type SheetKind = (typeof SHEET_KINDS)[number];
/** What a sheet holds; a union as more activities come. */
export type SheetContent = Board;

export interface SheetInput {
  readonly classId: string;
  readonly date: IsoDate | null;
  readonly content: SheetContent;
  /** The sheet that this one takes the place of; it stays readable, with its marks. */
  readonly supersedes?: string;
}
/** A composed activity, saved once and never changed; slips, prints and marks refer to it. */
export interface Sheet {
  readonly id: string;
  readonly classId: string;
  readonly date: IsoDate | null;
  readonly kind: SheetKind;
  readonly seed: number;
  /** The day's number as printed. */
  readonly number: string;
  readonly side: 'front' | 'back';
  readonly content: SheetContent;
  /** SHA-256 of the content's JSON text, lower-case hexadecimal. */
  readonly contentHash: string;
  readonly createdAt: IsoInstant;
  /** The sheet that took this one's place; null while it is the current one. */
  readonly supersededBy: string | null;
}

/** A piece of paper of one child (or a spare one, `childId` null); its id is what the QR code holds. */
export interface Slip {
  readonly id: string;
  readonly sheetId: string;
  readonly childId: string | null;
}

/** `absent`: the child was away; `blank`: present, nothing written. */
export const MARK_STATES = ['right', 'wrong', 'blank', 'absent'] as const;
export type MarkState = (typeof MARK_STATES)[number];

export interface MarkInput {
  readonly childId: string;
  /** 1 is the easiest. */
  readonly rung: number;
  /** null takes the mark away. */
  readonly state: MarkState | null;
  /** What the child wrote, where it was typed in; "" when not. */
  readonly text: string;
}
export interface MarkBatch {
  readonly sheetId: string;
  /** Names the place of work (one open marking page, one command run); undo and redo follow it. */
  readonly token: string;
  /** Who marks: a role or account id, never a child. */
  readonly by: string;
  readonly at: IsoInstant;
  readonly marks: readonly MarkInput[];
}
export interface Mark {
  readonly sheetId: string;
  readonly childId: string;
  readonly rung: number;
  readonly state: MarkState;
  readonly text: string;
  readonly by: string;
  readonly at: IsoInstant;
  /** Sequence number, within its sheet, of the event that set it. */
  readonly sequence: number;
}

export const MARK_ACTIONS = ['record', 'undo', 'redo'] as const;
export type MarkAction = (typeof MARK_ACTIONS)[number];

/** One change of one mark. Events are only ever added; they are deleted with the child alone. */
export interface MarkEvent {
  readonly sheetId: string;
  /** Counts up within the sheet, from 1. */
  readonly sequence: number;
  /** Number of its batch within the sheet, from 1. */
  readonly batch: number;
  readonly action: MarkAction;
  readonly childId: string;
  readonly rung: number;
  readonly before: { readonly state: MarkState; readonly text: string } | null;
  readonly after: { readonly state: MarkState; readonly text: string } | null;
  readonly token: string;
  readonly by: string;
  readonly at: IsoInstant;
}

/** What a recorded batch, an undo or a redo came to; it is on the disk when this is returned. */
export interface MarkChange {
  /** The marks that changed, as they are now; `state` null where a mark was taken away. */
  readonly changed: readonly {
    readonly childId: string;
    readonly rung: number;
    readonly state: MarkState | null;
    readonly text: string;
  }[];
  /** Marks left alone by an undo or redo because someone has changed them since. */
  readonly skipped: number;
  /** Sequence number of the sheet's last event. */
  readonly sequence: number;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

export const PLACEMENT_SOURCES = ['teacher', 'check', 'year'] as const;
export type PlacementSource = (typeof PLACEMENT_SOURCES)[number];

/** Where a child starts, on the difficulty scale common to all years. */
export interface Placement {
  readonly childId: string;
  /** Logits; 0 is a typical child at the end of Foundation. */
  readonly level: number;
  /** Standard deviation of `level`, logits, above 0. */
  readonly spread: number;
  readonly source: PlacementSource;
  readonly at: IsoInstant;
  /** Anything the placement wants to keep: the answers of a placement check, say. */
  readonly detail: JsonObject;
}

/** What happened on one school day in one class. */
export interface DayRecord {
  readonly classId: string;
  readonly date: IsoDate;
  /** The day's number as printed; null when none was used. */
  readonly number: string | null;
  readonly activity: SheetKind | null;
  readonly note: string;
  /** Children who were away. */
  readonly absent: readonly string[];
}

/** What a set holds: a composed activity, kept to the byte. */
export interface SetContent {
  readonly kind: SetKind;
  readonly seed: number;
}

/** A composed activity that is printed and cut once and goes round the class; its content never changes. */
export interface CardSet {
  readonly id: string;
  readonly classId: string;
  readonly kind: SetKind;
  readonly band: Band;
  /** From 1 within class, kind and band; ten to a box. */
  readonly number: number;
  readonly seed: number;
  readonly content: SetContent;
  /** SHA-256 of the content's JSON text, lower-case hexadecimal. */
  readonly contentHash: string;
  readonly createdAt: IsoInstant;
  /** The teacher's own words about it. */
  readonly note: string;
  /** The steps that are done, in their usual order. */
  readonly steps: readonly SetStep[];
}

/** A child's turn with a set, from the day of handing out to the day of giving back, both included. */
export interface Loan {
  readonly id: string;
  readonly setId: string;
  readonly childId: string;
  readonly from: IsoDate;
  /** Null while the child has the set. */
  readonly to: IsoDate | null;
  /** False while the child has it, and for a set that was taken back unfinished. */
  readonly finished: boolean;
}

/** One tap on the rota: what is given back and what is handed out, all on `date`, all or nothing. */
export interface Turn {
  readonly classId: string;
  readonly kind: SetKind;
  readonly date: IsoDate;
  readonly close: readonly { readonly childId: string; readonly finished: boolean }[];
  readonly open: readonly { readonly childId: string; readonly setId: string }[];
}

/** A level of a teacher's own ladder: one that comes with the product, by its id, or skills under a title of her own. */
export type LadderStep =
  | { readonly kind: 'given'; readonly id: string }
  | (MadeStep & { readonly kind: 'own'; readonly skills: readonly string[] })
  /** Of the teacher's own questions, as her list had them when she made the level: best counts stay comparable. */
  | (MadeStep & { readonly kind: 'lines'; readonly lines: readonly string[] });

/** What a teacher says of a level that she makes. */
interface MadeStep {
  readonly id: string;
  readonly title: string;
  readonly year: number;
  readonly room: Room;
}

/** A class's ladder, easiest first, and what it asks of a child. */
export interface LadderRecord {
  readonly steps: readonly LadderStep[];
  /** Minutes of a timed sheet; null for the usual time of the level. */
  readonly minutes: number | null;
  /** Digits a minute that a level asks before the next; null for the usual rate of the child's year. */
  readonly digitsPerMinute: number | null;
  /** Questions on a sheet, 60 to 120. */
  readonly questions: number;
}

/** One form with its level, saved once and never changed; `forms` holds that form alone. */
export type TimedContent = Timed;

export interface TimedSheetInput {
  readonly childId: string;
  readonly content: TimedContent;
  /** Facts to be put right first. */
  readonly redo: readonly Question[];
}

/** What came of a timed sheet. Places count from 1, in the order of the sheet. */
export interface TimedOutcome {
  /** How far the child got. */
  readonly attempted: number;
  /** Places within `attempted` that were circled as wrong or left out. */
  readonly wrong: readonly number[];
  /** What was written there, where it was typed in; keys are places. */
  readonly written: { readonly [place: string]: string };
  /** Places of the redo row that are still wrong. */
  readonly redoWrong: readonly number[];
  /** Minutes worked; null when nobody watched the clock. */
  readonly minutes: number | null;
}

export interface TimedSheet {
  /** Opaque; what the square code holds. */
  readonly id: string;
  readonly childId: string;
  readonly date: IsoDate;
  readonly levelId: string;
  readonly content: TimedContent;
  readonly redo: readonly Question[];
  /** Null until it is marked. */
  readonly outcome: TimedOutcome | null;
  readonly canUndo: boolean;
}

export interface TimedMove {
  readonly childId: string;
  readonly date: IsoDate;
  readonly levelId: string;
  readonly evidence: string;
}
