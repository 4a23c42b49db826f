// Counting up from an amount, as change is given over a counter.
import type { Locale } from '../../numbers/locale.js';
import { price } from '../measuring/quantity.js';

/** Counting up from a cost to what was paid, as equations. */
export function countUp(cost: number, paid: number, locale: Locale): string[] {
  const next = Math.ceil(cost / 100) * 100;
  if (next === cost || next >= paid)
    return [`${price(cost, locale)} + ${price(paid - cost, locale)} = ${price(paid, locale)}`];
  return [
    `${price(cost, locale)} + ${price(next - cost, locale)} = ${price(next, locale)}`,
    `${price(next, locale)} + ${price(paid - next, locale)} = ${price(paid, locale)}`,
    `${price(next - cost, locale)} + ${price(paid - next, locale)} = ${price(paid - cost, locale)}`,
  ];
}
