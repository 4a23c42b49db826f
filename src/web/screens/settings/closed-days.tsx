// Days off within terms: public holidays, staff days, camps.
import { useState } from 'react';
import type { DaySpan } from '#api/settings.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import styles from './settings.module.css';

interface Props {
  readonly days: readonly DaySpan[];
  readonly onChange: (days: DaySpan[]) => void;
}

export function ClosedDays({ days, onChange }: Props) {
  const words = useWords();
  const [name, setName] = useState('');
  const [date, setDate] = useState('');
  return (
    <div className={styles.closed}>
      <h3>Days without school</h3>
      <ul>
        {days.map((day) => (
          <li key={`${day.first}/${day.name}`}>
            <span>
              {day.name}, {words.shortDate(day.first)}
              {day.last !== day.first && ` to ${words.shortDate(day.last)}`}
            </span>
            <Button
              weight="quiet"
              aria-label={`Remove ${day.name}`}
              onPress={() => onChange(days.filter((one) => one !== day))}
            >
              Remove
            </Button>
          </li>
        ))}
      </ul>
      <form
        className={styles.adding}
        onSubmit={(event) => {
          event.preventDefault();
          onChange(
            [...days, { name: name.trim() || 'Day off', first: date, last: date }].sort((a, b) =>
              a.first < b.first ? -1 : 1,
            ),
          );
          setName('');
          setDate('');
        }}
      >
        <label>
          <span>What for</span>
          <input
            value={name}
            maxLength={60}
            placeholder="Staff day"
            onChange={(event) => setName(event.target.value)}
          />
        </label>
        <label>
          <span>Day</span>
          <input type="date" required value={date} onChange={(event) => setDate(event.target.value)} />
        </label>
        <Button type="submit">Add the day</Button>
      </form>
    </div>
  );
}
