import { describe, expect, it } from 'vitest';
import { yearName, yearShort, yearsName } from './years.js';

describe('names of school years', () => {
  it('follow the country', () => {
    expect(yearName(0, 'en-AU')).toBe('Foundation');
    expect(yearName(0, 'en-GB')).toBe('Reception');
    expect(yearName(0, 'en-US')).toBe('Kindergarten');
    expect(yearName(4, 'en-AU')).toBe('Year 4');
    expect(yearName(4, 'en-US')).toBe('Grade 4');
    expect([yearShort(0, 'en-AU'), yearShort(0, 'en-GB'), yearShort(3, 'en-US')]).toEqual(['F', 'R', '3']);
  });

  it.each([
    [[], ''],
    [[4], 'Year 4'],
    [[5, 4, 5], 'Years 4 and 5'],
    [[3, 4, 5], 'Years 3, 4 and 5'],
    [[0], 'Foundation'],
    [[0, 1], 'Foundation and Year 1'],
    [[2, 1, 0], 'Foundation, Years 1 and 2'],
  ])('%j is “%s”', (years, name) => {
    expect(yearsName(years, 'en-AU')).toBe(name);
  });

  it('says grades in the US', () => {
    expect(yearsName([4, 5], 'en-US')).toBe('Grades 4 and 5');
  });
});
