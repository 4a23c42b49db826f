// The day's boards: composed when first asked for, saved once, and never changed afterwards; an edit saves a new one.
import type { Result } from '#api/problem.js';
import type { BoardGroup, Sheet, TodayView } from '#api/today.js';
import type { Board, BoardSide } from '#engine/activities/board/board.js';
import type { BoardRequest } from '#engine/activities/board/board-request.js';
import { composeBoard } from '#engine/activities/board/compose.js';
import { replaceRung, withRung } from '#engine/activities/board/replace-rung.js';
import { type ClassModel, typicalClass } from '#engine/learning/class-model.js';
import { addDays, parseIsoDate } from '#engine/numbers/calendar.js';
import { type DayNumber, parseDayNumber } from '#engine/numbers/day-number.js';
import { localeOf } from '#engine/numbers/locale.js';
import { ownQuestionsIn } from '#engine/own-questions/own-lines.js';
import type { OwnQuestion } from '#engine/own-questions/own-question.js';
import { type DueSkill, exposuresOf } from '#engine/planning/due.js';
import { type DayPlan, planDay } from '#engine/planning/plan-day.js';
import { hashText } from '#engine/random/rng.js';
import type { Sheet as StoredSheet } from '#store/records.js';
import { refuse } from '../problems.js';
import type { Services } from '../services.js';
import { type ClassState, modelOn, readClassState } from './class-state.js';
import { ownQuestions } from './own-questions.js';
import { groupOf, sheetAndClass, toScreenSheet } from './sheets.js';

/** Numbers and questions of this many past days do not come again. */
const RECENT_DAYS = 28;

interface Day {
  readonly state: ClassState;
  readonly plan: DayPlan;
  readonly model: ClassModel;
  readonly avoid: readonly string[];
  readonly own: readonly OwnQuestion[];
}

/** The plan and boards of a day; boards that do not exist yet are composed and saved. */
export async function dayView(services: Services, classId: string, date: string): Promise<Result<TodayView>> {
  const day = await readDay(services, classId, date);
  if (!day.ok) return day;
  return completeDay(services, classId, day.value, await services.store.sheets.current(classId, date));
}

/** Ids of the skills that are due for review in the class on a date, most urgent first. */
export async function dueOn(
  services: Services,
  classId: string,
  date: string,
): Promise<Result<readonly string[]>> {
  const due = await dueTopics(services, classId, date);
  return due.ok ? { ok: true, value: due.value.map(({ skill }) => skill) } : due;
}

