import { describe, expect, it } from 'vitest';
import { addDays } from '../numbers/calendar.js';
import { MISCONCEPTIONS } from '../questions/misconceptions.js';
import { Rng } from '../random/rng.js';
import { misconceptionEvidence, misconceptionGroups } from './diagnosis.js';
import type { Answered } from './update.js';

const KNOWN = Object.keys(MISCONCEPTIONS)[0] ?? 'none';

function given(
  questionId: string,
  outcome: 'right' | 'fits' | 'other',
  on = '2026-03-02',
  slips: readonly string[] = [KNOWN],
): Answered {
  const right = outcome === 'right';
  return {
    skill: 's',
    difficulty: 0,
    right,
    on,
    questionId,
    slips: outcome === 'fits' ? slips : [],
    chances: [KNOWN],
  };
}

describe('misconceptionEvidence', () => {
  it('names nothing on one answer, however telling, and names on fitting answers to two questions', () => {
    expect(misconceptionEvidence([given('a', 'fits')])[0]?.isNamed).toBe(false);
    expect(misconceptionEvidence([given('a', 'fits'), given('a', 'fits')])[0]?.isNamed).toBe(false);
    const [named] = misconceptionEvidence([given('a', 'fits'), given('b', 'fits')]);
    expect(named).toMatchObject({
      misconception: KNOWN,
      fitting: 2,
      chances: 2,
      isNamed: true,
      questionIds: ['a', 'b'],
    });
  });

  it('words it as a prompt to look, never as a finding', () => {
    const [named] = misconceptionEvidence([given('a', 'fits'), given('b', 'fits'), given('c', 'right')]);
    expect(named?.sentence).toMatch(
      /^It may be that this child .+ \(2 of 3 answers fit\)\. Look at the working/,
    );
  });

  it('weighs right answers to questions that could have shown it against', () => {
    const fits = [given('a', 'fits'), given('b', 'fits')];
    const [without] = misconceptionEvidence(fits);
    const [against] = misconceptionEvidence([
      ...fits,
      ...['c', 'd', 'e', 'f', 'g'].map((id) => given(id, 'right')),
    ]);
    expect(without?.isNamed).toBe(true);
    expect(against?.isNamed).toBe(false);
    expect(against?.probability ?? 1).toBeLessThan(without?.probability ?? 0);
  });

  it('gives by hand-worked odds: 1/9 x 20 x 20 for two fitting answers today', () => {
    // prior odds 0.1 / 0.9; each fitting answer 0.6 / 0.03 = 20.
    const odds = (0.1 / 0.9) * 20 * 20;
    expect(misconceptionEvidence([given('a', 'fits'), given('b', 'fits')])[0]?.probability).toBeCloseTo(
      odds / (1 + odds),
      9,
    );
  });

  it('counts an answer that two misconceptions predict for less, and old answers for less', () => {
    const alone = misconceptionEvidence([given('a', 'fits')])[0]?.probability ?? 0;
    const shared = misconceptionEvidence([given('a', 'fits', '2026-03-02', [KNOWN, 'another'])]);
    const old = misconceptionEvidence([given('a', 'fits')], addDays('2026-03-02', 90))[0]?.probability ?? 1;
    expect(shared.find((one) => one.misconception === KNOWN)?.probability).toBeLessThan(alone);
    expect(old).toBeLessThan(alone);
    expect(misconceptionEvidence([given('a', 'fits')], '2026-03-01')).toEqual([]);
  });

  it('finds most simulated holders and names few others', () => {
    const rng = new Rng(11);
    const child = (holds: boolean) =>
      Array.from({ length: 8 }, (_, i) => {
        const fits = rng.chance(holds ? 0.55 : 0.03);
        return given(
          `q${i}`,
          fits ? 'fits' : rng.chance(holds ? 0.5 : 0.8) ? 'right' : 'other',
          addDays('2026-03-02', 7 * i),
        );
      });
    const isNamed = (answers: Answered[]) =>
      misconceptionEvidence(answers, '2026-04-22').some((one) => one.isNamed);
    const holders = Array.from({ length: 300 }, () => isNamed(child(true))).filter(Boolean).length / 300;
    const others = Array.from({ length: 300 }, () => isNamed(child(false))).filter(Boolean).length / 300;
    expect(holders).toBeGreaterThan(0.85);
    expect(others).toBeLessThan(0.03);
  });
});

describe('misconceptionGroups', () => {
  it('brings together the children for whom the same thing is named', () => {
    const fits = [given('a', 'fits'), given('b', 'fits')];
    const groups = misconceptionGroups([
      { id: 'x', answers: fits },
      { id: 'y', answers: [given('a', 'right')] },
      { id: 'z', answers: [...fits, given('c', 'fits')] },
    ]);
    expect(groups).toEqual([{ misconception: KNOWN, children: ['z', 'x'] }]);
  });
});
