// The dates of the school's terms.
import { useState } from 'react';
import type { DaySpan } from '#api/settings.js';
import { Button } from './button.js';
import styles from './terms-form.module.css';

interface Props {
  readonly terms: readonly DaySpan[];
  /** Whose calendar year the four empty terms are offered for. */
  readonly year: number;
  readonly isBusy: boolean;
  readonly submitLabel: string;
  readonly onSubmit: (terms: DaySpan[]) => void;
}

/** Usual Australian term dates, to be set right: common practice, not any state's official dates. */
function usualTerms(year: number): DaySpan[] {
  return [
    { name: 'Term 1', first: `${year}-01-28`, last: `${year}-04-02` },
    { name: 'Term 2', first: `${year}-04-20`, last: `${year}-06-26` },
    { name: 'Term 3', first: `${year}-07-13`, last: `${year}-09-18` },
    { name: 'Term 4', first: `${year}-10-05`, last: `${year}-12-18` },
  ];
}

export function TermsForm({ terms, year, isBusy, submitLabel, onSubmit }: Props) {
  const [rows, setRows] = useState<DaySpan[]>(terms.length > 0 ? [...terms] : usualTerms(year));
  const change = (at: number, part: Partial<DaySpan>) =>
    setRows(rows.map((row, index) => (index === at ? { ...row, ...part } : row)));
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        onSubmit(rows.filter(({ first, last }) => first !== '' || last !== ''));
      }}
    >
      <ol className={styles.rows}>
        {rows.map((row, index) => (
          // A term has no identity but its place in the year.
          // oxlint-disable-next-line react/no-array-index-key
          <li key={index} className={styles.row}>
            <label>
              <span>Name</span>
              <input
                value={row.name}
                required
                onChange={(event) => change(index, { name: event.target.value })}
              />
            </label>
            <label>
              <span>First day</span>
              <input
                type="date"
                required
                value={row.first}
                onChange={(event) => change(index, { first: event.target.value })}
              />
            </label>
            <label>
              <span>Last day</span>
              <input
                type="date"
                required
                value={row.last}
                onChange={(event) => change(index, { last: event.target.value })}
              />
            </label>
            <Button
              weight="quiet"
              aria-label={`Remove ${row.name}`}
              onPress={() => setRows(rows.filter((_, at) => at !== index))}
            >
              Remove
            </Button>
          </li>
        ))}
      </ol>
      <div className={styles.actions}>
        <Button type="submit" weight="main" isDisabled={isBusy}>
          {submitLabel}
        </Button>
        {rows.length < 8 && (
          <Button
            onPress={() => setRows([...rows, { name: `Term ${rows.length + 1}`, first: '', last: '' }])}
          >
            Add a term
          </Button>
        )}
      </div>
    </form>
  );
}
