import { describe, expect, it } from 'vitest';
import type { JigsawCell } from './jigsaw.js';
import { isRowPlainlyTrue, isRowTrue } from './row-truth.js';

function row(text: string): JigsawCell[] {
  return text
    .split(' ')
    .map((one) => (one === '_' ? { text: '', expression: '' } : { text: one, expression: one }));
}

describe('isRowTrue', () => {
  it.each([
    ['3 + 4 == 7', true],
    ['3 + 4 == 8', false],
    ['1/2 == 0.5 == 2/4', true],
    ['1/3 < 0.333', false],
    ['3 + 4 == 7 _ 5 < 6', true],
    ['3 + 4 == 7 _ 6 < 5', false],
    ['3 + 4', false],
    ['+ 3 == 3', true],
    ['3 4 == 34', false],
    ['8 / 0 == 0', false],
  ])('judges %s', (text, wanted) => {
    expect(isRowTrue(row(text), 'sentences')).toBe(wanted);
  });

  it('lets a child read × first or from left to right, and a program a divisor n/d as it is joined', () => {
    for (const text of ['2 + 3 * 4 == 14', '2 + 3 * 4 == 20', '4 / 1/2 == 8', '4 / 1/2 == 2']) {
      expect(isRowTrue(row(text), 'sentences'), text).toBe(true);
      expect(isRowPlainlyTrue(row(text), 'sentences'), text).toBe(false);
    }
    expect(isRowPlainlyTrue(row('3 * 4 == 12'), 'sentences')).toBe(true);
  });

  it('wants steps equal and not 0, and repeats seen one and a half times', () => {
    expect(isRowTrue(row('1/4 0.5 3/4 1 5/4'), 'steps')).toBe(true);
    expect(isRowTrue(row('2 2 2 2 2'), 'steps')).toBe(false);
    expect(isRowTrue(row('1 2 4 8 16'), 'steps')).toBe(false);
    expect(isRowTrue(row('A B A B A'), 'repeats')).toBe(true);
    expect(isRowTrue(row('A B C D A'), 'repeats')).toBe(false);
    expect(isRowTrue(row('A B C D A B'), 'repeats')).toBe(true);
  });
});
