// A box to tick.
import { Checkbox } from 'react-aria-components';
import styles from './check.module.css';

interface CheckProps {
  readonly isSelected: boolean;
  readonly onChange: (isSelected: boolean) => void;
  readonly children: React.ReactNode;
}

export function Check({ isSelected, onChange, children }: CheckProps) {
  return (
    <Checkbox className={styles.check ?? ''} isSelected={isSelected} onChange={onChange}>
      <span className={styles.box} aria-hidden="true">
        <svg viewBox="0 0 16 16">
          <path
            d="M3 8.5 6.5 12 13 4"
            fill="none"
            stroke="currentColor"
            strokeWidth="2.4"
            strokeLinecap="round"
          />
        </svg>
      </span>
      {children}
    </Checkbox>
  );
}
