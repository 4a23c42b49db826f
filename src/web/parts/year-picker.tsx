// Which school years a class has.
import { SCHOOL_YEARS, yearShort } from '#engine/curriculum/years.js';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { useWords } from '../app/use-words.js';
import styles from './choice-row.module.css';

interface Props {
  readonly years: readonly number[];
  readonly onChange: (years: number[]) => void;
  /** One letter or digit a year, for narrow places. */
  readonly isShort?: boolean;
}

export function YearPicker({ years, onChange, isShort = false }: Props) {
  const words = useWords();
  return (
    <ToggleButtonGroup
      aria-label={`${words.yearWord} levels`}
      className={styles.row ?? ''}
      selectionMode="multiple"
      disallowEmptySelection
      selectedKeys={years.map(String)}
      onSelectionChange={(keys) => onChange([...keys].map(Number).sort((a, b) => a - b))}
    >
      {SCHOOL_YEARS.map((year) => (
        <ToggleButton
          key={year}
          id={String(year)}
          className={styles.choice ?? ''}
          {...(isShort ? { 'aria-label': words.year(year) } : {})}
        >
          {isShort ? yearShort(year, words.locale) : words.year(year)}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
