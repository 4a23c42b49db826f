// What can be taken back: the states before the one that lies there now.

export interface History<S> {
  readonly past: readonly S[];
  readonly now: S;
}

/** More steps back than anyone takes; so much fits easily in what a browser keeps for a page. */
const MOST_STEPS = 100;

export function beginHistory<S>(now: S): History<S> {
  return { past: [], now };
}

/** The history with one more step; the same history when nothing changed. */
export function afterStep<S>(history: History<S>, next: S): History<S> {
  if (next === history.now) return history;
  return { past: [...history.past, history.now].slice(-MOST_STEPS), now: next };
}

/** The history with its last step taken back; the same history when there is none. */
export function stepBack<S>(history: History<S>): History<S> {
  const before = history.past.at(-1);
  return before === undefined ? history : { past: history.past.slice(0, -1), now: before };
}
