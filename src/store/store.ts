// The store's one interface. Server and command line receive a Store and import only this and records.ts: no Node, no database.
import type { Band } from '#engine/curriculum/bands.js';
import type { SetKind, SetStep } from '#engine/planning/set-shelf.js';
import type {
  CardSet,
  Child,
  ChildInput,
  ClassInput,
  DayRecord,
  Erased,
  IsoDate,
  IsoInstant,
  LadderRecord,
  Loan,
  Mark,
  MarkBatch,
  MarkChange,
  MarkEvent,
  Placement,
  SchoolClass,
  SetContent,
  Settings,
  Sheet,
  SheetInput,
  SheetKind,
  Slip,
  TimedMove,
  TimedOutcome,
  TimedSheet,
  TimedSheetInput,
  Turn,
  Versioned,
} from './records.js';
import type { Result } from './result.js';
import type { Snapshot } from './snapshot.js';

export interface SettingsStore {
  /** The settings; the defaults with version 0 before the first write. */
  read(): Promise<Result<Versioned<Settings>>>;
  /** Replaces them; `conflict` when `version` is no longer the stored one. */
  write(value: Settings, version: number): Promise<Result<Versioned<Settings>>>;
}

export interface ClassStore {
  /** All classes by name. */
  list(): Promise<Result<readonly SchoolClass[]>>;
  get(id: string): Promise<Result<SchoolClass>>;
  create(input: ClassInput): Promise<Result<SchoolClass>>;
  update(id: string, input: ClassInput): Promise<Result<SchoolClass>>;
  /** Really deletes the class, its children, sheets, slips, marks and days. */
  erase(id: string): Promise<Result<Erased>>;
}

export interface ChildStore {
  /** The children of a class in list order; those who left only when asked for. */
  list(classId: string, options?: { readonly withLeft?: boolean }): Promise<Result<readonly Child[]>>;
  get(id: string): Promise<Result<Child>>;
  /** Adds all or none, at the end of the list, in the given order. */
  add(classId: string, inputs: readonly ChildInput[]): Promise<Result<readonly Child[]>>;
  update(id: string, patch: Partial<ChildInput>): Promise<Result<Child>>;
  /** Puts the class list in the order of `ids`, which must name every child of the class who has not left. */
  reorder(classId: string, ids: readonly string[]): Promise<Result<readonly Child[]>>;
  /** The child leaves after `last` and keeps the record; null takes the leaving back. */
  leave(id: string, last: IsoDate | null): Promise<Result<Child>>;
  /** Really deletes the child and everything kept about the child, and says how much that was. */
  erase(id: string): Promise<Result<Erased>>;
}

export interface SheetStore {
  /** Saves a composed activity. Saving the same content for the same class and date again returns the sheet already there. */
  save(input: SheetInput): Promise<Result<Sheet>>;
  get(id: string): Promise<Result<Sheet>>;
  /** The sheets of a class on a date that nothing has superseded, oldest first (front and back, one for each year, say). */
  current(classId: string, date: IsoDate): Promise<Result<readonly Sheet[]>>;
  /** Newest first by date, then by creation; at most `limit` (default 100, at most 1000). */
  list(query: {
    readonly classId: string;
    readonly kind?: SheetKind;
    readonly from?: IsoDate;
    readonly to?: IsoDate;
    readonly withSuperseded?: boolean;
    readonly limit?: number;
  }): Promise<Result<readonly Sheet[]>>;
}

export interface SlipStore {
  /** One slip for each entry, in order; a child who has a slip of this sheet gets that one again, null always makes a spare. */
  issue(sheetId: string, childIds: readonly (string | null)[]): Promise<Result<readonly Slip[]>>;
  list(sheetId: string): Promise<Result<readonly Slip[]>>;
  /** Finds a slip by what was scanned or typed: case, spaces and hyphens do not matter; a mistyped character is recognised. */
  find(typed: string): Promise<Result<Slip>>;
  /** Gives a spare slip to a child, who must have none of that sheet. */
  assign(id: string, childId: string): Promise<Result<Slip>>;
}

export interface MarkStore {
  /**
   * Records a batch, all or nothing. It is committed and synced to the disk when this returns success.
   * Repeating a batch changes nothing and adds no event, so a request may be sent again after a broken connection.
   */
  record(batch: MarkBatch): Promise<Result<MarkChange>>;
  /** Takes back the last batch of `token` on the sheet that has not been taken back. */
  undo(change: { sheetId: string; token: string; by: string; at: string }): Promise<Result<MarkChange>>;
  /** Brings back the last batch of `token` that was taken back, unless something was recorded since. */
  redo(change: { sheetId: string; token: string; by: string; at: string }): Promise<Result<MarkChange>>;
  ofSheet(sheetId: string): Promise<Result<readonly Mark[]>>;
  ofChild(childId: string): Promise<Result<readonly Mark[]>>;
  /** All marks on the sheets of a class, in the order of the sheets' dates, then of recording. */
  ofClass(
    classId: string,
    span?: { readonly from?: IsoDate; readonly to?: IsoDate },
  ): Promise<Result<readonly Mark[]>>;
  /** The sheet's history, oldest first, after sequence number `after` (default 0). */
  events(sheetId: string, after?: number): Promise<Result<readonly MarkEvent[]>>;
}

export interface PlacementStore {
  /** The placements of the children of a class who have one. */
  list(classId: string): Promise<Result<readonly Placement[]>>;
  put(placement: Placement): Promise<Result<Placement>>;
}

