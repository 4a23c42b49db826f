// Wrong whole numbers -> proposed slips.
import type { Locale } from '../../numbers/locale.js';
import { unitAnswer, wholeAnswer } from '../answer.js';
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

/** Slips for wrong whole answers with a unit, in order: those that would be left out above are left out here too. */
export function unitSlips(
  wrong: readonly (readonly [MisconceptionId, number | null])[],
  unit: string,
  locale: Locale,
): DraftSlip[] {
  return wrong
    .filter(([, value]) => value !== null && Number.isSafeInteger(value) && value >= 0)
    .map(([misconception, value]) => ({ misconception, answer: unitAnswer(value ?? 0, unit, locale) }));
}

/** The first `most` slips that differ from the right answer and from one another. */
export function tellingSlips(
  right: number,
  wrong: readonly (readonly [MisconceptionId, number | null])[],
  locale: Locale,
  most: number,
): DraftSlip[] {
  const seen = new Set<number | null>([right, null]);
  const telling = wrong.filter(([, value]) => {
    if (seen.has(value) || (value !== null && value < 0)) return false;
    seen.add(value);
    return true;
  });
  return wholeSlips(telling.slice(0, most), locale);
}
