// Constructors for answers: the one place where an exact value gets its printed form.
import { writtenValue, type Written } from './slips/fraction-operations.js';
import {
  formatClock,
  formatDecimal,
  formatDuration,
  formatFraction,
  formatMixed,
  formatMoney,
  formatWhole,
} from '../numbers/format.js';
import type { Locale } from '../numbers/locale.js';
import { type Rational, rational, toValue } from '../numbers/rational.js';
import type { Answer } from './question.js';

/** A whole number: 85. */
export function wholeAnswer(value: number, locale: Locale): Answer {
  return { kind: 'number', text: formatWhole(value, locale), value: String(value + 0) };
}

/** A terminating decimal with at least `places` digits after the point: 3.6. A whole value becomes kind "number" unless places > 0. */
export function decimalAnswer(value: Rational, locale: Locale, places = 0): Answer {
  const kind = value.d === 1 && places === 0 ? 'number' : 'decimal';
  return { kind, text: formatDecimal(value, locale, places), value: toValue(value) };
}

/** A fraction, printed mixed ("1 3/4"); whole values print as whole numbers. */
export function fractionAnswer(value: Rational, locale: Locale): Answer {
  const text = value.n >= 0 ? formatMixed(value, locale) : formatFraction(value);
  return { kind: value.d === 1 ? 'number' : 'fraction', text, value: toValue(value) };
}

/** A fraction as a child writes it, not brought to lowest terms: 4/6, 12 6/12. A teacher then sees how it came about. */
export function writtenAnswer(written: Written): Answer {
  const { top, bottom, whole = 0 } = written;
  const text = whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
  return { kind: 'fraction', text, value: toValue(writtenValue(written)) };
}

/** An amount in main units: $4.85. */
export function moneyAnswer(value: Rational, locale: Locale): Answer {
  return { kind: 'money', text: formatMoney(value, locale), value: toValue(value) };
}

/** A time of day, minutes after midnight; on a 12-hour dial `suffix` ("am", "pm", "") is printed after it. */
export function clockAnswer(minutes: number, hours: 12 | 24 = 12, suffix: '' | 'am' | 'pm' = ''): Answer {
  const text = formatClock(minutes, hours) + (suffix ? `\u00a0${suffix}` : '');
  return { kind: 'time', text, value: String(minutes) };
}

/** A length of time in whole minutes: 1 h 25 min. */
export function durationAnswer(minutes: number): Answer {
  return { kind: 'time', text: formatDuration(minutes), value: String(minutes) };
}

/** A word or short phrase. */
export function wordAnswer(text: string): Answer {
  return { kind: 'word', text, value: null };
}

/** One of the choices that the question's text names. */
export function choiceAnswer(text: string): Answer {
  return { kind: 'choice', text, value: null };
}

/** Several values in a fixed order, which the question states: "1, 2, 3, 6". */
export function listAnswer(items: readonly string[]): Answer {
  return { kind: 'list', text: items.join(', '), value: null };
}

/** A whole number followed by a unit, as measures are answered: "47 cm" (the bare number is accepted too). */
export function unitAnswer(value: Rational | number, unit: string, locale: Locale): Answer {
  const exact = typeof value === 'number' ? rational(value) : value;
  const bare = decimalAnswer(exact, locale);
  return { ...bare, text: `${bare.text}${unit.startsWith('°') || unit === '%' ? '' : '\u00a0'}${unit}` };
}
