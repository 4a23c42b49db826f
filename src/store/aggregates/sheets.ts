// Sheets: composed activities, saved once and never changed. A database trigger refuses any change but superseding.
import { and, asc, desc, eq, gte, isNull, lte, type SQL } from 'drizzle-orm';
import { missing } from '../checks.js';
import { Refusal } from '../columns.js';
import { sha256 } from '../content-hash.js';
import { SHEET_KINDS, type Sheet, type SheetContent } from '../records.js';
import { refuse, succeed } from '../result.js';
import { sheets } from '../schema.js';
import type { Session, Transaction } from '../session.js';
import type { SheetStore } from '../store.js';
import { requireClass } from './classes.js';

type SheetRow = typeof sheets.$inferSelect;

const LIST_LIMIT = 100;
const LIST_LIMIT_MOST = 1000;

function toSheet({ schoolId: _school, rungs: _rungs, content, ...row }: SheetRow): Sheet {
  return { ...row, content: JSON.parse(content) as SheetContent };
}

async function requireSheet(tx: Transaction, school: string, id: string): Promise<SheetRow> {
  const [row] = await tx
    .select()
    .from(sheets)
    .where(and(eq(sheets.schoolId, school), eq(sheets.id, id)));
  if (!row) throw missing('This sheet');
  return row;
}

/** The sheets of the session's school; `now` tells the time of saving. */
export function sheetStore(session: Session, now: () => Date): SheetStore {
  const { school } = session;
  return {
    async save({ classId, date, content, supersedes }) {
      const text = JSON.stringify(content);
      const contentHash = await sha256(text);
      return session.write(async (tx) => {
        if (!SHEET_KINDS.includes(content.kind) || content.rungs.length === 0) {
          throw new Refusal('input.invalid', 'The sheet asks nothing.', 'Compose it again.');
        }
        await requireClass(tx, school, classId);
        const sameDate = date === null ? isNull(sheets.date) : eq(sheets.date, date);
        const [same] = await tx
          .select()
          .from(sheets)
          .where(
            and(
              eq(sheets.schoolId, school),
              eq(sheets.classId, classId),
              sameDate,
              eq(sheets.contentHash, contentHash),
              isNull(sheets.supersededBy),
            ),
          );
        if (same && same.id !== supersedes) {
          if (supersedes !== undefined) await supersede(tx, supersedes, same.id, classId);
          return succeed(toSheet(same));
        }
        if (same) return succeed(toSheet(same));
        const row: SheetRow = {
          schoolId: school,
          id: crypto.randomUUID(),
          classId,
          date,
          kind: content.kind,
          seed: content.seed,
          number: content.number,
          side: content.side,
          rungs: content.rungs.length,
          content: text,
          contentHash,
          createdAt: now().toISOString(),
          supersededBy: null,
        };
        await tx.insert(sheets).values(row);
        if (supersedes !== undefined) await supersede(tx, supersedes, row.id, classId);
        return succeed(toSheet(row));
      });
    },
    get: (id) => session.read(async (tx) => succeed(toSheet(await requireSheet(tx, school, id)))),
    current: (classId, date) =>
      session.read(async (tx) => {
        const rows = await tx
          .select()
          .from(sheets)
          .where(
            and(
              eq(sheets.schoolId, school),
              eq(sheets.classId, classId),
              eq(sheets.date, date),
              isNull(sheets.supersededBy),
            ),
          )
          .orderBy(asc(sheets.createdAt), asc(sheets.id));
        return succeed(rows.map(toSheet));
      }),
    list: (query) =>
      session.read(async (tx) => {
        const limit = query.limit ?? LIST_LIMIT;
        if (!Number.isInteger(limit) || limit < 1 || limit > LIST_LIMIT_MOST) {
          return refuse(
            'input.invalid',
            `At most ${LIST_LIMIT_MOST} sheets can be listed at once.`,
            'Ask for fewer.',
          );
        }
        const wanted: (SQL | undefined)[] = [eq(sheets.schoolId, school), eq(sheets.classId, query.classId)];
        if (query.kind !== undefined) wanted.push(eq(sheets.kind, query.kind));
        if (query.from !== undefined) wanted.push(gte(sheets.date, query.from));
        if (query.to !== undefined) wanted.push(lte(sheets.date, query.to));
        if (!query.withSuperseded) wanted.push(isNull(sheets.supersededBy));
        const rows = await tx
          .select()
          .from(sheets)
          .where(and(...wanted))
          .orderBy(desc(sheets.date), desc(sheets.createdAt), desc(sheets.id))
          .limit(limit);
        return succeed(rows.map(toSheet));
      }),
  };

  async function supersede(tx: Transaction, id: string, by: string, classId: string): Promise<void> {
    const old = await requireSheet(tx, school, id);
    if (old.classId !== classId) {
      throw new Refusal(
        'input.invalid',
        'The older sheet belongs to another class.',
        'Choose a sheet of this class.',
      );
    }
    const changed = await tx
      .update(sheets)
      .set({ supersededBy: by })
      .where(and(eq(sheets.schoolId, school), eq(sheets.id, id), isNull(sheets.supersededBy)))
      .returning({ id: sheets.id });
    if (changed.length === 0) {
      throw new Refusal(
        'conflict',
        'This sheet was replaced in another window meanwhile.',
        'Look at the day again.',
      );
    }
  }
}
