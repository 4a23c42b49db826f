// Focus that follows what was done to a piece: after a step the keyboard is where the next step is likely.
import { type RefObject, useEffect, useState } from 'react';

/** Puts the focus on the element marked data-piece of that number, once it is drawn. */
export function useFocusOn(place: RefObject<HTMLElement | null>): (piece: number) => void {
  const [wanted, setWanted] = useState<{ readonly piece: number } | null>(null);
  useEffect(() => {
    if (wanted) place.current?.querySelector<HTMLElement>(`[data-piece="${wanted.piece}"]`)?.focus();
  }, [place, wanted]);
  return (piece) => setWanted({ piece });
}
