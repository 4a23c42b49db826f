// What the squares mean, in words, and how far they can be trusted.
import { STANDING_MEANS, STANDINGS } from './chances.js';
import { StandingGlyph } from './standing-glyph.js';
import styles from './standing.module.css';

export function StandingLegend({ hasSmall }: { readonly hasSmall: boolean }) {
  return (
    <ul className={styles.legend} aria-label="What the squares mean">
      {STANDINGS.map((state) => (
        <li key={state}>
          <StandingGlyph state={state} />
          <span>
            <strong>{state}</strong>: {STANDING_MEANS[state]}
          </span>
        </li>
      ))}
      {hasSmall && (
        <li>
          <StandingGlyph state="growing" isSmall />
          <span>
            <strong>small</strong>: not asked yet, told from the skills nearest to it
          </span>
        </li>
      )}
    </ul>
  );
}
