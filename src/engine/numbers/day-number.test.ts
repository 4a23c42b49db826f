import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDayNumber } from './day-number.js';
import { LOCALES, localeOf } from './locale.js';
import { rational, toValue } from './rational.js';

const AU = localeOf('en-AU');
const GB = localeOf('en-GB');

function read(text: string, locale = AU): string {
  const result = parseDayNumber(text, locale);
  return result.ok
    ? `${result.value.kind} ${toValue(result.value.value)} ${result.value.text}`
    : result.error.code;
}

describe('the day’s number', () => {
  it.each([
    ['47', 'whole 47 47'],
    [' 007 ', 'whole 7 7'],
    ['1,000,000', 'whole 1000000 1\u00a0000\u00a0000'],
    ['12 500', 'whole 12500 12\u00a0500'],
    ['12\u00a0500', 'whole 12500 12\u00a0500'],
    ['3.6', 'decimal 18/5 3.6'],
    ['3.60', 'decimal 18/5 3.6'],
    ['.05', 'decimal 1/20 0.05'],
    ['5.0', 'whole 5 5'],
    ['$4.85', 'money 97/20 $4.85'],
    ['$ 4', 'money 4 $4'],
    ['$.85', 'money 17/20 85c'],
    ['$12,500', 'money 12500 $12\u00a0500'],
    ['85c', 'money 17/20 85c'],
    ['485 c', 'money 97/20 $4.85'],
    ['3/4', 'fraction 3/4 3/4'],
    ['6/8', 'fraction 3/4 3/4'],
    ['¾', 'fraction 3/4 3/4'],
    ['7/4', 'fraction 7/4 1 3/4'],
    ['1 3/4', 'fraction 7/4 1 3/4'],
    ['1¾', 'fraction 7/4 1 3/4'],
    ['8/4', 'whole 2 2'],
  ])('“%s” is %s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it.each([
    ['', 'number.unread'],
    ['cat', 'number.unread'],
    ['12 50', 'number.unread'],
    ['1,2345', 'number.unread'],
    ['1.2345', 'number.unread'],
    ['$4.8', 'number.unread'],
    ['1e3', 'number.unread'],
    ['1234567890123456789012', 'number.unread'],
    ['0', 'number.zero'],
    ['0.00', 'number.zero'],
    ['$0.00', 'number.zero'],
    ['0/5', 'number.zero'],
    ['-5', 'number.range'],
    ['\u22125', 'number.range'],
    ['1000001', 'number.range'],
    ['1000000.5', 'number.range'],
    ['£4.85', 'number.currency'],
    ['85p', 'number.currency'],
    ['3/0', 'number.denominator'],
    ['3/101', 'number.denominator'],
    ['1 5/4', 'number.mixed'],
  ])('“%s” is refused: %s', (text, code) => {
    expect(read(text)).toBe(code);
  });

  it('keeps to the class’s own currency', () => {
    expect(read('£4.85', GB)).toBe('money 97/20 £4.85');
    expect(read('85p', GB)).toBe('money 17/20 85p');
    expect(read('$4.85', GB)).toBe('number.currency');
    expect(read('85c', GB)).toBe('number.currency');
    expect(read('85c', localeOf('en-US'))).toBe('money 17/20 85¢');
  });

  it('reads its own text again as the same number', () => {
    const locales = fc.constantFrom(...LOCALES).map(localeOf);
    const texts = fc.oneof(
      fc.integer({ min: 1, max: 1_000_000 }).map(String),
      fc
        .integer({ min: 1, max: 999_999 })
        .map((n) => `${Math.floor(n / 1000)}.${String(n % 1000).padStart(3, '0')}`),
      fc
        .tuple(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 2, max: 100 }))
        .map(([n, d]) => `${n}/${d}`),
    );
    const minors = fc.integer({ min: 1, max: 99_999 });
    fc.assert(
      fc.property(locales, texts, minors, (locale, text, minor) => {
        const amount = `${locale.currency.symbol}${(minor / 100).toFixed(2)}`;
        for (const typed of [text, amount]) {
          const first = parseDayNumber(typed, locale);
          expect(first.ok && parseDayNumber(first.value.text, locale)).toEqual(first);
        }
        const money = parseDayNumber(amount, locale);
        expect(money.ok && money.value.value).toEqual(rational(minor, 100));
      }),
      { numRuns: 2000 },
    );
  });

  it('answers every text with a number or one clear sentence', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
        const result = parseDayNumber(text, AU);
        if (!result.ok) expect(result.error.message).toMatch(/^(“[^]*” .+|The day’s number is missing)\.$/u);
      }),
      { numRuns: 1000 },
    );
  });
});
