// A standing as a small square, told by its fill: empty with a heavy edge, half, full, or hatched where it is unsure.
import type { SkillStanding } from '#api/understanding.js';
import styles from './standing.module.css';

interface Props {
  readonly state: SkillStanding['state'];
  /** Small: no answer of its own yet, told from neighbouring skills. */
  readonly isSmall?: boolean;
}

export function StandingGlyph({ state, isSmall = false }: Props) {
  return (
    <svg
      className={`${styles.glyph} ${isSmall ? styles.glyphSmall : ''}`}
      viewBox="0 0 20 20"
      data-standing={state}
      aria-hidden="true"
    >
      {state === 'needs teaching' && <rect x="2.5" y="2.5" width="15" height="15" strokeWidth="3" />}
      {state === 'growing' && (
        <>
          <rect x="2" y="2" width="16" height="16" strokeWidth="1.5" />
          <path className={styles.fill} d="M2 10h16v8H2z" />
        </>
      )}
      {state === 'secure' && (
        <rect className={styles.fill} x="2" y="2" width="16" height="16" strokeWidth="1.5" />
      )}
      {state === 'not yet sure' && (
        <>
          <rect x="2" y="2" width="16" height="16" strokeWidth="1.2" strokeDasharray="2.5 2" />
          <path d="M4 13l9-9M7 16l9-9" strokeWidth="1.2" />
        </>
      )}
    </svg>
  );
}
