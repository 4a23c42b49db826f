// Column types that check what goes into the database: text PostgreSQL can hold, real days, real moments.
// Every value passes through its column, so nothing unchecked can reach a query.
import { customType } from 'drizzle-orm/pg-core';
import { refuse, type StoreError, type StoreErrorCode } from './result.js';

/** Carries an expected refusal out of a query under construction; the session turns it into a Result. */
export class Refusal extends Error {
  readonly error: StoreError;

  constructor(code: StoreErrorCode, message: string, hint: string) {
    super(message);
    this.name = 'Refusal';
    this.error = refuse(code, message, hint).error;
  }
}

const LONE_SURROGATE = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;

/** Throws a Refusal when the text holds a zero byte or half a character, which no database keeps. */
export function requireText(text: string, label: string): string {
  if (typeof text !== 'string') {
    throw new Refusal('input.invalid', `${label} must be text.`, 'Send it as text.');
  }
  if (text.includes('\0')) {
    throw new Refusal(
      'text.invalid',
      `${label} contains a zero byte, which cannot be stored.`,
      'Delete the invisible character, or type the text again.',
    );
  }
  if (LONE_SURROGATE.test(text)) {
    throw new Refusal(
      'text.invalid',
      `${label} contains half a character, which cannot be stored.`,
      'Type the text again, or save the file as UTF-8.',
    );
  }
  return text;
}

/** True for a day that exists, written "2026-11-25". */
export function isIsoDate(text: unknown): text is string {
  if (typeof text !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const time = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(text) && !text.startsWith('0000');
}

/** True for a moment in UTC, written "2026-11-25T09:30:00Z" with or without a fraction of a second. */
export function isIsoInstant(text: unknown): text is string {
  return (
    typeof text === 'string' &&
    /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{1,3})?Z$/.test(text) &&
    isIsoDate(text.slice(0, 10)) &&
    !Number.isNaN(Date.parse(text))
  );
}

/** A text column; `label` names it in messages ("The given name"). */
export function words(name: string, label: string) {
  return customType<{ data: string; driverData: string }>({
    dataType: () => 'text',
    toDriver: (value) => requireText(value, label),
  })(name);
}

/** A calendar day. */
export function day(name: string, label: string) {
  return customType<{ data: string; driverData: string }>({
    dataType: () => 'date',
    toDriver: (value) => {
      if (isIsoDate(value)) return value;
      const shown = String(value).slice(0, 40).replaceAll('\0', ' ');
      throw new Refusal(
        'date.invalid',
        `${label}, “${shown}”, is not a day of the calendar.`,
        'Write it as year-month-day: 2026-11-25.',
      );
    },
  })(name);
}

/** A moment, to the millisecond. */
export function instant(name: string, label: string) {
  return customType<{ data: string; driverData: string }>({
    dataType: () => 'timestamp (3) with time zone',
    toDriver: (value) => {
      if (isIsoInstant(value)) return value;
      throw new Refusal(
        'date.invalid',
        `${label} is not a moment in UTC.`,
        'Write it like 2026-11-25T09:30:00Z.',
      );
    },
    fromDriver: (value) => new Date(value).toISOString(),
  })(name);
}

/** A JSON document. */
export function document<T>(name: string, label: string) {
  return customType<{ data: T; driverData: unknown }>({
    dataType: () => 'jsonb',
    toDriver: (value) => {
      // Text is checked before it becomes JSON: afterwards a zero byte hides behind an escape.
      return JSON.stringify(value, (key, part: unknown) => {
        requireText(key, label);
        return typeof part === 'string' ? requireText(part, label) : part;
      });
    },
    fromDriver: (value) => (typeof value === 'string' ? JSON.parse(value) : value) as T,
  })(name);
}
