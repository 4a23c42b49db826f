import { describe, expect, it } from 'vitest';
import { addDays, dayCount } from '../numbers/calendar.js';
import { schoolPosition, usualSchoolYear } from './school-year.js';

describe('schoolPosition', () => {
  const schoolYear = { start: '2026-01-28', end: '2026-12-18' };
  const on = (date: string, year = 4) => schoolPosition(year, dayCount(date), schoolYear);

  it('runs from the end of last year to the end of this one', () => {
    expect(on('2026-01-28')).toBe(3);
    expect(on('2026-12-18')).toBe(4);
    expect(on('2026-07-09')).toBeCloseTo(3.5, 1);
    expect(on('2026-07-09', 0)).toBeCloseTo(-0.5, 1);
  });

  it('never falls and never jumps over several years, and stands still in the holidays', () => {
    for (let date = '2024-02-01'; date < '2027-06-01'; date = addDays(date, 1)) {
      const step = on(addDays(date, 1)) - on(date);
      expect(step).toBeGreaterThanOrEqual(0);
      expect(step).toBeLessThan(0.01);
    }
    expect(on('2025-12-25')).toBe(on('2026-01-10'));
  });
});

describe('usualSchoolYear', () => {
  it('spans the calendar year in Australia and the autumn to summer elsewhere', () => {
    expect(usualSchoolYear('2026-03-02')).toEqual({ start: '2026-01-28', end: '2026-12-18' });
    expect(usualSchoolYear('2026-03-02', 'en-GB')).toEqual({ start: '2025-09-01', end: '2026-07-20' });
    expect(usualSchoolYear('2026-09-02', 'en-US')).toEqual({ start: '2026-08-20', end: '2027-06-10' });
  });
});
