import { describe, expect, it } from 'vitest';
import { nextNumbers, numbersInWords, usualBand } from './set-numbers.js';

describe('the numbers of sets', () => {
  it('go on after the shelf’s of the same kind and band', () => {
    const shelf = [
      { kind: 'chain', band: 'middle', number: 10 },
      { kind: 'chain', band: 'middle', number: 3 },
      { kind: 'chain', band: 'upper', number: 40 },
      { kind: 'trail', band: 'middle', number: 50 },
    ] as const;
    expect(nextNumbers(shelf, 'chain', 'middle', 3)).toEqual([11, 12, 13]);
    expect(nextNumbers(shelf, 'jigsaw', 'middle', 1)).toEqual([1]);
    expect(numbersInWords([11, 12, 13])).toBe('11 to 13');
    expect(numbersInWords([4])).toBe('4');
  });

  it('belong to the band of the middle year', () => {
    expect([[0], [1, 2], [2, 3], [4, 5], [3, 4, 5, 6], [6]].map(usualBand)).toEqual([
      'lower',
      'lower',
      'lower',
      'middle',
      'middle',
      'upper',
    ]);
  });
});
