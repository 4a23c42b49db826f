import { describe, expect, it } from 'vitest';
import type { Chain, ChainCard } from '#engine/activities/chain/chain.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { questionHints } from './question-hints.js';
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

describe('questionHints', () => {
  it('never says the answer of a number question, over many chains', () => {
    let steps = 0;
    for (let seed = 1; seed <= 60; seed++) {
      for (const { question } of chainOf(seed).cards) {
        if (!question) continue;
        const hints = questionHints(question);
        expect(hints[0]).toMatch(/\?$/);
        const told = hints.slice(1, -1).filter((hint) => hint.startsWith('A way') || hint.startsWith('Then'));
        steps += told.length;
        const numbers = told.flatMap((hint) => /=\s*([^=]*)$/.exec(hint)?.[1] ?? []);
        expect(numbers).not.toContain(question.answer.text);
      }
    }
    expect(steps).toBeGreaterThan(300);
  });
  it('leaves the last result open', () => {
    const question = cards.map(({ question }) => question).find((one) => one?.text === '? − 31 = 16');
    const plain = {
      ...(question ?? (cards[0]?.question as NonNullable<ChainCard['question']>)),
      figure: null,
      answer: { kind: 'number', text: '85', value: '85' } as const,
      strategy: ['47 + 30 = 77', '77 + 8 = 85'],
    };
    expect(questionHints(plain).slice(1, 3)).toEqual(['A way to begin: 47 + 30 = 77', 'Then: 77 + 8 = ?']);
  });
});
