// Where a chance most likely lies: a thin line from low to high on a scale of 0 to 100, with a mark at the best guess.
import type { SkillStanding } from '#api/understanding.js';
import styles from './skill-row.module.css';

type Range = Pick<SkillStanding, 'low' | 'high' | 'chance'>;

export function RangeBar({ range: { low, high, chance } }: { readonly range: Range }) {
  const at = (share: number) => 2 + 96 * share;
  return (
    <svg className={styles.range} viewBox="0 0 100 16" preserveAspectRatio="none" aria-hidden="true">
      <path className={styles.rangeScale} d="M2 8h96M2 5v6M50 6v4M98 5v6" />
      <path className={styles.rangeWhisker} d={`M${at(low)} 8H${at(high)}M${at(low)} 4v8M${at(high)} 4v8`} />
      <path className={styles.rangeBest} d={`M${at(chance)} 2v12`} />
    </svg>
  );
}
