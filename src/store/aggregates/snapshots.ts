// All rows of a school out and in again: plain SELECTs, so that a backup moves between databases and their versions.
import { getTableColumns, getTableName, sql } from 'drizzle-orm';
import type { PgTable } from 'drizzle-orm/pg-core';
import { rowsOf } from '../migrate.js';
import type { JsonObject } from '../records.js';
import { type Result, refuse, succeed } from '../result.js';
import * as schema from '../schema.js';
import type { Session, Transaction } from '../session.js';
import { SNAPSHOT_TABLES, type Snapshot, type SnapshotTable } from '../snapshot.js';

/** Bounds what one statement carries. */
const ROWS_A_STATEMENT = 500;

const TABLES: { readonly [T in SnapshotTable]: PgTable } = {
  settings: schema.settings,
  classes: schema.classes,
  children: schema.children,
  sheets: schema.sheets,
  slips: schema.slips,
  marks: schema.marks,
  mark_batches: schema.markBatches,
  mark_events: schema.markEvents,
  placements: schema.placements,
  days: schema.days,
  absences: schema.absences,
  sets: schema.sets,
  set_steps: schema.setSteps,
  loans: schema.loans,
  child_bands: schema.childBands,
  timed_ladders: schema.timedLadders,
  timed_forms: schema.timedForms,
  timed_sheets: schema.timedSheets,
  timed_results: schema.timedResults,
  timed_moves: schema.timedMoves,
};

async function isEmpty(tx: Transaction, school: string): Promise<boolean> {
  const [row] = rowsOf<{ filled: boolean }>(
    await tx.execute(sql`select exists (select 1 from settings where school_id = ${school})
      or exists (select 1 from classes where school_id = ${school}) as filled`),
  );
  return row?.filled === false;
}

async function insertRows(
  tx: Transaction,
  school: string,
  table: PgTable,
  rows: readonly JsonObject[],
): Promise<void> {
  const present = new Set(Object.keys(rows[0] ?? {}));
  const columns = Object.values(getTableColumns(table))
    .map((column) => column.name)
    // A column that the backup does not know takes its default.
    .filter((column) => column !== 'school_id' && present.has(column))
    .map((column) => sql.identifier(column));
  const name = sql.identifier(getTableName(table));
  const names = sql.join(columns, sql`, `);
  for (let at = 0; at < rows.length; at += ROWS_A_STATEMENT) {
    const part = JSON.stringify(rows.slice(at, at + ROWS_A_STATEMENT));
    await tx.execute(sql`insert into ${name} (school_id, ${names})
      select ${school}, ${names} from jsonb_populate_recordset(null::${name}, ${part}::jsonb)`);
  }
}

/** True for PostgreSQL's refusals of the data themselves (classes 22 and 23), which here mean a backup that contradicts itself. */
function isDataError(thrown: unknown): boolean {
  for (let at = thrown; typeof at === 'object' && at !== null; at = (at as { cause?: unknown }).cause) {
    if (/^2[23]/.test(String((at as { code?: unknown }).code ?? ''))) return true;
  }
  return false;
}

/** Every row of the session's school at one moment. */
export function takeSnapshot(session: Session): Promise<Result<Snapshot>> {
  return session.read(async (tx) => {
    const snapshot: Partial<Record<SnapshotTable, readonly JsonObject[]>> = {};
    for (const name of SNAPSHOT_TABLES) {
      const rows =
        await tx.execute(sql`select to_jsonb(t) - 'school_id' as content from ${sql.identifier(name)} t
        where school_id = ${session.school} order by to_jsonb(t)::text collate "C"`);
      snapshot[name] = rowsOf<{ content: JsonObject }>(rows).map((row) => row.content);
    }
    return succeed(snapshot as Snapshot);
  });
}

/** Puts a checked snapshot in, all or nothing. */
export async function loadSnapshot(
  session: Session,
  snapshot: Snapshot,
  options: { readonly replace: boolean },
): Promise<Result<null>> {
  try {
    return await session.write(async (tx) => {
      if (options.replace) {
        for (const name of [...SNAPSHOT_TABLES].reverse()) {
          await tx.execute(sql`delete from ${sql.identifier(name)} where school_id = ${session.school}`);
        }
      } else if (!(await isEmpty(tx, session.school))) {
        return refuse(
          'backup.would-overwrite',
          'There are data here already, which the backup would replace.',
          'Make a backup of them first, then restore with “replace” (--replace).',
        );
      }
      for (const name of SNAPSHOT_TABLES) await insertRows(tx, session.school, TABLES[name], snapshot[name]);
      return succeed(null);
    });
  } catch (thrown) {
    if (!isDataError(thrown)) throw thrown;
    return refuse(
      'backup.corrupt',
      'The backup contradicts itself (a row refers to one that is not in it), so nothing was changed.',
      'Use an earlier backup.',
    );
  }
}
