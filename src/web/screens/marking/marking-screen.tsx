// Marking: choose the board, then a grid of children and questions that is saved as it is filled.
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useEffect } from 'react';
import type { Sheet } from '#api/today.js';
import { sentencesOf } from '../../app/client.js';
import { boardDaysQuery, markingQuery, stateQuery, todayQuery } from '../../app/queries.js';
import { useWords, type Words } from '../../app/use-words.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { Notice } from '../../parts/notice.js';
import { MarkingBoard } from './marking-board.js';
import styles from './marking.module.css';
import { SlipFinder } from './slip-finder.js';

export function MarkingScreen() {
  const words = useWords();
  const { classId } = useParams({ from: '/class/$classId/marking' });
  const search = useSearch({ from: '/class/$classId/marking' });
  const navigate = useNavigate();
  const { data: state } = useQuery(stateQuery);
  // Fetched anew for every visit and never behind the marker's back: while it is open, the desk knows best.
  const asked = useQuery({
    ...markingQuery(search.sheet ?? ''),
    enabled: search.sheet !== undefined,
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: 0,
  });
  const date = search.date ?? (search.sheet ? asked.data?.sheet.date : state?.today) ?? null;
  const day = useQuery({ ...todayQuery(classId, date ?? ''), enabled: date !== null });
  const days = useQuery(boardDaysQuery(classId));
  const sheets = day.data?.sheets ?? [];
  const usual = sheets.find(({ markCount }) => markCount > 0) ?? sheets[0];
  const sheetId = search.sheet ?? usual?.id ?? null;
  const failure = asked.error ?? day.error;
  const isOlder = asked.data !== undefined && sheets.length > 0 && !sheets.some(({ id }) => id === sheetId);

  // A slip's code may lead to a board of another class.
  const owner = asked.data?.sheet.classId;
  useEffect(() => {
    if (owner !== undefined && owner !== classId)
      void navigate({
        to: '/class/$classId/marking',
        params: { classId: owner },
        search: { sheet: search.sheet },
        replace: true,
      });
  }, [owner, classId, navigate, search.sheet]);

  const open = (next: { date?: string; sheet?: string }) =>
    void navigate({ to: '/class/$classId/marking', params: { classId }, search: next, replace: true });

  return (
    <div className={styles.screen}>
      <div className={styles.bar}>
        <div>
          <h1 className={styles.title}>Marking</h1>
          <p className={styles.day}>
            {date ? words.longDate(date) : ''}
            {day.data ? ` · number ${day.data.number}` : ''}
          </p>
          <nav aria-label="Also to mark" className={styles.elsewhere}>
            <Link to="/class/$classId/practice" params={{ classId }} search={date === null ? {} : { date }}>
              Counts of timed practice
            </Link>
            <Link to="/class/$classId/sets" params={{ classId }}>
              Finished sets
            </Link>
          </nav>
        </div>
        <div className={styles.choices}>
          {sheets.length > 0 && (
            <ChoiceRow
              label="Board"
              choices={sheets.map((sheet) => ({ id: sheet.id, label: sheetName(sheet, words) }))}
              chosen={sheetId ?? ''}
              onChoose={(sheet) => open({ date: date ?? '', sheet })}
            />
          )}
          <label className={styles.field}>
            <span>Day</span>
            <select value={date ?? ''} onChange={(event) => open({ date: event.target.value })}>
              {date && !days.data?.days.some((one) => one.date === date) && (
                <option value={date}>{words.shortDate(date)}</option>
              )}
              {days.data?.days.map((one) => (
                <option key={one.date} value={one.date}>
                  {words.shortDate(one.date)}, number {one.number}
                  {one.markCount > 0 ? ', marked' : ''}
                </option>
              ))}
            </select>
          </label>
          <SlipFinder classId={classId} onFound={(sheet) => sheet !== sheetId && open({ sheet })} />
        </div>
      </div>
      {failure && (
        <Notice tone="look" title={sentencesOf(failure).message}>
          {sentencesOf(failure).hint}
        </Notice>
      )}
      {isOlder && (
        <Notice>
          This slip is from an earlier version of the day’s board; its marks count all the same.
        </Notice>
      )}
      {!failure && sheetId === null && <p className={styles.waiting}>Looking for the day’s boards…</p>}
      {sheetId && <MarkingBoard key={sheetId} sheetId={sheetId} classId={classId} />}
    </div>
  );
}

function sheetName({ group, board }: Sheet, words: Words): string {
  if (group === 'class') return board.side === 'front' ? 'Whole class, front' : 'Whole class, back';
  return words.year(group);
}
