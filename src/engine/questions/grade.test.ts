import { describe, expect, it } from 'vitest';
import { localeOf } from '../numbers/locale.js';
import { wholeAnswer } from './answer.js';
import type { CheckableQuestion } from './check-answer.js';
import { gradeAnswers } from './grade.js';

const AU = localeOf('en-AU');

function sum(text: string, right: number, slips: Readonly<Record<string, number>>): CheckableQuestion {
  const answer = wholeAnswer(right, AU);
  return {
    text,
    figure: null,
    answer,
    accepts: [answer.text],
    slips: Object.entries(slips).map(([misconception, value]) => ({
      misconception,
      text: String(value),
      value: String(value),
    })),
  };
}

describe('grading a pile of answers', () => {
  const first = sum('47 + 38', 85, { 'test.carry': 75, 'test.align': 427 });
  const second = sum('26 + 17', 43, { 'test.carry': 33, 'test.subtracts': 33 });
  const third = sum('5 + 4', 9, { 'test.subtracts': 1 });

  it('counts verdicts and gathers evidence, most often seen first', () => {
    const grading = gradeAnswers(
      [
        { question: first, given: '75' },
        { question: second, given: '33' },
        { question: third, given: '9' },
        { question: third, given: '' },
        { question: first, given: '86' },
      ],
      AU,
    );
    expect(grading.items.map((item) => item.verdict)).toEqual(['wrong', 'wrong', 'right', 'blank', 'wrong']);
    expect([grading.right, grading.wrong, grading.blank]).toEqual([1, 3, 1]);
    expect(grading.misconceptions).toEqual([
      {
        misconception: 'test.carry',
        does: null,
        help: null,
        seen: 2,
        seenAlone: 1,
        chances: 3,
        where: [0, 1],
      },
      {
        misconception: 'test.subtracts',
        does: null,
        help: null,
        seen: 1,
        seenAlone: 0,
        chances: 2,
        where: [1],
      },
    ]);
  });

  it('has nothing to say about no answers', () => {
    expect(gradeAnswers([], AU)).toEqual({ items: [], right: 0, wrong: 0, blank: 0, misconceptions: [] });
  });
});
