// Erasing children: every row about them goes, and the counts come back so that it can be shown and written down.
import { and, eq, inArray } from 'drizzle-orm';
import type { PgColumn, PgTable } from 'drizzle-orm/pg-core';
import type { Erased } from '../records.js';
import {
  absences,
  childBands,
  children,
  loans,
  markEvents,
  marks,
  placements,
  slips,
  timedMoves,
  timedResults,
  timedSheets,
} from '../schema.js';
import type { Transaction } from '../session.js';

/** Deletes the children and everything kept about them. */
export async function eraseChildren(
  tx: Transaction,
  school: string,
  ids: readonly string[],
): Promise<Erased> {
  // The school leads every key; asking for it keeps the query on one school's part of a divided table.
  const rows = async (table: PgTable & { schoolId: PgColumn }, key: PgColumn) =>
    ids.length === 0
      ? 0
      : (
          await tx
            .delete(table)
            .where(and(eq(table.schoolId, school), inArray(key, [...ids])))
            .returning({ key })
        ).length;
  return {
    markEvents: await rows(markEvents, markEvents.childId),
    marks: await rows(marks, marks.childId),
    slips: await rows(slips, slips.childId),
    placements: await rows(placements, placements.childId),
    absences: await rows(absences, absences.childId),
    loans: await rows(loans, loans.childId),
    bands: await rows(childBands, childBands.childId),
    timedResults: await rows(timedResults, timedResults.childId),
    timedSheets: await rows(timedSheets, timedSheets.childId),
    timedMoves: await rows(timedMoves, timedMoves.childId),
    children: await rows(children, children.id),
  };
}
