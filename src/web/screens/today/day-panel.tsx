// The left-hand panel: which day, which number, and what to do next.
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { Form, Input, Label, TextField } from 'react-aria-components';
import type { Sheet, TodayView } from '#api/today.js';
import { addDays } from '#engine/numbers/calendar.js';
import { call, sentencesOf } from '../../app/client.js';
import { todayQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { MathText } from '../../parts/math-text.js';
import { Notice } from '../../parts/notice.js';
import styles from './today.module.css';

interface Props {
  readonly classId: string;
  readonly day: TodayView;
  readonly shownSheet: Sheet | undefined;
  readonly isBeside: boolean;
}

export function DayPanel({ classId, day, shownSheet, isBeside }: Props) {
  const words = useWords();
  const show = isBeside
    ? 'beside'
    : shownSheet
      ? `${shownSheet.group}-${shownSheet.board.side}`
      : 'class-front';
  return (
    <aside className={styles.panel} aria-label="The day">
      <nav className={styles.days} aria-label="Days">
        <Link
          to="/class/$classId/today"
          params={{ classId }}
          search={{ date: addDays(day.date, -1) }}
          aria-label="The day before"
        >
          ←
        </Link>
        <p className={styles.date}>
          <strong>{words.longDate(day.date)}</strong>
          {day.dayLabel && <span>{day.dayLabel}</span>}
        </p>
        <Link
          to="/class/$classId/today"
          params={{ classId }}
          search={{ date: addDays(day.date, 1) }}
          aria-label="The day after"
        >
          →
        </Link>
      </nav>
      <div className={styles.numberCard}>
        <p className={styles.numberLabel}>Number of the day</p>
        <p
          className={styles.number}
          style={{ '--letters': Math.max(3, day.number.length) } as React.CSSProperties}
        >
          <MathText text={day.number} />
        </p>
        <NumberForm classId={classId} day={day} />
      </div>
      <p className={styles.sentence}>{day.sentence}</p>
      <div className={styles.onward}>
        <Link
          className={styles.mainLink}
          to="/display/$classId/$date"
          params={{ classId, date: day.date }}
          search={{ show }}
        >
          Show it full screen
        </Link>
        <Link
          className={styles.plainLink}
          to="/class/$classId/print"
          params={{ classId }}
          search={{ date: day.date }}
        >
          Print
        </Link>
        <Link
          className={styles.plainLink}
          to="/class/$classId/marking"
          params={{ classId }}
          search={{ date: day.date }}
        >
          Mark
        </Link>
      </div>
    </aside>
  );
}

function NumberForm({ classId, day }: { readonly classId: string; readonly day: TodayView }) {
  const [text, setText] = useState('');
  const queries = useQueryClient();
  const change = useMutation({
    mutationFn: (number: string) => call('changeNumber', { classId }, { date: day.date, number }),
    onSuccess: (next) => {
      queries.setQueryData(todayQuery(classId, day.date).queryKey, next);
      setText('');
    },
  });
  return (
    <Form
      className={styles.numberForm ?? ''}
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() !== '') change.mutate(text);
      }}
    >
      <TextField value={text} onChange={setText} className={styles.numberField ?? ''}>
        <Label>Another number</Label>
        <Input placeholder="47, 3.6, $4.85 or 3/4" autoComplete="off" />
      </TextField>
      <Button type="submit" isDisabled={change.isPending}>
        Use it
      </Button>
      {change.error && (
        <div className={styles.formNotice}>
          <Notice tone="look">
            {sentencesOf(change.error).message} {sentencesOf(change.error).hint}
          </Notice>
        </div>
      )}
    </Form>
  );
}
