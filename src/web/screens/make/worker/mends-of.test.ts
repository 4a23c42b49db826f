import { describe, expect, it } from 'vitest';
import { wishOf } from '../wish.js';
import { makeOne } from './make-one.js';
import type { MakeOrder } from './messages.js';

const orderOf = (change: Parameters<typeof wishOf>[0]): MakeOrder => ({
  wish: wishOf(change, { years: [2], seed: 1 }),
  locale: 'en-AU',
  due: [],
  own: '',
});

describe('the mends of a refusal', () => {
  it('lead to a set when the first is taken, and name no ids', () => {
    const wishes = [
      { source: 'chosen', skills: ['mult.table.7'], cards: 16 },
      { activity: 'jigsaw', rowKind: 'equivalents', level: 'hard', rows: 4, columns: 7, years: [4, 5] },
    ] as const;
    for (const wish of wishes) {
      const refused = makeOne(orderOf(wish), 0);
      if (refused.ok) throw new Error('expected a refusal');
      const { hint, mends = [] } = refused.error;
      expect(hint).not.toMatch(/\(/);
      expect(mends).toHaveLength(2);
      // The first is known to work; another skill is a suggestion.
      expect(makeOne(orderOf({ ...wish, ...mends[0]?.change }), 0).ok).toBe(true);
    }
  }, 30_000);
});