/** The same with the reason for each in a sentence. */
export async function dueTopics(
  services: Services,
  classId: string,
  date: string,
): Promise<Result<readonly DueSkill[]>> {
  const day = await readDay(services, classId, date);
  return day.ok ? { ok: true, value: day.value.plan.due } : day;
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

/** The board with everything but its locked rungs chosen anew. */
export async function reshuffle(services: Services, sheetId: string): Promise<Result<Sheet>> {
  return editBoard(services, sheetId, ({ board, request }) => {
    const kept = board.rungs.filter(({ locked }) => locked);
    const avoid = board.rungs.filter(({ locked }) => !locked).map(({ question }) => question.text);
    const next = composeBoard({
      ...request,
      seed: hashText(`${board.seed}/again`) >>> 1,
      fixed: new Map(kept.map(({ rung, question }) => [rung, question])),
      avoid: [...(request.avoid ?? []), ...avoid],
    });
    return next.ok
      ? {
          ok: true,
          value: withLocks(
            next.value,
            kept.map(({ rung }) => rung),
          ),
        }
      : next;
  });
}

/** The board with these rungs locked and no others. */
export async function lockRungs(
  services: Services,
  sheetId: string,
  locked: readonly number[],
): Promise<Result<Sheet>> {
  return editBoard(services, sheetId, ({ board }) => ({ ok: true, value: withLocks(board, locked) }));
}

/** Questions that could stand on a rung while the rest of the board stays. */
export async function alternatives(services: Services, sheetId: string, rung: number) {
  const edit = await readEdit(services, sheetId);
  if (!edit.ok) return edit;
  const found = replaceRung(edit.value.board, rung, edit.value.request);
  return {
    ok: true as const,
    value: { alternatives: found.map(({ question, predicted, why }) => ({ question, predicted, why })) },
  };
}

/** The board with one of those alternatives on the rung. */
export async function swapRung(
  services: Services,
  sheetId: string,
  rung: number,
  questionId: string,
): Promise<Result<Sheet>> {
  return editBoard(services, sheetId, ({ board, request }) => {
    const chosen = replaceRung(board, rung, request).find(({ question }) => question.id === questionId);
    if (!chosen)
      return refuse(
        'board.swap',
        'That question no longer fits this board.',
        'Open the list again and choose another.',
      );
    return {
      ok: true,
      value: {
        ...board,
        rungs: board.rungs.map((other) => (other.rung === rung ? { ...chosen, locked: true } : other)),
        proof: withRung(board, chosen, request).proof,
      },
    };
  });
}

async function readDay(services: Services, classId: string, date: string): Promise<Result<Day>> {
  if (parseIsoDate(date) === null)
    return refuse('day.date', `${date} is not a day of the calendar.`, 'Write the day like 2026-02-03.');
  const state = await readClassState(services, classId, date);
  if (!state.ok) return state;
  const recent = await services.store.sheets.list({
    classId,
    from: addDays(date, -RECENT_DAYS),
    to: addDays(date, -1),
  });
  if (!recent.ok) return recent;
  const { schoolClass, settings, children } = state.value;
  const model = children.length > 0 ? modelOn(state.value, date) : typicalClass(schoolClass.years);
  const plan = planDay({
    date,
    terms: settings.terms.map(({ name, first, last }) => ({ name, start: first, end: last })),
    closed: [...state.value.calendar.closed],
    classModel: model,
    settings: { years: schoolClass.years, locale: settings.locale },
    seed: hashText(classId) >>> 1,
    recentNumbers: [...new Set(recent.value.map((sheet) => sheet.number))],
    exposures: exposuresOf(
      recent.value.flatMap(({ date: on, content }) => (on ? [{ on, board: content }] : [])),
    ),
  });
  if (!plan.ok) return plan;
  const avoid = recent.value.flatMap((sheet) => sheet.content.rungs.map(({ question }) => question.text));
  const list = await ownQuestions(services);
  if (!list.ok) return list;
  const own = list.value.onBoards ? ownQuestionsIn(list.value.text) : [];
  return { ok: true, value: { state: state.value, plan: plan.value, model, avoid, own } };
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

function requestFor(day: Day, number: DayNumber, group: BoardGroup, side: BoardSide): BoardRequest {
  const { state, plan } = day;
  const children = state.children.filter(({ year }) => group === 'class' || year === group);
  const years = group === 'class' ? state.schoolClass.years : [group];
  const model =
    group === 'class'
      ? day.model
      : children.length > 0
        ? modelOn(state, plan.date, children)
        : typicalClass(years);
  const seed = plan.boards.find((board) => board.side === side)?.seed ?? 1;
  return {
    number,
    years,
    side,
    seed: group === 'class' ? seed : hashText(`${seed}/${group}`) >>> 1,
    locale: state.settings.locale,
    classModel: model,
    due: plan.due.map(({ skill }) => skill),
    avoid: day.avoid,
    own: day.own,
  };
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

interface Edit {
  readonly sheet: StoredSheet;
  readonly board: Board;
  readonly request: BoardRequest;
  readonly years: readonly number[];
}

async function readEdit(services: Services, sheetId: string): Promise<Result<Edit>> {
  const found = await sheetAndClass(services, sheetId);
  if (!found.ok) return found;
  const { sheet, schoolClass } = found.value;
  const day = await readDay(services, sheet.classId, sheet.date ?? services.clock().today);
  if (!day.ok) return day;
  const number = parseDayNumber(sheet.number, localeOf(sheet.content.locale));
  if (!number.ok) return number;
  const request = requestFor(day.value, number.value, groupOf(sheet, schoolClass.years), sheet.side);
  return {
    ok: true,
    value: {
      sheet,
      board: sheet.content,
      request: { ...request, seed: sheet.seed },
      years: schoolClass.years,
    },
  };
}

async function editBoard(
  services: Services,
  sheetId: string,
  change: (edit: Edit) => Result<Board>,
): Promise<Result<Sheet>> {
  const edit = await readEdit(services, sheetId);
  if (!edit.ok) return edit;
  const untouched = await refuseMarked(services, [edit.value.sheet]);
  if (!untouched.ok) return untouched;
  const board = change(edit.value);
  if (!board.ok) return board;
  const { classId, date } = edit.value.sheet;
  const saved = await services.store.sheets.save({
    classId,
    date,
    content: board.value,
    supersedes: sheetId,
  });
  return saved.ok ? toScreenSheet(services, saved.value, edit.value.years) : saved;
}

/** A board with marks stays as the children saw it. */
async function refuseMarked(services: Services, sheets: readonly StoredSheet[]): Promise<Result<null>> {
  for (const sheet of sheets) {
    const marks = await services.store.marks.ofSheet(sheet.id);
    if (!marks.ok) return marks;
    if (marks.value.length > 0) {
      return refuse(
        'board.marked',
        'This board has marks already, so it stays as the children saw it.',
        'Take the marks back first, or change another day’s board.',
      );
    }
  }
  return { ok: true, value: null };
}

function withLocks(board: Board, locked: readonly number[]): Board {
  const rungs = board.rungs.map(({ locked: _, ...rung }) =>
    locked.includes(rung.rung) ? { ...rung, locked: true } : rung,
  );
  return { ...board, rungs };
}
