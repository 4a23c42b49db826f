// The children of a class. Leaving keeps the record; erasing deletes it.
import { and, asc, eq, isNull, max, sql } from 'drizzle-orm';
import { missing, requireAtMost, requireName, requireShort, requireYear } from '../checks.js';
import { Refusal } from '../columns.js';
import type { Child, ChildInput } from '../records.js';
import { refuse, succeed } from '../result.js';
import { children, classes, loans } from '../schema.js';
import type { Session, Transaction } from '../session.js';
import type { ChildStore } from '../store.js';
import { requireClass } from './classes.js';
import { eraseChildren } from './erase.js';

const childColumns = {
  id: children.id,
  classId: children.classId,
  position: children.position,
  givenName: children.givenName,
  familyName: children.familyName,
  alias: children.alias,
  year: children.year,
  joined: children.joined,
  left: children.left,
};

function checked(input: ChildInput): ChildInput {
  return {
    givenName: requireName(input.givenName, 'The given name'),
    familyName: requireShort(input.familyName, 'The family name'),
    alias: requireShort(input.alias, 'The alias'),
    year: requireYear(input.year),
    joined: input.joined,
  };
}

/** The child, or a Refusal that it is not there. */
export async function requireChild(tx: Transaction, school: string, id: string): Promise<Child> {
  const [row] = await tx
    .select(childColumns)
    .from(children)
    .where(and(eq(children.schoolId, school), eq(children.id, id)));
  if (!row) throw missing('This child');
  return row;
}

/** The children of the session's school. */
export function childStore(session: Session): ChildStore {
  const { school } = session;
  const inClass = (classId: string) => and(eq(children.schoolId, school), eq(children.classId, classId));
  const one = (id: string) => and(eq(children.schoolId, school), eq(children.id, id));
  const list = (tx: Transaction, classId: string, withLeft: boolean): Promise<Child[]> =>
    tx
      .select(childColumns)
      .from(children)
      .where(withLeft ? inClass(classId) : and(inClass(classId), isNull(children.left)))
      .orderBy(asc(children.position), asc(children.id));

  return {
    list: (classId, options = {}) =>
      session.read(async (tx) => {
        await requireClass(tx, school, classId);
        return succeed(await list(tx, classId, options.withLeft ?? false));
      }),
    get: (id) => session.read(async (tx) => succeed(await requireChild(tx, school, id))),
    add: (classId, inputs) =>
      session.write(async (tx) => {
        requireAtMost(inputs, 500, 'The children');
        await requireClass(tx, school, classId);
        if (inputs.length === 0) return succeed([]);
        // Two adders at once must not hand out the same places.
        await tx
          .select({ id: classes.id })
          .from(classes)
          .where(and(eq(classes.schoolId, school), eq(classes.id, classId)))
          .for('update');
        const [last] = await tx
          .select({ position: max(children.position) })
          .from(children)
          .where(inClass(classId));
        const first = (last?.position ?? -1) + 1;
        const made = inputs.map(
          (input, i): Child => ({
            id: crypto.randomUUID(),
            classId,
            position: first + i,
            ...checked(input),
            left: null,
          }),
        );
        await tx.insert(children).values(made.map((child) => ({ schoolId: school, ...child })));
        return succeed(made);
      }),
    update: (id, patch) =>
      session.write(async (tx) => {
        const before = await requireChild(tx, school, id);
        const change = checked({ ...before, ...patch });
        await tx.update(children).set(change).where(one(id));
        return succeed({ ...before, ...change });
      }),
    reorder: (classId, ids) =>
      session.write(async (tx) => {
        const present = await list(tx, classId, false);
        const known = new Set(present.map((child) => child.id));
        if (
          ids.length !== known.size ||
          new Set(ids).size !== ids.length ||
          ids.some((id) => !known.has(id))
        ) {
          return refuse(
            'conflict',
            'The class list has changed meanwhile.',
            'Look at it again, then put it in order.',
          );
        }
        for (const [position, id] of ids.entries())
          await tx.update(children).set({ position }).where(one(id));
        return succeed(await list(tx, classId, false));
      }),
    leave: (id, last) =>
      session.write(async (tx) => {
        const before = await requireChild(tx, school, id);
        if (last !== null && before.joined !== null && last < before.joined) {
          throw new Refusal('date.invalid', 'The child would leave before joining.', 'Check the two dates.');
        }
        await tx.update(children).set({ left: last }).where(one(id));
        if (last !== null) {
          // A set goes back to its box with the child's last day.
          await tx
            .update(loans)
            .set({ to: sql`greatest(${loans.from}, ${last}::date)` })
            .where(and(eq(loans.schoolId, school), eq(loans.childId, id), isNull(loans.to)));
        }
        return succeed({ ...before, left: last });
      }),
    erase: (id) =>
      session.write(async (tx) => {
        await requireChild(tx, school, id);
        return succeed(await eraseChildren(tx, school, [id]));
      }),
  };
}
