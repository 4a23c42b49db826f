// Changing marks: what one batch does to the cells of a sheet, and the events that record it.
import { and, asc, eq, inArray, max, or, sql } from 'drizzle-orm';
import { missing } from '../checks.js';
import { Refusal } from '../columns.js';
import { MARK_STATES, type MarkAction, type MarkChange, type MarkInput, type MarkState } from '../records.js';
import { markBatches, markEvents, marks, sheets } from '../schema.js';
import type { Transaction } from '../session.js';
import { type BatchEntry, historyOf } from './mark-history.js';

const ANSWER_LENGTH = 200;

/** What a cell holds: a mark with the answer, where it was typed in. */
export type Content = { readonly state: MarkState; readonly text: string };

export interface CellChange {
  readonly childId: string;
  readonly rung: number;
  readonly before: Content | null;
  readonly after: Content | null;
}

export interface Author {
  readonly token: string;
  readonly by: string;
  readonly at: string;
}

/** The cells of one sheet within a transaction. */
export interface SheetCells {
  readonly tx: Transaction;
  readonly school: string;
  readonly sheetId: string;
}

export const cellKey = (cell: { readonly childId: string; readonly rung: number }) =>
  `${cell.childId} ${cell.rung}`;

/** True when a cell would look the same. */
export function isSame(a: Content | null, b: Content | null): boolean {
  return a?.state === b?.state && (a?.text ?? '') === (b?.text ?? '');
}

/** The content kept in the two columns of an event. */
export function contentOf(state: MarkState | null, text: string): Content | null {
  return state === null ? null : { state, text };
}

/** What the mark becomes; an absent child and a blank answer have no text. Refuses what the sheet does not ask. */
export function contentFrom({ rung, state, text }: MarkInput, rungs: number): Content | null {
  if (!Number.isInteger(rung) || rung < 1 || rung > rungs) {
    throw new Refusal('input.invalid', `This sheet has no question ${String(rung)}.`, `Use 1 to ${rungs}.`);
  }
  if (state === null) return null;
  if (!MARK_STATES.includes(state)) {
    const shown = String(state).slice(0, 20);
    throw new Refusal('input.invalid', `“${shown}” is not a mark.`, `Use ${MARK_STATES.join(', ')}.`);
  }
  if (text.length > ANSWER_LENGTH) {
    throw new Refusal(
      'input.invalid',
      `An answer is longer than ${ANSWER_LENGTH} characters.`,
      'Shorten it.',
    );
  }
  return { state, text: state === 'right' || state === 'wrong' ? text.trim() : '' };
}

const isSheetBatch = ({ school, sheetId }: SheetCells) =>
  and(eq(markBatches.schoolId, school), eq(markBatches.sheetId, sheetId));
const isSheetMark = ({ school, sheetId }: SheetCells) =>
  and(eq(marks.schoolId, school), eq(marks.sheetId, sheetId));
const isSheetEvent = ({ school, sheetId }: SheetCells) =>
  and(eq(markEvents.schoolId, school), eq(markEvents.sheetId, sheetId));

/** Locks the sheet against other markers until the transaction ends; gives its number of questions. */
export async function lockSheet({ tx, school, sheetId }: SheetCells): Promise<number> {
  const [sheet] = await tx
    .select({ rungs: sheets.rungs })
    .from(sheets)
    .where(and(eq(sheets.schoolId, school), eq(sheets.id, sheetId)))
    .for('no key update');
  if (!sheet) throw missing('This sheet');
  return sheet.rungs;
}

/** What the cells of these children hold now, by cellKey. */
export async function currentCells(
  cells: SheetCells,
  childIds: readonly string[],
): Promise<Map<string, Content>> {
  if (childIds.length === 0) return new Map();
  const rows = await cells.tx
    .select({ childId: marks.childId, rung: marks.rung, state: marks.state, text: marks.text })
    .from(marks)
    .where(and(isSheetMark(cells), inArray(marks.childId, [...childIds])));
  return new Map(rows.map((row) => [cellKey(row), { state: row.state, text: row.text }]));
}

