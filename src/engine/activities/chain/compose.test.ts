import { describe, expect, it } from 'vitest';
import { localeOf } from '../../numbers/locale.js';
import { checkAnswer } from '../../questions/check-answer.js';
import { commonDifficulty } from '../../questions/question.js';
import type { Chain, ChainCard } from './chain.js';
import type { ChainRequest } from './chain-request.js';
import { composeChain } from './compose.js';
import { proveChain } from './proof.js';

const BASE: ChainRequest = { years: [3, 4], seed: 1, locale: 'en-AU' };

function chainOf(change: Partial<ChainRequest> = {}): Chain {
  const result = composeChain({ ...BASE, ...change });
  if (!result.ok) throw new Error(`${result.error.message} ${result.error.hint}`);
  return result.value;
}

describe('composeChain', () => {
  it('makes chains of 6 to 16 strips that show every slip at once, for every age and order', () => {
    for (const years of [[0], [1, 2], [3, 4], [5, 6]])
      for (const cards of [6, 10, 16])
        for (const order of ['graded', 'mixed'] as const) {
          const chain = chainOf({ years, cards, order, seed: cards });
          expect(chain.cards).toHaveLength(cards);
          expect(chain.proof).toMatchObject({ fullRuns: 1, level: 'at once' });
          expect(chain.proof.shownAtOnce).toBe(chain.proof.slips);
          expect(new Set(chain.cards.map(({ label }) => label)).size).toBe(cards);
          expect([...chain.printOrder].sort((a, b) => a - b)).toEqual(chain.cards.map((_, i) => i));
        }
  });

  it('marks the answer on the next strip, and no other, as right', () => {
    for (let seed = 1; seed <= 25; seed++)
      for (const locale of ['en-AU', 'en-GB', 'en-US'] as const) {
        const { cards } = chainOf({ seed, locale, years: [seed % 7] });
        cards.forEach(({ question }, at) => {
          if (!question) return;
          const right = cards.flatMap(({ answer }, to) =>
            answer && checkAnswer(question, answer.text, localeOf(locale)).verdict === 'right' ? [to] : [],
          );
          expect(right, question.text).toEqual([at + 1]);
        });
      }
  });

  it('orders letters and sheets by what the strips say, so that one class cannot know another’s', () => {
    const made = [
      [1, 2],
      [3, 4],
      [5, 6],
    ].map((years) => chainOf({ years, seed: 1 }));
    expect(new Set(made.map(({ cards }) => cards.map(({ label }) => label).join(''))).size).toBe(3);
    expect(new Set(made.map(({ printOrder }) => String(printOrder))).size).toBe(3);
  });

  it('goes from easy to hard unless told otherwise, and mixes strands', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const questions = chainOf({ seed }).cards.flatMap(({ question }) => question ?? []);
      const ladder = questions.map((question) => Math.round(commonDifficulty(question) * 1000));
      expect(ladder).toEqual(ladder.toSorted((a, b) => a - b));
      expect(new Set(questions.map(({ strand }) => strand)).size).toBeGreaterThanOrEqual(5);
    }
    const mixed = chainOf({ order: 'mixed' })
      .cards.flatMap(({ question }) => question ?? [])
      .map(commonDifficulty);
    expect(mixed).not.toEqual(mixed.toSorted((a, b) => a - b));
  });

  it('asks chosen skills only, figures included', () => {
    const { cards } = chainOf({ skills: ['time.clock.half', 'mult.table.7'] });
    const questions = cards.flatMap(({ question }) => question ?? []);
    expect(new Set(questions.map(({ skill }) => skill))).toEqual(
      new Set(['time.clock.half', 'mult.table.7']),
    );
    expect(questions.some(({ figure }) => figure?.kind === 'clock')).toBe(true);
  });

  it('puts what is due first and keeps to the success asked for', () => {
    const due = ['frac.equal', 'add.3d', 'money.total'];
    const chain = chainOf({ due });
    expect(chain.cards.map(({ question }) => question?.skill)).toEqual(expect.arrayContaining(due));
    for (const { predicted } of chainOf({ success: [0.7, 0.9] }).cards)
      if (predicted !== null) expect(Math.abs(predicted - 0.8)).toBeLessThanOrEqual(0.1);
  });

  it('falls back to a single run where slips cannot all be shown at once, and says so', () => {
    const chain = chainOf({ years: [1], skills: ['add.within10'], cards: 9 });
    expect(chain.proof).toMatchObject({ fullRuns: 1, level: 'single run' });
    expect(chain.proof.shownAtOnce).toBeLessThan(chain.proof.slips);
  });

  it('says at once which size or skill to change, and that size works', () => {
    for (const skills of [['add.within10'], ['add.bonds10'], ['shape.sides'], ['mult.table.7']]) {
      const request = { ...BASE, years: [2], skills, cards: 16 };
      const refused = composeChain(request);
      expect(refused).toMatchObject({ ok: false, error: { code: 'chain.few' } });
      if (refused.ok) continue;
      const cards = Number(/^Choose (\d+) strips, or add a skill such as “/.exec(refused.error.hint)?.[1]);
      expect(composeChain({ ...request, cards }).ok, refused.error.hint).toBe(true);
      expect(refused.error.mend?.cards).toBe(cards);
      expect(refused.error.hint).toContain(`(${refused.error.mend?.skill})`);
    }
    // Eight children’s words for chance give five strips at most.
    expect(composeChain({ ...BASE, skills: ['shape.angle.name'], cards: 6 })).toMatchObject({
      ok: false,
      error: { code: 'chain.few', hint: expect.stringMatching(/^Choose other skills, or add a skill/) },
    });
  });

  it('asks nothing whose picture a strip is too small for, and says so', () => {
    const calendar = composeChain({ ...BASE, years: [3], skills: ['time.calendar'], cards: 12 });
    expect(calendar).toMatchObject({
      ok: false,
      error: { code: 'chain.room', message: expect.stringMatching(/pictures would be too small to read/) },
    });
    // Strips of shorter chains are taller.
    const graph = composeChain({ ...BASE, years: [5], skills: ['data.line'], cards: 12 });
    expect(graph).toMatchObject({ ok: false, error: { code: 'chain.room', mend: { cards: 10 } } });
  });

  it.each([
    [{ cards: 5 }, 'chain.cards'],
    [{ cards: 17 }, 'chain.cards'],
    [{ cards: 8.5 }, 'chain.cards'],
    [{ years: [] }, 'supply.years'],
    [{ seed: 2 ** 40 }, 'supply.seed'],
    [{ skills: ['no.such'] }, 'supply.skill'],
    [{ success: [1, 1] as const }, 'chain.few'],
  ])('refuses %j', (change, code) => {
    const refused = composeChain({ ...BASE, ...change });
    expect(refused).toMatchObject({ ok: false, error: { code } });
    if (!refused.ok)
      expect(`${refused.error.message} ${refused.error.hint}`).toMatch(/^[A-Z].*[.] [A-Z].*[.]$/);
  });

  it('gives the same chain for the same seed, and another for another', () => {
    expect(chainOf({ seed: 7 })).toEqual(chainOf({ seed: 7 }));
    expect(chainOf({ seed: 7 })).not.toEqual(chainOf({ seed: 8 }));
  });
});

