import { describe, expect, it } from 'vitest';
import type { AnswerKind } from '#engine/questions/question.js';
import { answerForm } from './answer-form.js';

function form(kind: AnswerKind, text: string, slips: readonly string[] = []) {
  return answerForm({
    answer: { kind, text, value: null },
    slips: slips.map((slip) => ({ misconception: 'm', text: slip, value: null })),
  });
}

describe('answerForm', () => {
  it.each([
    ['number', '85', { form: 'plain', before: '', after: '' }],
    ['number', '130\u00a0cm', { form: 'plain', before: '', after: 'cm' }],
    ['number', '133\u00b0', { form: 'plain', before: '', after: '\u00b0' }],
    ['money', '$12', { form: 'plain', before: '$', after: '' }],
    ['money', '85c', { form: 'plain', before: '', after: 'c' }],
    ['money', '$4.85', { form: 'decimal', before: '$', after: '', whole: 2, places: 2 }],
    ['decimal', '2.85', { form: 'decimal', before: '', after: '', whole: 2, places: 2 }],
    ['decimal', '4.5\u00a0kg', { form: 'decimal', before: '', after: 'kg', whole: 2, places: 1 }],
    ['decimal', '1234.125', { form: 'plain', before: '', after: '' }],
    ['decimal', '\u22121.5', { form: 'plain', before: '', after: '' }],
    ['fraction', '3/8', { form: 'fraction', mixed: false }],
    ['fraction', '2 3/8', { form: 'fraction', mixed: true }],
    ['time', '7:45', { form: 'clock' }],
    ['time', '1\u00a0h 25\u00a0min', { form: 'plain', before: '', after: '' }],
    ['word', 'hexagon', { form: 'plain', before: '', after: '' }],
    ['list', '1, 2, 47', { form: 'plain', before: '', after: '' }],
  ] as const)('%s %s', (kind, text, expected) => expect(form(kind, text)).toEqual(expected));

  it('has room for the typical wrong answers too, so that it does not tell the right one', () => {
    expect(form('decimal', '1.41', ['14.1', '141.25'])).toMatchObject({ whole: 3, places: 2 });
    expect(form('fraction', '7/8', ['1 2/8'])).toEqual({ form: 'fraction', mixed: true });
  });
});
