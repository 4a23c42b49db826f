// Classes: a name and the school years taught in it.
import { and, eq, inArray } from 'drizzle-orm';
import { missing, requireName, requireYear } from '../checks.js';
import { Refusal } from '../columns.js';
import type { ClassInput, SchoolClass } from '../records.js';
import { succeed } from '../result.js';
import {
  absences,
  children,
  classes,
  days,
  loans,
  markBatches,
  markEvents,
  marks,
  sets,
  setSteps,
  sheets,
  slips,
  timedForms,
  timedLadders,
  timedResults,
  timedSheets,
} from '../schema.js';
import type { Session, Transaction } from '../session.js';
import type { ClassStore } from '../store.js';
import { eraseChildren } from './erase.js';

function checked(input: ClassInput): { name: string; years: number[] } {
  const years = [...new Set(input.years.map(requireYear))].sort((a, b) => a - b);
  if (years.length === 0)
    throw new Refusal('input.invalid', 'The class has no year.', 'Choose at least one year.');
  return { name: requireName(input.name, 'The class name'), years };
}

/** The class, or a Refusal that it is not there. */
export async function requireClass(tx: Transaction, school: string, id: string): Promise<SchoolClass> {
  const [row] = await tx
    .select({ id: classes.id, name: classes.name, years: classes.years })
    .from(classes)
    .where(and(eq(classes.schoolId, school), eq(classes.id, id)));
  if (!row) throw missing('This class');
  return row;
}

/** The classes of the session's school. */
export function classStore(session: Session): ClassStore {
  const { school } = session;
  return {
    list: () =>
      session.read(async (tx) => {
        const rows = await tx
          .select({ id: classes.id, name: classes.name, years: classes.years })
          .from(classes)
          .where(eq(classes.schoolId, school));
        // Sorted here: databases differ in how they order letters.
        return succeed(rows.sort((a, b) => a.name.localeCompare(b.name, 'en') || (a.id < b.id ? -1 : 1)));
      }),
    get: (id) => session.read(async (tx) => succeed(await requireClass(tx, school, id))),
    create: (input) =>
      session.write(async (tx) => {
        const made = { id: crypto.randomUUID(), ...checked(input) };
        await tx.insert(classes).values({ schoolId: school, ...made });
        return succeed(made);
      }),
    update: (id, input) =>
      session.write(async (tx) => {
        const change = checked(input);
        await requireClass(tx, school, id);
        await tx
          .update(classes)
          .set(change)
          .where(and(eq(classes.schoolId, school), eq(classes.id, id)));
        return succeed({ id, ...change });
      }),
    erase: (id) =>
      session.write(async (tx) => {
        await requireClass(tx, school, id);
        const members = await tx
          .select({ id: children.id })
          .from(children)
          .where(and(eq(children.schoolId, school), eq(children.classId, id)));
        const erased = await eraseChildren(
          tx,
          school,
          members.map((member) => member.id),
        );
        const own = (
          await tx
            .select({ id: sheets.id })
            .from(sheets)
            .where(and(eq(sheets.schoolId, school), eq(sheets.classId, id)))
        ).map((sheet) => sheet.id);
        let spareSlips = 0;
        let marksOfOthers = 0;
        let eventsOfOthers = 0;
        if (own.length > 0) {
          // A child who moved to another class may have marks on these sheets; the sheets go, so the marks go.
          eventsOfOthers = (
            await tx
              .delete(markEvents)
              .where(and(eq(markEvents.schoolId, school), inArray(markEvents.sheetId, own)))
              .returning({ n: markEvents.sequence })
          ).length;
          marksOfOthers = (
            await tx
              .delete(marks)
              .where(and(eq(marks.schoolId, school), inArray(marks.sheetId, own)))
              .returning({ n: marks.rung })
          ).length;
          spareSlips = (
            await tx
              .delete(slips)
              .where(and(eq(slips.schoolId, school), inArray(slips.sheetId, own)))
              .returning({ id: slips.id })
          ).length;
          await tx
            .delete(markBatches)
            .where(and(eq(markBatches.schoolId, school), inArray(markBatches.sheetId, own)));
          await tx.delete(sheets).where(and(eq(sheets.schoolId, school), inArray(sheets.id, own)));
        }
        const away = await tx
          .delete(absences)
          .where(and(eq(absences.schoolId, school), eq(absences.classId, id)))
          .returning({ date: absences.date });
        await tx.delete(days).where(and(eq(days.schoolId, school), eq(days.classId, id)));
        const lent = await eraseSets(tx, school, id);
        const timed = await eraseTimed(tx, school, id);
        await tx.delete(classes).where(and(eq(classes.schoolId, school), eq(classes.id, id)));
        return succeed({
          ...erased,
          slips: erased.slips + spareSlips,
          marks: erased.marks + marksOfOthers,
          markEvents: erased.markEvents + eventsOfOthers,
          absences: erased.absences + away.length,
          loans: erased.loans + lent,
          timedSheets: erased.timedSheets + timed.sheets,
          timedResults: erased.timedResults + timed.results,
        });
      }),
  };
}

/** Deletes the ladder and the timed forms of a class, with sheets that children took along to another class. */
async function eraseTimed(
  tx: Transaction,
  school: string,
  classId: string,
): Promise<{ readonly sheets: number; readonly results: number }> {
  const forms = tx
    .select({ id: timedForms.id })
    .from(timedForms)
    .where(and(eq(timedForms.schoolId, school), eq(timedForms.classId, classId)));
  const own = tx
    .select({ id: timedSheets.id })
    .from(timedSheets)
    .where(and(eq(timedSheets.schoolId, school), inArray(timedSheets.formId, forms)));
  const results = await tx
    .delete(timedResults)
    .where(and(eq(timedResults.schoolId, school), inArray(timedResults.sheetId, own)))
    .returning({ n: timedResults.sequence });
  const sheetRows = await tx
    .delete(timedSheets)
    .where(and(eq(timedSheets.schoolId, school), inArray(timedSheets.formId, forms)))
    .returning({ id: timedSheets.id });
  await tx.delete(timedForms).where(and(eq(timedForms.schoolId, school), eq(timedForms.classId, classId)));
  await tx
    .delete(timedLadders)
    .where(and(eq(timedLadders.schoolId, school), eq(timedLadders.classId, classId)));
  return { sheets: sheetRows.length, results: results.length };
}

/** Deletes the sets of a class with all that is kept about them; returns how many loans that were not erased yet. */
async function eraseSets(tx: Transaction, school: string, classId: string): Promise<number> {
  const own = tx
    .select({ id: sets.id })
    .from(sets)
    .where(and(eq(sets.schoolId, school), eq(sets.classId, classId)));
  const lent = await tx
    .delete(loans)
    .where(and(eq(loans.schoolId, school), inArray(loans.setId, own)))
    .returning({ id: loans.id });
  await tx.delete(setSteps).where(and(eq(setSteps.schoolId, school), inArray(setSteps.setId, own)));
  await tx.delete(sets).where(and(eq(sets.schoolId, school), eq(sets.classId, classId)));
  return lent.length;
}
