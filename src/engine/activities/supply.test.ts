import { describe, expect, it } from 'vitest';
import { skillById } from '../skills/map.js';
import { PITCHES, supplyQuestions } from './supply.js';

const BASE = { years: [3, 4], seed: 1, locale: 'en-AU', count: 12 } as const;

describe('supplyQuestions', () => {
  it('mixes strands and goes from easy to hard, with all texts and answers different', () => {
    for (const pitch of PITCHES)
      for (let seed = 1; seed <= 20; seed++) {
        const result = supplyQuestions({ ...BASE, seed, pitch });
        if (!result.ok) throw new Error(result.error.message);
        const questions = result.value;
        expect(questions).toHaveLength(12);
        expect(new Set(questions.map(({ question }) => question.text)).size).toBe(12);
        expect(
          new Set(questions.map(({ question }) => question.answer.value ?? question.answer.text)).size,
        ).toBe(12);
        expect(new Set(questions.map(({ question }) => question.strand)).size).toBeGreaterThanOrEqual(6);
        for (let i = 1; i < 12; i++)
          expect(questions[i]?.common).toBeGreaterThanOrEqual(questions[i - 1]?.common as number);
      }
  });

  it('keeps to chosen skills, and puts due ones first', () => {
    const chosen = supplyQuestions({ ...BASE, skills: ['mult.table.7', 'time.clock.five'] });
    expect(chosen.ok && new Set(chosen.value.map(({ question }) => question.skill))).toEqual(
      new Set(['mult.table.7', 'time.clock.five']),
    );
    const due = supplyQuestions({ ...BASE, count: 4, due: ['frac.equal', 'dec.round'] });
    const skills = due.ok ? due.value.map(({ question }) => question.skill) : [];
    expect(skills).toEqual(expect.arrayContaining(['frac.equal', 'dec.round']));
  });

  it('says at once how many there are and what to change', () => {
    const few = supplyQuestions({ ...BASE, years: [0], skills: ['add.bonds10'], count: 12 });
    expect(few).toMatchObject({ ok: false, error: { code: 'supply.few' } });
    if (few.ok) return;
    expect(few.error.message).toContain(skillById('add.bonds10')?.title);
    expect(few.error.hint).toMatch(/^Ask for \d+ or fewer, or add a skill such as “.+” \(.+\)\.$/);
    const fits = Number(/for (\d+)/.exec(few.error.hint)?.[1]);
    expect(supplyQuestions({ ...BASE, years: [0], skills: ['add.bonds10'], count: fits }).ok).toBe(true);
  });

  it.each([
    [{ years: [] }, 'supply.years'],
    [{ years: [9] }, 'supply.years'],
    [{ seed: 0.5 }, 'supply.seed'],
    [{ skills: ['no.such'] }, 'supply.skill'],
  ])('refuses %j', (change, code) => {
    expect(supplyQuestions({ ...BASE, ...change })).toMatchObject({ ok: false, error: { code } });
  });
});
