// A part out of a whole, read off as a fraction.
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { rational } from '../../numbers/rational.js';
import { fractionAnswer } from '../../questions/answer.js';

/** "5 out of 8: 5/8", or "18 out of 96: 18/96 = 3/16" where the fraction is not in lowest terms. */
export function outOf(part: number, all: number, locale: Locale): string {
  const value = rational(part, all);
  const asItStands = value.d === all ? '' : `${part}/${all} = `;
  return `${formatWhole(part, locale)} out of ${formatWhole(all, locale)}: ${asItStands}${fractionAnswer(value, locale).text}`;
}
