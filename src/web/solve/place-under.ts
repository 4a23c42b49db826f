// Where on the table a pointer is: over the loose strips, or at a place of the chain.

interface Mark {
  readonly left: string;
  readonly top: string;
  readonly width: string;
  readonly height: string;
}

export interface ChainPlace {
  /** The place, counted with every strip that lies there. */
  readonly at: number;
  /** Where a mark between the strips stands, in px of the window; null after the last. */
  readonly mark: Mark | null;
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
  // Strips one below the other part between rows, strips side by side between neighbours.
  const isStacked = strip.width > 0.6 * ground.clientWidth;
  const isBefore = isStacked ? y < (strip.top + strip.bottom) / 2 : x < (strip.left + strip.right) / 2;
  const [alongX, alongY] = [isBefore ? strip.left : strip.right, isBefore ? strip.top : strip.bottom];
  const mark = isStacked
    ? { left: strip.left, top: alongY - MARK_PX / 2, width: strip.width, height: MARK_PX }
    : { left: alongX - MARK_PX / 2, top: strip.top, width: MARK_PX, height: strip.height };
  const { left, top, width, height } = mark;
  return {
    at: isBefore ? at : at + 1,
    mark: { left: `${left}px`, top: `${top}px`, width: `${width}px`, height: `${height}px` },
  };
}

const MARK_PX = 8;

function holds(box: DOMRect, x: number, y: number): boolean {
  return x >= box.left && x <= box.right && y >= box.top && y <= box.bottom;
}
