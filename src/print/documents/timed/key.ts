// The adult's key of a form: every answer where its question stands, and the digits up to the end of each row for scoring.
import { digitsIn } from '#engine/activities/timed/digits.js';
import type { TimedForm } from '#engine/activities/timed/timed.js';
import { type PartData, paperData } from '../page-data.js';
import type { TimedComposer } from './compose-timed.js';
import { footOf, sidesOf } from './sheet.js';

/** One page a form that is printed. */
export function* timedKeyParts({ request }: TimedComposer): Generator<PartData> {
  const { levels, sheets, options } = request;
  for (const [at, level] of levels.entries()) {
    for (const [number, form] of level.forms.entries()) {
      if (sheets && !sheets.some((sheet) => sheet.level === at && sheet.form === number)) continue;
      const layout = sidesOf(form, options.largePrint);
      yield {
        kind: 'timed-key',
        pages: 1,
        paper: paperData(request.paper),
        heading: level.title,
        place: level.level === null ? '' : `Level ${level.level}`,
        form: form.form,
        ...layout,
        digits: digitsByRow(form, layout),
        lead: `${form.questions.length} answers, ${form.digits} digits. Circle what is wrong; the child puts it right. The small number after a row counts the digits so far.`,
        foot: footOf(level, form, options.className),
      };
    }
  }
}

/** Digits of all answers up to the end of each row, side by side, in reading order. */
function digitsByRow(
  { questions }: TimedForm,
  { columns, rows, sides }: ReturnType<typeof sidesOf>,
): readonly (readonly number[])[] {
  let total = 0;
  let at = 0;
  return sides.map((side) =>
    Array.from({ length: rows }, (_, row) => {
      const count = Math.max(0, Math.min(columns, side.length - row * columns));
      for (const { answer } of questions.slice(at, at + count)) total += digitsIn(answer.text);
      at += count;
      return total;
    }),
  );
}
