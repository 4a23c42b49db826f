// One board being marked: the focused question, the grid, and the pad beside it.
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { sentencesOf } from '../../app/client.js';
import { markingQuery } from '../../app/queries.js';
import { Notice } from '../../parts/notice.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { AskedCard } from './asked-card.js';
import { ClassMarking } from './class-marking.js';
import { Legend } from './legend.js';
import { MarkPad } from './mark-pad.js';
import { MarkingGrid } from './marking-grid.js';
import styles from './marking.module.css';
import { deskOf, sendLeftovers, useDeskView, wouldLose } from './use-desk.js';

const WAYS = [
  { id: 'slips', label: 'Slip by slip' },
  { id: 'class', label: 'With the class' },
] as const;

interface Props {
  readonly sheetId: string;
  readonly classId: string;
}

export function MarkingBoard({ sheetId, classId }: Props) {
  const queries = useQueryClient();
  const [desk] = useState(() => deskOf(sheetId, classId, queries));
  const marking = useQuery({ ...markingQuery(sheetId), staleTime: Number.POSITIVE_INFINITY, gcTime: 0 });
  const view = useDeskView(desk);
  const [way, setWay] = useState<string>('slips');
  const [card, setCard] = useState<HTMLDivElement | null>(null);
  const [cardHeight, setCardHeight] = useState(120);

  useEffect(() => {
    if (marking.data) desk.load(marking.data);
  }, [desk, marking.data]);

  useEffect(() => {
    sendLeftovers(classId, queries);
    const keepTyped = () => desk.endTyping();
    const warn = (event: BeforeUnloadEvent) => {
      desk.endTyping();
      if (wouldLose()) event.preventDefault();
    };
    window.addEventListener('pagehide', keepTyped);
    window.addEventListener('beforeunload', warn);
    return () => {
      desk.endTyping();
      window.removeEventListener('pagehide', keepTyped);
      window.removeEventListener('beforeunload', warn);
    };
  }, [classId, desk, queries]);

  // The grid's headings stick below the card, whose height changes with its figure.
  useEffect(() => {
    if (!card) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry) setCardHeight(Math.round(entry.borderBoxSize[0]?.blockSize ?? 0));
    });
    watch.observe(card);
    return () => watch.disconnect();
  }, [card]);

  if (marking.error) {
    const { message, hint } = sentencesOf(marking.error);
    return (
      <Notice tone="look" title={message}>
        {hint}
      </Notice>
    );
  }
  if (!marking.data || view.rows.length === 0)
    return (
      <p className={styles.waiting}>
        {marking.data?.children.length === 0 ? 'No child is on this board yet.' : 'Fetching the slips…'}
      </p>
    );
  const { board } = marking.data.sheet;
  const ways = <ChoiceRow label="How to mark" choices={WAYS} chosen={way} onChoose={setWay} />;
  if (way === 'class')
    return (
      <>
        {ways}
        <ClassMarking board={board} view={view} desk={desk} />
      </>
    );
  const rung = board.rungs[view.place.column];
  const child = view.children[view.place.row];
  const cell = view.rows[view.place.row]?.[view.place.column];
  return (
    <>
      {ways}
      <div className={styles.work} style={{ '--card-height': `${cardHeight}px` } as React.CSSProperties}>
        <div className={styles.left}>
          <div className={styles.cardPlace} ref={setCard}>
            {rung && <AskedCard rung={rung} locale={board.locale} outbox={view.outbox} desk={desk} />}
          </div>
          <MarkingGrid board={board} view={view} desk={desk} />
          <Legend />
        </div>
        {rung && child && cell && <MarkPad rung={rung} child={child} cell={cell} view={view} desk={desk} />}
        <p className="unseen" role="log" aria-live="polite" aria-label="Last mark">
          {view.said}
        </p>
      </div>
    </>
  );
}
