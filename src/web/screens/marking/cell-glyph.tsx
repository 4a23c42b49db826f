// What a cell shows: a tick, the written answer in a ring, a ring, a dash, or nothing; told apart by shape alone.
import type { Cell } from './marking-desk.js';
import styles from './marks.module.css';

interface Props {
  readonly cell: Cell;
  readonly typing: string | null;
}

export function CellGlyph({ cell, typing }: Props) {
  if (typing !== null)
    return (
      <span className={styles.typing} aria-hidden="true">
        {typing}
      </span>
    );
  const { state, typed } = cell;
  if (state === null) return null;
  if (state === 'wrong' && typed !== '')
    return (
      <span className={styles.written} aria-hidden="true">
        {typed}
      </span>
    );
  return (
    <svg className={styles.glyph} viewBox="0 0 20 20" aria-hidden="true">
      {state === 'right' && <path d="M4 11l4 4 8-10" />}
      {state === 'wrong' && <circle cx="10" cy="10" r="6.5" />}
      {state === 'blank' && <path d="M5 10h10" />}
    </svg>
  );
}
