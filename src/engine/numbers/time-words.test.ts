import { describe, expect, it } from 'vitest';
import { localeOf } from './locale.js';
import { clockToWords, digitalToWords, parseClockWords } from './time-words.js';

const AU = localeOf('en-AU');
const at = (hour: number, minute: number) => hour * 60 + minute;

describe('the spoken clock', () => {
  // How clocks are read aloud in primary classrooms: common practice.
  it.each([
    [at(7, 0), 'seven o’clock'],
    [at(7, 3), 'three minutes past seven'],
    [at(7, 1), 'one minute past seven'],
    [at(7, 15), 'quarter past seven'],
    [at(7, 30), 'half past seven'],
    [at(7, 35), 'twenty-five to eight'],
    [at(7, 45), 'quarter to eight'],
    [at(7, 59), 'one minute to eight'],
    [at(12, 40), 'twenty to one'],
    [at(0, 10), 'ten past twelve'],
    [at(23, 50), 'ten to twelve'],
  ])('%i minutes is %s', (minutes, words) => {
    expect(clockToWords(minutes, AU)).toBe(words);
  });

  it('reads a digital clock aloud', () => {
    expect(digitalToWords(at(7, 45), AU)).toBe('seven forty-five');
    expect(digitalToWords(at(19, 3), AU)).toBe('seven oh three');
    expect(digitalToWords(at(0, 0), AU)).toBe('twelve o’clock');
  });

  it('reads back every minute of the day, in both ways of saying it', () => {
    for (let minutes = 0; minutes < 1440; minutes++) {
      const dial = { minutes: minutes % 720, halfKnown: false };
      expect(parseClockWords(clockToWords(minutes, AU))).toEqual(dial);
      expect(parseClockWords(digitalToWords(minutes, AU))).toEqual(dial);
      const suffix = minutes < 720 ? 'in the morning' : 'pm';
      expect(parseClockWords(`${clockToWords(minutes, AU)} ${suffix}`)).toEqual({ minutes, halfKnown: true });
    }
  });

  it.each([
    ['quarter after seven', at(7, 15), false],
    ['A quarter to 8', at(7, 45), false],
    ['quarter of eight', at(7, 45), false],
    ['5 mins past 7', at(7, 5), false],
    ['half seven', at(7, 30), false],
    ["8 o'clock", at(8, 0), false],
    ['8 pm', at(20, 0), true],
    ['ten to twelve p.m.', at(23, 50), true],
    ['twelve o’clock pm', at(12, 0), true],
    ['noon', at(12, 0), true],
    ['midnight', 0, true],
  ])('%s', (text, minutes, halfKnown) => {
    expect(parseClockWords(text)).toEqual({ minutes, halfKnown });
  });

  it.each([
    '',
    'seven',
    'half to seven',
    'quarter past thirteen',
    'sixty past two',
    'seven five',
    'past seven',
  ])('refuses “%s”', (text) => {
    expect(parseClockWords(text)).toBeNull();
  });
});
