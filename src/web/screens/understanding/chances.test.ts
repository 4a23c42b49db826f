import { expect, it } from 'vitest';
import { chanceInWords, movedInWords, rangeInWords, surenessInWords } from './chances.js';

it('says a chance in tenths, and the ends in words', () => {
  expect([0.72, 0.55, 0.97, 0.03].map(chanceInWords)).toEqual([
    'about 7 in 10 plain questions',
    'about 6 in 10 plain questions',
    'nearly all plain questions',
    'hardly any plain questions',
  ]);
});

it('says the range and how sure it is', () => {
  expect(rangeInWords({ low: 0.551, high: 0.849 })).toBe('most likely between 55 and 85 in 100');
  expect(rangeInWords({ low: 0.991, high: 0.994 })).toBe('most likely about 99 in 100');
  expect([0.2, 0.35, 0.5, 0.6].map((high) => surenessInWords({ low: 0, high }))).toEqual([
    'quite sure',
    'fairly sure',
    'a rough idea',
    'hardly more than a guess',
  ]);
});

it('says what an answer moved', () => {
  expect([6, -3, 0].map(movedInWords)).toEqual(['up by 6 in 100', 'down by 3 in 100', 'hardly moved it']);
});
