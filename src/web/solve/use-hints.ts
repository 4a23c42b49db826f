// Hints that come one by one as they are asked for, and begin anew when they are about something else.
import { useState } from 'react';
import type { Hint } from './table-frame.js';

export interface Hints {
  readonly shown: Hint | null;
  readonly next: () => void;
  readonly hide: () => void;
  /** Shows the first hint about something else. */
  readonly begin: (about: number | string) => void;
}

/** `about` names what the hints are about. */
export function useHints(hints: readonly Hint[], about: number | string | undefined): Hints {
  const [asked, setAsked] = useState({ about, count: 0 });
  const count = asked.about === about ? asked.count : 0;
  return {
    shown: hints[Math.min(count, hints.length) - 1] ?? null,
    next: () => setAsked({ about, count: Math.min(count + 1, hints.length) }),
    begin: (next) => setAsked({ about: next, count: 1 }),
    hide: () => setAsked({ about, count: 0 }),
  };
}
