// Focus that follows what was done: after a step the keyboard is where the next step is likely.
import { type RefObject, useEffect, useState } from 'react';

/** Puts the focus on the first element that a selector finds, once it is drawn. */
export function useFocusOn(place: RefObject<HTMLElement | null>): (selector: string) => void {
  const [wanted, setWanted] = useState<{ readonly selector: string } | null>(null);
  useEffect(() => {
    if (wanted) place.current?.querySelector<HTMLElement>(wanted.selector)?.focus();
  }, [place, wanted]);
  return (selector) => setWanted({ selector });
}
