// make timed: forty forms of every level, judged from the JSON alone.
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { json, printed, refusal } from './command.js';
import { type TimedJson, timedProblems } from './timed-checker.js';

interface Level {
  readonly level: number;
  readonly id: string;
  readonly title: string;
}

const LEVELS = json<Level[]>(['ladder', '--json']);

function timed(...args: readonly string[]): TimedJson {
  return json<TimedJson>(['make', 'timed', ...args, '--json']);
}

describe('make timed', () => {
  it('has a ladder of at least 20 levels, from small sums to decimals and numbers below zero', () => {
    expect(LEVELS.length).toBeGreaterThanOrEqual(20);
    expect(LEVELS.map(({ level }) => level)).toEqual(LEVELS.map((_, i) => i + 1));
    expect(new Set(LEVELS.map(({ id }) => id)).size).toBe(LEVELS.length);
    const questions = LEVELS.map(
      ({ level }) => timed('--level', String(level), '--forms', '1').forms[0]?.questions ?? [],
    );
    expect(Math.max(...(questions[0] ?? []).map(({ answer }) => Number(answer.value)))).toBeLessThanOrEqual(
      5,
    );
    const all = questions.flat();
    expect(all.some(({ answer }) => answer.text.includes('.'))).toBe(true);
    expect(all.some(({ answer }) => answer.text.startsWith('−'))).toBe(true);
    expect(all.some(({ text }) => text === '12 × 12')).toBe(true);
  });

  it.each(LEVELS)('keeps every promise in 40 forms of level $level, $title', ({ level }) => {
    const made = timed('--level', String(level), '--forms', '40');
    expect(timedProblems(made, { forms: 40, questions: 60 })).toEqual([]);
    expect(new Set(made.forms.map(({ questions }) => JSON.stringify(questions))).size).toBe(40);
  });

  it('tells strategies whose every equation is true', () => {
    const steps = LEVELS.flatMap(
      ({ level }) => timed('--level', String(level), '--forms', '1').forms[0]?.questions ?? [],
    ).flatMap(({ strategy }) => strategy);
    expect(steps.length).toBeGreaterThan(1000);
    for (const step of steps)
      for (const [, left, right] of step.matchAll(/([−\d .+×÷]+) = ([−\d .]+)/g))
        expect(number(left ?? ''), step).toBeCloseTo(number(right ?? ''), 9);
  });

  it('makes the same form again, however many are asked for, and other forms by another seed', () => {
    const [few, many] = [timed('--level', '6', '--forms', '3'), timed('--level', '6', '--forms', '9')];
    expect(many.forms.slice(0, 3)).toEqual(few.forms);
    expect(printed(['make', 'timed', '--level', '6', '--forms', '3', '--json'])).toBe(
      printed(['make', 'timed', '--level', '6', '--forms', '3', '--json']),
    );
    expect(timed('--level', '6', '--seed', '2').forms[0]).not.toEqual(few.forms[0]);
  });

  it('takes a level made of skills, and other numbers of questions', () => {
    const made = timed('--skills', 'mult.table.7,div.table.69', '--forms', '6', '--questions', '80');
    expect(made).toMatchObject({ level: null, title: expect.stringContaining('7 times table') });
    expect(timedProblems(made, { forms: 6, questions: 80 })).toEqual([]);
  });

  it.each([
    [['--level', '99'], /--level 99: expected a whole number from 1 to/],
    [[], /Give one of --level, --skills and --own/],
    [['--level', '3', '--questions', '12'], /--questions 12: expected a whole number from 60 to 120/],
    [['--level', '3', '--forms', '0'], /--forms 0/],
    [['--skills', 'no.such'], /no skill “no\.such”/],
    [['--skills', 'time.clock.half'], /only .* short questions/],
  ])('refuses %j in one sentence', (args, sentence) => {
    expect(refusal(['make', 'timed', ...args])).toMatch(sentence);
  });
});

function number(text: string): number {
  const plain = text
    .replaceAll(' ', '')
    .replaceAll(' ', '')
    .replaceAll('−', '-')
    .replaceAll('×', '*')
    .replaceAll('÷', '/');
  return Number(evaluate(plain));
}
