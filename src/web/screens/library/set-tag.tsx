// A set as the tag on its bag: band, number, and the box it belongs in.
import type { RotaSet } from '#api/sets.js';
import styles from './library.module.css';

export function SetTag({ set }: { readonly set: Pick<RotaSet, 'band' | 'number' | 'box'> }) {
  return (
    <span className={styles.tagged}>
      <span className={styles.tag}>
        {set.band} <strong>{set.number}</strong>
      </span>{' '}
      <span className={styles.boxName}>box {set.box}</span>
    </span>
  );
}
