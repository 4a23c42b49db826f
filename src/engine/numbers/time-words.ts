// The clock as it is spoken, both ways: "quarter past seven", "twenty-five to eight", "seven forty-five".
// Saying to the nearest minute with "past" up to the half hour and "to" after it is common practice in classrooms of all
// three locales; "after", "till" and "of" (heard in the US) are understood, "past" and "to" are written.
import type { Locale } from './locale.js';
import { parseWholeWords, wholeToWords } from './words.js';

/** A time of day that was read. On a 12-hour dial without "am" or "pm" the half of the day stays open. */
export interface ClockReading {
  /** Minutes after midnight, 0 to 1439; below 720 when the half is open. */
  readonly minutes: number;
  /** False when the text leaves open whether it is before or after noon. */
  readonly halfKnown: boolean;
}

const NAMED_MINUTES: Readonly<Record<number, string>> = { 15: 'quarter', 30: 'half' };

function hourWord(hour: number, locale: Locale): string {
  return wholeToWords(((hour + 11) % 12) + 1, locale);
}

/** "quarter past seven", "three minutes past seven", "seven o’clock": minutes after midnight as spoken on a 12-hour dial. */
export function clockToWords(minutes: number, locale: Locale): string {
  const day = ((minutes % 1440) + 1440) % 1440;
  const hour = Math.floor(day / 60);
  const past = day % 60;
  if (past === 0) return `${hourWord(hour, locale)} o’clock`;
  const isPast = past <= 30;
  const count = isPast ? past : 60 - past;
  const side = isPast ? 'past' : 'to';
  return `${minuteWords(count, locale)} ${side} ${hourWord(isPast ? hour : hour + 1, locale)}`;
}

function minuteWords(count: number, locale: Locale): string {
  const named = NAMED_MINUTES[count];
  if (named !== undefined) return named;
  const words = wholeToWords(count, locale);
  if (count % 5 === 0) return words;
  return count === 1 ? `${words} minute` : `${words} minutes`;
}

/** "seven forty-five", "seven oh three", "seven o’clock": the time as a digital 12-hour clock is read aloud. */
export function digitalToWords(minutes: number, locale: Locale): string {
  const day = ((minutes % 1440) + 1440) % 1440;
  const past = day % 60;
  const hour = hourWord(Math.floor(day / 60), locale);
  if (past === 0) return `${hour} o’clock`;
  return `${hour} ${past < 10 ? 'oh ' : ''}${wholeToWords(past, locale)}`;
}

type DayHalf = 'am' | 'pm';

const HALF_SUFFIXES: readonly { readonly pattern: RegExp; readonly half: DayHalf | null }[] = [
  { pattern: / ?(?:a\.?m\.?|in the morning)$/, half: 'am' },
  { pattern: / ?(?:p\.?m\.?|in the (?:afternoon|evening))$/, half: 'pm' },
  { pattern: /$/, half: null },
];

/** Splits "am", "pm" or "in the morning" from the end of folded text; the half is null when there is none. */
export function splitDayHalf(text: string): { readonly rest: string; readonly half: DayHalf | null } {
  for (const { pattern, half } of HALF_SUFFIXES) {
    const match = pattern.exec(text);
    if (match) return { rest: text.slice(0, match.index).trim(), half };
  }
  return { rest: text, half: null };
}

/** The reading of a time on the 12-hour dial (hour 1 to 12) with the half of the day, if it is known. */
export function readDial(hour: number, minute: number, half: DayHalf | null): ClockReading {
  const minutes = ((hour % 12) * 60 + minute + 720) % 720;
  return { minutes: half === 'pm' ? minutes + 720 : minutes, halfKnown: half !== null };
}

/**
 * Reads a spoken clock time: "quarter past seven", "twenty-five to 8", "3 minutes after seven", "seven forty-five",
 * "half seven" (British for 7:30), "8 o'clock", "noon", each also with "am", "pm" or "in the morning". Null otherwise.
 */
export function parseClockWords(text: string): ClockReading | null {
  const plain = text
    .toLowerCase()
    .replace(/[\u2018\u2019]/g, "'")
    .replace(/\s+/g, ' ')
    .trim();
  if (plain === 'noon' || plain === 'midday') return { minutes: 720, halfKnown: true };
  if (plain === 'midnight') return { minutes: 0, halfKnown: true };
  const { rest, half } = splitDayHalf(plain);
  return parseOClock(rest, half) ?? parsePastOrTo(rest, half) ?? parseHourAndMinute(rest, half);
}

function count(text: string, low: number, high: number): number | null {
  const value = /^\d{1,2}$/.test(text) ? Number(text) : parseWholeWords(text);
  return value !== null && value >= low && value <= high ? value : null;
}

function parseOClock(text: string, half: DayHalf | null): ClockReading | null {
  const match = /^(.+?) ?o'? ?clock$/.exec(text);
  const hour = match ? count(match[1] as string, 1, 12) : half === null ? null : count(text, 1, 12);
  return hour === null ? null : readDial(hour, 0, half);
}

const PAST_OR_TO =
  /^(?:an? )?(?<spoken>.+?)(?: min(?:ute)?s?)? (?<side>past|after|to|till|til|before|of) (?<hour>.+?)(?: ?o'? ?clock)?$/;
const BRITISH_HALF = /^(?<spoken>half) ?(?<hour>\S+)$/;

function parsePastOrTo(text: string, half: DayHalf | null): ClockReading | null {
  const groups = (PAST_OR_TO.exec(text) ?? BRITISH_HALF.exec(text))?.groups;
  if (!groups) return null;
  const { spoken = '', side = 'past' } = groups;
  const isPast = side === 'past' || side === 'after';
  const hour = count(groups['hour'] ?? '', 1, 12);
  const minute = spoken === 'quarter' ? 15 : spoken === 'half' ? 30 : count(spoken, 1, 59);
  if (hour === null || minute === null || (spoken === 'half' && !isPast)) return null;
  return readDial(hour, isPast ? minute : -minute, half);
}

function parseHourAndMinute(text: string, half: DayHalf | null): ClockReading | null {
  const words = text.split(' ');
  const hour = count(words[0] ?? '', 1, 12);
  const rest = words.slice(1).join(' ');
  const oh = /^(?:oh|zero|o) (.+)$/.exec(rest);
  const minute = oh ? count(oh[1] as string, 1, 9) : count(rest, 10, 59);
  return hour === null || minute === null ? null : readDial(hour, minute, half);
}
