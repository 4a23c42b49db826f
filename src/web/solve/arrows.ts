// Arrow keys as steps on a grid.
import type { Place } from './mat.js';

/** Rows and columns that a key moves by; undefined for any other key. */
export const ARROWS: Readonly<Record<string, Place>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};
