// Coins and notes in hand: which there are, and how to draw some.
import type { Locale } from '../../numbers/locale.js';
import type { TemplateContext } from '../../questions/draft.js';

/** Coins and notes of the locale, in minor units, smallest first. */
export function pieces(locale: Locale): number[] {
  const { coins, notes } = locale.currency;
  return [...new Set([...coins, ...notes.map((note) => note * 100)])].sort((a, b) => a - b);
}

/** What some pieces are worth together. */
export function totalOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** Coins from five cents or pence up. */
export function drawCoins(count: number, { rng, locale }: TemplateContext): number[] {
  const usable = locale.currency.coins.filter((coin) => coin >= 5);
  return Array.from({ length: count }, () => rng.pick(usable));
}

/** Whole dollars or pounds, none of them larger than ten. */
export function drawWhole(count: number, { rng, locale }: TemplateContext): number[] {
  const usable = pieces(locale).filter((piece) => piece >= 100 && piece <= 1000);
  return Array.from({ length: count }, () => rng.pick(usable));
}

/** The smallest coin that is counted with: five or ten cents or pence. */
export function leastCounted({ currency }: Locale): number {
  return currency.coins.find((coin) => coin >= 5) ?? 5;
}

/** Small coins that stay below one dollar or pound together with the start; fewer of them where it leaves no room. */
export function drawSmall(count: number, start: number, { rng, locale }: TemplateContext): number[] {
  const least = leastCounted(locale);
  const usable = locale.currency.coins.filter((coin) => coin >= least);
  const drawn: number[] = [];
  let total = start;
  for (let left = Math.min(count, Math.floor((99 - start) / least)); left > 0; left--) {
    const fits = usable.filter((coin) => total + coin + (left - 1) * least < 100);
    const coin = rng.pick(fits);
    drawn.push(coin);
    total += coin;
  }
  return drawn;
}
