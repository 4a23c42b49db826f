import { describe, expect, it } from 'vitest';
import { LOCALES, localeOf } from '../../numbers/locale.js';
import { fewestPieces } from './coins.js';

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
});
