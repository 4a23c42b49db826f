// Solving on the screen, by hand on a touch board or by keyboard: the pieces of one activity, full screen.
import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { sentencesOf } from '../app/client.js';
import { classQuery } from '../app/queries.js';
import { useWords } from '../app/use-words.js';
import { Button } from '../parts/button.js';
import { ChainTable } from './chain-table.js';
import styles from './solve-screen.module.css';
import { useActivity } from './use-activity.js';
import { wishOf } from './wish.js';

export function SolveScreen() {
  const { classId } = useParams({ from: '/solve/$classId' });
  const search = useSearch({ from: '/solve/$classId' });
  const { data: room, error } = useQuery({ ...classQuery(classId), staleTime: Number.POSITIVE_INFINITY });
  const words = useWords();
  const navigate = useNavigate();
  const wish = room ? wishOf(search, room.years, words.locale) : null;
  const composed = useActivity(wish);
  const leave = () => void navigate({ to: '/class/$classId/today', params: { classId } });
  const other = () =>
    void navigate({
      to: '/solve/$classId',
      params: { classId },
      search: { ...search, seed: search.seed + 1 },
      replace: true,
    });

  if (error) return <Stopped {...sentencesOf(error)} onLeave={leave} />;
  if (!wish || !composed)
    return <main className={styles.waiting} aria-busy="true" aria-label="Making the pieces" />;
  if (!composed.ok) {
    return (
      <Stopped {...composed.error} onLeave={leave}>
        <Button onPress={other}>Try other pieces</Button>
      </Stopped>
    );
  }
  const name = JSON.stringify(wish);
  const title = `Chain for ${words.years(wish.years)}, number ${wish.seed}`;
  return (
    <ChainTable key={name} chain={composed.value} title={title} name={name} onOther={other} onLeave={leave} />
  );
}

interface StoppedProps {
  readonly message: string;
  readonly hint: string;
  readonly onLeave: () => void;
  readonly children?: ReactNode;
}

function Stopped({ message, hint, onLeave, children }: StoppedProps) {
  return (
    <main className={styles.stopped}>
      <p role="alert">
        {message} {hint}
      </p>
      {children}
      <Button onPress={onLeave}>Close</Button>
    </main>
  );
}
