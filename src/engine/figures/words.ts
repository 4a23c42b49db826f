// The words of alternative texts: counts, lists and numbers as a person would say them.
import { formatWhole, MINUS } from '../numbers/format.js';
import type { Locale } from '../numbers/locale.js';

/** "1 counter", "3 counters": a count with its noun in the right number. */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

const SMALL = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** "two 20-cent coins": a count in words up to twelve, for places where a figure would run into another or open a sentence. */
export function countInWords(count: number, one: string, many = `${one}s`): string {
  return `${SMALL[count] ?? count} ${count === 1 ? one : many}`;
}

/** "a, b and c". */
export function listOf(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/** The text with its first letter a capital. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** How a label is said: "?" is "a question mark", no label is "empty". */
export function spoken(words: string): string {
  return words === '?' ? 'a question mark' : words.trim() === '' ? 'empty' : words;
}

/** "column graph", "bar chart" or "bar graph": what each country's classrooms call it. Common practice. */
export function columnGraph(locale: Locale): string {
  return { 'en-AU': 'column graph', 'en-NZ': 'bar graph', 'en-GB': 'bar chart', 'en-US': 'bar graph' }[
    locale.id
  ];
}

/** "picture graph" or "pictogram". Common practice. */
export function pictureGraph(locale: Locale): string {
  return locale.id === 'en-GB' ? 'pictogram' : 'picture graph';
}

/** "a pencil", "an arrow". */
export function withArticle(noun: string): string {
  return `${/^[aeiou]/i.test(noun) ? 'an' : 'a'} ${noun}`;
}

/** A number of a scale as printed: at most 6 decimals, grouped as the locale writes it, a true minus sign. */
export function numberText(value: number, locale: Locale): string {
  const rounded = Math.round(Math.abs(value) * 1e6) / 1e6;
  const whole = Math.floor(rounded);
  const decimals = String(Math.round((rounded - whole) * 1e6))
    .padStart(6, '0')
    .replace(/0+$/, '');
  const sign = value < 0 && rounded > 0 ? MINUS : '';
  return sign + formatWhole(whole, locale) + (decimals ? `.${decimals}` : '');
}

/** A label written by hand with its digits grouped as {@link numberText} groups them; digits grouped before stay so. */
export function withGroupedDigits(words: string, locale: Locale): string {
  return words.replace(/(?<![\d.])\d{4,}(?![\d.])/, (digits) => formatWhole(Number(digits), locale));
}

/** A number with its unit: "5 cm", "20 °C", "40%"; no gap before % and none when there is no unit. */
export function withUnit(number: string, unit: string): string {
  if (unit === '') return number;
  return unit === '%' ? `${number}%` : `${number}\u00a0${unit}`;
}
