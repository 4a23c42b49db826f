// Changes to one board of a day: all but its locked questions chosen anew, locks, and one question swapped. Each saves a new
// board and leaves the old one as it was.
import type { Result } from '#api/problem.js';
import type { Sheet } from '#api/today.js';
import type { Board } from '#engine/activities/board/board.js';
import type { BoardRequest } from '#engine/activities/board/board-request.js';
import { composeBoard } from '#engine/activities/board/compose.js';
import { replaceRung, withRung } from '#engine/activities/board/replace-rung.js';
import { parseDayNumber } from '#engine/numbers/day-number.js';
import { localeOf } from '#engine/numbers/locale.js';
import { hashText } from '#engine/random/rng.js';
import type { Sheet as StoredSheet } from '#store/records.js';
import { refuse } from '../problems.js';
import type { Services } from '../services.js';
import { readDay, requestFor } from './day-plan.js';
import { groupOf, sheetAndClass, toScreenSheet } from './sheets.js';

interface Edit {
  readonly sheet: StoredSheet;
  readonly board: Board;
  readonly request: BoardRequest;
  readonly years: readonly number[];
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
export async function refuseMarked(
  services: Services,
  sheets: readonly StoredSheet[],
): Promise<Result<null>> {
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
