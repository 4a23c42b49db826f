import { describe, expect, it } from 'vitest';
import { outcomeOf, readEntry, typedOf } from './outcome-entry.js';

describe('readEntry', () => {
  it('reads how far a child got and what was circled, in any order, once', () => {
    expect(readEntry({ done: ' 38 ', wrong: '9, 4 9' }, 60)).toEqual({
      ok: true,
      attempted: 38,
      wrong: [4, 9],
    });
    expect(readEntry({ done: '0', wrong: '' }, 60)).toEqual({ ok: true, attempted: 0, wrong: [] });
  });

  it.each([
    [{ done: '', wrong: '' }, 'Done: a number from 0 to 60.'],
    [{ done: '61', wrong: '' }, 'Done: a number from 0 to 60.'],
    [{ done: '3x', wrong: '' }, 'Done: a number from 0 to 60.'],
    [{ done: '8', wrong: '9' }, 'Circled: question 9 is beyond the 8 done.'],
    [{ done: '8', wrong: 'a' }, 'Circled: the numbers of the questions, such as 4 9.'],
  ])('says what is wrong with %j', (typed, message) => {
    expect(readEntry(typed, 60)).toEqual({ ok: false, message });
  });
});

describe('outcomeOf', () => {
  it('keeps what was written and the redo row, as far as it still fits', () => {
    const before = { attempted: 9, wrong: [2, 3], written: { 2: '7', 3: '8' }, redoWrong: [1], minutes: 2 };
    expect(outcomeOf({ attempted: 12, wrong: [3, 11] }, before, 3)).toEqual({
      attempted: 12,
      wrong: [3, 11],
      written: { 3: '8' },
      redoWrong: [1],
      minutes: 3,
    });
    expect(typedOf(before)).toEqual({ done: '9', wrong: '2 3' });
    expect(typedOf(null)).toEqual({ done: '', wrong: '' });
  });
});
