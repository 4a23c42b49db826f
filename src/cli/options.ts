// Reading option values: each reader returns a checked value or ends the command with one sentence.
import { parseIsoDate } from '#engine/numbers/calendar.js';
import { LOCALES, type Locale, localeOf } from '#engine/numbers/locale.js';
import { UsageFailure } from './failure.js';

/** A whole number within bounds. */
export function readWhole(option: string, text: string, low: number, high: number): number {
  const value = /^-?\d{1,10}$/.test(text.trim()) ? Number(text) : Number.NaN;
  if (!(value >= low && value <= high)) {
    throw new UsageFailure(`${option} ${text}: expected a whole number from ${low} to ${high}.`);
  }
  return value;
}

/** School years: "4-5", "4,5", "F-2" or "4"; F (Foundation) is 0. */
export function readYears(option: string, text: string): number[] {
  const bad = () =>
    new UsageFailure(`${option} ${text}: expected years from F (Foundation) to 6, such as 4-5.`);
  const yearOf = (word: string): number => {
    const match = /^(?:([0-6])|(f|k|p))$/i.exec(word.trim());
    if (!match) throw bad();
    return match[1] === undefined ? 0 : Number(match[1]);
  };
  const years = new Set<number>();
  for (const part of text.split(',')) {
    const [first = '', last = first, ...more] = part.split('-');
    if (more.length > 0) throw bad();
    const [low, high] = [yearOf(first), yearOf(last)];
    if (high < low) throw bad();
    for (let year = low; year <= high; year++) years.add(year);
  }
  return [...years].sort((a, b) => a - b);
}

/** Names between commas: "add.3d, time.later". */
export function readNames(option: string, text: string): string[] {
  const names = text
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  if (names.length === 0)
    throw new UsageFailure(`${option}: expected ids between commas, such as add.3d,time.later.`);
  return names;
}

/** A day of the calendar. */
export function readDate(option: string, text: string): string {
  if (parseIsoDate(text) === null)
    throw new UsageFailure(`${option} ${text}: there is no such day; write it like 2026-02-03.`);
  return text;
}

/** One of a closed list of words. */
export function readWord<T extends string>(option: string, text: string, words: readonly T[]): T {
  const found = words.find((word) => word.toLowerCase() === text.toLowerCase());
  if (found === undefined)
    throw new UsageFailure(
      `${option} ${text}: expected ${words.slice(0, -1).join(', ')} or ${words.at(-1)}.`,
    );
  return found;
}

export function readLocale(text: string): Locale {
  return localeOf(readWord('--locale', text, LOCALES));
}
