// Solving on the screen, by hand on a touch board or by keyboard: the pieces of one activity, full screen.
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { useWords } from '../app/use-words.js';
import { Button } from '../parts/button.js';
import { ACTIVITY_WORDS } from '../screens/make/words.js';
import { ChainTable } from './chain-table.js';
import { solveAddress } from './solve-address.js';
import styles from './solve-screen.module.css';
import { TrailTable } from './trail-table.js';
import { useActivity } from './use-activity.js';

export function SolveScreen() {
  const { classId } = useParams({ from: '/solve/$classId' });
  const search = useSearch({ from: '/solve/$classId' });
  const found = useActivity(classId, search);
  const words = useWords();
  const navigate = useNavigate();
  const leave = () => void navigate({ to: '/class/$classId/make', params: { classId }, search });
  const other = () =>
    void navigate({ ...solveAddress(classId, search, (search.seed ?? 1) + 1), replace: true });

  if (!found) return <main className={styles.waiting} aria-busy="true" aria-label="Making the pieces" />;
  if (!found.ok) {
    return (
      <Stopped {...found.refusal} onLeave={leave}>
        <Button onPress={other}>Try other pieces</Button>
      </Stopped>
    );
  }
  const { activity, name } = found;
  const title = `${ACTIVITY_WORDS[activity.kind].name} for ${words.years(activity.years)}, number ${activity.seed}`;
  const table = { title, name, onOther: other, onLeave: leave };
  switch (activity.kind) {
    case 'chain':
      return <ChainTable key={name} chain={activity} {...table} />;
    case 'trail':
      return <TrailTable key={name} trail={activity} {...table} />;
  }
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
