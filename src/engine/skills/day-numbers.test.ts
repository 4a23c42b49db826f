// Whatever the day's number, a board has much to choose from.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDayNumber } from '../numbers/day-number.js';
import { LOCALES, localeOf } from '../numbers/locale.js';
import { questionsAbout } from '../questions/generate.js';
import { Rng } from '../random/rng.js';
import { SKILLS } from './map.js';

/** Skills that can be asked about a number, in a few draws each. */
function applicable(input: string, localeId: (typeof LOCALES)[number]): number {
  const locale = localeOf(localeId);
  const parsed = parseDayNumber(input.replace('$', locale.currency.symbol), locale);
  if (!parsed.ok) throw new Error(parsed.error.message);
  return SKILLS.filter(
    (skill) => questionsAbout(skill, parsed.value, new Rng(3).fork(skill.id), locale, 4).length > 0,
  ).length;
}

const decimalText = (n: number, places: number) => {
  const digits = String(n).padStart(places + 1, '0');
  return `${digits.slice(0, -places)}.${digits.slice(-places)}`;
};

const KINDS = {
  'whole numbers to 100': fc.integer({ min: 1, max: 100 }).map(String),
  'whole numbers to a million': fc
    .oneof(
      fc.integer({ min: 101, max: 9999 }),
      fc.integer({ min: 10_000, max: 1_000_000 }),
      fc.constantFrom(1000, 10_000, 99_999, 100_000, 999_999, 1_000_000),
    )
    .map(String),
  'decimals to three places': fc
    .tuple(fc.integer({ min: 11, max: 999_989 }), fc.integer({ min: 1, max: 3 }))
    .filter(([n, places]) => n % 10 !== 0 && n < 1000 * 10 ** places && n > 10 ** (places - 1))
    .map(([n, places]) => decimalText(n, places)),
  'amounts of money': fc
    .oneof(
      fc.integer({ min: 5, max: 100_000 }),
      fc.integer({ min: 1, max: 1000 }).map((main) => 100 * main),
    )
    .map((minor) => `$${decimalText(minor, 2)}`),
  fractions: fc
    .tuple(fc.constantFrom(2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 16, 20, 24, 25), fc.nat())
    .map(([d, n]) => [1 + (n % (d - 1)), d] as const)
    .map(([n, d]) => `${n}/${d}`),
  'mixed numbers': fc
    .tuple(fc.integer({ min: 1, max: 50 }), fc.constantFrom(2, 3, 4, 5, 6, 7, 8, 9, 10, 12), fc.nat())
    .map(([whole, d, n]) => `${whole} ${1 + (n % (d - 1))}/${d}`),
} as const;

describe("skills that take the day's number", () => {
  it.each(Object.entries(KINDS))('%s: at least forty', (_, inputs) => {
    fc.assert(
      fc.property(inputs, fc.constantFrom(...LOCALES), (input, locale) => {
        expect(applicable(input, locale), `${input} (${locale})`).toBeGreaterThanOrEqual(40);
      }),
      { numRuns: Number(process.env['AFTERBELL_SAMPLES'] ?? 40) },
    );
  });

  it('holds for every single digit too', () => {
    for (let digit = 1; digit <= 9; digit++)
      expect(applicable(String(digit), 'en-AU'), String(digit)).toBeGreaterThanOrEqual(40);
  });

  it('offers at least twenty-five for numbers beyond', () => {
    for (const input of ['0.001', '500000.125', '98765.4', '$99999.99', '5/37', '1/100', '99 99/100'])
      expect(applicable(input, 'en-AU'), input).toBeGreaterThanOrEqual(25);
  });
});
