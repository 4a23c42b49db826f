// The days of a class that have boards, so that a pile of older slips finds its grid.
import type { BoardDay } from '#api/marking.js';
import type { Result } from '#api/problem.js';
import type { Services } from '../services.js';

/** Days shown, and boards read to find them: a day has a front, a back and one for each year. */
const DAYS_SHOWN = 20;
const BOARDS_READ = 120;

/** Days with boards, newest first, with the number of each and how many cells are marked. */
export async function boardDays(services: Services, classId: string): Promise<Result<{ days: BoardDay[] }>> {
  const known = await services.store.classes.get(classId);
  if (!known.ok) return known;
  const sheets = await services.store.sheets.list({ classId, limit: BOARDS_READ });
  if (!sheets.ok) return sheets;
  const days = new Map<string, BoardDay>();
  const dayOfSheet = new Map<string, BoardDay>();
  for (const { id, date, number } of sheets.value) {
    if (date === null || (!days.has(date) && days.size === DAYS_SHOWN)) continue;
    const day = days.get(date) ?? { date, number, markCount: 0 };
    days.set(date, day);
    dayOfSheet.set(id, day);
  }
  const oldest = [...days.keys()].at(-1);
  if (oldest === undefined) return { ok: true, value: { days: [] } };
  const marks = await services.store.marks.ofClass(classId, { from: oldest });
  if (!marks.ok) return marks;
  for (const { sheetId } of marks.value) {
    const day = dayOfSheet.get(sheetId);
    if (day) day.markCount++;
  }
  return { ok: true, value: { days: [...days.values()] } };
}
