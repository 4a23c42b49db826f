// Strips in a line: which lie in the chain, in which order, and which still lie loose. Nothing here knows what is right.

export interface Line {
  /** Strips in the chain, by number, first to last. */
  readonly laid: readonly number[];
  /** Loose strips, in the order in which they lie. */
  readonly tray: readonly number[];
}

/** All strips loose in `order`, but for `first`, with which every chain begins. */
export function beginLine(order: readonly number[], first: number): Line {
  return { laid: [first], tray: order.filter((piece) => piece !== first) };
}

/**
 * The strip at place `at` of the chain, counted without the strip itself; the others move up. Any strip may lie anywhere:
 * whether it belongs there, only the strips tell.
 */
export function layAt(line: Line, piece: number, at: number): Line {
  const others = line.laid.filter((one) => one !== piece);
  const place = Math.max(0, Math.min(at, others.length));
  if (line.laid[place] === piece) return line;
  return { laid: others.toSpliced(place, 0, piece), tray: line.tray.filter((one) => one !== piece) };
}

/** The strip taken out of the chain and put with the loose ones; the others close up. */
export function takeOut(line: Line, piece: number): Line {
  if (!line.laid.includes(piece)) return line;
  return { laid: line.laid.filter((one) => one !== piece), tray: [...line.tray, piece] };
}

/** True for a line of exactly the strips 0 to `count` - 1, such as one that was kept for this chain. */
export function isLine(value: unknown, count: number): value is Line {
  if (typeof value !== 'object' || value === null) return false;
  const { laid, tray } = value as Partial<Record<keyof Line, unknown>>;
  if (!Array.isArray(laid) || !Array.isArray(tray)) return false;
  const pieces: unknown[] = [...laid, ...tray];
  return (
    pieces.length === count && Array.from({ length: count }, (_, i) => i).every((i) => pieces.includes(i))
  );
}
