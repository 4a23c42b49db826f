// The day's number: what a teacher may type, parsed once at the edge into a closed set of kinds.
import { formatDecimal, formatFraction, formatMixed, formatMoney, formatWhole } from './format.js';
import type { Locale } from './locale.js';
import { floor, type Rational, rational, ZERO, compare } from './rational.js';

export const DAY_KINDS = ['whole', 'decimal', 'money', 'fraction'] as const;
export type DayKind = (typeof DAY_KINDS)[number];

/** The number a board is about. `text` is its one printed form: "47", "3.6", "$4.85", "3/4", "1 3/4". */
export interface DayNumber {
  readonly kind: DayKind;
  readonly value: Rational;
  readonly text: string;
}

export type DayNumberResult =
  | { ok: true; value: DayNumber }
  | { ok: false; error: { code: string; message: string; hint: string } };

function refuse(code: string, message: string, hint: string): DayNumberResult {
  return { ok: false, error: { code, message, hint } };
}

/**
 * Reads the day's number: a whole number from 1 to 1 000 000, a decimal of up to 3 places, an amount of money
 * in the locale's currency, or a fraction or mixed number with denominator 2 to 100.
 */
export function parseDayNumber(input: string, locale: Locale): DayNumberResult {
  const text = input
    .trim()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/(?<=\d)[\u00a0 ,](?=\d{3}(\D|$))/g, '');
  const hint = 'Try a number like 47, 3.6, ' + formatMoney(rational(97, 20), locale) + ' or 3/4.';
  let match: RegExpExecArray | null;
  if ((match = /^(\d{1,7})$/.exec(text))) {
    const value = Number(match[1]);
    if (value < 1 || value > 1_000_000)
      return refuse('number.range', `The number ${input.trim()} is outside 1 to 1 000 000.`, hint);
    return { ok: true, value: { kind: 'whole', value: rational(value), text: formatWhole(value, locale) } };
  }
  if ((match = /^(\d{0,6})\.(\d{1,3})$/.exec(text))) {
    const places = (match[2] as string).length;
    const value = rational(Number(match[1] + (match[2] as string)), 10 ** places);
    if (value.n === 0) return refuse('number.zero', 'The number must be more than 0.', hint);
    if (value.d === 1)
      return { ok: true, value: { kind: 'whole', value, text: formatWhole(value.n, locale) } };
    return { ok: true, value: { kind: 'decimal', value, text: formatDecimal(value, locale) } };
  }
  if ((match = /^[$£](\d{1,5})(?:\.(\d{2}))?$/.exec(text)) || (match = /^(?:)(\d{1,3})[cp¢]$/.exec(text))) {
    const isMinor = /[cp¢]$/.test(text);
    const minor = isMinor ? Number(match[1]) : Number(match[1]) * 100 + Number(match[2] ?? 0);
    const symbol = text.startsWith('£') || text.endsWith('p') ? '£' : '$';
    if (symbol !== locale.currency.symbol)
      return refuse(
        'number.currency',
        `This class counts in ${locale.currency.mainName[1]}, so ${input.trim()} cannot be used.`,
        hint,
      );
    if (minor === 0) return refuse('number.zero', 'The amount must be more than nothing.', hint);
    const value = rational(minor, 100);
    return { ok: true, value: { kind: 'money', value, text: formatMoney(value, locale) } };
  }
  if ((match = /^(?:(\d{1,3})\s+)?(\d{1,4})\/(\d{1,3})$/.exec(text))) {
    const whole = Number(match[1] ?? 0);
    const n = Number(match[2]);
    const d = Number(match[3]);
    if (d < 2 || d > 100)
      return refuse('number.denominator', `The bottom number of ${input.trim()} must be 2 to 100.`, hint);
    const value = rational(whole * d + n, d);
    if (compare(value, ZERO) <= 0) return refuse('number.zero', 'The number must be more than 0.', hint);
    if (value.d === 1)
      return { ok: true, value: { kind: 'whole', value, text: formatWhole(value.n, locale) } };
    return {
      ok: true,
      value: { kind: 'fraction', value, text: floor(value) > 0 ? formatMixed(value) : formatFraction(value) },
    };
  }
  return refuse('number.unread', `“${input.trim().slice(0, 40)}” is not a number Afterbell can use.`, hint);
}
