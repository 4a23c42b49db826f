// A drawing of the engine at the size of the cells on the screen. Silent: what holds it says in words what it shows.
import { memo } from 'react';
import type { Drawn } from './mat-pieces.js';
import styles from './mat-table.module.css';

interface Props {
  readonly drawn: Drawn;
  readonly cellPx: number;
  /** The drawing begins where its place begins; otherwise its first cell does. */
  readonly isWhole?: boolean;
}

export const DrawnView = memo(function DrawnView({ drawn, cellPx, isWhole = false }: Props) {
  const { svg, width, height, left, top } = drawn;
  const back = isWhole ? 0 : -cellPx;
  return (
    <span
      className={styles.drawn}
      aria-hidden="true"
      style={{
        width: `${width * cellPx}px`,
        height: `${height * cellPx}px`,
        left: `${left * back}px`,
        top: `${top * back}px`,
      }}
      // The engine makes this string from numbers and escaped text alone.
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
});
