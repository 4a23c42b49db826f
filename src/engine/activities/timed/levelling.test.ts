import { describe, expect, it } from 'vitest';
import { rateBand } from './criteria.js';
import { personalBest, suggestMove, type TimedRecord, usualGoal } from './levelling.js';

function sheet(
  date: string,
  right: number,
  attempted: number,
  digitsRight: number,
  minutes: number | null = 2,
): TimedRecord {
  return { date, levelId: 'add-20', asked: 60, attempted, right, digitsRight, minutes };
}

const GOAL = { accuracy: 0.95, digitsPerMinute: 31, sheets: 3, of: 4 };

describe('rateBand', () => {
  it('gives the published instructional bands', () => {
    // Burns, VanDerHeyden and Jiban 2006, School Psychology Review 35(3), 401-418, abstract.
    expect(rateBand(2, 'en-US')).toMatchObject({ low: 14, high: 31 });
    expect(rateBand(3, 'en-AU')).toMatchObject({ low: 14, high: 31 });
    expect(rateBand(4, 'en-US')).toMatchObject({ low: 24, high: 49 });
    expect(rateBand(5, 'en-AU')).toMatchObject({ low: 24, high: 49 });
    expect(rateBand(1, 'en-US')).toBeNull();
    expect(rateBand(3, 'en-GB')).toEqual(rateBand(2, 'en-US'));
  });
});

describe('suggestMove', () => {
  it('suggests moving up after three good sheets of four, and shows them', () => {
    const records = [
      sheet('2026-05-04', 40, 40, 70),
      sheet('2026-05-05', 20, 30, 30),
      sheet('2026-05-06', 39, 40, 66),
      sheet('2026-05-07', 38, 40, 62),
    ];
    expect(suggestMove(records, 'add-20', GOAL)).toEqual({
      move: 'up',
      evidence: '3 sheets of the last 4 reached 95 % right and 31 digits a minute or the whole sheet.',
    });
    expect(suggestMove(records.toReversed(), 'add-20', GOAL).move).toBe('up');
    expect(suggestMove(records.slice(0, 3), 'add-20', GOAL).move).toBe('stay');
    expect(suggestMove(records, 'another', GOAL)).toEqual({
      move: 'stay',
      evidence: 'No sheet on this level yet.',
    });
  });

  it('asks for accuracy and rate together', () => {
    const quickOnly = ['04', '05', '06', '07'].map((day) => sheet(`2026-05-${day}`, 36, 40, 80));
    const slowOnly = ['04', '05', '06', '07'].map((day) => sheet(`2026-05-${day}`, 40, 40, 61));
    expect(suggestMove(quickOnly, 'add-20', GOAL).move).toBe('stay');
    expect(suggestMove(slowOnly, 'add-20', GOAL).move).toBe('stay');
  });

  it('takes the whole sheet for quick enough, since it holds no more', () => {
    const whole = ['04', '05', '06'].map((day) => sheet(`2026-05-${day}`, 59, 60, 62, 3));
    expect(suggestMove(whole, 'add-20', GOAL).move).toBe('up');
    const careless = ['04', '05', '06'].map((day) => sheet(`2026-05-${day}`, 50, 60, 55, 3));
    expect(suggestMove(careless, 'add-20', GOAL).move).toBe('stay');
  });

  it('never moves a child up on sheets without a clock', () => {
    const untimed = ['04', '05', '06', '07'].map((day) => sheet(`2026-05-${day}`, 40, 40, 80, null));
    expect(suggestMove(untimed, 'add-20', GOAL).move).toBe('stay');
  });

  it('suggests a level back after three hard sheets in a row only', () => {
    const hard = ['04', '05', '06'].map((day) => sheet(`2026-05-${day}`, 15, 20, 20));
    expect(suggestMove(hard, 'add-20', GOAL)).toEqual({
      move: 'back',
      evidence: 'Each of the last 3 sheets had less than 80 % right (75 %, 75 %, 75 %).',
    });
    expect(suggestMove([...hard, sheet('2026-05-07', 18, 20, 20)], 'add-20', GOAL).move).toBe('stay');
    expect(suggestMove(hard.slice(0, 2), 'add-20', GOAL).move).toBe('stay');
  });

  it('takes the upper end of the published band as the usual rate', () => {
    expect(usualGoal(3, 'en-AU').digitsPerMinute).toBe(31);
    expect(usualGoal(5, 'en-AU').digitsPerMinute).toBe(49);
    expect(usualGoal(1, 'en-AU').digitsPerMinute).toBeLessThan(14);
  });
});

describe('personalBest', () => {
  it('is the quickest sheet of the level, the first of equals', () => {
    const records = [
      sheet('2026-05-06', 30, 30, 50),
      sheet('2026-05-04', 30, 31, 50),
      sheet('2026-05-05', 9, 9, 99, null),
    ];
    expect(personalBest(records, 'add-20')?.date).toBe('2026-05-04');
    expect(personalBest(records, 'other')).toBeNull();
  });
});
