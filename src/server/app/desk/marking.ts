// Marking: a cell is saved as it is typed, and answered only once it is on the disk.
import type { Finding, Mark, MarkEntry, MarkingView, MarksSaved } from '#api/marking.js';
import type { Result } from '#api/problem.js';
import type { Board } from '#engine/activities/board/board.js';
import { type Locale, localeOf } from '#engine/numbers/locale.js';
import { checkAnswer } from '#engine/questions/check-answer.js';
import { misconceptionOf } from '#engine/questions/misconceptions.js';
import type { MarkChange, MarkInput, MarkState } from '#store/records.js';
import { refuse } from '../problems.js';
import type { Services } from '../services.js';
import { absentOn, noteAbsent } from './absences.js';
import { toScreen } from './classes.js';
import { sheetAndClass, toScreenSheet } from './sheets.js';

/** Undo goes back through everything that was marked on a sheet, whichever window or command did it. */
const DESK = 'desk';
const TEACHER = 'teacher';

/** The marking grid of a board. */
export async function markingView(services: Services, sheetId: string): Promise<Result<MarkingView>> {
  const found = await sheetAndClass(services, sheetId);
  if (!found.ok) return found;
  const { sheet, schoolClass } = found.value;
  const children = await services.store.children.list(schoolClass.id);
  if (!children.ok) return children;
  const marks = await services.store.marks.ofSheet(sheetId);
  if (!marks.ok) return marks;
  const screenSheet = await toScreenSheet(services, sheet, schoolClass.years);
  if (!screenSheet.ok) return screenSheet;
  const absent =
    sheet.date === null
      ? { ok: true as const, value: [] }
      : await absentOn(services, schoolClass.id, sheet.date);
  if (!absent.ok) return absent;
  const history = await undoState(services, sheetId);
  if (!history.ok) return history;
  const years = screenSheet.value.group;
  const shown = toScreen(children.value).filter((child) => years === 'class' || child.year === years);
  return {
    ok: true,
    value: {
      sheet: screenSheet.value,
      children: shown.map(({ id, shownAs, year }) => ({
        id,
        shownAs,
        year,
        absent: absent.value.includes(id),
      })),
      marks: marks.value.flatMap((mark) => toScreenMark(mark, sheet.content)),
      ...history.value,
    },
  };
}

/** Saves entries; typed answers are checked against the question. All or nothing. */
export async function saveMarks(
  services: Services,
  sheetId: string,
  batch: { readonly entries: readonly MarkEntry[] },
): Promise<Result<MarksSaved>> {
  const sheet = await services.store.sheets.get(sheetId);
  if (!sheet.ok) return sheet;
  const children = await services.store.children.list(sheet.value.classId, { withLeft: true });
  if (!children.ok) return children;
  const known = new Set(children.value.map(({ id }) => id));
  const board = sheet.value.content;
  const locale = localeOf(board.locale);
  const marks: MarkInput[] = [];
  for (const { childId, rung, state, typed } of batch.entries) {
    if (!known.has(childId))
      return refuse('child.missing', 'A child of these marks is not in this class.', 'Reload the page.');
    const question = board.rungs.find((candidate) => candidate.rung === rung)?.question;
    if (!question)
      return refuse(
        'mark.rung',
        `This board has no rung ${rung}.`,
        `Use a rung from 1 to ${board.rungs.length}.`,
      );
    const text = typed.trim();
    // An answer that is typed decides for itself; without one the given state counts.
    const verdict = text === '' ? state : checkAnswer(question, text, locale).verdict;
    marks.push({ childId, rung, state: verdict, text });
  }
  const saved = await services.store.marks.record({
    sheetId,
    token: DESK,
    by: TEACHER,
    at: services.clock().now,
    marks,
  });
  return saved.ok ? { ok: true, value: toSaved(saved.value, board) } : saved;
}

/** Takes back, or brings back, the last change on a board. */
export async function stepMarks(
  services: Services,
  sheetId: string,
  direction: 'undo' | 'redo',
): Promise<Result<MarksSaved>> {
  const sheet = await services.store.sheets.get(sheetId);
  if (!sheet.ok) return sheet;
  const change = { sheetId, token: DESK, by: TEACHER, at: services.clock().now };
  const stepped = await services.store.marks[direction](change);
  return stepped.ok ? { ok: true, value: toSaved(stepped.value, sheet.value.content) } : stepped;
}

/** Notes that a child was away on the board's day, or was there after all. */
export async function changeAbsent(
  services: Services,
  sheetId: string,
  childId: string,
  absent: boolean,
): Promise<Result<Record<string, never>>> {
  const sheet = await services.store.sheets.get(sheetId);
  if (!sheet.ok) return sheet;
  const { date, classId } = sheet.value;
  if (date === null)
    return refuse('absent.no-day', 'This board belongs to no day.', 'Mark a board of the day instead.');
  return noteAbsent(services, {
    classId,
    date,
    childId,
    absent,
    unrecorded: { number: sheet.value.number, activity: 'board' },
  });
}

/** What a typed wrong answer may tell, in plain words; empty when it matches nothing that is known. */
export function findingsOf(board: Board, rung: number, typed: string, locale: Locale): Finding[] {
  const question = board.rungs.find((candidate) => candidate.rung === rung)?.question;
  if (!question || typed === '') return [];
  const { verdict, slips } = checkAnswer(question, typed, locale);
  if (verdict !== 'wrong') return [];
  return slips.flatMap(({ misconception }) => {
    const known = misconceptionOf(misconception);
    return known ? [{ misconception, does: known.does, help: known.help }] : [];
  });
}

interface StoredMark {
  readonly childId: string;
  readonly rung: number;
  readonly state: MarkState | null;
  readonly text: string;
}

function toScreenMark(mark: StoredMark, board: Board): Mark[] {
  if (mark.state === 'absent') return [];
  const findings =
    mark.state === 'wrong' ? findingsOf(board, mark.rung, mark.text, localeOf(board.locale)) : [];
  return [{ childId: mark.childId, rung: mark.rung, state: mark.state, typed: mark.text, findings }];
}

function toSaved(change: MarkChange, board: Board): MarksSaved {
  return {
    marks: change.changed.flatMap((mark) => toScreenMark(mark, board)),
    canUndo: change.canUndo,
    canRedo: change.canRedo,
  };
}

/** Whether undo and redo are open, told from the sheet's history: undone batches form a stack above the rest. */
async function undoState(
  services: Services,
  sheetId: string,
): Promise<Result<{ canUndo: boolean; canRedo: boolean }>> {
  const events = await services.store.marks.events(sheetId);
  if (!events.ok) return events;
  let done = 0;
  let undone = 0;
  let batch = -1;
  for (const event of events.value) {
    if (event.batch === batch || event.token !== DESK) continue;
    batch = event.batch;
    if (event.action === 'record') [done, undone] = [done + 1, 0];
    else if (event.action === 'undo') [done, undone] = [done - 1, undone + 1];
    else [done, undone] = [done + 1, undone - 1];
  }
  return { ok: true, value: { canUndo: done > 0, canRedo: undone > 0 } };
}
