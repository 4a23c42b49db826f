// What the shapes in the grid mean, in words.
import { CellGlyph } from './cell-glyph.js';
import styles from './marks.module.css';

const cell = { typed: '', findings: [] };

export function Legend() {
  return (
    <ul className={styles.legend} aria-label="What the marks mean">
      <li data-state="right">
        <CellGlyph cell={{ ...cell, state: 'right' }} typing={null} /> right
      </li>
      <li data-state="wrong">
        <CellGlyph cell={{ ...cell, state: 'wrong' }} typing={null} /> wrong
      </li>
      <li data-state="wrong">
        <CellGlyph cell={{ ...cell, state: 'wrong', typed: '75' }} typing={null} /> wrong, as written
      </li>
      <li data-state="blank">
        <CellGlyph cell={{ ...cell, state: 'blank' }} typing={null} /> blank
      </li>
      <li>
        <span className={styles.flagPlace}>
          <span className={styles.flag} />
        </span>{' '}
        a typical mistake: go to the cell to read it
      </li>
    </ul>
  );
}
