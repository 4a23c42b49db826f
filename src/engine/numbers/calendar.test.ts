import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  addMonths,
  dayNameOf,
  daysBetween,
  daysInMonth,
  isLeapYear,
  monthName,
  parseIsoDate,
  toIsoDate,
  weekdayOf,
} from './calendar.js';

// Outside judge throughout: the Temporal polyfill "temporal-polyfill".
const days = fc
  .integer({ min: 0, max: 3_652_058 })
  .map((count) => Temporal.PlainDate.from('0001-01-01').add({ days: count }));

describe('the calendar', () => {
  it('agrees with Temporal on weekdays, distances and steps', () => {
    fc.assert(
      fc.property(days, days, fc.integer({ min: -2000, max: 2000 }), (a, b, step) => {
        const iso = a.toString();
        expect(toIsoDate(parseIsoDate(iso) ?? { year: 0, month: 0, day: 0 })).toBe(iso);
        expect(weekdayOf(iso)).toBe(a.dayOfWeek);
        expect(daysBetween(iso, b.toString())).toBe(a.until(b, { largestUnit: 'day' }).days);
        const later = a.add({ days: step });
        if (later.year >= 1 && later.year <= 9999) expect(addDays(iso, step)).toBe(later.toString());
        const months = Math.trunc(step / 20);
        const laterMonth = a.add({ months });
        if (laterMonth.year >= 1 && laterMonth.year <= 9999)
          expect(addMonths(iso, months)).toBe(laterMonth.toString());
      }),
      { numRuns: 4000 },
    );
  });

  it('agrees with Temporal on every month of 1600 to 2400', () => {
    for (let year = 1600; year <= 2400; year++) {
      const first = Temporal.PlainDate.from({ year, month: 1, day: 1 });
      expect(isLeapYear(year)).toBe(first.inLeapYear);
      for (let month = 1; month <= 12; month++)
        expect(daysInMonth(year, month)).toBe(first.with({ month }).daysInMonth);
    }
  });

  it('steps over every day of 1899 to 2101 in order', () => {
    let day = Temporal.PlainDate.from('1899-12-30');
    for (let iso = '1899-12-30'; iso < '2101-03-02'; iso = addDays(iso, 1)) {
      expect(iso).toBe(day.toString());
      day = day.add({ days: 1 });
    }
  });

  it('names days and months', () => {
    expect(dayNameOf('2026-03-09')).toBe('Monday');
    expect(monthName(12)).toBe('December');
    expect(() => monthName(13)).toThrow(RangeError);
  });

  it.each(['2026-02-29', '2026-13-01', '2026-00-10', '0000-01-01', '2026-1-1', '9 March 2026', ''])(
    'refuses “%s”',
    (text) => {
      expect(parseIsoDate(text)).toBeNull();
    },
  );

  it('throws off the calendar', () => {
    expect(() => addDays('9999-12-31', 1)).toThrow(RangeError);
    expect(() => addDays('0001-01-01', -1)).toThrow(RangeError);
    expect(addDays('9999-12-30', 1)).toBe('9999-12-31');
  });
});
