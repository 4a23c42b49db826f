// A row of choices of which exactly one holds: whole class or a year, front or back.
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import styles from './choice-row.module.css';

export interface Choice {
  readonly id: string;
  readonly label: string;
}

interface Props {
  readonly label: string;
  readonly choices: readonly Choice[];
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
}

export function ChoiceRow({ label, choices, chosen, onChoose }: Props) {
  return (
    <ToggleButtonGroup
      aria-label={label}
      className={styles.row ?? ''}
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[chosen]}
      onSelectionChange={(keys) => {
        const [first] = keys;
        if (first !== undefined) onChoose(String(first));
      }}
    >
      {choices.map(({ id, label: text }) => (
        <ToggleButton key={id} id={id} className={styles.choice ?? ''}>
          {text}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
