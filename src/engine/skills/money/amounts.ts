// Answers in money from a number of cents or pence.
import type { Locale } from '../../numbers/locale.js';
import { rational } from '../../numbers/rational.js';
import { moneyAnswer } from '../../questions/answer.js';

/** An amount of money from a number of cents or pence. */
export function money(minor: number, locale: Locale) {
  return moneyAnswer(rational(minor, 100), locale);
}
