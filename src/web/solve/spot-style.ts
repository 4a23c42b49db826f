// Places and sizes on the mat as styles.
import type { CSSProperties } from 'react';
import { boxOf, type MatShape, type Place } from './mat.js';
import type { Drawn } from './mat-pieces.js';

/** Where the first cell of the mat begins on its drawing, and how large a cell is. */
export function cellsStyle({ left, top }: Drawn, cellPx: number): CSSProperties {
  return { left: `${left * cellPx}px`, top: `${top * cellPx}px`, '--cell': `${cellPx}px` } as CSSProperties;
}

/** Where the box of a piece begins, from the first cell of the mat. */
export function spotStyle([row, column]: Place, cellPx: number) {
  return { left: `${column * cellPx}px`, top: `${row * cellPx}px` };
}

/** How large the box of a piece is. */
export function boxStyle(shape: MatShape, piece: number, cellPx: number) {
  const { rows, columns } = boxOf(shape, piece);
  return { width: `${columns * cellPx}px`, height: `${rows * cellPx}px` };
}
