// A teacher's own questions in every activity that takes them: they come first, keep its promises, and leave room.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { typicalClass } from '../learning/class-model.js';
import { parseDayNumber } from '../numbers/day-number.js';
import { localeOf } from '../numbers/locale.js';
import { ownQuestionsIn } from '../own-questions/own-lines.js';
import { isOwnId } from '../own-questions/own-question.js';
import { drawOwn } from '../own-questions/own-supply.js';
import { answersEqual } from '../questions/equivalence.js';
import type { Question } from '../questions/question.js';
import { Rng } from '../random/rng.js';
import { checkBoard } from './board/proof.js';
import { composeBoard } from './board/compose.js';
import { replaceRung, withRung } from './board/replace-rung.js';
import { composeChain } from './chain/compose.js';
import { proveChain } from './chain/proof.js';
import { composeJigsaw } from './jigsaw/compose.js';
import { predictQuestion } from './predict-question.js';
import { composeTrail } from './trail/compose.js';

const AU = localeOf('en-AU');
const seeds = fc.integer({ min: 0, max: 100_000 });
const LINES = [
  'What is double {n}? | 2 * n | n + 2; n | | | 2 | Addition',
  'How far is {n} from the next ten? | 10 - n mod 10 | n mod 10 | | n mod 10 > 0 | 2 | Place value',
  "Is {n} odd or even? | if(n mod 2 = 0, 'even', 'odd') | | | | 2 | Place value",
  'What is {n} × 10? | n * 10 | n + 10; n * 100 | | | 3 | Multiplication',
  'How many legs have 3 spiders? | 24 | 18; 12 | | | 3 | Multiplication',
  '{n} + {n + 2} = ? | n + n + 2 | n + 2; 2 * n | | n < 50 | 3 | Addition',
];
const OWN = ownQuestionsIn(LINES.join('\n'));
const isOwn = ({ skill }: Question) => isOwnId(skill);

function value<T>(result: { ok: true; value: T } | { ok: false; error: { message: string } }): T {
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

describe('a list asked again and again', () => {
  it('gives different questions, each row its share, and ends', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const drawn = [...drawOwn({ questions: OWN }, new Rng(seed), AU)];
        expect(new Set(drawn.map(({ text }) => text)).size).toBe(drawn.length);
        for (const { id } of OWN) {
          const ofRow = drawn.filter(({ skill }) => skill === id);
          expect(ofRow.length).toBeGreaterThan(0);
          expect(ofRow.length).toBeLessThanOrEqual(24);
        }
        expect(drawn.filter(({ text }) => text.includes('spiders'))).toHaveLength(1);
        for (const { text } of drawn)
          if (/next ten/.test(text)) expect(Number(/\d+/.exec(text)?.[0]) % 10).toBeGreaterThan(0);
        expect([...drawOwn({ questions: OWN }, new Rng(seed), AU)]).toEqual(drawn);
      }),
      { numRuns: 30 },
    );
  });

  it('asks each row once about a number that is given', () => {
    const number = value(parseDayNumber('3.5', AU));
    const drawn = [...drawOwn({ questions: OWN, number }, new Rng(1), AU)];
    expect(drawn.map(({ text }) => text)).toContain('What is double 3.5?');
    expect(new Set(drawn.map(({ skill }) => skill)).size).toBe(drawn.length);
  });
});

describe('own questions', () => {
  it('make up a chain, and their slips are proved with it', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const chain = value(composeChain({ years: [3], seed, locale: 'en-AU', own: { questions: OWN } }));
        const asked = chain.cards.flatMap(({ question }) => question ?? []);
        expect(asked.every(isOwn)).toBe(true);
        expect(chain.proof.level).not.toBe('open');
        expect(chain.proof.slips).toBe(asked.flatMap(({ slips }) => slips).length);
        expect(proveChain(chain.cards, AU)).toEqual(chain.proof);
      }),
      { numRuns: 20 },
    );
  });

  it('that are too few are filled up from the skill map', () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: 1, max: 6 }), (seed, rows) => {
        const few = Array.from(
          { length: rows },
          (_, i) => `What is ${i + 7} groups of 11? | ${11 * (i + 7)}`,
        );
        const own = { questions: ownQuestionsIn(few.join('\n')) };
        const chain = value(composeChain({ years: [3], seed, locale: 'en-AU', own }));
        const asked = chain.cards.flatMap(({ question }) => question ?? []);
        expect(asked).toHaveLength(9);
        expect(asked.filter(isOwn)).toHaveLength(rows);
      }),
      { numRuns: 30 },
    );
  });

  it('with only two answers leave draws for others', () => {
    const own = { questions: OWN.slice(2, 3) };
    const chain = value(composeChain({ years: [3], seed: 4, locale: 'en-AU', own }));
    expect(chain.cards.flatMap(({ question }) => question ?? []).filter(isOwn)).toHaveLength(2);
  });

  it('make up a trail whose answers all differ', () => {
    for (let seed = 1; seed <= 6; seed++) {
      const wish = { years: [3], rows: 4, columns: 4, seed, locale: 'en-AU' } as const;
      const asked = value(composeTrail({ ...wish, own: { questions: OWN } })).cells.map(
        ({ question }) => question,
      );
      expect(asked.filter(isOwn)).toHaveLength(16);
      for (const [at, { answer }] of asked.entries())
        expect(asked.slice(at + 1).some((other) => answersEqual(other.answer, answer))).toBe(false);
    }
  });

  it('make up the rows of a jigsaw, or are refused with an example', () => {
    const wish = { years: [3], rows: 4, columns: 5, seed: 2, locale: 'en-AU' } as const;
    const jigsaw = value(composeJigsaw({ ...wish, own: { questions: OWN } }));
    expect(jigsaw.proof.assemblies).toBe(1);
    const words = { questions: OWN.slice(2, 3) };
    expect(composeJigsaw({ ...wish, own: words })).toMatchObject({
      ok: false,
      error: { code: 'jigsaw.skills', hint: expect.stringContaining('{n} + {n + 2}') },
    });
  });

  it('stand on a board by its number, three at least where they suit, and the board keeps its rules', () => {
    fc.assert(
      fc.property(fc.integer({ min: 11, max: 99 }), seeds, (n, seed) => {
        const request = {
          number: value(parseDayNumber(String(n), AU)),
          years: [3, 4],
          side: 'front',
          seed,
          locale: 'en-AU',
          own: OWN,
        } as const;
        const board = value(composeBoard(request));
        expect(checkBoard(board)).toMatchObject({ ok: true });
        const own = board.rungs.filter(({ question }) => isOwn(question));
        expect(own.length).toBeGreaterThanOrEqual(3);
        for (const { question, why } of own) {
          expect(question.text).toContain(String(n));
          expect(why).toMatch(/^One of your own questions: /);
        }
        const [other] = replaceRung(board, own[0]?.rung ?? 1, request);
        if (other) expect(checkBoard(withRung(board, other, request))).toMatchObject({ ok: true });
      }),
      { numRuns: 6 },
    );
  });

  it('are predicted like skills of their strand and year: harder ones never better', () => {
    const model = typicalClass([3]);
    for (const question of drawOwn({ questions: OWN }, new Rng(1), AU)) {
      const shares = [-2, -1, 0, 1, 2].map((shift) => predictQuestion(model, question, shift));
      expect(shares).toEqual(shares.toSorted((a, b) => b - a));
      expect(Math.max(...shares)).toBeLessThan(1);
      expect(Math.min(...shares)).toBeGreaterThan(0);
    }
  });
});
