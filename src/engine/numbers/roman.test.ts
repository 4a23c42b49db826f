import { describe, expect, it } from 'vitest';
import { parseRoman, toRoman } from './roman.js';

describe('Roman numerals', () => {
  // The examples of the modern standard form that textbooks give (common practice).
  it.each([
    [4, 'IV'],
    [9, 'IX'],
    [14, 'XIV'],
    [47, 'XLVII'],
    [90, 'XC'],
    [444, 'CDXLIV'],
    [1999, 'MCMXCIX'],
    [2026, 'MMXXVI'],
    [3999, 'MMMCMXCIX'],
  ])('%i is %s', (value, text) => {
    expect(toRoman(value)).toBe(text);
  });

  it('reads back all of them', () => {
    for (let value = 1; value <= 3999; value++) expect(parseRoman(toRoman(value).toLowerCase())).toBe(value);
  });

  it.each(['', 'IIII', 'IC', 'VX', 'ABC', 'MMMM'])('refuses “%s”', (text) => {
    expect(parseRoman(text)).toBeNull();
  });
});
