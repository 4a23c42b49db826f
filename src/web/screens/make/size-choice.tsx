// How large, and what else belongs to one activity alone.
import { ROW_KINDS } from '#engine/activities/jigsaw/jigsaw.js';
import { SUPPLY_ORDERS } from '#engine/activities/pitch.js';
import { useWords } from '../../app/use-words.js';
import styles from './choices.module.css';
import { THEME_CHOICES, type Wish, type WishChange } from './wish.js';
import { Count, Words } from './wish-parts.js';
import { ORDER_WORDS, ROW_KIND_WORDS, themeWord } from './words.js';

interface Props {
  readonly wish: Wish;
  readonly onChange: (change: WishChange) => void;
}

export function SizeChoice({ wish, onChange }: Props) {
  const { locale } = useWords();
  switch (wish.activity) {
    case 'chain':
      return (
        <div className={styles.counts}>
          <Count name="cards" label="Strips" {...{ wish, onChange }} />
          <Words
            label="Order"
            ids={SUPPLY_ORDERS}
            words={ORDER_WORDS}
            chosen={wish.order}
            onChoose={(order) => onChange({ order })}
          />
        </div>
      );
    case 'trail':
      return (
        <>
          <div className={styles.counts}>
            <Count name="rows" label="Rows" {...{ wish, onChange }} />
            <Count name="columns" label="Columns" {...{ wish, onChange }} />
          </div>
          <label className={styles.row}>
            <span className={styles.label}>Scene</span>
            <select
              value={wish.theme}
              onChange={({ target }) => {
                const theme = THEME_CHOICES.find((one) => one === target.value);
                if (theme) onChange({ theme });
              }}
            >
              {THEME_CHOICES.map((theme) => (
                <option key={theme} value={theme}>
                  {themeWord(theme, locale)}
                </option>
              ))}
            </select>
          </label>
        </>
      );
    case 'jigsaw':
      return (
        <>
          <label className={styles.row}>
            <span className={styles.label}>Rows hold</span>
            <select
              value={wish.rowKind}
              onChange={({ target }) => {
                const rowKind = ROW_KINDS.find((one) => one === target.value);
                if (rowKind) onChange({ rowKind });
              }}
            >
              {ROW_KINDS.map((kind) => (
                <option key={kind} value={kind}>
                  {ROW_KIND_WORDS[kind]}
                </option>
              ))}
            </select>
          </label>
          <div className={styles.counts}>
            <Count name="rows" label="Rows" {...{ wish, onChange }} />
            <Count name="columns" label="Columns" {...{ wish, onChange }} />
          </div>
        </>
      );
  }
}
