import { describe, expect, it } from 'vitest';
import { buildClassModel, type ChildRecord } from '../learning/class-model.js';
import type { SkillNode } from '../learning/prior.js';
import { addDays, daysBetween } from '../numbers/calendar.js';
import { composeBoard } from '../activities/board/compose.js';
import { parseDayNumber } from '../numbers/day-number.js';
import { localeOf } from '../numbers/locale.js';
import { dueSkills, type Exposure, exposuresOf } from './due.js';
import { type DayRequest, daySeed, planDay } from './plan-day.js';

const NODES: readonly SkillNode[] = Array.from({ length: 6 }, (_, i) => ({
  id: `skill.${i}`,
  title: `Skill ${i}`,
  year: i === 5 ? 6 : 2,
  strand: 'addition',
  prerequisites: [],
}));

function modelOn(on: string, children: readonly ChildRecord[] = [{ id: 'a', year: 4, answers: [] }]) {
  return buildClassModel({ children, on, skills: NODES });
}

function answers(skill: string, days: readonly string[], right = true): ChildRecord {
  return {
    id: skill,
    year: 4,
    answers: days.map((on, i) => ({
      skill,
      difficulty: 0,
      right,
      on,
      questionId: `${skill}${i}`,
      slips: [],
    })),
  };
}

describe('dueSkills', () => {
  it('is empty while nothing was met, and brings back what was met long ago but not yesterday', () => {
    const on = '2026-05-01';
    expect(dueSkills(modelOn(on), on)).toEqual([]);
    const due = dueSkills(modelOn(on), on, [
      { skill: 'skill.0', on: '2026-03-01' },
      { skill: 'skill.1', on: '2026-04-30' },
    ]);
    expect(due.map((one) => one.skill)).toEqual(['skill.0']);
    expect(due[0]).toMatchObject({
      sinceDays: 61,
      reason: expect.stringMatching(/^Last met 61 days ago; .+ may still have it\.$/),
    });
  });

  it('lets a skill return at growing gaps', () => {
    const exposures: Exposure[] = [{ skill: 'skill.0', on: '2026-02-02' }];
    const gaps: number[] = [];
    for (let day = '2026-02-03'; day < '2027-02-01' && gaps.length < 4; day = addDays(day, 1)) {
      if (dueSkills(modelOn(day), day, exposures).length === 0) continue;
      gaps.push(daysBetween(exposures[exposures.length - 1]?.on ?? day, day));
      exposures.push({ skill: 'skill.0', on: day });
    }
    expect(gaps.length).toBeGreaterThanOrEqual(2);
    gaps.forEach((gap, i) => i > 0 && expect(gap).toBeGreaterThan(2 * (gaps[i - 1] as number)));
  });

  it('leaves out what the class would mostly fail, which wants teaching instead', () => {
    const on = '2026-05-01';
    const due = dueSkills(modelOn(on), on, [
      { skill: 'skill.5', on: '2026-03-01' },
      { skill: 'skill.4', on: '2026-03-01' },
    ]);
    expect(due.map((one) => one.skill)).toEqual(['skill.4']);
  });

  it('reads the children’s own answers: a forgotten answer is due sooner than one that went well twice', () => {
    const on = '2026-03-20';
    const model = modelOn(on, [
      answers('skill.0', ['2026-03-02'], false),
      answers('skill.1', ['2026-02-20', '2026-03-02']),
    ]);
    const due = dueSkills(model, on);
    expect(due[0]?.skill).toBe('skill.0');
    expect(due.map((one) => one.skill)).not.toContain('skill.1');
  });
});

describe('exposuresOf', () => {
  it('counts the rungs that half the class or more were meant to reach, and a wrong answer of that day outweighs it', () => {
    const parsed = parseDayNumber('47', localeOf('en-AU'));
    if (!parsed.ok) throw new Error(parsed.error.message);
    const made = composeBoard({ number: parsed.value, years: [4], side: 'front', seed: 1, locale: 'en-AU' });
    if (!made.ok) throw new Error(made.error.message);
    const exposures = exposuresOf([{ on: '2026-03-02', board: made.value }]);
    expect(exposures.length).toBe(made.value.rungs.filter((rung) => rung.predicted >= 0.5).length);
    expect(exposures[0]).toEqual({ skill: made.value.rungs[0]?.question.skill, on: '2026-03-02' });
    const shown = [{ skill: 'skill.0', on: '2026-03-02' }];
    const wrong = modelOn('2026-03-08', [answers('skill.0', ['2026-03-02'], false)]);
    expect(dueSkills(modelOn('2026-03-08'), '2026-03-08', shown)).toEqual([]);
    expect(dueSkills(wrong, '2026-03-08', shown).map((one) => one.skill)).toEqual(['skill.0']);
  });
});

describe('planDay', () => {
  const base: DayRequest = {
    date: '2026-03-10',
    terms: [{ name: 'Term 1', start: '2026-01-28', end: '2026-04-02' }],
    closed: ['2026-03-09'],
    classModel: modelOn('2026-03-10'),
    settings: { years: [4, 5], locale: 'en-AU' },
    seed: 7,
  };
  const plan = (over: Partial<DayRequest> = {}) => {
    const planned = planDay({ ...base, ...over });
    if (!planned.ok) throw new Error(planned.error.message);
    return planned.value;
  };

  it('says the day in one sentence', () => {
    const today = plan({ exposures: [{ skill: 'skill.0', on: '2026-02-02' }] });
    expect(today.sentence).toBe(
      `Tuesday 10 March, week 7 of Term 1: a board about ${today.number.text}; 1 topic is due again.`,
    );
    const american = plan({ settings: { years: [4, 5], locale: 'en-US' } });
    expect(american.sentence).toMatch(/^Tuesday, March 10, week 7 of Term 1: /);
    expect(today).toMatchObject({ schoolDay: 29, nextSchoolDay: '2026-03-11', place: 'week 7 of Term 1' });
  });

  it('gives each side and each day its own seed, the same every time', () => {
    const seeds = [...plan().boards, ...plan({ date: '2026-03-11' }).boards].map((board) => board.seed);
    expect(new Set(seeds).size).toBe(4);
    expect(plan()).toEqual(plan());
    expect(daySeed(7, '2026-03-10', 'front')).toBe(plan().boards[0]?.seed);
    for (const seed of seeds) expect(seed === (seed | 0) && seed > 0).toBe(true);
  });

  it('plans days without school too and says when school is next', () => {
    expect(plan({ date: '2026-03-09' })).toMatchObject({
      schoolDay: null,
      sentence: 'Monday 9 March has no school; the next school day is Tuesday 10 March.',
    });
    expect(plan({ date: '2026-05-01' }).sentence).toBe(
      'Friday 1 May has no school; no later school day is set.',
    );
    expect(plan({ terms: [], closed: [], date: '2026-05-01' })).toMatchObject({ schoolDay: 0, place: null });
    expect(plan({ terms: [], closed: [], date: '2026-05-02' }).schoolDay).toBeNull();
  });

  it.each([
    [{ date: '2026-02-29' }, 'calendar.date'],
    [{ date: 'tomorrow' }, 'calendar.date'],
    [{ settings: { years: [], locale: 'en-AU' } }, 'plan.years'],
    [{ seed: 0.5 }, 'plan.seed'],
    [{ terms: [{ name: 'Term 1', start: '2026-04-02', end: '2026-01-28' }] }, 'calendar.order'],
  ] as const)('answers %j with an error value', (over, code) => {
    expect(planDay({ ...base, ...over })).toMatchObject({ ok: false, error: { code } });
  });
});
