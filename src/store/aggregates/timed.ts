// Timed practice: ladders, the forms as printed, each child's sheets with what came of them, and moves from level to level.
import { and, asc, desc, eq, gte, inArray, lte, max, type SQL } from 'drizzle-orm';
import type { Question } from '#engine/questions/question.js';
import { missing, requireAtMost } from '../checks.js';
import { Refusal } from '../columns.js';
import { sha256 } from '../content-hash.js';
import type { TimedContent, TimedOutcome, TimedSheet } from '../records.js';
import { refuse, succeed } from '../result.js';
import { children, timedForms, timedLadders, timedMoves, timedResults, timedSheets } from '../schema.js';
import type { Session, Transaction } from '../session.js';
import { makeSlipId, parseSlipId, SLIP_ID_BYTES } from '../slip-id.js';
import type { TimedStore } from '../store.js';
import { requireChild } from './children.js';
import { requireClass } from './classes.js';

const MOST_AT_ONCE = 200;

/** Timed practice of the session's school; `now` tells the time of saving. */
export function timedStore(session: Session, now: () => Date): TimedStore {
  const { school } = session;
  const ofClass = (classId: string) => and(eq(timedForms.schoolId, school), eq(timedForms.classId, classId));
  const oneSheet = (id: string) => and(eq(timedSheets.schoolId, school), eq(timedSheets.id, id));

  /** Sheets with their forms and the results that count, oldest first. */
  async function read(tx: Transaction, where: SQL | undefined): Promise<TimedSheet[]> {
    const rows = await tx
      .select({ sheet: timedSheets, levelId: timedForms.levelId, content: timedForms.content })
      .from(timedSheets)
      .innerJoin(
        timedForms,
        and(eq(timedForms.schoolId, timedSheets.schoolId), eq(timedForms.id, timedSheets.formId)),
      )
      .where(where)
      .orderBy(asc(timedSheets.date), asc(timedSheets.id));
    if (rows.length === 0) return [];
    const results = await tx
      .select()
      .from(timedResults)
      .where(
        and(
          eq(timedResults.schoolId, school),
          eq(timedResults.undone, false),
          inArray(
            timedResults.sheetId,
            rows.map(({ sheet }) => sheet.id),
          ),
        ),
      )
      .orderBy(asc(timedResults.sequence));
    const latest = new Map(results.map(({ sheetId, outcome }) => [sheetId, outcome]));
    // Children of a level share a form: its JSON is read once.
    const contents = new Map<string, TimedContent>();
    return rows.map(({ sheet, levelId, content }) => {
      let parsed = contents.get(sheet.formId);
      if (!parsed) contents.set(sheet.formId, (parsed = JSON.parse(content) as TimedContent));
      const outcome = latest.get(sheet.id) ?? null;
      return {
        id: sheet.id,
        childId: sheet.childId,
        date: sheet.date,
        levelId,
        content: parsed,
        redo: JSON.parse(sheet.redo) as Question[],
        outcome,
        canUndo: outcome !== null,
      };
    });
  }

  async function requireSheet(tx: Transaction, id: string): Promise<TimedSheet> {
    const [sheet] = await read(tx, oneSheet(id));
    if (!sheet) throw missing('This sheet');
    return sheet;
  }

  async function saveForm(
    tx: Transaction,
    classId: string,
    { levelId }: TimedContent,
    text: string,
    contentHash: string,
  ): Promise<string> {
    const [same] = await tx
      .select({ id: timedForms.id })
      .from(timedForms)
      .where(and(ofClass(classId), eq(timedForms.contentHash, contentHash)));
    if (same) return same.id;
    const id = crypto.randomUUID();
    await tx.insert(timedForms).values({
      schoolId: school,
      id,
      classId,
      levelId,
      content: text,
      contentHash,
      createdAt: now().toISOString(),
    });
    return id;
  }

  return {
    ladder: (classId) =>
      session.read(async (tx) => {
        await requireClass(tx, school, classId);
        const [row] = await tx
          .select({ value: timedLadders.value })
          .from(timedLadders)
          .where(and(eq(timedLadders.schoolId, school), eq(timedLadders.classId, classId)));
        return succeed(row?.value ?? null);
      }),
    putLadder: (classId, value) =>
      session.write(async (tx) => {
        await requireClass(tx, school, classId);
        if (value === null) {
          await tx
            .delete(timedLadders)
            .where(and(eq(timedLadders.schoolId, school), eq(timedLadders.classId, classId)));
          return succeed(null);
        }
        if (value.steps.length === 0)
          throw new Refusal('input.invalid', 'The ladder has no level.', 'Keep one level at least.');
        await tx
          .insert(timedLadders)
          .values({ schoolId: school, classId, value })
          .onConflictDoUpdate({
            target: [timedLadders.schoolId, timedLadders.classId],
            set: { value },
          });
        return succeed(null);
      }),
    async issue({ classId, date, sheets }) {
      const texts = sheets.map(({ content }) => JSON.stringify(content));
      const hashes = new Map<string, string>();
      for (const text of texts) if (!hashes.has(text)) hashes.set(text, await sha256(text));
      return session.write(async (tx) => {
        requireAtMost(sheets, MOST_AT_ONCE, 'The sheets');
        await requireClass(tx, school, classId);
        const ids: string[] = [];
        for (const [at, { childId, content, redo }] of sheets.entries()) {
          await requireChild(tx, school, childId);
          const sameDay = and(
            eq(timedSheets.schoolId, school),
            eq(timedSheets.childId, childId),
            eq(timedSheets.date, date),
          );
          const [before] = await read(tx, sameDay);
          if (before?.outcome) {
            ids.push(before.id);
            continue;
          }
          const text = texts[at] ?? '';
          const formId = await saveForm(tx, classId, content, text, hashes.get(text) ?? '');
          const row = { formId, redo: JSON.stringify(redo) };
          if (before) {
            await tx.update(timedSheets).set(row).where(oneSheet(before.id));
            ids.push(before.id);
            continue;
          }
          const id = makeSlipId(crypto.getRandomValues(new Uint8Array(SLIP_ID_BYTES)));
          await tx.insert(timedSheets).values({ schoolId: school, id, childId, date, ...row });
          ids.push(id);
        }
        if (ids.length === 0) return succeed([]);
        const made = await read(tx, and(eq(timedSheets.schoolId, school), inArray(timedSheets.id, ids)));
        const byId = new Map(made.map((sheet) => [sheet.id, sheet]));
        return succeed(ids.flatMap((id) => byId.get(id) ?? []));
      });
    },
    list: (classId, span = {}) =>
      session.read(async (tx) => {
        await requireClass(tx, school, classId);
        const wanted: (SQL | undefined)[] = [ofClass(classId)];
        if (span.from !== undefined) wanted.push(gte(timedSheets.date, span.from));
        if (span.to !== undefined) wanted.push(lte(timedSheets.date, span.to));
        return succeed(await read(tx, and(...wanted)));
      }),
    find: (typed) =>
      session.read(async (tx) => {
        const id = parseSlipId(typed);
        if (id === null)
          return refuse(
            'input.invalid',
            'This is not the code of a sheet; a character may be mistyped.',
            'Compare it with the code under the square, or scan it again.',
          );
        return succeed(await requireSheet(tx, id));
      }),
    record: (entries, at) =>
      session.write(async (tx) => {
        requireAtMost(entries, MOST_AT_ONCE, 'The results');
        const out: TimedSheet[] = [];
        for (const { sheetId, outcome } of entries) {
          const sheet = await requireSheet(tx, sheetId);
          requireOutcome(outcome, sheet);
          const [last] = await tx
            .select({ sequence: max(timedResults.sequence) })
            .from(timedResults)
            .where(and(eq(timedResults.schoolId, school), eq(timedResults.sheetId, sheetId)));
          await tx.insert(timedResults).values({
            schoolId: school,
            sheetId,
            childId: sheet.childId,
            sequence: (last?.sequence ?? 0) + 1,
            outcome,
            at,
            undone: false,
          });
          out.push({ ...sheet, outcome, canUndo: true });
        }
        return succeed(out);
      }),
    undo: (sheetId) =>
      session.write(async (tx) => {
        await requireSheet(tx, sheetId);
        const own = and(eq(timedResults.schoolId, school), eq(timedResults.sheetId, sheetId));
        const [last] = await tx
          .select({ sequence: timedResults.sequence })
          .from(timedResults)
          .where(and(own, eq(timedResults.undone, false)))
          .orderBy(desc(timedResults.sequence))
          .limit(1);
        if (!last)
          return refuse('nothing.to-undo', 'This sheet has no result to take back.', 'Mark it first.');
        await tx
          .update(timedResults)
          .set({ undone: true })
          .where(and(own, eq(timedResults.sequence, last.sequence)));
        return succeed(await requireSheet(tx, sheetId));
      }),
    moves: (classId) =>
      session.read(async (tx) => {
        await requireClass(tx, school, classId);
        const rows = await tx
          .select({
            childId: timedMoves.childId,
            date: timedMoves.date,
            levelId: timedMoves.levelId,
            evidence: timedMoves.evidence,
          })
          .from(timedMoves)
          .innerJoin(
            children,
            and(eq(children.schoolId, timedMoves.schoolId), eq(children.id, timedMoves.childId)),
          )
          .where(and(eq(timedMoves.schoolId, school), eq(children.classId, classId)))
          .orderBy(asc(timedMoves.childId), asc(timedMoves.sequence));
        return succeed(rows);
      }),
    move: ({ childId, ...move }) =>
      session.write(async (tx) => {
        await requireChild(tx, school, childId);
        const [last] = await tx
          .select({ sequence: max(timedMoves.sequence) })
          .from(timedMoves)
          .where(and(eq(timedMoves.schoolId, school), eq(timedMoves.childId, childId)));
        await tx
          .insert(timedMoves)
          .values({ schoolId: school, childId, sequence: (last?.sequence ?? 0) + 1, ...move });
        return succeed(null);
      }),
    undoMove: (childId) =>
      session.write(async (tx) => {
        const own = and(eq(timedMoves.schoolId, school), eq(timedMoves.childId, childId));
        const [last] = await tx
          .select({ sequence: max(timedMoves.sequence) })
          .from(timedMoves)
          .where(own);
        if (last?.sequence == null)
          return refuse('nothing.to-undo', 'This child has not been moved yet.', 'Choose a level first.');
        await tx.delete(timedMoves).where(and(own, eq(timedMoves.sequence, last.sequence)));
        return succeed(null);
      }),
  };
}

