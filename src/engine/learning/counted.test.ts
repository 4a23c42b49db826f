import { describe, expect, it } from 'vitest';
import { countedCells } from './counted.js';

const RUNGS = Array.from({ length: 12 }, (_, index) => ({ rung: index + 1 }));

function marks(text: string) {
  const states = { r: 'right', w: 'wrong', '-': 'blank' } as const;
  return [...text].map((letter, index) => ({ rung: index + 1, state: states[letter as 'r' | 'w' | '-'] }));
}

const counted = (text: string) => countedCells(marks(text), RUNGS).map(({ rung }) => rung);

describe('countedCells', () => {
  it('leaves out blanks after the last answer, which were most likely not reached', () => {
    expect(counted('rrrrrrw-----')).toEqual([1, 2, 3, 4, 5, 6, 7]);
  });
  it('counts a blank that was passed over', () => {
    expect(counted('rrrrrr-r----')).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });
  it('counts blanks within the minimum once anything was answered', () => {
    expect(counted('rr----------')).toEqual([1, 2, 3, 4, 5]);
  });
  it('says nothing about an empty slip', () => {
    expect(counted('------------')).toEqual([]);
  });
});
