import fc from 'fast-check';
import { expect, it } from 'vitest';
import { targetInWords } from './target-words.js';

it.each([
  [0.98, 'nearly everyone'],
  [0.5, 'about half'],
  [0.05, 'one or two'],
])('%f of the class is %s', (share, words) => expect(targetInWords(share)).toBe(words));

it('never promises more for a smaller share', () => {
  const order = [
    'one or two',
    'a few',
    'about one in three',
    'about half',
    'about two in three',
    'most of the class',
    'nearly everyone',
  ];
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(share, share, (a, b) => {
      expect(
        Math.sign(order.indexOf(targetInWords(a)) - order.indexOf(targetInWords(b))) * Math.sign(a - b),
      ).toBeGreaterThanOrEqual(0);
    }),
  );
});
