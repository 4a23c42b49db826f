import { describe, expect, it } from 'vitest';
import { localeOf } from '../../numbers/locale.js';
import { commonDifficulty } from '../../questions/question.js';
import type { Chain } from './chain.js';
import type { ChainRequest } from './chain-request.js';
import { composeChain } from './compose.js';
import { proveChain } from './proof.js';
import { replaceQuestion } from './replace-question.js';

const BASE: ChainRequest = { years: [3, 4], seed: 1, locale: 'en-AU' };

function chainOf(request: ChainRequest): Chain {
  const made = composeChain(request);
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

describe('replaceQuestion', () => {
  it('changes one question and its answer, and keeps the promise and the order', () => {
    let swapped = 0;
    for (let seed = 1; seed <= 8; seed++) {
      const request = { ...BASE, seed };
      const chain = chainOf(request);
      for (const place of [0, 4, 8]) {
        const result = replaceQuestion(chain, place, request, 1);
        if (!result.ok) continue;
        swapped++;
        const { cards, proof } = result.value;
        expect(proof).toEqual(proveChain(cards, localeOf('en-AU')));
        expect(proof).toMatchObject({ fullRuns: 1, level: 'at once' });
        expect(cards[place]?.question?.text).not.toBe(chain.cards[place]?.question?.text);
        expect(cards[place + 1]?.answer).toEqual(cards[place]?.question?.answer);
        cards.forEach((card, at) => {
          if (at !== place) expect(card.question).toEqual(chain.cards[at]?.question);
          if (at !== place + 1) expect(card.answer).toEqual(chain.cards[at]?.answer);
        });
        const ladder = cards.flatMap(({ question }) => (question ? [commonDifficulty(question)] : []));
        ladder.forEach((step, at) => at > 0 && expect(step).toBeGreaterThan((ladder[at - 1] ?? 0) - 0.36));
      }
    }
    expect(swapped).toBeGreaterThanOrEqual(22);
  });

  it('brings something else each time it is asked, and only from the chosen skills', () => {
    const request = { ...BASE, skills: ['mult.table.7', 'time.clock.half'], cards: 8 };
    const chain = chainOf({ ...request, order: 'mixed' });
    const texts = new Set<string>();
    for (let turn = 1; turn <= 6; turn++) {
      const result = replaceQuestion(chain, 2, request, turn);
      if (!result.ok) continue;
      const question = result.value.cards[2]?.question;
      expect(request.skills).toContain(question?.skill);
      texts.add(JSON.stringify([question?.text, question?.answer.text]));
    }
    expect(texts.size).toBeGreaterThanOrEqual(3);
  });

  it('refuses the strip without a question, and says when nothing else fits', () => {
    const chain = chainOf(BASE);
    expect(replaceQuestion(chain, 9, BASE, 1)).toMatchObject({ ok: false, error: { code: 'chain.place' } });
    const narrow = { ...BASE, years: [2], skills: ['mult.table.7'], cards: 6 };
    const full = chainOf({ ...narrow, order: 'graded' });
    expect(replaceQuestion(full, 0, { ...narrow, success: [1, 1] }, 1)).toMatchObject({
      ok: false,
      error: { code: 'chain.swap' },
    });
  });
});
