// Hints that come one by one as they are asked for, and go as soon as something else is done.
import { useState } from 'react';
import type { Hint } from './table-frame.js';

/** Hints about one thing; `about` tells one thing from another. */
export interface Told {
  readonly about: string;
  readonly hints: readonly Hint[];
}

interface Hints {
  readonly shown: Hint | null;
  readonly next: () => void;
  readonly hide: () => void;
  /** Shows the first hint about something else. */
  readonly begin: (told: Told) => void;
}

/** `tell` works the hints out when one is wanted; they are put away when `state` is another one. */
export function useHints(tell: () => Told, state: unknown): Hints {
  const [asked, setAsked] = useState<(Told & { readonly state: unknown; readonly count: number }) | null>(
    null,
  );
  const live = asked && asked.state === state ? asked : null;
  const show = (told: Told, count: number) =>
    setAsked({ ...told, state, count: Math.min(count, told.hints.length) });
  return {
    shown: live?.hints[live.count - 1] ?? null,
    next: () => {
      const told = tell();
      show(told, live?.about === told.about ? live.count + 1 : 1);
    },
    hide: () => setAsked(null),
    begin: (told) => show(told, 1),
  };
}
