// The shape of an answer that paper can print in advance: the decimal point with a cell a digit, the fraction bar, the
// colon of a clock, a currency sign or unit. Whoever reads handwriting, child, teacher or camera, then errs less.
import type { Question } from '#engine/questions/question.js';

export type AnswerForm =
  | { readonly form: 'plain'; readonly before: string; readonly after: string }
  | {
      readonly form: 'decimal';
      readonly before: string;
      readonly after: string;
      readonly whole: number;
      readonly places: number;
    }
  | { readonly form: 'fraction'; readonly mixed: boolean }
  | { readonly form: 'clock' };

const PLAIN: AnswerForm = { form: 'plain', before: '', after: '' };
const AMOUNT = /^([$\u00a3]?)(\d[\d\u00a0,]*)(?:\.(\d+))?(?:\u00a0?([^\d\s.,:/]{1,4}))?$/u;
/** More cells than this in one box are too narrow to write in, so the box stays plain. */
const MOST_CELLS = 5;

/**
 * The form printed into the answer box of a question. Cells are counted over the answer and its typical wrong answers
 * alike, so that the form does not give the right one away; a form that cannot hold them all is not used.
 */
export function answerForm(question: Pick<Question, 'answer' | 'slips'>): AnswerForm {
  const { kind, text } = question.answer;
  const texts = [text, ...question.slips.map((slip) => slip.text)];
  if (kind === 'fraction')
    return { form: 'fraction', mixed: texts.some((one) => /^\d+[ \u00a0]\d/.test(one)) };
  if (kind === 'time') return /^\d{1,2}:\d\d$/.test(text) ? { form: 'clock' } : PLAIN;
  if (kind !== 'number' && kind !== 'decimal' && kind !== 'money') return PLAIN;
  const amount = AMOUNT.exec(text);
  if (!amount) return PLAIN;
  const sign = { before: amount[1] ?? '', after: amount[4] ?? '' };
  const cells = amount[3] === undefined ? null : cellsFor(texts, sign);
  return cells ? { form: 'decimal', ...sign, ...cells } : { form: 'plain', ...sign };
}

function cellsFor(
  texts: readonly string[],
  sign: { before: string; after: string },
): { whole: number; places: number } | null {
  let whole = 2;
  let places = 1;
  for (const text of texts) {
    const amount = AMOUNT.exec(text);
    if (!amount || (amount[1] ?? '') !== sign.before) continue;
    whole = Math.max(whole, (amount[2] as string).replace(/\D/g, '').length);
    places = Math.max(places, (amount[3] ?? '').length);
  }
  return whole + places <= MOST_CELLS ? { whole, places } : null;
}

/** The form, or a plain box where digit cells would be narrower than a child can write: 3.6 mm. */
export function narrowForm(form: AnswerForm, widthMm: number): AnswerForm {
  if (form.form !== 'decimal') return form;
  const signs = (form.before ? 4.2 : 0) + (form.after ? 2.4 + 1.8 * form.after.length : 0);
  const cell = (widthMm - signs - 2.6) / (form.whole + form.places);
  return cell < 3.6 ? { form: 'plain', before: form.before, after: form.after } : form;
}
