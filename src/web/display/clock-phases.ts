// What the practice clock is doing. Pure, so that every key can be tested.

/** down: the time left. up: the time worked, ended by the teacher. none: no time is shown or kept. */
export const CLOCK_MODES = ['down', 'up', 'none'] as const;
export type ClockMode = (typeof CLOCK_MODES)[number];

/** All times in milliseconds of the computer's clock. */
export type ClockPhase =
  | { readonly name: 'ready' }
  | { readonly name: 'running'; readonly startedAt: number }
  | { readonly name: 'paused'; readonly workedMs: number }
  | { readonly name: 'over'; readonly workedMs: number };

export type ClockPress = 'next' | 'pause' | 'end' | 'restart' | 'tick';

/** The phase after a press at `now`. "next" does what a clicker's forward key should do in each phase. */
export function afterClockPress(
  phase: ClockPhase,
  press: ClockPress,
  now: number,
  { mode, minutes }: { readonly mode: ClockMode; readonly minutes: number },
): ClockPhase {
  if (press === 'restart') return { name: 'ready' };
  switch (phase.name) {
    case 'ready':
      return press === 'next' ? { name: 'running', startedAt: now } : phase;
    case 'running': {
      const workedMs = now - phase.startedAt;
      const whole = minutes * 60_000;
      if (mode === 'down' && workedMs >= whole) return { name: 'over', workedMs: whole };
      if (press === 'pause') return { name: 'paused', workedMs };
      // A forward key during the countdown is a slip of the thumb; without a countdown it ends the work.
      if (press === 'end' || (press === 'next' && mode !== 'down')) return { name: 'over', workedMs };
      return phase;
    }
    case 'paused':
      if (press === 'pause' || press === 'next') return { name: 'running', startedAt: now - phase.workedMs };
      return press === 'end' ? { name: 'over', workedMs: phase.workedMs } : phase;
    case 'over':
      return phase;
  }
}

/** Milliseconds worked so far. */
export function workedMs(phase: ClockPhase, now: number): number {
  if (phase.name === 'ready') return 0;
  return phase.name === 'running' ? Math.max(0, now - phase.startedAt) : phase.workedMs;
}

/** The share of the time that is left, 1 to 0. */
export function shareLeft(phase: ClockPhase, now: number, minutes: number): number {
  return Math.max(0, 1 - workedMs(phase, now) / (minutes * 60_000));
}
