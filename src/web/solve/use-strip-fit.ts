// Measures on a hidden copy of all strips how large they can be, and again when the screen changes.
import { type RefObject, useLayoutEffect, useState } from 'react';
import { fitStrips, type StripFit } from './fit-strips.js';

/** The fit for the strips under `ground`'s element marked data-trial; null before the first measure. */
export function useStripFit(ground: RefObject<HTMLElement | null>, strips: number): StripFit | null {
  const [fit, setFit] = useState<StripFit | null>(null);
  useLayoutEffect(() => {
    const place = ground.current;
    if (!place) return undefined;
    const lay = () => setFit(measure(place, strips));
    lay();
    const watch = new ResizeObserver(lay);
    watch.observe(place);
    let isHere = true;
    // Letters measured before their face has come are of another width.
    void document.fonts.ready.then(() => isHere && lay());
    return () => {
      isHere = false;
      watch.disconnect();
    };
  }, [ground, strips]);
  return fit;
}

/** What lies between the rows of the chain and the loose strips, in px. */
const PARTING_PX = 28;

function measure(place: HTMLElement, strips: number): StripFit {
  const { paddingInlineStart, paddingBlockStart } = getComputedStyle(place);
  const ground = {
    widthPx: place.clientWidth - 2 * Number.parseFloat(paddingInlineStart),
    heightPx: place.clientHeight - 2 * Number.parseFloat(paddingBlockStart) - PARTING_PX,
  };
  const trial = place.querySelector<HTMLElement>('[data-trial]');
  const faces = [...(trial?.querySelectorAll<HTMLElement>('[data-face]') ?? [])];
  return fitStrips(strips, ground, (fit) => {
    for (const [name, value] of Object.entries(fitStyle(fit))) trial?.style.setProperty(name, value);
    return faces.every(holdsItsText);
  });
}

/** The measures of a fit as the styles' variables. */
export function fitStyle({ columns, widthPx, heightPx, letterPx }: StripFit): Record<string, string> {
  return {
    '--columns': String(columns),
    '--strip-w': `${widthPx}px`,
    '--strip-h': `${heightPx}px`,
    '--letter': `${letterPx}px`,
  };
}

/** The tongue of a strip sticks out to the right, so only its height tells about the strip as a whole. */
function holdsItsText(face: HTMLElement): boolean {
  if (face.scrollHeight > face.clientHeight + 1) return false;
  return [...face.querySelectorAll<HTMLElement>('[data-holds]')].every(
    ({ scrollWidth, clientWidth, scrollHeight, clientHeight }) =>
      scrollWidth <= clientWidth + 1 && scrollHeight <= clientHeight + 1,
  );
}
