// The bands that a teacher chose for single children; all others follow from the school year.
import { and, eq } from 'drizzle-orm';
import { BANDS } from '#engine/curriculum/bands.js';
import { Refusal } from '../columns.js';
import { succeed } from '../result.js';
import { childBands, children } from '../schema.js';
import type { Session } from '../session.js';
import type { BandStore } from '../store.js';
import { requireChild } from './children.js';
import { requireClass } from './classes.js';

/** The chosen bands of the session's school. */
export function bandStore(session: Session): BandStore {
  const { school } = session;
  return {
    list: (classId) =>
      session.read(async (tx) => {
        await requireClass(tx, school, classId);
        const rows = await tx
          .select({ childId: childBands.childId, band: childBands.band })
          .from(childBands)
          .innerJoin(
            children,
            and(eq(children.schoolId, childBands.schoolId), eq(children.id, childBands.childId)),
          )
          .where(and(eq(childBands.schoolId, school), eq(children.classId, classId)))
          .orderBy(children.position, children.id);
        return succeed(rows);
      }),
    put: (childId, band) =>
      session.write(async (tx) => {
        if (band !== null && !BANDS.includes(band))
          throw new Refusal('input.invalid', 'There is no such band.', 'Choose lower, middle or upper.');
        await requireChild(tx, school, childId);
        const own = and(eq(childBands.schoolId, school), eq(childBands.childId, childId));
        if (band === null) await tx.delete(childBands).where(own);
        else
          await tx
            .insert(childBands)
            .values({ schoolId: school, childId, band })
            .onConflictDoUpdate({ target: [childBands.schoolId, childBands.childId], set: { band } });
        return succeed(null);
      }),
  };
}
