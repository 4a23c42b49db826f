// Who has which set. A turn is one tap on the rota; turns of a class and kind are counted, so that the last can be taken back.
import { and, asc, eq, gte, inArray, isNull, max, or } from 'drizzle-orm';
import { SET_KINDS, type SetKind } from '#engine/planning/set-shelf.js';
import { missing, requireAtMost } from '../checks.js';
import type { Loan } from '../records.js';
import { refuse, succeed } from '../result.js';
import { children, loans, sets } from '../schema.js';
import type { Session, Transaction } from '../session.js';
import type { LoanStore } from '../store.js';
import { requireClass } from './classes.js';
import { lockClass } from './sets.js';

const columns = {
  id: loans.id,
  setId: loans.setId,
  childId: loans.childId,
  from: loans.from,
  to: loans.to,
  finished: loans.finished,
};

const MOST_AT_ONCE = 500;

interface LastTurn {
  readonly turn: number;
  /** The day of the turn; null where there is none. */
  readonly date: string | null;
}

/** The loans of the session's school. */
export function loanStore(session: Session): LoanStore {
  const { school } = session;

  function ofClass(tx: Transaction, classId: string, kind: SetKind) {
    const own = tx
      .select({ id: sets.id })
      .from(sets)
      .where(and(eq(sets.schoolId, school), eq(sets.classId, classId), eq(sets.kind, kind)));
    return and(eq(loans.schoolId, school), inArray(loans.setId, own));
  }

  function listLoans(tx: Transaction, classId: string, kind: SetKind): Promise<Loan[]> {
    return tx
      .select(columns)
      .from(loans)
      .where(ofClass(tx, classId, kind))
      .orderBy(asc(loans.openedTurn), asc(loans.id));
  }

  async function lastTurn(tx: Transaction, classId: string, kind: SetKind): Promise<LastTurn> {
    const [counted] = await tx
      .select({ opened: max(loans.openedTurn), closed: max(loans.closedTurn) })
      .from(loans)
      .where(ofClass(tx, classId, kind));
    const turn = Math.max(counted?.opened ?? 0, counted?.closed ?? 0);
    const [loan] = await tx
      .select({ from: loans.from, to: loans.to, opened: loans.openedTurn })
      .from(loans)
      .where(and(ofClass(tx, classId, kind), or(eq(loans.openedTurn, turn), eq(loans.closedTurn, turn))))
      .limit(1);
    return { turn, date: loan ? (loan.opened === turn ? loan.from : loan.to) : null };
  }

  return {
    list: (classId, kind) =>
      session.read(async (tx) => {
        await requireClass(tx, school, classId);
        return succeed(await listLoans(tx, classId, kind));
      }),
    record: ({ classId, kind, date, close, open }) =>
      session.write(async (tx) => {
        requireAtMost([...close, ...open], MOST_AT_ONCE, 'The changes');
        if (!SET_KINDS.includes(kind))
          return refuse('input.invalid', 'There is no such kind of set.', 'Choose chain, trail or jigsaw.');
        await lockClass(tx, school, classId);
        const turn = (await lastTurn(tx, classId, kind)).turn + 1;
        for (const { childId, finished } of close) {
          const closed = await tx
            .update(loans)
            .set({ to: date, finished, closedTurn: turn })
            .where(and(ofClass(tx, classId, kind), eq(loans.childId, childId), isNull(loans.to)))
            .returning({ from: loans.from });
          const [loan] = closed;
          if (!loan)
            return refuse('conflict', 'This child has no set to give back.', 'Look at the rota again.');
          if (loan.from > date)
            return refuse(
              'date.invalid',
              'The set would be given back before it was handed out.',
              'Check the date of this computer.',
            );
        }
        await requireChildren(
          tx,
          classId,
          open.map(({ childId }) => childId),
        );
        for (const { childId, setId } of open) {
          const [set] = await tx
            .select({ id: sets.id })
            .from(sets)
            .where(
              and(
                eq(sets.schoolId, school),
                eq(sets.id, setId),
                eq(sets.classId, classId),
                eq(sets.kind, kind),
              ),
            );
          if (!set) throw missing('This set');
          const held = await tx
            .select({ childId: loans.childId, to: loans.to })
            .from(loans)
            .where(
              and(
                ofClass(tx, classId, kind),
                or(eq(loans.setId, setId), and(eq(loans.childId, childId), isNull(loans.to))),
                or(isNull(loans.to), gte(loans.to, date)),
              ),
            );
          if (held.some((loan) => loan.childId === childId && loan.to === null))
            return refuse('conflict', 'This child already has a set.', 'Finish that one first.');
          if (held.some((loan) => loan.childId !== childId))
            return refuse(
              'conflict',
              'Someone else has, or had, this set today.',
              'Choose another set, or wait until tomorrow.',
            );
          await tx.insert(loans).values({
            schoolId: school,
            id: crypto.randomUUID(),
            setId,
            childId,
            kind,
            from: date,
            to: null,
            finished: false,
            openedTurn: turn,
            closedTurn: null,
          });
        }
        return succeed(await listLoans(tx, classId, kind));
      }),
    canUndo: (classId, kind, date) =>
      session.read(async (tx) => {
        await requireClass(tx, school, classId);
        return succeed((await lastTurn(tx, classId, kind)).date === date);
      }),
    undo: (classId, kind, date) =>
      session.write(async (tx) => {
        await lockClass(tx, school, classId);
        const last = await lastTurn(tx, classId, kind);
        if (last.date !== date)
          return refuse(
            'nothing.to-undo',
            'Nothing was changed on the rota today.',
            'Change single children by hand.',
          );
        // A loan opened and closed by one turn cannot be, so the statements never meet on a row.
        await tx.delete(loans).where(and(ofClass(tx, classId, kind), eq(loans.openedTurn, last.turn)));
        const closed = and(ofClass(tx, classId, kind), eq(loans.closedTurn, last.turn));
        // A child who has left meanwhile cannot have a set again.
        const here = tx
          .select({ id: children.id })
          .from(children)
          .where(and(eq(children.schoolId, school), eq(children.classId, classId), isNull(children.left)));
        await tx
          .update(loans)
          .set({ to: null, finished: false, closedTurn: null })
          .where(and(closed, inArray(loans.childId, here)));
        await tx.update(loans).set({ finished: false, closedTurn: null }).where(closed);
        return succeed(await listLoans(tx, classId, kind));
      }),
  };

  async function requireChildren(tx: Transaction, classId: string, ids: readonly string[]): Promise<void> {
    if (ids.length === 0) return;
    const known = await tx
      .select({ id: children.id })
      .from(children)
      .where(
        and(eq(children.schoolId, school), eq(children.classId, classId), inArray(children.id, [...ids])),
      );
    if (known.length < new Set(ids).size) throw missing('This child');
  }
}
