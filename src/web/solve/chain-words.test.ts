import { describe, expect, it } from 'vitest';
import type { Chain } from '#engine/activities/chain/chain.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { laidWords, looseWords, placeWords } from './chain-words.js';

function chainOf(seed: number): Chain {
  const made = composeChain({ years: [3, 4], seed, locale: 'en-AU' });
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

const { cards } = chainOf(1);
const asks = (at: number) => cards[at]?.question?.text ?? '';

describe('the words about a strip', () => {
  it('tell where it lies by its neighbours', () => {
    expect(placeWords(cards, [0], 1)).toBe(`Place 2 of 2, after “${asks(0)}”.`);
    expect(placeWords(cards, [0, 4], 1)).toBe(
      `Place 2 of 3, after “${asks(0)}”, before “${cards[4]?.answer?.text}”.`,
    );
    expect(placeWords(cards, [cards.length - 1], 1)).toBe('Place 2 of 2, after Finish.');
    expect(looseWords(1)).toBe('1 strip lies loose.');
  });
  it('are the same for a right and a wrong strip but for what stands on them', () => {
    const blank = (piece: number) =>
      laidWords(cards, { laid: [0, piece], tray: [5, 6] }, piece)
        .replace(asks(piece), '…')
        .replace('….', '…');
    expect(blank(3)).toBe(blank(1));
  });
});
