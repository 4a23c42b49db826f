import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import {
  formatClock,
  formatDecimal,
  formatDuration,
  formatFraction,
  formatMixed,
  formatMoney,
  formatWhole,
} from './format.js';
import { LOCALES, localeOf } from './locale.js';
import { rational } from './rational.js';

const AU = localeOf('en-AU');
const locales = fc.constantFrom(...LOCALES).map(localeOf);
/** The same text with ASCII minus and without the space or comma between groups. */
const plain = (text: string) => text.replaceAll('\u2212', '-').replaceAll(/[\u00a0,]/g, '');

describe('whole numbers and decimals', () => {
  it('group digits as the platform’s own formatter (ICU) does in Britain and the US', () => {
    fc.assert(
      fc.property(fc.integer({ min: -10_000_000, max: 10_000_000 }), (value) => {
        const icu = new Intl.NumberFormat('en-GB').format(value).replace('-', '\u2212');
        expect(formatWhole(value, localeOf('en-GB'))).toBe(icu);
        expect(formatWhole(value, localeOf('en-US'))).toBe(icu);
        const gapped = Math.abs(value) < 10_000 ? icu.replace(',', '') : icu.replaceAll(',', '\u00a0');
        expect(formatWhole(value, AU)).toBe(gapped);
      }),
      { numRuns: 2000 },
    );
    expect(formatWhole(-0, AU)).toBe('0');
  });

  it('write a decimal whose digits are those of the scaled whole number', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -9_999_999, max: 9_999_999 }),
        fc.integer({ min: 0, max: 6 }),
        fc.integer({ min: 0, max: 4 }),
        locales,
        (scaled, places, least, locale) => {
          // Independent method: move the point by cutting the digit string.
          const digits = String(Math.abs(scaled)).padStart(places + 1, '0');
          const cut = digits.length - places;
          const after = digits.slice(cut).replace(/0+$/, '').padEnd(least, '0');
          const sign = scaled < 0 ? '-' : '';
          const expected = `${sign}${digits.slice(0, cut)}${after === '' ? '' : `.${after}`}`;
          expect(plain(formatDecimal(rational(scaled, 10 ** places), locale, least))).toBe(expected);
        },
      ),
      { numRuns: 3000 },
    );
  });

  it('refuse what has no short decimal', () => {
    expect(() => formatDecimal(rational(1, 3), AU)).toThrow(RangeError);
    expect(() => formatDecimal(rational(1, 2 ** 20), AU)).toThrow(RangeError);
  });
});

describe('fractions', () => {
  it.each([
    [3, 4, '3/4', '3/4'],
    [7, 4, '7/4', '1 3/4'],
    [8, 4, '2', '2'],
    [0, 5, '0', '0'],
    [-3, 4, '\u22123/4', '\u22123/4'],
    [-7, 4, '\u22127/4', '\u22121 3/4'],
  ])('%i/%i', (n, d, fraction, mixed) => {
    expect(formatFraction(rational(n, d))).toBe(fraction);
    expect(formatMixed(rational(n, d), localeOf('en-AU'))).toBe(mixed);
  });
});

describe('money', () => {
  it('agrees with the platform’s currency formatter (ICU) from one main unit up', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 99_999_999 }), locales, (minor, locale) => {
        const icu = new Intl.NumberFormat(locale.id, {
          style: 'currency',
          currency: locale.currency.code,
          trailingZeroDisplay: 'stripIfInteger',
        }).format(minor / 100);
        expect(plain(formatMoney(rational(minor, 100), locale))).toBe(icu.replaceAll(',', ''));
      }),
      { numRuns: 2000 },
    );
  });

  it('writes small amounts in minor units', () => {
    for (let minor = 1; minor < 100; minor++) {
      expect(formatMoney(rational(minor, 100), AU)).toBe(`${minor}c`);
      expect(formatMoney(rational(minor, 100), localeOf('en-GB'))).toBe(`${minor}p`);
    }
    expect(formatMoney(rational(0), AU)).toBe('$0');
    expect(formatMoney(rational(-485, 100), AU)).toBe('\u2212$4.85');
    expect(() => formatMoney(rational(1, 3), AU)).toThrow(RangeError);
    expect(() => formatMoney(rational(1, 1000), AU)).toThrow(RangeError);
  });

  it('has coins and notes in order, each worth something else', () => {
    for (const { currency } of LOCALES.map(localeOf)) {
      const values = [...currency.coins, ...currency.notes.map((note) => note * 100)];
      for (const list of [currency.coins, currency.notes])
        expect(list.toSorted((a, b) => a - b)).toEqual(list);
      expect(new Set(values).size).toBe(values.length);
    }
  });
});

describe('times', () => {
  it('agrees with the Temporal polyfill on every minute of the day', () => {
    for (let minutes = 0; minutes < 1440; minutes++) {
      const time = new Temporal.PlainTime().add({ minutes });
      expect(formatClock(minutes, 24)).toBe(time.toString({ smallestUnit: 'minute' }));
      const dial = time.toLocaleString('en-US', { hour: 'numeric', minute: '2-digit', hour12: true });
      expect(formatClock(minutes)).toBe(dial.replace(/\s?[AP]M$/, ''));
      expect(formatClock(minutes - 1440)).toBe(formatClock(minutes));
    }
  });

  it('agrees with the Temporal polyfill on lengths of time', () => {
    for (let minutes = 0; minutes <= 1500; minutes++) {
      const { hours, minutes: rest } = Temporal.Duration.from({ minutes }).round({ largestUnit: 'hour' });
      const parts = [hours > 0 ? `${hours}\u00a0h` : '', rest > 0 || hours === 0 ? `${rest}\u00a0min` : ''];
      expect(formatDuration(minutes)).toBe(parts.filter(Boolean).join(' '));
    }
  });
});
