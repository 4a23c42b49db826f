// Checks on what callers hand in, shared by the aggregates; each throws a Refusal, which the session returns as a value.
import { isIsoDate, Refusal } from './columns.js';

/** Longest name or alias, in UTF-16 units; a pasted essay is a mistake. */
const NAME_LENGTH = 120;

/** The name without surrounding blanks. */
export function requireName(name: string, label: string): string {
  const trimmed = name.trim();
  if (trimmed === '') throw new Refusal('input.invalid', `${label} is empty.`, 'Type a name.');
  return requireShort(trimmed, label);
}

/** The text without surrounding blanks, perhaps empty. */
export function requireShort(text: string, label: string): string {
  const trimmed = text.trim();
  if (trimmed.length > NAME_LENGTH) {
    throw new Refusal('input.invalid', `${label} is longer than ${NAME_LENGTH} characters.`, 'Shorten it.');
  }
  return trimmed;
}

/** A school year, 0 (Foundation) to 6. */
export function requireYear(year: number): number {
  if (Number.isInteger(year) && year >= 0 && year <= 6) return year;
  throw new Refusal(
    'input.invalid',
    `Year ${String(year)} is not a year of primary school.`,
    'Use 0 (Foundation) to 6.',
  );
}

/** At most `most` of them: more is a mistake, and would stall everyone else. */
export function requireAtMost(items: readonly unknown[], most: number, label: string): void {
  if (items.length > most) {
    throw new Refusal('input.invalid', `${label} are more than ${most} at once.`, 'Send fewer at a time.');
  }
}

/** Both days, the first not after the last. */
export function requireSpan(span: {
  readonly name: string;
  readonly first: string;
  readonly last: string;
}): void {
  if (!isIsoDate(span.first) || !isIsoDate(span.last)) {
    throw new Refusal(
      'date.invalid',
      `“${span.name}” has a day that is not in the calendar.`,
      'Write days as year-month-day: 2026-11-25.',
    );
  }
  if (span.first > span.last) {
    throw new Refusal(
      'date.invalid',
      `“${span.name}” ends before it begins.`,
      'Exchange its first and last day.',
    );
  }
}

/** Refuses for something that is not there, in one sentence. */
export function missing(what: string): Refusal {
  return new Refusal('not.found', `${what} is not here (any more).`, 'Go back and choose again.');
}