/** Refuses a result that this sheet cannot have. */
function requireOutcome(outcome: TimedOutcome, { content, redo }: TimedSheet): void {
  const asked = content.forms[0]?.questions.length ?? 0;
  const isPlace = (place: number, most: number) => Number.isInteger(place) && place >= 1 && place <= most;
  if (!Number.isInteger(outcome.attempted) || outcome.attempted < 0 || outcome.attempted > asked)
    throw new Refusal(
      'input.invalid',
      `A sheet of ${asked} questions cannot have ${outcome.attempted} done.`,
      `Type a number from 0 to ${asked}.`,
    );
  const places = [...outcome.wrong, ...Object.keys(outcome.written).map(Number)];
  if (places.some((place) => !isPlace(place, outcome.attempted)))
    throw new Refusal(
      'input.invalid',
      'A question is circled that the child did not reach.',
      'Raise the number done, or take the circle off.',
    );
  if (outcome.redoWrong.some((place) => !isPlace(place, redo.length)))
    throw new Refusal(
      'input.invalid',
      'There is no such question on the redo row.',
      'Choose one of the row.',
    );
  if (outcome.minutes !== null && !(outcome.minutes > 0 && outcome.minutes <= 60))
    throw new Refusal(
      'input.invalid',
      `A time of ${outcome.minutes} minutes cannot be right.`,
      'Type the minutes the child worked, or leave them out.',
    );
}
