// Wrong whole numbers -> proposed slips.
import type { Locale } from '../../numbers/locale.js';
import { wholeAnswer } from '../answer.js';
import type { DraftSlip } from '../draft.js';
import type { MisconceptionId } from '../misconceptions.js';

/** Slips for wrong whole answers, in order. Null, fractional and (unless `signed`) negative values are left out. */
export function wholeSlips(
  wrong: readonly (readonly [MisconceptionId, number | null])[],
  locale: Locale,
  signed = false,
): DraftSlip[] {
  const out: DraftSlip[] = [];
  for (const [misconception, value] of wrong) {
    if (value === null || !Number.isSafeInteger(value) || (value < 0 && !signed)) continue;
    out.push({ misconception, answer: wholeAnswer(value, locale) });
  }
  return out;
}
