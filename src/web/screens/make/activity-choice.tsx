// Which activity: three large choices, each with a small drawing of its pieces.
import type { ReactNode } from 'react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { ACTIVITIES, type ActivityId } from './wish.js';
import { ACTIVITY_WORDS } from './words.js';
import styles from './choices.module.css';

interface Props {
  readonly chosen: ActivityId;
  readonly onChoose: (activity: ActivityId) => void;
}

export function ActivityChoice({ chosen, onChoose }: Props) {
  return (
    <ToggleButtonGroup
      aria-label="Activity"
      className={styles.activities ?? ''}
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[chosen]}
      onSelectionChange={(keys) => {
        const found = ACTIVITIES.find((one) => keys.has(one));
        if (found) onChoose(found);
      }}
    >
      {ACTIVITIES.map((activity) => (
        <ToggleButton key={activity} id={activity} className={styles.activity ?? ''}>
          <svg viewBox="0 0 48 32" aria-hidden="true">
            {GLYPHS[activity]}
          </svg>
          {ACTIVITY_WORDS[activity].name}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}

const LINE = { fill: 'none', stroke: 'currentColor', strokeWidth: 2, strokeLinejoin: 'round' } as const;

const GLYPHS: Readonly<Record<ActivityId, ReactNode>> = {
  chain: (
    <g {...LINE}>
      <rect x="2" y="3" width="26" height="11" rx="1.5" />
      <path d="M12 3v11" strokeDasharray="2 2" />
      <rect x="20" y="18" width="26" height="11" rx="1.5" />
      <path d="M30 18v11M28 8.5h8q3 0 3 3V18" strokeDasharray="2 2" />
    </g>
  ),
  trail: (
    <g {...LINE}>
      <path d="M9 2h30v28H9zM9 16h30M24 2v28" strokeWidth="1.4" />
      <path d="M16 2v6q0 4 4 4h9q4 0 4 4v3q0 4-4 4h-9q-4 0-4 4v3" strokeWidth="3.4" />
    </g>
  ),
  jigsaw: (
    <g {...LINE}>
      <path d="M5 3h38v26H5z" strokeWidth="1.4" />
      <path d="M5 12h13V3M18 12v9h13v-9h12M18 21H5M31 21v8" strokeWidth="2.6" />
    </g>
  ),
};
