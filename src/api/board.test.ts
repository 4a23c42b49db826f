// What the composer makes must cross the wire whole: a field that a schema does not know is dropped without a word.
import { describe, expect, it } from 'vitest';
import { composeBoard } from '#engine/activities/board/compose.js';
import { parseDayNumber } from '#engine/numbers/day-number.js';
import { localeOf } from '#engine/numbers/locale.js';
import { Board } from './board.js';

function boardOn(text: string, years: readonly number[]) {
  const number = parseDayNumber(text, localeOf('en-AU'));
  if (!number.ok) throw new Error(number.error.message);
  const made = composeBoard({ number: number.value, years, side: 'front', seed: 1, locale: 'en-AU' });
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

describe('the board on the wire', () => {
  it.each([
    ['47', [4, 5]],
    ['3/4', [4, 5]],
  ] as const)('is the composed board about %s, unchanged', (text, years) => {
    const board = boardOn(text, years);
    expect(Board.parse(JSON.parse(JSON.stringify(board)))).toEqual(JSON.parse(JSON.stringify(board)));
  });
  it('keeps what a board says it does not promise', () => {
    const board = boardOn('$4.85', [1, 2]);
    expect(board.proof.relaxed?.length).toBeGreaterThan(0);
    expect(Board.parse(JSON.parse(JSON.stringify(board))).proof.relaxed).toEqual(board.proof.relaxed);
  });
});
