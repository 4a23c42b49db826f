// Short lists of numbers around a base, which may be the day's number.
import { formatMoney } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { decimalPlaces, type Rational, rational, toNumber } from '../../numbers/rational.js';
import { moneyAnswer } from '../../questions/answer.js';
import type { Answer } from '../../questions/question.js';
import type { DayNumber } from '../../numbers/day-number.js';
import { quantityAnswer, quantityOn, shown } from '../measuring/quantity.js';

/** How the numbers of a list are written: plain, as fractions, or as money. */
export type Style = 'decimal' | 'fraction' | 'money';

/** A number of the list as printed. */
export function say(value: Rational, style: Style, locale: Locale): string {
  return style === 'money' ? formatMoney(value, locale) : shown(value, locale, style);
}

/** An answer in the style of the list. */
export function answerOf(value: Rational, style: Style, locale: Locale): Answer {
  return style === 'money' ? moneyAnswer(value, locale) : quantityAnswer(value, style, locale);
}

/** "4, 7 and 9". */
export function listText(values: readonly Rational[], style: Style, locale: Locale): string {
  const texts = values.map((value) => say(value, style, locale));
  return `${texts.slice(0, -1).join(', ')} and ${texts[texts.length - 1]}`;
}

/** True when a number of the list has a part beyond the whole. */
export function ragged(values: readonly Rational[]): boolean {
  return values.some((value) => value.d > 1);
}

/** Steps in which neighbours of a whole number are easy to compare: ones, then a hundredth of its size or so. */
function wholeStep(n: number): number {
  if (n < 1000) return 1;
  if (n < 10_000) return n % 100 === 0 ? 100 : 10;
  return n < 100_000 ? 100 : 1000;
}

/** The day's number and the step in which neighbours of it are drawn. */
export function baseOn(
  day: DayNumber,
  locale: Locale,
): { value: Rational; style: Style; step: Rational } | null {
  if (day.kind === 'money') {
    if (100 % day.value.d !== 0 || toNumber(day.value) > 100_000) return null;
    return {
      value: day.value,
      style: 'money',
      step:
        toNumber(day.value) > 500
          ? rational(10)
          : toNumber(day.value) > 20
            ? rational(1, 2)
            : rational(1, 20),
    };
  }
  const item = quantityOn(day, locale, 0.2, 1_000_000, 3);
  if (item === null) return null;
  if (day.kind === 'fraction')
    return item.value.d <= 12
      ? { value: item.value, style: 'fraction', step: rational(1, item.value.d) }
      : null;
  const places = decimalPlaces(item.value) ?? 0;
  return {
    value: item.value,
    style: 'decimal',
    step: places === 0 ? rational(wholeStep(item.value.n)) : rational(1, 10 ** places),
  };
}
