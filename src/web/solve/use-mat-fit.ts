// Measures how large the mat and its pieces can be, and again when the screen changes.
import { type RefObject, useLayoutEffect, useState } from 'react';
import { boxOf } from './mat.js';
import type { MatPieces } from './mat-pieces.js';
import { fitMat, type MatFit } from './fit-mat.js';

/** The fit on `ground` for pieces lying loose in the order of `homes`; null before the first measure. */
export function useMatFit(
  ground: RefObject<HTMLElement | null>,
  { shape, ground: mat }: MatPieces,
  homes: readonly number[],
): MatFit | null {
  const [size, setSize] = useState<{ readonly width: number; readonly height: number } | null>(null);
  useLayoutEffect(() => {
    const place = ground.current;
    if (!place) return undefined;
    const measure = () => {
      const { paddingInlineStart, paddingBlockStart } = getComputedStyle(place);
      setSize({
        width: place.clientWidth - 2 * Number.parseFloat(paddingInlineStart),
        height: place.clientHeight - 2 * Number.parseFloat(paddingBlockStart),
      });
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(place);
    return () => watch.disconnect();
  }, [ground]);
  if (!size) return null;
  const boxes = homes.map((piece) => {
    const { rows, columns } = boxOf(shape, piece);
    return { width: columns, height: rows };
  });
  return fitMat(mat, boxes, size);
}
