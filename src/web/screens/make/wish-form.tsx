// Everything that can be wished for, in the order in which a teacher thinks of it.
import type { ReactNode } from 'react';
import { PITCHES, SUPPLY_ORDERS } from '#engine/activities/pitch.js';
import type { MakeView } from '#api/make.js';
import { Button } from '../../parts/button.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { YearPicker } from '../../parts/year-picker.js';
import { ActivityChoice } from './activity-choice.js';
import styles from './choices.module.css';
import { CountField } from './count-field.js';
import { SourceChoice } from './source-choice.js';
import { RANGES, THEME_CHOICES, type Wish, type WishChange } from './wish.js';
import { ACTIVITY_WORDS, ORDER_WORDS, PITCH_WORDS, THEME_WORDS } from './words.js';

interface Props {
  readonly wish: Wish;
  readonly view: MakeView;
  readonly onChange: (change: WishChange) => void;
}

export function WishForm({ wish, view, onChange }: Props) {
  return (
    <div className={styles.form}>
      <ActivityChoice chosen={wish.activity} onChoose={(activity) => onChange({ activity })} />
      <p className={styles.about}>{ACTIVITY_WORDS[wish.activity].about}</p>
      <Row label="For">
        <YearPicker years={wish.years} onChange={(years) => onChange({ years })} />
      </Row>
      <SourceChoice wish={wish} view={view} onChange={onChange} />
      <Row label="How hard">
        <Words
          label="How hard"
          ids={PITCHES}
          words={PITCH_WORDS}
          chosen={wish.pitch}
          onChoose={(pitch) => onChange({ pitch })}
        />
      </Row>
      {wish.activity === 'chain' && (
        <>
          <div className={styles.counts}>
            <Count name="cards" label="Strips" {...{ wish, onChange }} />
          </div>
          <Row label="Order">
            <Words
              label="Order"
              ids={SUPPLY_ORDERS}
              words={ORDER_WORDS}
              chosen={wish.order}
              onChoose={(order) => onChange({ order })}
            />
          </Row>
        </>
      )}
      {wish.activity === 'trail' && (
        <>
          <div className={styles.counts}>
            <Count name="rows" label="Rows" {...{ wish, onChange }} />
            <Count name="columns" label="Columns" {...{ wish, onChange }} />
          </div>
          <label className={styles.picked}>
            <span className={styles.label}>Picture</span>
            <select
              value={wish.theme}
              onChange={({ target }) => {
                const theme = THEME_CHOICES.find((one) => one === target.value);
                if (theme) onChange({ theme });
              }}
            >
              {THEME_CHOICES.map((theme) => (
                <option key={theme} value={theme}>
                  {THEME_WORDS[theme]}
                </option>
              ))}
            </select>
          </label>
        </>
      )}
      <div className={styles.counts}>
        <Count name="count" label="Numbered sets" {...{ wish, onChange }} />
        {wish.count < RANGES.count[1] && (
          <Button onPress={() => onChange({ count: RANGES.count[1] })}>Ten sets</Button>
        )}
      </div>
    </div>
  );
}

interface CountProps {
  readonly name: keyof typeof RANGES;
  readonly label: string;
  readonly wish: Wish;
  readonly onChange: (change: WishChange) => void;
}

function Count({ name, label, wish, onChange }: CountProps) {
  return (
    <CountField
      label={label}
      value={wish[name]}
      range={RANGES[name]}
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

function Words<T extends string>({ label, ids, words, chosen, onChoose }: WordsProps<T>) {
  return (
    <ChoiceRow
      label={label}
      choices={ids.map((id) => ({ id, label: words[id] }))}
      chosen={chosen}
      onChoose={(id) => {
        const found = ids.find((one) => one === id);
        if (found) onChoose(found);
      }}
    />
  );
}

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
