// Things to buy that sound right at a given price.
import type { Rng } from '../../random/rng.js';

/** Upper price in cents or pence, and things that cost about that much or less. */
const THINGS: readonly (readonly [number, readonly string[]])[] = [
  [150, ['an apple', 'a pencil', 'a ruler', 'a bread roll']],
  [400, ['a drink', 'a pen', 'a fruit cup', 'a postcard']],
  [1200, ['a sandwich', 'a notebook', 'a salad bowl', 'a puzzle book']],
  [3000, ['a book', 'a ball', 'a concert ticket', 'a card game']],
  [8000, ['a board game', 'a backpack', 'a swimming lesson', 'a pair of goggles']],
  [20_000, ['a pair of shoes', 'a bike helmet', 'a tent', 'a rain jacket']],
  [Number.POSITIVE_INFINITY, ['a bike', 'a keyboard', 'a table', 'a tablet computer']],
];

/** Something that could cost the given number of cents or pence. */
export function thingFor(minor: number, rng: Rng): string {
  const row = THINGS.find(([limit]) => minor <= limit);
  return rng.pick(row?.[1] ?? ['a ticket']);
}

/** "A sandwich", "An apple": the thing where a sentence starts. */
export function atStart(thing: string): string {
  return thing.charAt(0).toUpperCase() + thing.slice(1);
}

/** Things bought by number, one and many, for a price each. */
const COUNTED: readonly (readonly [number, readonly (readonly [string, string])[]])[] = [
  [
    150,
    [
      ['pencil', 'pencils'],
      ['apple', 'apples'],
      ['sticker sheet', 'sticker sheets'],
      ['bread roll', 'bread rolls'],
    ],
  ],
  [
    400,
    [
      ['pen', 'pens'],
      ['drink', 'drinks'],
      ['muffin', 'muffins'],
      ['postcard', 'postcards'],
    ],
  ],
  [
    1500,
    [
      ['sandwich', 'sandwiches'],
      ['notebook', 'notebooks'],
      ['bus ticket', 'bus tickets'],
      ['plant', 'plants'],
    ],
  ],
  [
    6000,
    [
      ['book', 'books'],
      ['cap', 'caps'],
      ['concert ticket', 'concert tickets'],
      ['ball', 'balls'],
    ],
  ],
  [
    Number.POSITIVE_INFINITY,
    [
      ['chair', 'chairs'],
      ['tent', 'tents'],
      ['bike', 'bikes'],
    ],
  ],
];

/** One word and its plural for something sold at the given price each. */
export function itemFor(minor: number, rng: Rng): readonly [one: string, many: string] {
  const row = COUNTED.find(([limit]) => minor <= limit);
  return rng.pick(row?.[1] ?? [['ticket', 'tickets']]);
}
