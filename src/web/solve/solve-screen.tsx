// Solving on the screen, by hand on a touch board or by keyboard: the pieces of one activity, full screen.
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { useWords } from '../app/use-words.js';
import { Button } from '../parts/button.js';
import { ChainTable } from './chain-table.js';
import { JigsawTable } from './jigsaw-table.js';
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
  const { set: keptSet, ...wish } = search;
  const kind = found?.ok ? found.activity.kind : undefined;
  const leave = () =>
    void (keptSet === undefined
      ? navigate({ to: '/class/$classId/make', params: { classId }, search: wish })
      : navigate({ to: '/class/$classId/sets', params: { classId }, search: { kind, view: 'shelf' } }));
  const other =
    keptSet === undefined
      ? () => void navigate({ ...solveAddress(classId, wish, (wish.seed ?? 1) + 1), replace: true })
      : null;

  if (!found) return <main className={styles.waiting} aria-busy="true" aria-label="Making the pieces" />;
  if (!found.ok) {
    return (
      <Stopped {...found.refusal} onLeave={leave}>
        {other && <Button onPress={other}>Try other pieces</Button>}
      </Stopped>
    );
  }
  const { activity, name, number } = found;
  const title = `${NAMES[activity.kind]} for ${words.years(activity.years)}, ${number}`;
  const table = { title, name, onOther: other, onLeave: leave };
  switch (activity.kind) {
    case 'chain':
      return <ChainTable key={name} chain={activity} {...table} />;
    case 'trail':
      return <TrailTable key={name} trail={activity} {...table} />;
    case 'jigsaw':
      return <JigsawTable key={name} jigsaw={activity} {...table} />;
  }
}

const NAMES = { chain: 'Chain', trail: 'Trail', jigsaw: 'Jigsaw' } as const;

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
