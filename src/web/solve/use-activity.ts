// The activity of a wish, composed in a worker that lives as long as the wish is looked at.
import { useEffect, useState } from 'react';
import type { Composed } from './compose-wish.js';
import type { SolveWish } from './wish.js';

const BROKEN: Composed = {
  ok: false,
  error: { message: 'These pieces could not be made.', hint: 'Reload the page to try again.' },
};

/** The composed activity or why there is none; null while it is being made, or while there is no wish yet. */
export function useActivity(wish: SolveWish | null): Composed | null {
  const asked = wish ? JSON.stringify(wish) : null;
  const [made, setMade] = useState<{ readonly asked: string; readonly composed: Composed } | null>(null);
  useEffect(() => {
    if (asked === null) return undefined;
    const worker = new Worker(new URL('./compose-worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<Composed>) =>
      setMade({ asked, composed: data }),
    );
    worker.addEventListener('error', () => setMade({ asked, composed: BROKEN }));
    worker.postMessage(JSON.parse(asked));
    return () => worker.terminate();
  }, [asked]);
  return made && made.asked === asked ? made.composed : null;
}
