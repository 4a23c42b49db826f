// Hints that come one by one as they are asked for, and begin anew when they are about something else.
import { useState } from 'react';

export interface Hints {
  readonly shown: string | null;
  readonly next: () => void;
  readonly hide: () => void;
}

/** `about` names what the hints are about. */
export function useHints(hints: readonly string[], about: number | string | undefined): Hints {
  const [asked, setAsked] = useState({ about, count: 0 });
  const count = asked.about === about ? asked.count : 0;
  return {
    shown: hints[Math.min(count, hints.length) - 1] ?? null,
    next: () => setAsked({ about, count: Math.min(count + 1, hints.length) }),
    hide: () => setAsked({ about, count: 0 }),
  };
}
