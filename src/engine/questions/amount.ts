// A quantity together with the form in which a question writes it: the same template then serves 47, 3.6, $4.85 and 3/4.
import type { DayKind } from '../numbers/day-number.js';
import { formatDecimal, formatMixed, formatMoney, formatWhole } from '../numbers/format.js';
import type { Locale } from '../numbers/locale.js';
import { decimalPlaces, type Rational, rational } from '../numbers/rational.js';
import { decimalAnswer, fractionAnswer, moneyAnswer, wholeAnswer } from './answer.js';
import type { Answer } from './question.js';

/** Digits after the point beyond which no primary question goes. */
const MOST_PLACES = 4;

/** A rational from a plain whole number, or the rational itself. */
export function exact(value: Rational | number): Rational {
  return typeof value === 'number' ? rational(value) : value;
}

/**
 * The form in which `value` can be written when `wanted` is preferred, or null when that form cannot show it:
 * part-cents, decimals without end. A whole form falls back to a decimal, then to a fraction.
 */
function possibleForm(value: Rational, wanted: DayKind): DayKind | null {
  const places = decimalPlaces(value);
  if (wanted === 'money') return 100 % value.d === 0 ? 'money' : null;
  if (wanted === 'decimal') return places !== null && places <= MOST_PLACES ? 'decimal' : null;
  if (wanted === 'whole' && value.d !== 1) return places !== null && places <= 3 ? 'decimal' : 'fraction';
  return wanted;
}

/** The text of a quantity not below zero in the wanted form ("$4.85", "1 3/4"), or null when the form cannot show it. */
export function amountText(value: Rational | number, form: DayKind, locale: Locale): string | null {
  const v = exact(value);
  if (v.n < 0) return null;
  switch (possibleForm(v, form)) {
    case null:
      return null;
    case 'money':
      return formatMoney(v, locale);
    case 'decimal':
      return formatDecimal(v, locale);
    case 'fraction':
      return v.d === 1 ? formatWhole(v.n, locale) : formatMixed(v, locale);
    case 'whole':
      return formatWhole(v.n, locale);
  }
}

/** The answer with this value in the wanted form, or null when the form cannot show it or it is below zero. */
export function amountAnswer(value: Rational | number, form: DayKind, locale: Locale): Answer | null {
  const v = exact(value);
  if (v.n < 0) return null;
  switch (possibleForm(v, form)) {
    case null:
      return null;
    case 'money':
      return moneyAnswer(v, locale);
    case 'decimal':
      return decimalAnswer(v, locale);
    case 'fraction':
      return v.d === 1 ? wholeAnswer(v.n, locale) : fractionAnswer(v, locale);
    case 'whole':
      return wholeAnswer(v.n, locale);
  }
}

/** The quantity in mathjs syntax, safe inside any product or quotient: "47", "3.6", "(7/4)". */
export function amountExpression(value: Rational | number): string {
  const v = exact(value);
  if (v.d === 1) return v.n < 0 ? `(${v.n})` : String(v.n);
  const places = decimalPlaces(v);
  if (places === null || places > MOST_PLACES || v.n < 0) return `(${v.n}/${v.d})`;
  const digits = String(v.n * (10 ** places / v.d)).padStart(places + 1, '0');
  return `${digits.slice(0, -places)}.${digits.slice(-places)}`;
}