/** The batches of one place of work on the sheet, oldest first. */
export function entriesOf(cells: SheetCells, token: string): Promise<BatchEntry[]> {
  return cells.tx
    .select({ batch: markBatches.batch, action: markBatches.action, target: markBatches.target })
    .from(markBatches)
    .where(and(isSheetBatch(cells), eq(markBatches.token, token)))
    .orderBy(asc(markBatches.batch));
}

/** What a recorded batch did, cell by cell. */
export async function changesOf(cells: SheetCells, batch: number): Promise<CellChange[]> {
  const events = await cells.tx
    .select()
    .from(markEvents)
    .where(and(isSheetEvent(cells), eq(markEvents.batch, batch)));
  return events.map((event) => ({
    childId: event.childId,
    rung: event.rung,
    before: contentOf(event.beforeState, event.beforeText),
    after: contentOf(event.afterState, event.afterText),
  }));
}

/** The number of the sheet's last event, 0 before the first. */
export async function lastSequence(cells: SheetCells): Promise<number> {
  const [last] = await cells.tx
    .select({ value: max(markEvents.sequence) })
    .from(markEvents)
    .where(isSheetEvent(cells));
  return last?.value ?? 0;
}

async function writeCells(
  cells: SheetCells,
  { by, at }: Author,
  changes: readonly (CellChange & { readonly sequence: number })[],
): Promise<void> {
  const { tx, school, sheetId } = cells;
  const gone = changes.filter((change) => change.after === null);
  if (gone.length > 0) {
    const each = gone.map(({ childId, rung }) => and(eq(marks.childId, childId), eq(marks.rung, rung)));
    await tx.delete(marks).where(and(isSheetMark(cells), or(...each)));
  }
  const kept = changes.flatMap(({ childId, rung, after, sequence }) =>
    after === null ? [] : [{ schoolId: school, sheetId, childId, rung, ...after, by, at, sequence }],
  );
  if (kept.length === 0) return;
  await tx
    .insert(marks)
    .values(kept)
    .onConflictDoUpdate({
      target: [marks.schoolId, marks.sheetId, marks.childId, marks.rung],
      set: {
        state: sql`excluded.state`,
        text: sql`excluded.text`,
        by: sql`excluded.by`,
        at: sql`excluded.at`,
        sequence: sql`excluded.sequence`,
      },
    });
}

/** Writes one batch (its entry, an event for each changed cell, and the cells) and gives its number and the last event's. */
export async function writeBatch(
  cells: SheetCells,
  author: Author,
  entry: { readonly action: MarkAction; readonly target: number | null },
  changes: readonly CellChange[],
): Promise<{ batch: number; sequence: number }> {
  const { tx, school, sheetId } = cells;
  const [last] = await tx
    .select({ value: max(markBatches.batch) })
    .from(markBatches)
    .where(isSheetBatch(cells));
  const batch = (last?.value ?? 0) + 1;
  const before = await lastSequence(cells);
  const { token, by, at } = author;
  await tx.insert(markBatches).values({ schoolId: school, sheetId, batch, ...entry, token, by, at });
  if (changes.length === 0) return { batch, sequence: before };
  const numbered = changes.map((change, i) => ({ ...change, sequence: before + 1 + i }));
  await tx.insert(markEvents).values(
    numbered.map(({ childId, rung, before: was, after, sequence }) => ({
      schoolId: school,
      sheetId,
      sequence,
      batch,
      childId,
      rung,
      beforeState: was?.state ?? null,
      beforeText: was?.text ?? '',
      afterState: after?.state ?? null,
      afterText: after?.text ?? '',
    })),
  );
  await writeCells(cells, author, numbered);
  return { batch, sequence: before + changes.length };
}

/** What the caller is told. */
export function outcomeOf(
  changes: readonly CellChange[],
  skipped: number,
  sequence: number,
  entries: readonly BatchEntry[],
): MarkChange {
  const { undoable, redoable } = historyOf(entries);
  return {
    changed: changes.map(({ childId, rung, after }) => ({
      childId,
      rung,
      state: after?.state ?? null,
      text: after?.text ?? '',
    })),
    skipped,
    sequence,
    canUndo: undoable !== null,
    canRedo: redoable !== null,
  };
}
