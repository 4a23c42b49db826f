import { describe, expect, it } from 'vitest';
import { addDays } from '../numbers/calendar.js';
import { toNumber } from '../numbers/rational.js';
import { suggestDayNumber } from './day-number-choice.js';

const MONDAY = '2026-02-02';

function term(years: readonly number[], seed = 1, locale: 'en-AU' | 'en-GB' | 'en-US' = 'en-AU') {
  const recent: string[] = [];
  return Array.from({ length: 50 }, (_, i) => {
    const number = suggestDayNumber(
      years,
      addDays(MONDAY, 7 * Math.floor(i / 5) + (i % 5)),
      seed,
      recent.slice(-15),
      locale,
    );
    recent.push(number.text);
    return number;
  });
}

describe('suggestDayNumber', () => {
  it('stays within a size that the years can count in', () => {
    for (const [years, most] of [
      [[0], 10],
      [[1], 20],
      [[2], 99],
      [[3], 150],
      [[4, 5], 360],
      [[6], 960],
    ] as const) {
      for (const number of term(years)) {
        expect(toNumber(number.value)).toBeGreaterThan(0);
        expect(toNumber(number.value)).toBeLessThanOrEqual(most);
      }
    }
  });

  it('keeps to whole numbers for the youngest and lets kinds take turns over the week for older ones', () => {
    expect(new Set(term([1, 2]).map((number) => number.kind))).toEqual(new Set(['whole']));
    expect(new Set(term([4, 5]).map((number) => number.kind))).toEqual(
      new Set(['whole', 'money', 'fraction']),
    );
    expect(new Set(term([5, 6]).map((number) => number.kind))).toEqual(
      new Set(['whole', 'decimal', 'money', 'fraction']),
    );
    for (const years of [[3], [4, 5], [6]]) {
      term(years).forEach((number, i) => {
        if (i % 5 === 0) expect(number.kind).toBe('whole');
      });
    }
  });

  it('does not come back to a number of the last three weeks', () => {
    const texts = term([4, 5]).map((number) => number.text);
    texts.forEach((text, i) => expect(texts.slice(Math.max(0, i - 15), i)).not.toContain(text));
  });

  it('depends on seed and date alone, and speaks the money of the place', () => {
    expect(term([4, 5], 7)).toEqual(term([4, 5], 7));
    expect(term([4, 5], 7)).not.toEqual(term([4, 5], 8));
    expect(term([4, 5], 1, 'en-GB').find((number) => number.kind === 'money')?.text).toMatch(/^£/);
  });
});
