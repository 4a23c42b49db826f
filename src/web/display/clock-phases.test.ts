import { describe, expect, it } from 'vitest';
import { afterClockPress, type ClockPhase, type ClockPress, shareLeft, workedMs } from './clock-phases.js';

const DOWN = { mode: 'down', minutes: 2 } as const;

function play(
  presses: readonly (readonly [ClockPress, number])[],
  setup: { mode: 'down' | 'up' | 'none'; minutes: number } = DOWN,
) {
  return presses.reduce<ClockPhase>((phase, [press, now]) => afterClockPress(phase, press, now, setup), {
    name: 'ready',
  });
}

describe('the practice clock', () => {
  it('runs down to its end and not beyond, whatever is pressed', () => {
    expect(
      play([
        ['next', 0],
        ['next', 5000],
      ]),
    ).toEqual({ name: 'running', startedAt: 0 });
    expect(
      play([
        ['next', 0],
        ['tick', 120_400],
      ]),
    ).toEqual({ name: 'over', workedMs: 120_000 });
    expect(
      play([
        ['next', 0],
        ['tick', 120_000],
        ['next', 130_000],
      ]).name,
    ).toBe('over');
  });

  it('stands still while paused', () => {
    const phase = play([
      ['next', 0],
      ['pause', 30_000],
      ['tick', 500_000],
      ['next', 600_000],
    ]);
    expect(workedMs(phase, 610_000)).toBe(40_000);
    expect(shareLeft(phase, 630_000, 2)).toBe(0.5);
  });

  it('counts up until the teacher ends it', () => {
    const up = { mode: 'up', minutes: 2 } as const;
    expect(
      play(
        [
          ['next', 0],
          ['tick', 900_000],
        ],
        up,
      ).name,
    ).toBe('running');
    expect(
      play(
        [
          ['next', 0],
          ['next', 95_000],
        ],
        up,
      ),
    ).toEqual({ name: 'over', workedMs: 95_000 });
  });

  it('starts again from anywhere', () => {
    expect(
      play([
        ['next', 0],
        ['restart', 1],
      ]),
    ).toEqual({ name: 'ready' });
  });
});
