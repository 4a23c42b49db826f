// The child's sheet: half the questions on the front, half on the back, wide enough apart to write in; what was wrong last
// time stands first, outside the count.
import type { Timed, TimedForm } from '#engine/activities/timed/timed.js';
import { qrSvg } from '../../qr.js';
import type { TimedSheetRequest } from '../../timed-request.js';
import { textPieces } from '../../text/rich-text.js';
import { dateInWords, type PartData, paperData } from '../page-data.js';
import type { TimedComposer } from './compose-timed.js';

/** Most facts on the redo row: two lines of four. */
const MOST_REDO = 8;

/** Characters of the longest question that leaves an answer room in a third of the page, in large print. */
const LONGEST_OF_THREE = 9;

/** Two pages a sheet, in the order of the request. */
export function* timedSheetParts({ request, names }: TimedComposer): Generator<PartData> {
  const { levels, options } = request;
  const copies = options.copies ?? 1;
  const asked = request.sheets ?? everyForm(levels);
  for (const sheet of asked) {
    const level = levels[sheet.level];
    const form = level?.forms[sheet.form];
    if (!level || !form) continue;
    yield {
      kind: 'timed-sheet',
      pages: 2 * copies,
      paper: paperData(request.paper),
      copies,
      heading: level.title,
      place: level.level === null ? '' : `Level ${level.level}`,
      form: form.form,
      name: sheet.name === undefined ? null : names.one(sheet.name),
      date: dateInWords(options),
      qr: sheet.id === undefined ? null : { svg: qrSvg(sheet.id), alt: `Code ${sheet.id}`, code: sheet.id },
      redo: (sheet.redo ?? []).slice(0, MOST_REDO).map(({ text }) => textPieces(text)),
      size: options.largePrint ? 20 : 15,
      roomy: level.room === 'roomy',
      ...sidesOf(form, options.largePrint),
      foot: footOf(level, form, options.className),
    };
  }
}

function everyForm(levels: readonly Timed[]): readonly TimedSheetRequest[] {
  return levels.flatMap(({ forms }, level) => forms.map((_, form) => ({ level, form })));
}

/** Front and back, and how many columns and rows each has. */
export function sidesOf(
  { questions }: TimedForm,
  largePrint = false,
): {
  readonly columns: number;
  readonly rows: number;
  readonly sides: readonly (readonly object[])[];
} {
  const half = Math.ceil(questions.length / 2);
  const isLong = questions.some(({ text }) => text.length > LONGEST_OF_THREE);
  const columns = half > 36 ? 4 : largePrint && isLong ? 2 : 3;
  const side = (from: number, to: number) =>
    questions.slice(from, to).map(({ text, answer }, i) => ({
      n: from + i + 1,
      text: textPieces(text),
      answer: textPieces(answer.text),
    }));
  return {
    columns,
    rows: Math.ceil(half / columns),
    sides: [side(0, half), side(half, questions.length)],
  };
}

/** The words that make the sheet again. */
export function footOf(level: Timed, { form }: TimedForm, className: string | undefined): string {
  const place = level.level === null ? level.title : `level ${level.level}`;
  return [className, place, `form ${form}`, `seed ${level.seed}`].filter(Boolean).join('  ·  ');
}
