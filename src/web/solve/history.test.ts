import { describe, expect, it } from 'vitest';
import { afterStep, beginHistory, stepBack } from './history.js';

describe('a history', () => {
  it('goes back through every step to the beginning and no further', () => {
    const begun = beginHistory('a');
    const two = afterStep(afterStep(begun, 'b'), 'c');
    expect(stepBack(two).now).toBe('b');
    expect(stepBack(stepBack(two))).toEqual(begun);
    expect(stepBack(begun)).toBe(begun);
  });
  it('does not count a step that changes nothing', () => {
    const begun = beginHistory({ x: 1 });
    expect(afterStep(begun, begun.now)).toBe(begun);
  });
  it('forgets the oldest steps after a hundred', () => {
    let history = beginHistory(0);
    for (let step = 1; step <= 150; step++) history = afterStep(history, step);
    expect(history.past).toHaveLength(100);
    expect(history.past[0]).toBe(50);
  });
});
