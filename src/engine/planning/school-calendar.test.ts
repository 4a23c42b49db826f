import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import {
  isSchoolDay,
  makeSchoolCalendar,
  nextSchoolDay,
  placeInTerm,
  type SchoolCalendar,
  schoolDayIndex,
  schoolDays,
  schoolYearOf,
  type Term,
} from './school-calendar.js';

const TERMS: readonly Term[] = [
  { name: 'Term 1', start: '2026-01-28', end: '2026-04-02' },
  { name: 'Term 2', start: '2026-04-20', end: '2026-06-26' },
];

function calendarOf(
  terms: readonly Term[] = TERMS,
  closed: readonly string[] = ['2026-03-09'],
): SchoolCalendar {
  const made = makeSchoolCalendar(terms, closed);
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

describe('school days', () => {
  it('agree with a Temporal polyfill walked day by day', () => {
    const calendar = calendarOf();
    let day = Temporal.PlainDate.from('2026-01-01');
    let count = 0;
    while (day.toString() < '2026-08-01') {
      const iso = day.toString();
      const inTerm = TERMS.some(
        (term) =>
          Temporal.PlainDate.compare(day, term.start) >= 0 && Temporal.PlainDate.compare(day, term.end) <= 0,
      );
      const expected = inTerm && day.dayOfWeek <= 5 && iso !== '2026-03-09';
      expect(isSchoolDay(calendar, iso)).toBe(expected);
      if (expected) count++;
      expect(schoolDayIndex(calendar, iso)).toBe(expected ? count : null);
      day = day.add({ days: 1 });
    }
    expect(schoolDays(calendar)).toHaveLength(count);
  });

  it('finds the next one over weekends, closed days, holidays, and none after the last', () => {
    const calendar = calendarOf();
    expect(nextSchoolDay(calendar, '2026-02-04')).toBe('2026-02-05');
    expect(nextSchoolDay(calendar, '2026-03-06')).toBe('2026-03-10');
    expect(nextSchoolDay(calendar, '2026-04-02')).toBe('2026-04-20');
    expect(nextSchoolDay(calendar, '2026-06-26')).toBeNull();
  });

  it('names the week of the term, weeks starting on Mondays', () => {
    const calendar = calendarOf();
    expect(placeInTerm(calendar, '2026-01-28')?.text).toBe('week 1 of Term 1');
    expect(placeInTerm(calendar, '2026-02-02')?.text).toBe('week 2 of Term 1');
    expect(placeInTerm(calendar, '2026-05-06')?.text).toBe('week 3 of Term 2');
    expect(placeInTerm(calendar, '2026-04-10')).toBeNull();
  });

  it('puts terms in order and spans the school year', () => {
    expect(schoolYearOf(calendarOf([...TERMS].reverse()))).toEqual({
      start: '2026-01-28',
      end: '2026-06-26',
    });
    expect(schoolYearOf(calendarOf([], []))).toBeNull();
  });
});

describe('makeSchoolCalendar', () => {
  it.each([
    [[{ name: 'Term 1', start: '2026-02-30', end: '2026-04-02' }], [], 'calendar.date', 'Term 1'],
    [[{ name: 'Term 1', start: '2026-02-03', end: 'soon' }], [], 'calendar.date', 'soon'],
    [TERMS, ['3/9/2026'], 'calendar.date', '3/9/2026'],
    [[{ name: 'Term 1', start: '2026-04-02', end: '2026-01-28' }], [], 'calendar.order', 'before it starts'],
    [
      [TERMS[0] as Term, { name: 'Term 2', start: '2026-04-02', end: '2026-06-26' }],
      [],
      'calendar.overlap',
      'Term 2',
    ],
  ] as const)('refuses bad dates and says where (%#)', (terms, closed, code, part) => {
    const made = makeSchoolCalendar(terms, closed);
    expect(made).toMatchObject({ ok: false, error: { code } });
    expect(made.ok ? '' : made.error.message).toContain(part);
  });
});
