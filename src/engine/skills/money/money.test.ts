import { describe, expect, it } from 'vitest';
import { parseDayNumber } from '../../numbers/day-number.js';
import { LOCALES, type LocaleId, localeOf } from '../../numbers/locale.js';
import { generateQuestions, questionsAbout } from '../../questions/generate.js';
import { Rng } from '../../random/rng.js';
import { skillById } from '../map.js';
import type { Skill } from '../skill.js';
import { fewestPieces } from './fewest.js';

function skillOf(id: string): Skill {
  const skill = skillById(id);
  if (skill === null) throw new Error(`no skill ${id}`);
  return skill;
}

/** Fewest pieces for every amount up to `top` steps of the smallest coin, by dynamic programming. */
function fewestTable(pieces: readonly number[], step: number, top: number): number[] {
  const best = [0];
  for (let i = 1; i <= top; i++) {
    const ways = pieces
      .filter((piece) => piece / step <= i)
      .map((piece) => (best[i - piece / step] ?? Infinity) + 1);
    best.push(Math.min(...ways));
  }
  return best;
}

describe('fewest coins and notes', () => {
  it.each(LOCALES)('%s: taking the largest that fits is best for every amount up to 200 main units', (id) => {
    const locale = localeOf(id);
    const { coins, notes } = locale.currency;
    const step = coins[0] ?? 1;
    const table = fewestTable([...coins, ...notes.map((note) => note * 100)], step, 20_000 / step);
    for (let i = 1; i < table.length; i++) {
      const pieces = fewestPieces(i * step, locale);
      expect(pieces.reduce((sum, piece) => sum + piece, 0)).toBe(i * step);
      if (pieces.length !== table[i])
        expect(`${i * step}: ${pieces.length}`).toBe(`${i * step}: ${table[i]}`);
    }
  });

  it('names the $2 bill and the half dollar wherever they would make it fewer', () => {
    const step = 5;
    const table = fewestTable([5, 10, 25, 50, 100, 200, 500, 1000, 2000, 5000], step, 1000);
    const texts = generateQuestions(skillOf('money.coins.fewest'), 200, 3, localeOf('en-US'));
    const named = texts.filter(({ text }) => text.includes('without'));
    expect(named.length).toBeGreaterThan(50);
    expect(named.length).toBeLessThan(texts.length);
    for (const { text, answer } of texts) {
      const [, dollars = '', cents = ''] = / make (?:\$(\d+)|(\d+)¢)/.exec(text) ?? [];
      const minor = dollars ? Number(dollars) * 100 : Number(cents);
      expect(text.includes('without'), text).toBe((table[minor / step] ?? 0) < Number(answer.value));
    }
  });
});

describe('money of the first years', () => {
  it.each(LOCALES)('%s: comes in small coins below one, or in whole dollars and pounds', (id) => {
    for (const skill of ['money.coins.count', 'money.coins.like', 'money.coins.fewest'].map(skillOf))
      for (const { text, answer } of generateQuestions(skill, 100, 3, localeOf(id)))
        expect(`${text} ${answer.text}`).not.toMatch(/\d\.\d/);
  });

  it('starts from amounts that the coins can make', () => {
    const questionsFor = (id: LocaleId, input: string) => {
      const locale = localeOf(id);
      const day = parseDayNumber(input, locale);
      if (!day.ok) throw new Error(input);
      return questionsAbout(skillOf('money.coins.count'), day.value, new Rng(3), locale, 6);
    };
    expect(questionsFor('en-NZ', '$0.85')).toEqual([]);
    expect(questionsFor('en-NZ', '$0.80').length).toBeGreaterThan(0);
    expect(questionsFor('en-AU', '$0.85').length).toBeGreaterThan(0);
  });
});

describe('which amount is more', () => {
  it.each(LOCALES)('%s: two units are brought to one first', (id) => {
    const { symbol, minorSymbol } = localeOf(id).currency;
    const mixed = generateQuestions(skillOf('money.compare'), 100, 3, localeOf(id)).filter(
      ({ text }) => text.includes(symbol) && new RegExp(`\\d${minorSymbol}`).test(text),
    );
    expect(mixed.length).toBeGreaterThan(20);
    for (const { text, strategy } of mixed) expect(strategy[0], text).toContain(' = ');
  });
});

describe('goods by weight', () => {
  it('keep the whole kilograms where only one of the parts is found', () => {
    const day = parseDayNumber('1 3/4', localeOf('en-AU'));
    if (!day.ok) throw new Error('1 3/4');
    const asked = questionsAbout(skillOf('money.by-weight'), day.value, new Rng(3), localeOf('en-AU'), 6);
    const slips = asked.flatMap(({ text, slips: wrong }) =>
      wrong
        .filter(({ misconception }) => misconception === 'part.one-only')
        .map((slip) => [slip.text, Number(/\$(\d+)/.exec(text)?.[1]) * 1.25] as const),
    );
    expect(slips.length).toBeGreaterThan(0);
    for (const [wrong, told] of slips) expect(Number(wrong.slice(1))).toBe(told);
  });
});
