// Where on the table a pointer is: over the loose strips, or at a place of the chain.

export interface ChainPlace {
  /** The place, counted with every strip that lies there. */
  readonly at: number;
  /** Where a mark between the strips stands, in px of the window; null after the last. */
  readonly mark: {
    readonly position: 'fixed';
    readonly left: string;
    readonly top: string;
    readonly height: string;
  } | null;
}

/** The place under a point of the window; null off the table. */
export function placeUnder(ground: HTMLElement | null, x: number, y: number): ChainPlace | 'tray' | null {
  if (!ground || !holds(ground.getBoundingClientRect(), x, y)) return null;
  const tray = ground.querySelector('[data-tray]')?.getBoundingClientRect();
  if (tray && y >= tray.top) return 'tray';
  const strips = [...ground.querySelectorAll('[data-laid]')].map((strip) => strip.getBoundingClientRect());
  const at = strips.findIndex((strip) => holds(strip, x, y));
  const strip = strips[at];
  if (!strip) return { at: strips.length, mark: null };
  const isBefore = x < (strip.left + strip.right) / 2;
  const mark = {
    position: 'fixed',
    left: `${isBefore ? strip.left : strip.right}px`,
    top: `${strip.top}px`,
    height: `${strip.height}px`,
  } as const;
  return { at: isBefore ? at : at + 1, mark };
}

function holds(box: DOMRect, x: number, y: number): boolean {
  return x >= box.left && x <= box.right && y >= box.top && y <= box.bottom;
}
