// The parts a wish is put together from: a labelled row, a choice among words, a number.
import type { ReactNode } from 'react';
import { ChoiceRow } from '../../parts/choice-row.js';
import styles from './choices.module.css';
import { CountField } from './count-field.js';
import { RANGES, SIDE_RANGES, type Wish, type WishChange } from './wish.js';

export function Row({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div className={styles.row}>
      <span className={styles.label} aria-hidden="true">
        {label}
      </span>
      {children}
    </div>
  );
}

interface CountProps {
  readonly name: 'cards' | 'rows' | 'columns' | 'count';
  readonly label: string;
  readonly wish: Wish;
  readonly onChange: (change: WishChange) => void;
}

export function Count({ name, label, wish, onChange }: CountProps) {
  return (
    <CountField
      label={label}
      value={wish[name]}
      range={name === 'rows' || name === 'columns' ? SIDE_RANGES[wish.activity][name] : RANGES[name]}
      onChange={(value) => onChange({ [name]: value })}
    />
  );
}

interface WordsProps<T extends string> {
  readonly label: string;
  readonly ids: readonly T[];
  readonly words: Readonly<Record<T, string>>;
  readonly chosen: T;
  readonly onChoose: (id: T) => void;
}

/** A row of choices under its label. */
export function Words<T extends string>({ label, ids, words, chosen, onChoose }: WordsProps<T>) {
  return (
    <Row label={label}>
      <ChoiceRow
        label={label}
        choices={ids.map((id) => ({ id, label: words[id] }))}
        chosen={chosen}
        onChoose={(id) => {
          const found = ids.find((one) => one === id);
          if (found) onChoose(found);
        }}
      />
    </Row>
  );
}
