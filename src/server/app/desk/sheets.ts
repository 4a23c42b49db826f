// Saved boards for screens: which group a board is for follows from its years.
import type { BoardGroup, Sheet } from '#api/today.js';
import type { Result } from '#api/problem.js';
import type { Sheet as StoredSheet } from '#store/records.js';
import type { Services } from '../services.js';

/** The group a stored board is for: one year of a class that has several, or the whole class. */
export function groupOf(sheet: StoredSheet, classYears: readonly number[]): BoardGroup {
  const [year, ...others] = sheet.content.years;
  return year !== undefined && others.length === 0 && classYears.length > 1 ? year : 'class';
}

/** A stored board as screens know it. */
export async function toScreenSheet(
  services: Services,
  sheet: StoredSheet,
  classYears: readonly number[],
): Promise<Result<Sheet>> {
  const marks = await services.store.marks.ofSheet(sheet.id);
  if (!marks.ok) return marks;
  return {
    ok: true,
    value: {
      id: sheet.id,
      classId: sheet.classId,
      date: sheet.date ?? sheet.createdAt.slice(0, 10),
      group: groupOf(sheet, classYears),
      board: sheet.content,
      markCount: marks.value.length,
    },
  };
}

/** One stored board with the class it belongs to. */
export async function sheetAndClass(services: Services, sheetId: string) {
  const sheet = await services.store.sheets.get(sheetId);
  if (!sheet.ok) return sheet;
  const schoolClass = await services.store.classes.get(sheet.value.classId);
  if (!schoolClass.ok) return schoolClass;
  return { ok: true as const, value: { sheet: sheet.value, schoolClass: schoolClass.value } };
}
