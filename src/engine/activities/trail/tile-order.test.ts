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

it('draws another picture, tiles handed out in another order, for other years or skills of the same seed', () => {
  const wishes = [{ years: [1, 2] }, { years: [3, 4] }, { years: [3, 4], skills: ['add.2d2d.carry'] }];
  const made = wishes.map((wish) => {
    const result = composeTrail({ ...wish, rows: 4, columns: 4, seed: 1, locale: 'en-AU' });
    if (!result.ok) throw new Error(result.error.message);
    return result.value;
  });
  expect(new Set(made.map(({ tiles }) => String(tiles.map(({ edges }) => edges)))).size).toBe(3);
  expect(new Set(made.map((trail) => String(tileOrder(trail)))).size).toBe(3);
});
