// Placements: where each child starts, from the teacher, a placement check or the school year.
import { and, eq } from 'drizzle-orm';
import { Refusal } from '../columns.js';
import { PLACEMENT_SOURCES } from '../records.js';
import { succeed } from '../result.js';
import { children, placements } from '../schema.js';
import type { Session } from '../session.js';
import type { PlacementStore } from '../store.js';
import { requireChild } from './children.js';

const columns = {
  childId: placements.childId,
  level: placements.level,
  spread: placements.spread,
  source: placements.source,
  at: placements.at,
  detail: placements.detail,
};

/** The placements of the session's school. */
export function placementStore(session: Session): PlacementStore {
  const { school } = session;
  return {
    list: (classId) =>
      session.read(async (tx) =>
        succeed(
          await tx
            .select(columns)
            .from(placements)
            .innerJoin(
              children,
              and(eq(children.schoolId, placements.schoolId), eq(children.id, placements.childId)),
            )
            .where(and(eq(placements.schoolId, school), eq(children.classId, classId)))
            .orderBy(children.position, children.id),
        ),
      ),
    put: (placement) =>
      session.write(async (tx) => {
        const { childId, level, spread, source, at, detail } = placement;
        if (
          !Number.isFinite(level) ||
          !Number.isFinite(spread) ||
          spread <= 0 ||
          !PLACEMENT_SOURCES.includes(source)
        ) {
          throw new Refusal(
            'input.invalid',
            'The placement has no usable level, spread or source.',
            'Place the child again.',
          );
        }
        await requireChild(tx, school, childId);
        const row = { level, spread, source, at, detail };
        await tx
          .insert(placements)
          .values({ schoolId: school, childId, ...row })
          .onConflictDoUpdate({ target: [placements.schoolId, placements.childId], set: row });
        return succeed({ childId, ...row });
      }),
  };
}
