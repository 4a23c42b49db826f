import { describe, expect, it } from 'vitest';
import type { Chain, ChainCard } from '#engine/activities/chain/chain.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { questionHints } from './question-hints.js';

function chainOf(seed: number): Chain {
  const made = composeChain({ years: [3, 4], seed, locale: 'en-AU' });
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

const { cards } = chainOf(1);

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
        const { text } = question.answer;
        const wholes = told.join(' ').match(/(?<![\d.,/])\d+(?![\d/]|[.,]\d| \d)/g) ?? [];
        if (/^\d+$/.test(text)) expect(wholes).not.toContain(text);
        else if (/^[a-z ]+$/.test(text)) expect(told.join(' ').toLowerCase()).not.toContain(` ${text}.`);
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
