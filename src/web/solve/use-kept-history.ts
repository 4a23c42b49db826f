// The state of a table with its steps back, kept while the browser's tab is open: the pieces' numbers and nothing else.
import { useEffect, useState } from 'react';
import { afterStep, beginHistory, type History, stepBack } from './history.js';

export interface KeptHistory<S> {
  readonly now: S;
  readonly canStepBack: boolean;
  readonly step: (next: (now: S) => S) => void;
  readonly stepBack: () => void;
}

/** `name` tells one set of pieces from another; `isState` refuses what was kept by something else. */
export function useKeptHistory<S>(
  name: string,
  begin: () => S,
  isState: (value: unknown) => value is S,
): KeptHistory<S> {
  const key = `afterbell.solve.${name}`;
  const [history, setHistory] = useState<History<S>>(() => beginHistory(kept(key, isState) ?? begin()));
  useEffect(() => {
    try {
      sessionStorage.setItem(key, JSON.stringify(history.now));
    } catch {
      // A browser that keeps nothing still holds the pieces until the page is closed.
    }
  }, [key, history.now]);
  return {
    now: history.now,
    canStepBack: history.past.length > 0,
    step: (next) => setHistory((before) => afterStep(before, next(before.now))),
    stepBack: () => setHistory(stepBack),
  };
}

function kept<S>(key: string, isState: (value: unknown) => value is S): S | null {
  try {
    const value: unknown = JSON.parse(sessionStorage.getItem(key) ?? 'null');
    return isState(value) ? value : null;
  } catch {
    return null;
  }
}