describe('proveChain', () => {
  const locale = localeOf('en-AU');
  const spoiled = (spoil: (cards: ChainCard[]) => void) => {
    const cards = structuredClone(chainOf().cards) as ChainCard[];
    spoil(cards);
    return proveChain(cards, locale);
  };
  const withSlip = (card: ChainCard, text: string): ChainCard => {
    if (!card.question) throw new Error('no question');
    const slip = { misconception: 'any', text, value: null };
    return { ...card, question: { ...card.question, slips: [...card.question.slips, slip] } };
  };
  const answerAt = (cards: readonly ChainCard[], at: number) => cards[at]?.answer?.text ?? '';

  it('proves the chain again from its strips', () => {
    const chain = chainOf({ seed: 3 });
    expect(proveChain(chain.cards, locale)).toEqual(chain.proof);
  });

  it('finds the run that three slips open', () => {
    // Strips 1 2 3 4 5 are laid as 3 4 . 2 . 5: each slip alone still shows.
    const proof = spoiled((cards) => {
      cards[0] = withSlip(cards[0] as ChainCard, answerAt(cards, 3));
      cards[4] = withSlip(cards[4] as ChainCard, answerAt(cards, 1));
      cards[2] = withSlip(cards[2] as ChainCard, answerAt(cards, 5));
    });
    expect(proof).toMatchObject({ fullRuns: 2, level: 'open' });
  });

  it('tells a slip that leads forward from one that leads back', () => {
    const forward = spoiled((cards) => {
      cards[1] = withSlip(cards[1] as ChainCard, answerAt(cards, 6));
    });
    expect(forward).toMatchObject({ fullRuns: 1, level: 'single run' });
    expect(forward.slips - forward.shownAtOnce).toBe(1);
    const back = spoiled((cards) => {
      cards[6] = withSlip(cards[6] as ChainCard, answerAt(cards, 2));
    });
    expect(back).toMatchObject({ fullRuns: 1, level: 'at once' });
    expect(back.landings).toContainEqual({ from: 6, misconception: 'any', to: 2 });
  });

  it('does not accept two strips with one answer in two forms', () => {
    const proof = spoiled((cards) => {
      cards[8] = { ...(cards[8] as ChainCard), answer: { kind: 'decimal', text: '0.5', value: '1/2' } };
      cards[2] = { ...(cards[2] as ChainCard), answer: { kind: 'word', text: 'one half', value: null } };
      const second = cards[1] as ChainCard;
      if (second.question)
        cards[1] = { ...second, question: { ...second.question, answer: cards[2].answer as never } };
    });
    expect(proof.level).toBe('open');
  });
});
