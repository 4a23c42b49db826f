// The day's boards: composed when first asked for, saved once, and never changed afterwards; an edit saves a new one.
import type { Result } from '#api/problem.js';
import type { BoardGroup, Sheet, TodayView } from '#api/today.js';
import type { Board, BoardSide } from '#engine/activities/board/board.js';
import { composeBoard } from '#engine/activities/board/compose.js';
import { type DayNumber, parseDayNumber } from '#engine/numbers/day-number.js';
import { localeOf } from '#engine/numbers/locale.js';
import type { Sheet as StoredSheet } from '#store/records.js';
import type { Services } from '../services.js';
import { refuseMarked } from './board-edits.js';
import { type Day, readDay, requestFor } from './day-plan.js';
import { groupOf, toScreenSheet } from './sheets.js';

/** The plan and boards of a day; boards that do not exist yet are composed and saved. */
export async function dayView(services: Services, classId: string, date: string): Promise<Result<TodayView>> {
  const day = await readDay(services, classId, date);
  if (!day.ok) return day;
  return completeDay(services, classId, day.value, await services.store.sheets.current(classId, date));
}

/** The same day with another number: every board is composed anew. */
export async function changeNumber(
  services: Services,
  classId: string,
  date: string,
  text: string,
): Promise<Result<TodayView>> {
  const day = await readDay(services, classId, date);
  if (!day.ok) return day;
  const number = parseDayNumber(text, localeOf(day.value.state.settings.locale));
  if (!number.ok) return number;
  const current = await services.store.sheets.current(classId, date);
  if (!current.ok) return current;
  const untouched = await refuseMarked(services, current.value);
  if (!untouched.ok) return untouched;
  // All boards are composed before any is saved, so that a number that cannot carry a board changes nothing.
  const boards = composeAll(day.value, number.value);
  if (!boards.ok) return boards;
  const saved = await saveBoards(services, classId, day.value, boards.value, current.value);
  if (!saved.ok) return saved;
  const plan = {
    ...day.value.plan,
    number: number.value,
    sentence: day.value.plan.sentence.replace(day.value.plan.number.text, number.value.text),
  };
  return completeDay(
    services,
    classId,
    { ...day.value, plan },
    await services.store.sheets.current(classId, date),
  );
}

/** Composes what is missing, then shows the day. */
async function completeDay(
  services: Services,
  classId: string,
  day: Day,
  current: Awaited<ReturnType<Services['store']['sheets']['current']>>,
): Promise<Result<TodayView>> {
  if (!current.ok) return current;
  const { years } = day.state.schoolClass;
  const standing = await standingSheets(services, current.value, years);
  if (!standing.ok) return standing;
  let sheets = standing.value;
  const present = new Set(sheets.map((sheet) => placeOf(groupOf(sheet, years), sheet.side)));
  const number = numberOfDay(current.value, day);
  const missing = placesOf(years).filter(({ group, side }) => !present.has(placeOf(group, side)));
  if (missing.length > 0) {
    const boards: Board[] = [];
    for (const { group, side } of missing) {
      const board = composeBoard(requestFor(day, number, group, side));
      if (!board.ok) return board;
      boards.push(board.value);
    }
    const saved = await saveBoards(services, classId, day, boards, current.value);
    if (!saved.ok) return saved;
    const again = await services.store.sheets.current(classId, day.plan.date);
    if (!again.ok) return again;
    const completed = await standingSheets(services, again.value, years);
    if (!completed.ok) return completed;
    sheets = completed.value;
  }
  const shown: Sheet[] = [];
  for (const sheet of sheets) {
    const screen = await toScreenSheet(services, sheet, years);
    if (!screen.ok) return screen;
    shown.push(screen.value);
  }
  const order = placesOf(years).map(({ group, side }) => placeOf(group, side));
  shown.sort(
    (a, b) => order.indexOf(placeOf(a.group, a.board.side)) - order.indexOf(placeOf(b.group, b.board.side)),
  );
  const { plan } = day;
  return {
    ok: true,
    value: {
      date: plan.date,
      schoolDay: plan.schoolDay !== null,
      dayLabel: plan.place ?? '',
      nextSchoolDay: plan.nextSchoolDay,
      sentence:
        plan.schoolDay === null ? plan.sentence : plan.sentence.replace(plan.number.text, number.text),
      number: number.text,
      sheets: shown,
    },
  };
}

/**
 * One board for each place of the day. They are more only after the years of the class were changed: then a board with
 * marks stays, and one without gives way to the board that is made for the new years.
 */
async function standingSheets(
  services: Services,
  sheets: readonly StoredSheet[],
  years: readonly number[],
): Promise<Result<StoredSheet[]>> {
  const standing = new Map<string, StoredSheet>();
  const marked: StoredSheet[] = [];
  for (const sheet of sheets) {
    const place = placeOf(groupOf(sheet, years), sheet.side);
    if (isMadeFor(sheet, years)) {
      standing.set(place, sheet);
      continue;
    }
    const marks = await services.store.marks.ofSheet(sheet.id);
    if (!marks.ok) return marks;
    if (marks.value.length > 0) marked.push(sheet);
  }
  for (const sheet of marked) {
    const place = placeOf(groupOf(sheet, years), sheet.side);
    const newer = standing.get(place);
    const marks = newer ? await services.store.marks.ofSheet(newer.id) : null;
    if (marks && !marks.ok) return marks;
    // Where both have marks, neither may be hidden.
    standing.set(marks && marks.value.length > 0 ? sheet.id : place, sheet);
  }
  return { ok: true, value: [...standing.values()] };
}

function isMadeFor(sheet: StoredSheet, years: readonly number[]): boolean {
  const own = sheet.content.years;
  return (
    own.join() === years.join() || (years.length > 1 && own.length === 1 && years.includes(own[0] ?? -1))
  );
}

/** The boards of a day: the class's two sides, and one for each year where there are several. */
function placesOf(years: readonly number[]): { group: BoardGroup; side: BoardSide }[] {
  const own = years.length > 1 ? years.map((year) => ({ group: year, side: 'front' as const })) : [];
  return [{ group: 'class', side: 'front' }, { group: 'class', side: 'back' }, ...own];
}

function placeOf(group: BoardGroup, side: BoardSide): string {
  return `${group}/${side}`;
}

function numberOfDay(sheets: readonly StoredSheet[], day: Day): DayNumber {
  const text = sheets[0]?.number;
  const parsed = text === undefined ? null : parseDayNumber(text, localeOf(day.state.settings.locale));
  return parsed?.ok ? parsed.value : day.plan.number;
}

function composeAll(day: Day, number: DayNumber): Result<Board[]> {
  const boards: Board[] = [];
  for (const { group, side } of placesOf(day.state.schoolClass.years)) {
    const board = composeBoard(requestFor(day, number, group, side));
    if (!board.ok) return board;
    boards.push(board.value);
  }
  return { ok: true, value: boards };
}

async function saveBoards(
  services: Services,
  classId: string,
  day: Day,
  boards: readonly Board[],
  replaced: readonly StoredSheet[],
): Promise<Result<null>> {
  const { date } = day.plan;
  for (const board of boards) {
    const older = replaced.find(
      (sheet) => sheet.side === board.side && sheet.content.years.join() === board.years.join(),
    );
    const saved = await services.store.sheets.save({
      classId,
      date,
      content: board,
      ...(older ? { supersedes: older.id } : {}),
    });
    if (!saved.ok) return saved;
  }
  return { ok: true, value: null };
}
