// Printed sets: what is on the pieces never changes (a database trigger refuses it); steps and the note do.
import { and, asc, eq, inArray, max } from 'drizzle-orm';
import { BANDS } from '#engine/curriculum/bands.js';
import { SET_KINDS, SET_STEPS, type SetStep } from '#engine/planning/set-shelf.js';
import { missing, requireAtMost } from '../checks.js';
import { Refusal } from '../columns.js';
import { sha256 } from '../content-hash.js';
import type { CardSet, SetContent } from '../records.js';
import { refuse, succeed } from '../result.js';
import { classes, loans, sets, setSteps } from '../schema.js';
import type { Session, Transaction } from '../session.js';
import type { SetStore } from '../store.js';
import { requireClass } from './classes.js';

type SetRow = typeof sets.$inferSelect;

const MOST_AT_ONCE = 100;
const NOTE_LENGTH = 500;

/** Keeps other writers of the class's sets and loans waiting until the transaction ends: numbers and turns are counted up. */
export async function lockClass(tx: Transaction, school: string, classId: string): Promise<void> {
  await requireClass(tx, school, classId);
  await tx
    .select({ id: classes.id })
    .from(classes)
    .where(and(eq(classes.schoolId, school), eq(classes.id, classId)))
    .for('update');
}

/** The sets of the session's school; `now` tells the time of saving. */
export function setStore(session: Session, now: () => Date): SetStore {
  const { school } = session;
  const one = (id: string) => and(eq(sets.schoolId, school), eq(sets.id, id));

  async function withSteps(tx: Transaction, rows: readonly SetRow[]): Promise<CardSet[]> {
    const ids = rows.map(({ id }) => id);
    const ticked =
      ids.length === 0
        ? []
        : await tx
            .select({ setId: setSteps.setId, step: setSteps.step })
            .from(setSteps)
            .where(and(eq(setSteps.schoolId, school), inArray(setSteps.setId, ids)));
    const done = new Map<string, Set<SetStep>>();
    for (const { setId, step } of ticked) done.set(setId, (done.get(setId) ?? new Set()).add(step));
    return rows.map(({ schoolId: _school, content, ...row }) => ({
      ...row,
      content: JSON.parse(content) as SetContent,
      steps: SET_STEPS.filter((step) => done.get(row.id)?.has(step)),
    }));
  }

  async function requireSet(tx: Transaction, id: string): Promise<CardSet> {
    const [found] = await withSteps(tx, await tx.select().from(sets).where(one(id)));
    if (!found) throw missing('This set');
    return found;
  }

  return {
    async save({ classId, band, contents }) {
      const texts = await Promise.all(
        contents.map(async (content) => {
          const text = JSON.stringify(content);
          return { content, text, hash: await sha256(text) };
        }),
      );
      return session.write(async (tx) => {
        requireAtMost(contents, MOST_AT_ONCE, 'The sets');
        const kind = contents[0]?.kind;
        if (!BANDS.includes(band) || contents.some((content) => !isContent(content) || content.kind !== kind))
          throw new Refusal('input.invalid', 'This is no set of one kind and band.', 'Make the sets again.');
        await lockClass(tx, school, classId);
        if (kind === undefined) return succeed([]);
        const ofBand = and(
          eq(sets.schoolId, school),
          eq(sets.classId, classId),
          eq(sets.kind, kind),
          eq(sets.band, band),
        );
        const [last] = await tx
          .select({ number: max(sets.number) })
          .from(sets)
          .where(ofBand);
        let number = last?.number ?? 0;
        const saved: CardSet[] = [];
        for (const { content, text, hash } of texts) {
          const [same] = await tx
            .select({ id: sets.id })
            .from(sets)
            .where(and(ofBand, eq(sets.contentHash, hash)));
          if (same) {
            saved.push(await requireSet(tx, same.id));
            continue;
          }
          const row: SetRow = {
            schoolId: school,
            id: crypto.randomUUID(),
            classId,
            kind,
            band,
            number: ++number,
            seed: content.seed,
            content: text,
            contentHash: hash,
            createdAt: now().toISOString(),
            note: '',
          };
          await tx.insert(sets).values(row);
          saved.push(...(await withSteps(tx, [row])));
        }
        return succeed(saved);
      });
    },
    get: (id) => session.read(async (tx) => succeed(await requireSet(tx, id))),
    list: (classId, kind) =>
      session.read(async (tx) => {
        await requireClass(tx, school, classId);
        const rows = await tx
          .select()
          .from(sets)
          .where(
            and(
              eq(sets.schoolId, school),
              eq(sets.classId, classId),
              kind === undefined ? undefined : eq(sets.kind, kind),
            ),
          )
          .orderBy(asc(sets.number));
        const place = (set: CardSet) => SET_KINDS.indexOf(set.kind) * BANDS.length + BANDS.indexOf(set.band);
        return succeed((await withSteps(tx, rows)).sort((a, b) => place(a) - place(b)));
      }),
    mark: ({ classId, setIds, step, done, date }) =>
      session.write(async (tx) => {
        requireAtMost(setIds, MOST_AT_ONCE, 'The sets');
        if (!SET_STEPS.includes(step))
          throw new Refusal('input.invalid', 'There is no such step.', 'Reload the page and tick it again.');
        await requireClass(tx, school, classId);
        const ids = [...new Set(setIds)];
        if (ids.length === 0) return succeed([]);
        const rows = await tx
          .select()
          .from(sets)
          .where(and(eq(sets.schoolId, school), eq(sets.classId, classId), inArray(sets.id, ids)));
        if (rows.length < ids.length) throw missing('One of these sets');
        if (done) {
          await tx
            .insert(setSteps)
            .values(ids.map((setId) => ({ schoolId: school, setId, step, date })))
            .onConflictDoNothing();
        } else {
          await tx
            .delete(setSteps)
            .where(and(eq(setSteps.schoolId, school), inArray(setSteps.setId, ids), eq(setSteps.step, step)));
        }
        return succeed(await withSteps(tx, rows));
      }),
    note: (id, note) =>
      session.write(async (tx) => {
        const text = note.trim();
        if (text.length > NOTE_LENGTH) {
          throw new Refusal(
            'input.invalid',
            `The note is longer than ${NOTE_LENGTH} characters.`,
            'Shorten it.',
          );
        }
        await requireSet(tx, id);
        await tx.update(sets).set({ note: text }).where(one(id));
        return succeed(await requireSet(tx, id));
      }),
    erase: (id) =>
      session.write(async (tx) => {
        const { steps } = await requireSet(tx, id);
        const [lent] = await tx
          .select({ id: loans.id })
          .from(loans)
          .where(and(eq(loans.schoolId, school), eq(loans.setId, id)))
          .limit(1);
        if (steps.length > 0 || lent) {
          return refuse(
            'conflict',
            'This set is on paper already, so its number stays taken.',
            'Take the tick off “in the box” to keep it out of the rota.',
          );
        }
        await tx.delete(sets).where(one(id));
        return succeed(null);
      }),
  };
}

function isContent(content: SetContent): boolean {
  return SET_KINDS.includes(content.kind) && Number.isSafeInteger(content.seed);
}
