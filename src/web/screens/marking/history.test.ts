import { expect, it } from 'vitest';
import { bringBack, NO_HISTORY, OPEN, type Step, takeBack, withStep } from './history.js';

const RIGHT = { state: 'right', typed: '' } as const;
const WRONG = { state: 'wrong', typed: '75' } as const;
const first: Step = [{ childId: 'a', rung: 1, before: OPEN, after: RIGHT }];
const second: Step = [{ childId: 'a', rung: 1, before: RIGHT, after: WRONG }];

it('takes steps back newest first, turned round, and brings them back', () => {
  const history = withStep(withStep(NO_HISTORY, first), second);
  const back = takeBack(history);
  expect(back?.step).toEqual([{ childId: 'a', rung: 1, before: WRONG, after: RIGHT }]);
  const further = takeBack(back?.history ?? NO_HISTORY);
  expect(further?.step).toEqual([{ childId: 'a', rung: 1, before: RIGHT, after: OPEN }]);
  expect(takeBack(further?.history ?? NO_HISTORY)).toBeNull();
  expect(bringBack(further?.history ?? NO_HISTORY)?.step).toEqual(first);
});

it('forgets what was taken back once something new is marked, and only then', () => {
  const history = takeBack(withStep(NO_HISTORY, first))?.history ?? NO_HISTORY;
  expect(bringBack(withStep(history, []))?.step).toEqual(first);
  expect(bringBack(withStep(history, second))).toBeNull();
});
