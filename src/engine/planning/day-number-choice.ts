// Which number suits a class today: kinds take turns over the week, size follows the class years.
import { weekdayOf } from '../numbers/calendar.js';
import { type DayKind, type DayNumber, parseDayNumber } from '../numbers/day-number.js';
import { type Locale, type LocaleId, localeOf } from '../numbers/locale.js';
import { Rng } from '../random/rng.js';

/** How the kinds take turns from Monday to Friday, by the middle year of the class (common practice: three days of
 * whole numbers, other kinds once they have been taught). Weekends count as Friday. */
const WEEKS: readonly { readonly fromYear: number; readonly kinds: readonly DayKind[] }[] = [
  { fromYear: 0, kinds: ['whole', 'whole', 'whole', 'whole', 'whole'] },
  { fromYear: 3, kinds: ['whole', 'whole', 'money', 'whole', 'whole'] },
  { fromYear: 4, kinds: ['whole', 'money', 'whole', 'fraction', 'whole'] },
  { fromYear: 5, kinds: ['whole', 'decimal', 'whole', 'fraction', 'money'] },
];

/** Whole numbers by the middle year: from, to (the range that Australian curriculum years count in, kept to sizes that can be worked in the head). */
const WHOLE_RANGES: readonly (readonly [number, number])[] = [
  [3, 10],
  [6, 20],
  [12, 99],
  [24, 150],
  [24, 360],
  [36, 600],
  [36, 960],
];

/** Numbers tried before a repeat of a recent one is accepted. */
const TRIES = 40;

/**
 * A number for a class on a date (ISO) that is not among the texts of recent ones. The same arguments give the same
 * number. `years` must not be empty.
 */
export function suggestDayNumber(
  years: readonly number[],
  date: string,
  seed: number,
  recent: readonly string[] = [],
  localeId: LocaleId = 'en-AU',
): DayNumber {
  const middle = Math.min(
    6,
    Math.max(0, Math.floor(years.reduce((sum, year) => sum + year, 0) / Math.max(1, years.length))),
  );
  const rng = new Rng(seed).fork(`number/${date}`);
  const locale = localeOf(localeId);
  const week = [...WEEKS].reverse().find((one) => middle >= one.fromYear) ?? WEEKS[0];
  const kind = week?.kinds[Math.min(weekdayOf(date), 5) - 1] ?? 'whole';
  let number = drawNumber(kind, middle, rng, locale);
  for (let i = 0; i < TRIES && recent.includes(number.text); i++)
    number = drawNumber(kind, middle, rng, locale);
  return number;
}

function drawNumber(kind: DayKind, year: number, rng: Rng, locale: Locale): DayNumber {
  const text = textFor(kind, year, rng, locale);
  const parsed = parseDayNumber(text, locale);
  if (!parsed.ok) throw new Error(`drew a number that cannot be read: ${text}`);
  return parsed.value;
}

function textFor(kind: DayKind, year: number, rng: Rng, locale: Locale): string {
  switch (kind) {
    case 'whole':
      return String(wholeFor(year, rng));
    case 'money': {
      const cents = year < 4 ? rng.int(2, 19) * 50 : year === 4 ? rng.int(21, 199) * 5 : rng.int(41, 599) * 5;
      return `${locale.currency.symbol}${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, '0')}`;
    }
    case 'decimal':
      return year < 6 || rng.chance(0.6)
        ? `${rng.int(1, 19)}.${rng.int(1, 9)}`
        : `${rng.int(0, 9)}.${rng.int(1, 9)}${rng.int(1, 9)}`;
    case 'fraction': {
      const bottom = rng.pick(year < 5 ? [2, 3, 4, 5, 8] : [3, 4, 5, 6, 8, 10, 12]);
      const top = rng.int(1, bottom - 1);
      const shared = [2, 3, 5].some((p) => top % p === 0 && bottom % p === 0);
      return shared ? `${bottom - 1}/${bottom}` : `${top}/${bottom}`;
    }
  }
}

/** A whole number in range; multiples of 100 are passed over and numbers with several factors come more often, since
 * more can be asked about them. */
function wholeFor(year: number, rng: Rng): number {
  const [low, high] = WHOLE_RANGES[year] as readonly [number, number];
  let value = rng.int(low, high);
  for (
    let i = 0;
    i < 3 && (value % 100 === 0 || (value % 2 !== 0 && value % 3 !== 0 && rng.chance(0.5)));
    i++
  ) {
    value = rng.int(low, high);
  }
  return value;
}
