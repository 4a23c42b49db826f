// Timed practice: today's sheets for everyone, what came of them, and who may move on.
import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link, useParams, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import type { TimedView } from '#api/timed-room.js';
import { call, sentencesOf } from '../../app/client.js';
import { timedQuery } from '../../app/queries.js';
import { useDay } from '../../app/use-day.js';
import { useWords } from '../../app/use-words.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { Notice } from '../../parts/notice.js';
import { LadderPart } from './ladder-part.js';
import styles from './practice.module.css';
import { SheetsPart } from './sheets-part.js';

const PARTS = [
  { id: 'sheets', label: 'Sheets and counts' },
  { id: 'ladder', label: 'The ladder' },
] as const;

/** One thing done; each answers with the room as it is then. */
export type Act = (run: () => Promise<TimedView>, said: string) => void;

export function PracticeScreen() {
  const { classId } = useParams({ from: '/class/$classId/practice' });
  const date = useDay(useSearch({ from: '/class/$classId/practice' }).date);
  const words = useWords();
  const queries = useQueryClient();
  // The day before stays in sight until the next one is there, and with it whatever is being typed.
  const room = useQuery({
    ...timedQuery(classId, date ?? ''),
    enabled: date !== null,
    placeholderData: keepPreviousData,
  });
  const [part, setPart] = useState<string>('sheets');
  const [said, setSaid] = useState('');
  const doing = useMutation({
    // One after the other: an answer that overtook a later one would show an older state.
    scope: { id: 'practice' },
    mutationFn: ({ run }: { readonly run: () => Promise<TimedView>; readonly said: string }) => run(),
    onSuccess: (view, done) => {
      queries.setQueryData(timedQuery(classId, view.date).queryKey, view);
      setSaid(done.said);
    },
    onError: () => setSaid(''),
  });
  const act: Act = (run, done) => doing.mutate({ run, said: done });
  const failure = room.error ?? doing.error;
  return (
    <div className={styles.screen}>
      <div className={styles.head}>
        <div>
          <h1 className={styles.title}>Timed practice</h1>
          <p className={styles.soft}>{date ? words.longDate(date) : ''}</p>
        </div>
        <ChoiceRow label="Part" choices={PARTS} chosen={part} onChoose={setPart} />
        <Link
          to="/clock/$classId"
          params={{ classId }}
          search={minutesFor(room.data)}
          className={styles.linkButton ?? ''}
        >
          Show the clock
        </Link>
      </div>
      <details className={styles.care}>
        <summary>Before you time children</summary>
        <p>
          Against the clock, some children freeze. Let them work without a clock, or let it count up; a count
          for the child alone is plenty. Never read results out or hang them up. If a child is upset by timed
          work, leave it out and talk with the family and your school’s specialists.
        </p>
      </details>
      {failure && (
        <Notice tone="look" title={sentencesOf(failure).message}>
          {sentencesOf(failure).hint}
        </Notice>
      )}
      <p className="unseen" role="status">
        {said}
      </p>
      {!room.data && !failure && <p className={styles.soft}>Looking up who is on which level…</p>}
      {room.data && part === 'sheets' && <SheetsPart classId={classId} view={room.data} act={act} />}
      {room.data && part === 'ladder' && (
        <LadderPart
          key={JSON.stringify(room.data.ladder)}
          classId={classId}
          years={[...new Set(room.data.children.map(({ year }) => year))].toSorted((a, b) => a - b)}
          ladder={room.data.ladder}
          onChange={(ladder) =>
            act(async () => {
              await call('changeLadder', { classId }, { ladder });
              return call('timed', { classId, date: room.data.date }, null);
            }, 'The ladder is saved.')
          }
        />
      )}
    </div>
  );
}

/** The time that most of today's sheets are meant for; the clock's own when there are none yet. */
function minutesFor(view: TimedView | undefined): { readonly minutes?: number } {
  const times = (view?.children ?? []).flatMap(({ sheet }) => sheet?.minutes ?? []);
  const count = (minutes: number) => times.filter((other) => other === minutes).length;
  const [usual] = [...new Set(times)].toSorted((a, b) => count(b) - count(a) || a - b);
  return usual === undefined ? {} : { minutes: usual };
}