export interface DayStore {
  /** The recorded days of a class, oldest first. */
  list(
    classId: string,
    span?: { readonly from?: IsoDate; readonly to?: IsoDate },
  ): Promise<Result<readonly DayRecord[]>>;
  put(day: DayRecord): Promise<Result<DayRecord>>;
}

export interface SetStore {
  /**
   * Saves composed activities of one kind under the next numbers of the class and band, in order, all or none. One that
   * the class has already, to the byte and in the same band, is not saved twice: its set comes back instead.
   */
  save(input: {
    readonly classId: string;
    readonly band: Band;
    readonly contents: readonly SetContent[];
  }): Promise<Result<readonly CardSet[]>>;
  get(id: string): Promise<Result<CardSet>>;
  /** The sets of a class by kind, band and number. */
  list(classId: string, kind?: SetKind): Promise<Result<readonly CardSet[]>>;
  /** Ticks a step of several sets of one class, or takes the ticks off. */
  mark(change: {
    readonly classId: string;
    readonly setIds: readonly string[];
    readonly step: SetStep;
    readonly done: boolean;
    readonly date: IsoDate;
  }): Promise<Result<readonly CardSet[]>>;
  note(id: string, note: string): Promise<Result<CardSet>>;
  /** Deletes a set that was never printed nor lent; `conflict` otherwise, because its number is on paper. */
  erase(id: string): Promise<Result<null>>;
}

export interface LoanStore {
  /** The loans of a class's sets of one kind, in the order in which they began. */
  list(classId: string, kind: SetKind): Promise<Result<readonly Loan[]>>;
  /**
   * Records a turn, all or nothing: closes the loans of `close`, then opens those of `open`. `conflict` when a child has
   * no set to close or one already, or when someone else has or had a set on that day or later.
   */
  record(turn: Turn): Promise<Result<readonly Loan[]>>;
  /** Whether {@link LoanStore.undo} would find a turn. */
  canUndo(classId: string, kind: SetKind, date: IsoDate): Promise<Result<boolean>>;
  /** Takes back the last turn of class and kind, which must be of `date`; `nothing.to-undo` otherwise. */
  undo(classId: string, kind: SetKind, date: IsoDate): Promise<Result<readonly Loan[]>>;
}

export interface BandStore {
  /** The bands that were chosen for children of the class. */
  list(classId: string): Promise<Result<readonly { readonly childId: string; readonly band: Band }[]>>;
  /** Chooses a band for the child; null lets it follow from the year again. */
  put(childId: string, band: Band | null): Promise<Result<null>>;
}

export interface TimedStore {
  /** The class's own ladder; null while it uses the one that comes with the product. */
  ladder(classId: string): Promise<Result<LadderRecord | null>>;
  putLadder(classId: string, ladder: LadderRecord | null): Promise<Result<null>>;
  /**
   * A sheet for each child on a day, in order, all or none. A child who has a marked sheet that day keeps it; an unmarked
   * one gives way to the new one, so that a change of level before the warm-up reaches the paper.
   */
  issue(input: {
    readonly classId: string;
    readonly date: IsoDate;
    readonly sheets: readonly TimedSheetInput[];
  }): Promise<Result<readonly TimedSheet[]>>;
  /** The sheets of a class, oldest first. */
  list(
    classId: string,
    span?: { readonly from?: IsoDate; readonly to?: IsoDate },
  ): Promise<Result<readonly TimedSheet[]>>;
  /** Finds a sheet by the code that was scanned or typed. */
  find(typed: string): Promise<Result<TimedSheet>>;
  /** Records results, all or nothing; committed and synced to the disk when this returns success. */
  record(
    entries: readonly { readonly sheetId: string; readonly outcome: TimedOutcome }[],
    at: IsoInstant,
  ): Promise<Result<readonly TimedSheet[]>>;
  /** Takes back the last result of the sheet; the one before counts again. */
  undo(sheetId: string): Promise<Result<TimedSheet>>;
  /** The moves of a class's children, oldest first. */
  moves(classId: string): Promise<Result<readonly TimedMove[]>>;
  move(move: TimedMove): Promise<Result<null>>;
  /** Takes back the child's last move. */
  undoMove(childId: string): Promise<Result<null>>;
}

/** Writing commits answered with success, and the syncs to the disk that the file layer has done, since the store was opened. */
export interface SyncCounts {
  readonly commits: number;
  /** Null on a database server, which does its own syncing. */
  readonly syncs: number | null;
}

/** Everything one school keeps. Every method answers with a Result; none throws for what can be expected. */
export interface Store {
  readonly kind: 'embedded' | 'server';
  /** Where the data are, fit to be shown: the folder, or host and database without user and password. */
  readonly place: string;
  readonly school: string;
  readonly settings: SettingsStore;
  readonly classes: ClassStore;
  readonly children: ChildStore;
  readonly sheets: SheetStore;
  readonly slips: SlipStore;
  readonly marks: MarkStore;
  readonly placements: PlacementStore;
  readonly days: DayStore;
  readonly sets: SetStore;
  readonly loans: LoanStore;
  readonly bands: BandStore;
  readonly timed: TimedStore;
  /** Every row of the school at one moment, for a backup. */
  takeSnapshot(): Promise<Result<Snapshot>>;
  /** Puts a snapshot in, in one transaction; with data already there only when `replace`, and then in their place. */
  loadSnapshot(snapshot: Snapshot, options: { readonly replace: boolean }): Promise<Result<null>>;
  syncCounts(): Promise<SyncCounts>;
  /** Finishes what is under way and lets the data folder go. Harmless when called twice. */
  close(): Promise<void>;
}
