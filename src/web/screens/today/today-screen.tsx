// Today: the day's number, the ladder with its reasons, and the ways onward to display, paper and marking.
import { useQuery } from '@tanstack/react-query';
import { useParams, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import type { Sheet } from '#api/today.js';
import { sentencesOf } from '../../app/client.js';
import { classQuery, todayQuery } from '../../app/queries.js';
import { useDay } from '../../app/use-day.js';
import { useWords } from '../../app/use-words.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { Notice } from '../../parts/notice.js';
import { DayPanel } from './day-panel.js';
import { Ladder } from './ladder.js';
import styles from './today.module.css';

export function TodayScreen() {
  const { classId } = useParams({ from: '/class/$classId/today' });
  const search = useSearch({ from: '/class/$classId/today' });
  const date = useDay(search.date);
  const words = useWords();
  const { data: classDetail } = useQuery(classQuery(classId));
  const day = useQuery({ ...todayQuery(classId, date ?? ''), enabled: date !== null });
  const [view, setView] = useState('class');
  const [side, setSide] = useState<'front' | 'back'>('front');

  if (day.error) {
    const { message, hint } = sentencesOf(day.error);
    return (
      <Notice tone="look" title={message}>
        {hint}
      </Notice>
    );
  }
  if (!day.data || !classDetail) return <p className={styles.waiting}>Choosing today’s questions…</p>;

  const years = classDetail.years;
  const views = [
    { id: 'class', label: 'Whole class' },
    ...(years.length > 1 ? years.map((year) => ({ id: String(year), label: words.year(year) })) : []),
    ...(years.length > 1 ? [{ id: 'beside', label: `${words.yearWord}s side by side` }] : []),
  ];
  const sheets = day.data.sheets;
  const shown: readonly Sheet[] =
    view === 'class'
      ? sheets.filter(({ group, board }) => group === 'class' && board.side === side)
      : sheets.filter(({ group }) => group !== 'class' && (view === 'beside' || String(group) === view));
  const counted = (sheet: Sheet) =>
    classDetail.children.filter(({ year }) => sheet.group === 'class' || year === sheet.group).length;

  return (
    <div className={styles.screen}>
      <DayPanel classId={classId} day={day.data} shownSheet={shown[0]} isBeside={view === 'beside'} />
      <section aria-labelledby="ladder-title">
        <div className={styles.bar}>
          <h1 id="ladder-title" className={styles.title}>
            {view === 'class'
              ? side === 'front'
                ? 'Front: for everyone'
                : 'Back: harder'
              : `By ${words.yearWord.toLowerCase()} level`}
          </h1>
          <div className={styles.choices}>
            <ChoiceRow label="Board for" choices={views} chosen={view} onChoose={setView} />
            {view === 'class' && (
              <ChoiceRow
                label="Side"
                choices={[
                  { id: 'front', label: 'Front, easier' },
                  { id: 'back', label: 'Back, harder' },
                ]}
                chosen={side}
                onChoose={(id) => setSide(id === 'back' ? 'back' : 'front')}
              />
            )}
          </div>
        </div>
        <div className={shown.length > 1 ? styles.beside : undefined}>
          {shown.map((sheet) => (
            <Ladder
              key={`${sheet.group}/${sheet.board.side}`}
              sheet={sheet}
              classId={classId}
              date={day.data.date}
              childCount={counted(sheet)}
              title={sheet.group === 'class' ? undefined : words.year(sheet.group)}
              isNarrow={shown.length > 1}
            />
          ))}
        </div>
      </section>
    </div>
  );
}
