// Marks: what a child got on each rung of a sheet. Every change is also an event, for undo, redo and history.
import { and, asc, eq, gt, gte, inArray, lte, type SQL } from 'drizzle-orm';
import { missing, requireAtMost } from '../checks.js';
import type { Mark, MarkChange, MarkEvent } from '../records.js';
import { refuse, succeed } from '../result.js';
import { children, markBatches, markEvents, marks, sheets } from '../schema.js';
import type { Session } from '../session.js';
import type { MarkStore } from '../store.js';
import {
  type Author,
  type CellChange,
  cellKey,
  changesOf,
  contentFrom,
  contentOf,
  currentCells,
  entriesOf,
  isSame,
  lastSequence,
  lockSheet,
  outcomeOf,
  type SheetCells,
  writeBatch,
} from './mark-changes.js';
import { historyOf } from './mark-history.js';

/** A whole class on a long sheet is about 400. */
const BATCH_MOST = 2000;

const markColumns = {
  sheetId: marks.sheetId,
  childId: marks.childId,
  rung: marks.rung,
  state: marks.state,
  text: marks.text,
  by: marks.by,
  at: marks.at,
  sequence: marks.sequence,
};

function turnedBack(change: CellChange): CellChange {
  return { ...change, before: change.after, after: change.before };
}

/** The marks of the session's school. */
export function markStore(session: Session): MarkStore {
  const { school } = session;

  function step(action: 'undo' | 'redo', change: Author & { readonly sheetId: string }) {
    return session.write<MarkChange>(async (tx) => {
      const cells: SheetCells = { tx, school, sheetId: change.sheetId };
      await lockSheet(cells);
      const entries = await entriesOf(cells, change.token);
      const history = historyOf(entries);
      const target = action === 'undo' ? history.undoable : history.redoable;
      if (target === null) {
        return action === 'undo'
          ? refuse(
              'nothing.to-undo',
              'There is nothing to take back on this page.',
              'Change the mark itself.',
            )
          : refuse(
              'nothing.to-redo',
              'There is nothing to bring back on this page.',
              'Enter the mark again.',
            );
      }
      const recorded = await changesOf(cells, target);
      const wanted = action === 'undo' ? recorded.map(turnedBack) : recorded;
      const now = await currentCells(cells, [...new Set(wanted.map((cell) => cell.childId))]);
      const changes = wanted.filter((cell) => isSame(now.get(cellKey(cell)) ?? null, cell.before));
      const { batch, sequence } = await writeBatch(cells, change, { action, target }, changes);
      const after = [...entries, { batch, action, target }];
      return succeed(outcomeOf(changes, wanted.length - changes.length, sequence, after));
    });
  }

  const list = (where: SQL | undefined) =>
    session.read<readonly Mark[]>(async (tx) =>
      succeed(
        await tx
          .select(markColumns)
          .from(marks)
          .innerJoin(sheets, and(eq(sheets.schoolId, marks.schoolId), eq(sheets.id, marks.sheetId)))
          .where(and(eq(marks.schoolId, school), where))
          .orderBy(asc(sheets.date), asc(sheets.createdAt), asc(marks.sheetId), asc(marks.sequence)),
      ),
    );

  return {
    record: (batch) =>
      session.write(async (tx) => {
        requireAtMost(batch.marks, BATCH_MOST, 'The marks');
        const cells: SheetCells = { tx, school, sheetId: batch.sheetId };
        const rungs = await lockSheet(cells);
        const childIds = [...new Set(batch.marks.map((mark) => mark.childId))];
        if (childIds.length > 0) {
          const isNamed = and(eq(children.schoolId, school), inArray(children.id, childIds));
          const known = await tx.select({ id: children.id }).from(children).where(isNamed);
          if (known.length < childIds.length) throw missing('A child of these marks');
        }
        const now = await currentCells(cells, childIds);
        // A cell named twice takes its last value.
        const wanted = new Map(batch.marks.map((mark) => [cellKey(mark), mark]));
        const changes = [...wanted].flatMap(([cell, mark]): CellChange[] => {
          const before = now.get(cell) ?? null;
          const after = contentFrom(mark, rungs);
          return isSame(before, after) ? [] : [{ childId: mark.childId, rung: mark.rung, before, after }];
        });
        const entries = await entriesOf(cells, batch.token);
        if (changes.length === 0) return succeed(outcomeOf([], 0, await lastSequence(cells), entries));
        const entry = { action: 'record', target: null } as const;
        const { batch: number, sequence } = await writeBatch(cells, batch, entry, changes);
        return succeed(outcomeOf(changes, 0, sequence, [...entries, { batch: number, ...entry }]));
      }),
    undo: (change) => step('undo', change),
    redo: (change) => step('redo', change),
    ofSheet: (sheetId) => list(eq(marks.sheetId, sheetId)),
    ofChild: (childId) => list(eq(marks.childId, childId)),
    ofClass: (classId, span = {}) =>
      list(
        and(
          eq(sheets.classId, classId),
          span.from === undefined ? undefined : gte(sheets.date, span.from),
          span.to === undefined ? undefined : lte(sheets.date, span.to),
        ),
      ),
    events: (sheetId, after = 0) =>
      session.read(async (tx) => {
        const rows = await tx
          .select({ event: markEvents, batch: markBatches })
          .from(markEvents)
          .innerJoin(
            markBatches,
            and(
              eq(markBatches.schoolId, markEvents.schoolId),
              eq(markBatches.sheetId, markEvents.sheetId),
              eq(markBatches.batch, markEvents.batch),
            ),
          )
          .where(
            and(
              eq(markEvents.schoolId, school),
              eq(markEvents.sheetId, sheetId),
              gt(markEvents.sequence, after),
            ),
          )
          .orderBy(asc(markEvents.sequence));
        return succeed(
          rows.map(
            ({ event, batch }): MarkEvent => ({
              sheetId,
              sequence: event.sequence,
              batch: event.batch,
              action: batch.action,
              childId: event.childId,
              rung: event.rung,
              before: contentOf(event.beforeState, event.beforeText),
              after: contentOf(event.afterState, event.afterText),
              token: batch.token,
              by: batch.by,
              at: batch.at,
            }),
          ),
        );
      }),
  };
}
