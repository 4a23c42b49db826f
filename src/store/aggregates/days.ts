// The day log: which number a class had on which day, and who was away.
import { and, asc, eq, gte, inArray, lte } from 'drizzle-orm';
import { missing, requireAtMost } from '../checks.js';
import type { DayRecord } from '../records.js';
import { succeed } from '../result.js';
import { absences, children, days } from '../schema.js';
import type { Session } from '../session.js';
import type { DayStore } from '../store.js';
import { requireClass } from './classes.js';

function within(date: typeof days.date | typeof absences.date, span: { from?: string; to?: string }) {
  return and(
    span.from === undefined ? undefined : gte(date, span.from),
    span.to === undefined ? undefined : lte(date, span.to),
  );
}

/** The recorded days of the session's school. */
export function dayStore(session: Session): DayStore {
  const { school } = session;
  return {
    list: (classId, span = {}) =>
      session.read(async (tx) => {
        const rows = await tx
          .select()
          .from(days)
          .where(and(eq(days.schoolId, school), eq(days.classId, classId), within(days.date, span)))
          .orderBy(asc(days.date));
        const away = await tx
          .select({ date: absences.date, childId: absences.childId })
          .from(absences)
          .where(
            and(eq(absences.schoolId, school), eq(absences.classId, classId), within(absences.date, span)),
          )
          .orderBy(asc(absences.childId));
        const byDate = new Map<string, string[]>(rows.map((row) => [row.date, []]));
        for (const { date, childId } of away) byDate.get(date)?.push(childId);
        return succeed(
          rows.map(
            ({ schoolId: _school, ...row }): DayRecord => ({ ...row, absent: byDate.get(row.date) ?? [] }),
          ),
        );
      }),
    put: (record) =>
      session.write(async (tx) => {
        const { classId, date, number, activity, note } = record;
        const absent = [...new Set(record.absent)].sort();
        requireAtMost(absent, 500, 'The absent children');
        await requireClass(tx, school, classId);
        const known =
          absent.length === 0
            ? []
            : await tx
                .select({ id: children.id })
                .from(children)
                .where(and(eq(children.schoolId, school), inArray(children.id, absent)));
        if (known.length < absent.length) throw missing('A child of this day');
        const row = { number, activity, note };
        await tx
          .insert(days)
          .values({ schoolId: school, classId, date, ...row })
          .onConflictDoUpdate({ target: [days.schoolId, days.classId, days.date], set: row });
        await tx
          .delete(absences)
          .where(and(eq(absences.schoolId, school), eq(absences.classId, classId), eq(absences.date, date)));
        if (absent.length > 0) {
          await tx
            .insert(absences)
            .values(absent.map((childId) => ({ schoolId: school, classId, date, childId })));
        }
        return succeed({ classId, date, ...row, absent });
      }),
  };
}
