// What was read: the children that can be kept, the rows that cannot, and the choice between all and nothing.
import { useState } from 'react';
import type { NewChild, RosterReading } from '#api/class.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../button.js';
import { Notice } from '../notice.js';
import styles from './roster.module.css';

interface Props {
  readonly reading: RosterReading;
  readonly years: readonly number[];
  readonly isBusy: boolean;
  readonly submitLabel: (count: number) => string;
  readonly onBack: () => void;
  readonly onSubmit: (children: NewChild[]) => void;
}

export function RosterReview({ reading, years, isBusy, submitLabel, onBack, onSubmit }: Props) {
  const words = useWords();
  const [chosenYears, setChosenYears] = useState<Readonly<Record<number, number>>>({});
  const children = reading.children.map((child, index) => ({
    ...child,
    year: chosenYears[index] ?? child.year,
  }));
  const offered = [...new Set([...years, ...children.map(({ year }) => year)])].sort((a, b) => a - b);
  const bad = reading.problems.length;
  return (
    <div className={styles.form}>
      {bad > 0 && (
        <section aria-labelledby="problems-title" className={styles.problems}>
          <h2 id="problems-title">
            {bad} {bad === 1 ? 'row needs' : 'rows need'} a look
          </h2>
          <div className={styles.scroll}>
            <table>
              <thead>
                <tr>
                  <th scope="col">Row</th>
                  <th scope="col">Column</th>
                  <th scope="col">What is wrong</th>
                  <th scope="col">How to mend it</th>
                </tr>
              </thead>
              <tbody>
                {reading.problems.map(({ row, column, message, hint }) => (
                  <tr key={`${row}/${column}/${message}`}>
                    <td>{row === 0 ? 'file' : row}</td>
                    <td>{column || '–'}</td>
                    <td>{message}</td>
                    <td>{hint}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </section>
      )}
      {children.length > 0 && (
        <section aria-labelledby="children-title">
          <h2 id="children-title">
            {children.length} {children.length === 1 ? 'child' : 'children'} read
          </h2>
          <ol className={styles.children}>
            {children.map(({ givenName, familyName, year, row }, index) => (
              <li key={row}>
                <span>
                  {givenName} {familyName}
                </span>
                <select
                  aria-label={`${words.yearWord} of ${givenName} ${familyName}`}
                  value={year}
                  onChange={(event) =>
                    setChosenYears({ ...chosenYears, [index]: Number(event.target.value) })
                  }
                >
                  {offered.map((one) => (
                    <option key={one} value={one}>
                      {words.year(one)}
                    </option>
                  ))}
                </select>
              </li>
            ))}
          </ol>
        </section>
      )}
      <div className={styles.actions}>
        {children.length > 0 && (
          <Button
            weight="main"
            isDisabled={isBusy}
            onPress={() => onSubmit(children.map(({ row: _, ...child }) => child))}
          >
            {submitLabel(children.length)}
          </Button>
        )}
        <Button onPress={onBack}>{bad > 0 ? 'Keep nothing and mend the list' : 'Back to the list'}</Button>
      </div>
      {bad > 0 && children.length > 0 && (
        <Notice>
          The rows above are left out unless you go back and mend them. You can also add those children later.
        </Notice>
      )}
    </div>
  );
}
