import { expect, it } from 'vitest';
import { composeTrail } from './compose.js';
import { tileOrder } from './tile-order.js';

it('mixes all tiles in a way of its own for each trail, always the same', () => {
  const orders = [1, 2, 3].map((seed) => {
    const made = composeTrail({ years: [3, 4], rows: 4, columns: 4, seed, locale: 'en-AU' });
    if (!made.ok) throw new Error(made.error.message);
    expect(tileOrder(made.value)).toEqual(tileOrder(made.value));
    return tileOrder(made.value);
  });
  for (const order of orders)
    expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: 16 }, (_, i) => i));
  expect(new Set(orders.map(String)).size).toBe(3);
});
