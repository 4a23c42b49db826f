// Calendar arithmetic on ISO dates ("2026-03-09"), Gregorian throughout, years 0001 to 9999. It never asks what day it
// is today and knows no time zones: a date here is a square on the wall calendar.
import type { LocaleId } from './locale.js';

export const DAY_NAMES = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;
export type DayName = (typeof DAY_NAMES)[number];

export const MONTH_NAMES: readonly string[] =
  'January February March April May June July August September October November December'.split(' ');

const DAYS_BEFORE_MONTH = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334] as const;
const DAYS_IN_400_YEARS = 146_097;

export interface CalendarDate {
  /** 1 to 9999. */
  readonly year: number;
  /** 1 (January) to 12. */
  readonly month: number;
  /** 1 to 31. */
  readonly day: number;
}

/** True for years with a 29 February: every fourth, but of the hundreds only every fourth (Gregorian rule). */
export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** Days in a month (1 to 12) of a year: 28 to 31. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/** The date that "YYYY-MM-DD" names, or null when there is no such day. */
export function parseIsoDate(text: string): CalendarDate | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!match) return null;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  const exists = year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
  return exists ? { year, month, day } : null;
}

function pad(value: number, width: number): string {
  return String(value).padStart(width, '0');
}

/** "YYYY-MM-DD" of a date. */
export function toIsoDate(date: CalendarDate): string {
  return `${pad(date.year, 4)}-${pad(date.month, 2)}-${pad(date.day, 2)}`;
}

/** The date of an ISO text that must be one. Throws RangeError otherwise: check with {@link parseIsoDate} at the edge. */
export function dateOf(iso: string): CalendarDate {
  const date = parseIsoDate(iso);
  if (date === null) throw new RangeError(`"${iso}" is not a day of the calendar`);
  return date;
}

/** The day's number counted from 0001-01-01, which is day 1 (and was a Monday in this calendar). */
export function dayCount(iso: string): number {
  const { year, month, day } = dateOf(iso);
  const before = year - 1;
  const leapDays = Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400);
  const leapToday = month > 2 && isLeapYear(year) ? 1 : 0;
  return before * 365 + leapDays + (DAYS_BEFORE_MONTH[month - 1] as number) + leapToday + day;
}

/** The ISO date of a {@link dayCount}. Throws RangeError outside the years 1 to 9999. */
export function isoOfDayCount(count: number): string {
  // The mean length of a year gives the year or its neighbour; the loop settles which.
  let year = Math.floor(((count - 1) * 400) / DAYS_IN_400_YEARS) + 1;
  if (!Number.isInteger(count) || year < 1 || year > 9999)
    throw new RangeError(`day ${count} is off the calendar`);
  const firstOf = (y: number) =>
    y > 9999 ? Number.POSITIVE_INFINITY : dayCount(toIsoDate({ year: y, month: 1, day: 1 }));
  while (year > 1 && firstOf(year) > count) year--;
  while (firstOf(year + 1) <= count) year++;
  let month = 1;
  let day = count - firstOf(year) + 1;
  while (month < 12 && day > daysInMonth(year, month)) day -= daysInMonth(year, month++);
  if (day > daysInMonth(year, month)) throw new RangeError(`day ${count} is off the calendar`);
  return toIsoDate({ year, month, day });
}

/** The date `days` later (earlier when negative). */
export function addDays(iso: string, days: number): string {
  return isoOfDayCount(dayCount(iso) + days);
}

/** The same day `months` later (earlier when negative), or the month's last day where that day does not exist. */
export function addMonths(iso: string, months: number): string {
  const { year, month, day } = dateOf(iso);
  const index = year * 12 + (month - 1) + months;
  const [toYear, toMonth] = [Math.floor(index / 12), (((index % 12) + 12) % 12) + 1];
  if (toYear < 1 || toYear > 9999) throw new RangeError(`${iso} and ${months} months is off the calendar`);
  return toIsoDate({ year: toYear, month: toMonth, day: Math.min(day, daysInMonth(toYear, toMonth)) });
}

/** Days from the first date to the second: 1 from a day to the next, negative when the second is earlier. */
export function daysBetween(fromIso: string, toIso: string): number {
  return dayCount(toIso) - dayCount(fromIso);
}

/** 1 (Monday) to 7 (Sunday), as ISO 8601 numbers the week. */
export function weekdayOf(iso: string): number {
  return ((dayCount(iso) - 1) % 7) + 1;
}

/** "Monday" to "Sunday" for a date. */
export function dayNameOf(iso: string): DayName {
  return DAY_NAMES[weekdayOf(iso) - 1] as DayName;
}

/** "January" to "December" for a month from 1 to 12. */
export function monthName(month: number): string {
  const name = MONTH_NAMES[month - 1];
  if (name === undefined) throw new RangeError(`there is no month ${month}`);
  return name;
}

/** "10 March", or "March 10" as American readers write it. */
export function dayAndMonth(day: number, month: string, locale: LocaleId): string {
  return locale === 'en-US' ? `${month} ${day}` : `${day} ${month}`;
}
