// Slips: the pieces of paper of one sheet. The id on them leads back to the sheet and, through the store alone, to a child.
import { and, asc, eq, max } from 'drizzle-orm';
import { missing, requireAtMost } from '../checks.js';
import type { Slip } from '../records.js';
import { refuse, succeed } from '../result.js';
import { sheets, slips } from '../schema.js';
import type { Session } from '../session.js';
import { makeSlipId, parseSlipId, SLIP_ID_BYTES } from '../slip-id.js';
import type { SlipStore } from '../store.js';
import { requireChild } from './children.js';

const slipColumns = { id: slips.id, sheetId: slips.sheetId, childId: slips.childId };

/** The slips of the session's school. */
export function slipStore(session: Session): SlipStore {
  const { school } = session;
  const ofSheet = (sheetId: string) => and(eq(slips.schoolId, school), eq(slips.sheetId, sheetId));
  const one = (id: string) => and(eq(slips.schoolId, school), eq(slips.id, id));
  return {
    issue: (sheetId, childIds) =>
      session.write(async (tx) => {
        requireAtMost(childIds, 500, 'The slips');
        const [sheet] = await tx
          .select({ id: sheets.id })
          .from(sheets)
          .where(and(eq(sheets.schoolId, school), eq(sheets.id, sheetId)))
          .for('update');
        if (!sheet) throw missing('This sheet');
        const before = await tx.select(slipColumns).from(slips).where(ofSheet(sheetId));
        const [last] = await tx
          .select({ position: max(slips.position) })
          .from(slips)
          .where(ofSheet(sheetId));
        const byChild = new Map<string, Slip>(before.map((slip) => [slip.childId ?? '', slip]));
        const made: Slip[] = [];
        const issued: Slip[] = [];
        for (const childId of childIds) {
          let slip = childId === null ? undefined : byChild.get(childId);
          if (!slip) {
            if (childId !== null) await requireChild(tx, school, childId);
            slip = {
              id: makeSlipId(crypto.getRandomValues(new Uint8Array(SLIP_ID_BYTES))),
              sheetId,
              childId,
            };
            made.push(slip);
            if (childId !== null) byChild.set(childId, slip);
          }
          issued.push(slip);
        }
        const first = (last?.position ?? -1) + 1;
        if (made.length > 0) {
          await tx
            .insert(slips)
            .values(made.map((slip, i) => ({ schoolId: school, ...slip, position: first + i })));
        }
        return succeed(issued);
      }),
    list: (sheetId) =>
      session.read(async (tx) =>
        succeed(
          await tx.select(slipColumns).from(slips).where(ofSheet(sheetId)).orderBy(asc(slips.position)),
        ),
      ),
    find: (typed) =>
      session.read(async (tx) => {
        const id = parseSlipId(typed);
        if (id === null) {
          return refuse(
            'input.invalid',
            'This is not the code of a slip; a character may be mistyped.',
            'Compare it with the code under the square, or scan it again.',
          );
        }
        const [slip] = await tx.select(slipColumns).from(slips).where(one(id));
        if (!slip) throw missing('This slip');
        return succeed(slip);
      }),
    assign: (id, childId) =>
      session.write(async (tx) => {
        const [slip] = await tx.select(slipColumns).from(slips).where(one(id)).for('update');
        if (!slip) throw missing('This slip');
        await requireChild(tx, school, childId);
        if (slip.childId === childId) return succeed(slip);
        if (slip.childId !== null) {
          return refuse('conflict', 'This slip already belongs to another child.', 'Use a spare slip.');
        }
        const [other] = await tx
          .select({ id: slips.id })
          .from(slips)
          .where(and(ofSheet(slip.sheetId), eq(slips.childId, childId)));
        if (other)
          return refuse('conflict', 'This child already has a slip of this sheet.', 'Mark that slip.');
        await tx.update(slips).set({ childId }).where(one(id));
        return succeed({ ...slip, childId });
      }),
  };
}
