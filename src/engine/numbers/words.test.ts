import fc from 'fast-check';
import { ToWords } from 'to-words';
import { describe, expect, it } from 'vitest';
import { localeOf } from './locale.js';
import { rational, toValue } from './rational.js';
import {
  decimalToWords,
  fractionToWords,
  mixedToWords,
  ordinalToText,
  ordinalToWords,
  parseNumberWords,
  parseOrdinalWords,
  wholeToWords,
} from './words.js';

const AU = localeOf('en-AU');
const US = localeOf('en-US');

// Outside judge: to-words capitalises every word and writes neither "and" nor hyphens: they are taken out
// before comparing (the ICU values below judge them).
const judge = new ToWords({ localeCode: 'en-US' });
const judged = (value: number) => judge.convert(value).toLowerCase();
const bare = (words: string) => words.replaceAll(' and ', ' ').replaceAll('-', ' ');

const wholes = fc.oneof(fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 0, max: 999_999_999 }));

describe('whole numbers in words', () => {
  // Values of ICU 72.1, spellout-cardinal-verbose, locale en_AU, commas dropped.
  it.each([
    [0, 'zero'],
    [14, 'fourteen'],
    [40, 'forty'],
    [99, 'ninety-nine'],
    [101, 'one hundred and one'],
    [119, 'one hundred and nineteen'],
    [1000, 'one thousand'],
    [1001, 'one thousand and one'],
    [1100, 'one thousand one hundred'],
    [1234, 'one thousand two hundred and thirty-four'],
    [10_010, 'ten thousand and ten'],
    [99_999, 'ninety-nine thousand nine hundred and ninety-nine'],
    [100_001, 'one hundred thousand and one'],
    [100_100, 'one hundred thousand one hundred'],
    [123_456, 'one hundred and twenty-three thousand four hundred and fifty-six'],
    [1_000_001, 'one million and one'],
    [1_001_000, 'one million one thousand'],
    [1_234_567, 'one million two hundred and thirty-four thousand five hundred and sixty-seven'],
  ])('%i as ICU spells it', (value, words) => {
    expect(wholeToWords(value, AU)).toBe(words);
  });

  it('agrees with to-words for every number below 20 000 and thousands beyond', () => {
    for (let value = 0; value < 20_000; value++) expect(bare(wholeToWords(value, US))).toBe(judged(value));
    fc.assert(
      fc.property(wholes, (value) => {
        expect(bare(wholeToWords(value, US))).toBe(judged(value));
        expect(bare(wholeToWords(value, AU))).toBe(judged(value));
      }),
      { numRuns: 3000 },
    );
  });

  it('reads back what it writes', () => {
    fc.assert(
      fc.property(wholes, fc.constantFrom(AU, US), (value, locale) => {
        expect(parseNumberWords(wholeToWords(value, locale))).toEqual(rational(value));
        if (value > 0) expect(parseNumberWords(wholeToWords(-value, locale))).toEqual(rational(-value));
      }),
      { numRuns: 2000 },
    );
  });

  it('refuses what it has no words for', () => {
    expect(() => wholeToWords(1_000_000_000, AU)).toThrow(RangeError);
    expect(() => wholeToWords(1.5, AU)).toThrow(RangeError);
  });
});

describe('ordinals', () => {
  // Values of ICU 72.1, spellout-ordinal-verbose, locale en_AU.
  it.each([
    [1, 'first'],
    [5, 'fifth'],
    [8, 'eighth'],
    [9, 'ninth'],
    [12, 'twelfth'],
    [20, 'twentieth'],
    [22, 'twenty-second'],
    [100, 'one hundredth'],
    [101, 'one hundred and first'],
    [112, 'one hundred and twelfth'],
    [1000, 'one thousandth'],
  ])('%i is %s', (value, words) => {
    expect(ordinalToWords(value, AU)).toBe(words);
    expect(parseOrdinalWords(words)).toBe(value);
  });

  it('takes the suffix that the plural rules of Unicode CLDR give', () => {
    const rules = new Intl.PluralRules('en', { type: 'ordinal' });
    const suffixes: Record<string, string> = { one: 'st', two: 'nd', few: 'rd', other: 'th' };
    for (let value = 0; value <= 1200; value++)
      expect(ordinalToText(value)).toBe(`${value}${suffixes[rules.select(value)]}`);
  });
});

describe('decimals and fractions in words', () => {
  it('reads decimals digit by digit', () => {
    expect(decimalToWords(rational(18, 5), AU)).toBe('three point six');
    expect(decimalToWords(rational(1, 20), AU)).toBe('zero point zero five');
    expect(decimalToWords(rational(-5, 2), US)).toBe('negative two point five');
    expect(decimalToWords(rational(1, 2), AU, 2)).toBe('zero point five zero');
    expect(() => decimalToWords(rational(1, 3), AU)).toThrow(RangeError);
  });

  it('agrees with to-words on each digit after the point', () => {
    // to-words reads "0.45" as "zero point forty five": each digit is judged alone.
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 99_999 }),
        fc.integer({ min: 0, max: 999 }),
        (whole, fraction) => {
          const digits = String(fraction).padStart(3, '0');
          const expected = `${judged(whole)} point ${[...digits].map((digit) => judged(Number(digit))).join(' ')}`;
          expect(bare(decimalToWords(rational(whole * 1000 + fraction, 1000), US, 3))).toBe(expected);
        },
      ),
    );
  });

  it('names parts as each country does', () => {
    expect(fractionToWords(3, 4, AU)).toBe('three quarters');
    expect(fractionToWords(3, 4, US)).toBe('three fourths');
    expect(fractionToWords(1, 2, AU)).toBe('one half');
    expect(fractionToWords(6, 8, AU)).toBe('six eighths');
    expect(fractionToWords(7, 100, AU)).toBe('seven hundredths');
    expect(mixedToWords(rational(7, 4), AU)).toBe('one and three quarters');
  });

  it('reads back decimals, fractions and mixed numbers', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5000 }),
        fc.integer({ min: 2, max: 100 }),
        fc.constantFrom(AU, US),
        (n, d, locale) => {
          // "two hundred and three quarters" means 200 and 3/4, so a count of parts alone stays below 100.
          expect(parseNumberWords(fractionToWords(n % 100, d, locale))).toEqual(rational(n % 100, d));
          expect(parseNumberWords(mixedToWords(rational(n, d), locale))).toEqual(rational(n, d));
          expect(parseNumberWords(decimalToWords(rational(n, 1000), locale))).toEqual(rational(n, 1000));
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('words that a child or a teacher types', () => {
  it.each([
    ['Forty seven', '47'],
    ['a hundred and five', '105'],
    ['one hundred five', '105'],
    ['one thousand, two hundred', '1200'],
    ['negative three', '-3'],
    ['nought point five', '1/2'],
    ['point two five', '1/4'],
    ['half', '1/2'],
    ['a quarter', '1/4'],
    ['two and a half', '5/2'],
    ['three fourths', '3/4'],
    ['twenty-one hundredths', '21/100'],
    ['a hundred and three quarters', '403/4'],
  ])('%s is %s', (text, value) => {
    const read = parseNumberWords(text);
    expect(read && toValue(read)).toBe(value);
  });

  it.each([
    '',
    'seven forty',
    'three and four',
    'hundred five',
    'zero thousand',
    'twenty eleven',
    'one thousand one thousand',
    'one million and one thousand',
    'two thousand and three hundred',
    'one and five quarters',
    'point',
    'five point twelve',
    'minus minus one',
    'cat',
  ])('refuses “%s”', (text) => {
    expect(parseNumberWords(text)).toBeNull();
  });
});
