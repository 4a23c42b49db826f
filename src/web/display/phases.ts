// What the display is doing: waiting, running, last call, time is up, revealing. Pure, so that every key can be tested.

export const LAST_CALL_SECONDS = 30;

export type Phase =
  | { readonly name: 'ready'; readonly page: number }
  | { readonly name: 'working'; readonly page: number; readonly endsAt: number; readonly isLastCall: boolean }
  | { readonly name: 'paused'; readonly page: number; readonly leftMs: number; readonly isLastCall: boolean }
  | { readonly name: 'over'; readonly page: number }
  | { readonly name: 'reveal'; readonly rung: number; readonly isShown: boolean };

export type Press =
  | { readonly kind: 'next' | 'back' | 'last-call' | 'pause' | 'reveal' | 'restart'; readonly nowMs: number }
  | { readonly kind: 'tick'; readonly nowMs: number };

export interface Setup {
  readonly pages: number;
  readonly rungs: number;
  readonly minutes: number;
}

export const START: Phase = { name: 'ready', page: 0 };

/** The phase after a press. "next" does what a clicker's forward key should do in each phase. */
export function afterPress(phase: Phase, press: Press, setup: Setup): Phase {
  if (press.kind === 'restart') return START;
  if (press.kind === 'reveal') return { name: 'reveal', rung: 1, isShown: false };
  switch (phase.name) {
    case 'ready':
      if (press.kind === 'next') return working(0, press.nowMs + setup.minutes * 60_000, false);
      return press.kind === 'back' ? turned(phase, -1, setup) : phase;
    case 'working':
      return whileWorking(phase, press, setup);
    case 'paused':
      if (press.kind === 'pause' || press.kind === 'next')
        return working(phase.page, press.nowMs + phase.leftMs, phase.isLastCall);
      return press.kind === 'back' ? turned(phase, -1, setup) : phase;
    case 'over':
      if (press.kind === 'next') return { name: 'reveal', rung: 1, isShown: false };
      return press.kind === 'back' ? turned(phase, -1, setup) : phase;
    case 'reveal':
      return whileRevealing(phase, press, setup);
  }
}

function working(page: number, endsAt: number, isLastCall: boolean): Phase {
  return { name: 'working', page, endsAt, isLastCall };
}

function whileWorking(phase: Phase & { name: 'working' }, press: Press, setup: Setup): Phase {
  const leftMs = phase.endsAt - press.nowMs;
  // A press can come just before the tick that would have ended the time.
  if (leftMs <= 0) return { name: 'over', page: 0 };
  switch (press.kind) {
    case 'next':
      return turned(phase, 1, setup);
    case 'back':
      return turned(phase, -1, setup);
    case 'pause':
      return { name: 'paused', page: phase.page, leftMs, isLastCall: phase.isLastCall };
    case 'last-call':
      // A last call never gives more time than was left.
      return working(phase.page, press.nowMs + Math.min(leftMs, LAST_CALL_SECONDS * 1000), true);
    default:
      return phase;
  }
}

function whileRevealing(phase: Phase & { name: 'reveal' }, press: Press, setup: Setup): Phase {
  if (press.kind === 'next') {
    if (!phase.isShown) return { ...phase, isShown: true };
    return phase.rung < setup.rungs ? { name: 'reveal', rung: phase.rung + 1, isShown: false } : phase;
  }
  if (press.kind === 'back') {
    if (phase.isShown) return { ...phase, isShown: false };
    return phase.rung > 1 ? { name: 'reveal', rung: phase.rung - 1, isShown: true } : phase;
  }
  return phase;
}

function turned<P extends Phase & { page: number }>(phase: P, by: number, { pages }: Setup): P {
  return { ...phase, page: (phase.page + by + pages) % pages };
}

/** Milliseconds left to show, or null when no time runs. */
export function leftOf(phase: Phase, nowMs: number): number | null {
  if (phase.name === 'working') return Math.max(0, phase.endsAt - nowMs);
  return phase.name === 'paused' ? phase.leftMs : null;
}
