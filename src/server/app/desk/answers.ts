// From stored marks to the answers that the learner model takes in.
import type { Result } from '#api/problem.js';
import type { Board } from '#engine/activities/board/board.js';
import { countedCells } from '#engine/learning/counted.js';
import type { Answered } from '#engine/learning/update.js';
import { localeOf } from '#engine/numbers/locale.js';
import { checkAnswer } from '#engine/questions/check-answer.js';
import type { Question } from '#engine/questions/question.js';
import type { Mark, Sheet } from '#store/records.js';
import type { Services } from '../services.js';

/** One counted cell with everything that a screen may want to show about it. */
export interface AnswerRecord extends Answered {
  readonly question: Question;
  readonly state: 'right' | 'wrong' | 'blank';
  readonly typed: string;
}

/** The counted answers of every child of a class, by child id, in the order of the boards' dates. */
export async function answersOfClass(
  services: Services,
  classId: string,
): Promise<Result<Map<string, AnswerRecord[]>>> {
  const sheets = await services.store.sheets.list({ classId, withSuperseded: true, limit: 1000 });
  if (!sheets.ok) return sheets;
  const marks = await services.store.marks.ofClass(classId);
  if (!marks.ok) return marks;
  const byId = new Map(sheets.value.map((sheet) => [sheet.id, sheet]));
  const bySlip = new Map<string, Mark[]>();
  for (const mark of marks.value) {
    if (mark.state === 'absent') continue;
    const key = `${mark.sheetId}|${mark.childId}`;
    const slip = bySlip.get(key);
    if (slip) slip.push(mark);
    else bySlip.set(key, [mark]);
  }
  const out = new Map<string, AnswerRecord[]>();
  for (const slip of bySlip.values()) {
    const [first] = slip;
    const sheet = first && byId.get(first.sheetId);
    if (!first || !sheet) continue;
    const answers = out.get(first.childId) ?? [];
    answers.push(...answersOnSheet(slip, sheet));
    out.set(first.childId, answers);
  }
  return { ok: true, value: out };
}

function answersOnSheet(slip: readonly Mark[], sheet: Sheet): AnswerRecord[] {
  const board: Board = sheet.content;
  const on = sheet.date ?? sheet.createdAt.slice(0, 10);
  const cells = slip.map((mark) => ({ ...mark, state: mark.state as 'right' | 'wrong' | 'blank' }));
  return countedCells(cells, board.rungs).flatMap((cell) => {
    const asked = board.rungs.find(({ rung }) => rung === cell.rung);
    if (!asked) return [];
    const { question, predicted } = asked;
    const slips =
      cell.state === 'wrong' && cell.text !== ''
        ? checkAnswer(question, cell.text, localeOf(board.locale)).slips
        : [];
    return [
      {
        skill: question.skill,
        difficulty: question.difficulty,
        right: cell.state === 'right',
        on,
        questionId: question.id,
        slips: slips.map(({ misconception }) => misconception),
        chances: [...new Set(question.slips.map(({ misconception }) => misconception))],
        expected: predicted,
        question,
        state: cell.state,
        typed: cell.text,
      },
    ];
  });
}
