// What came of sheets, counted: answers and digits right, facts to put right.
import type { SheetCount } from '#api/timed-room.js';
import { digitsCorrect, digitsIn, perMinute } from '#engine/activities/timed/digits.js';
import type { TimedRecord } from '#engine/activities/timed/levelling.js';
import type { MarkedSheet } from '#engine/activities/timed/redo.js';
import type { Question } from '#engine/questions/question.js';
import type { TimedOutcome, TimedSheet } from '#store/records.js';

type Marked = TimedSheet & { readonly outcome: TimedOutcome };

export function isMarked(sheet: TimedSheet): sheet is Marked {
  return sheet.outcome !== null;
}

/** The questions of the sheet's one form. */
export function questionsOf({ content }: TimedSheet): readonly Question[] {
  return content.forms[0]?.questions ?? [];
}

/** The sheet's counts; a wrong answer that was typed in scores the digits that are right in it. */
export function recordOf(sheet: Marked): TimedRecord {
  const { outcome } = sheet;
  const wrong = new Set(outcome.wrong);
  let digitsRight = 0;
  questionsOf(sheet)
    .slice(0, outcome.attempted)
    .forEach(({ answer }, i) => {
      const place = i + 1;
      if (!wrong.has(place)) digitsRight += digitsIn(answer.text);
      else digitsRight += digitsCorrect(answer.text, outcome.written[String(place)] ?? '');
    });
  return {
    date: sheet.date,
    levelId: sheet.levelId,
    asked: questionsOf(sheet).length,
    attempted: outcome.attempted,
    right: outcome.attempted - wrong.size,
    digitsRight,
    minutes: outcome.minutes,
  };
}

/** A record as charts show it. */
export function toCount({ date, levelId, attempted, right, digitsRight, minutes }: TimedRecord): SheetCount {
  return {
    date,
    levelId,
    attempted,
    right,
    digitsRight,
    digitsPerMinute: minutes === null ? null : perMinute(digitsRight, minutes),
  };
}

/** Which facts of the sheet were right and which wrong, the redo row's included. */
export function markedSheetOf(sheet: Marked): MarkedSheet {
  const { outcome } = sheet;
  const done = questionsOf(sheet).slice(0, outcome.attempted);
  const isWrong = (place: number) => outcome.wrong.includes(place);
  const isRedoWrong = (place: number) => outcome.redoWrong.includes(place);
  return {
    date: sheet.date,
    wrong: [...sheet.redo.filter((_, i) => isRedoWrong(i + 1)), ...done.filter((_, i) => isWrong(i + 1))],
    right: [...sheet.redo.filter((_, i) => !isRedoWrong(i + 1)), ...done.filter((_, i) => !isWrong(i + 1))],
  };
}
