import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { afterPress, LAST_CALL_SECONDS, leftOf, type Phase, type Press, START } from './phases.js';

const SETUP = { pages: 2, rungs: 12, minutes: 10 };
const press = (kind: Press['kind'], nowMs = 0): Press => ({ kind, nowMs });

function run(kinds: readonly Press['kind'][], from: Phase = START): Phase {
  return kinds.reduce((phase, kind) => afterPress(phase, press(kind), SETUP), from);
}

describe('afterPress', () => {
  it('starts the countdown with the first press and turns pages with the next', () => {
    expect(run(['next'])).toEqual({ name: 'working', page: 0, endsAt: 600_000, isLastCall: false });
    expect(run(['next', 'next'])).toMatchObject({ name: 'working', page: 1 });
    expect(run(['next', 'next', 'next'])).toMatchObject({ name: 'working', page: 0 });
  });
  it('gives the last call thirty seconds, and never more than was left', () => {
    const called = run(['next', 'last-call']);
    expect(leftOf(called, 0)).toBe(LAST_CALL_SECONDS * 1000);
    const late = afterPress(run(['next']), press('last-call', 590_000), SETUP);
    expect(leftOf(late, 590_000)).toBe(10_000);
  });
  it('ends by itself and reveals only on a press', () => {
    const over = afterPress(run(['next']), press('tick', 600_000), SETUP);
    expect(over).toEqual({ name: 'over', page: 0 });
    expect(run(['tick', 'tick'], over)).toEqual(over);
    expect(run(['next'], over)).toEqual({ name: 'reveal', rung: 1, isShown: false });
  });
  it('keeps the time that is left through a pause', () => {
    const paused = afterPress(run(['next']), press('pause', 60_000), SETUP);
    const again = afterPress(paused, press('pause', 500_000), SETUP);
    expect(leftOf(again, 500_000)).toBe(540_000);
  });
  it('reveals question, then answer, to the last rung and no further', () => {
    const all = run(
      Array.from({ length: 60 }, () => 'next'),
      { name: 'reveal', rung: 1, isShown: false },
    );
    expect(all).toEqual({ name: 'reveal', rung: 12, isShown: true });
    expect(
      run(
        Array.from({ length: 60 }, () => 'back'),
        all,
      ),
    ).toEqual({ name: 'reveal', rung: 1, isShown: false });
  });
  it('stays within its pages and rungs whatever is pressed', () => {
    const kinds = fc.constantFrom<Press['kind']>(
      'next',
      'back',
      'last-call',
      'pause',
      'reveal',
      'restart',
      'tick',
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(kinds, fc.nat(1_000_000)), { maxLength: 60 }), (presses) => {
        let phase: Phase = START;
        let now = 0;
        for (const [kind, wait] of presses) {
          now += wait;
          phase = afterPress(phase, { kind, nowMs: now }, SETUP);
          if ('page' in phase) expect(phase.page).toBeGreaterThanOrEqual(0);
          if ('page' in phase) expect(phase.page).toBeLessThan(SETUP.pages);
          if (phase.name === 'reveal') expect(phase.rung).toBeGreaterThanOrEqual(1);
          if (phase.name === 'reveal') expect(phase.rung).toBeLessThanOrEqual(SETUP.rungs);
          expect(leftOf(phase, now) ?? 0).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });
});
