// The clock of timed practice, full screen: a bar that empties without a sound. It shows no child and no result.
import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useEffect, useReducer, useState } from 'react';
import { stateQuery } from '../app/queries.js';
import { Button } from '../parts/button.js';
import { ChoiceRow } from '../parts/choice-row.js';
import {
  afterClockPress,
  type ClockMode,
  type ClockPhase,
  type ClockPress,
  shareLeft,
  workedMs,
} from './clock-phases.js';
import { pressOf } from './keys.js';
import styles from './practice-clock.module.css';

const MODES = [
  { id: 'down', label: 'Count down' },
  { id: 'up', label: 'Count up' },
  { id: 'none', label: 'No clock' },
] as const satisfies readonly { id: ClockMode; label: string }[];

/** Common practice: two to five minutes by age. */
const MINUTES = ['2', '3', '4', '5'] as const;

export function PracticeClock() {
  const { classId } = useParams({ from: '/clock/$classId' });
  const { minutes: wished } = useSearch({ from: '/clock/$classId' });
  const { data: state } = useQuery(stateQuery);
  const navigate = useNavigate();
  const [mode, setMode] = useState<ClockMode>('down');
  const [minutes, setMinutes] = useState(wished ?? 3);
  const [phase, dispatch] = useReducer(
    (now: ClockPhase, { press, at }: { readonly press: ClockPress; readonly at: number }) =>
      afterClockPress(now, press, at, { mode, minutes }),
    { name: 'ready' },
  );
  const [now, setNow] = useState(() => Date.now());
  const press = (kind: ClockPress) => {
    const at = Date.now();
    setNow(at);
    dispatch({ press: kind, at });
  };
  const leave = () => void navigate({ to: '/class/$classId/practice', params: { classId } });

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if ((event.target as HTMLElement | null)?.closest('button, a, input, select')) return;
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.key === 'Escape') leave();
      if (event.key === 'f') void document.documentElement.requestFullscreen?.().catch(() => undefined);
      const kind = pressOf(event.key);
      if (kind !== 'next' && kind !== 'pause') return;
      event.preventDefault();
      press(kind);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  });
  useEffect(() => {
    const timer = setInterval(() => {
      const at = Date.now();
      setNow(at);
      dispatch({ press: 'tick', at });
    }, 250);
    return () => clearInterval(timer);
  }, []);

  const isReady = phase.name === 'ready';
  const share = mode === 'down' ? shareLeft(phase, now, minutes) : 0;
  return (
    <main className={styles.screen} aria-label="Practice clock">
      <div className={styles.middle}>
        <p className={styles.said} role="status">
          {saidIn(phase, mode)}
        </p>
        {mode === 'down' && (
          <div className={styles.bar} aria-hidden="true">
            <div style={{ width: `${100 * share}%` }} />
          </div>
        )}
        {mode !== 'none' && (
          <p className={styles.time} role="timer" aria-label={mode === 'down' ? 'Time left' : 'Time worked'}>
            {timeText(mode === 'down' ? share * minutes * 60_000 : workedMs(phase, now), mode)}
          </p>
        )}
      </div>
      <footer className={styles.strip}>
        {isReady && (
          <>
            <ChoiceRow
              label="Clock"
              choices={MODES}
              chosen={mode}
              onChoose={(id) => setMode(id as ClockMode)}
            />
            {mode === 'down' && (
              <ChoiceRow
                label="Minutes"
                choices={MINUTES.map((id) => ({ id, label: `${id} min` }))}
                chosen={String(minutes)}
                onChoose={(id) => setMinutes(Number(id))}
              />
            )}
            <Button weight="main" onPress={() => press('next')} isDisabled={!state}>
              Start
            </Button>
          </>
        )}
        {(phase.name === 'running' || phase.name === 'paused') && (
          <>
            <Button onPress={() => press('pause')}>{phase.name === 'paused' ? 'Go on' : 'Pause'}</Button>
            <Button onPress={() => press('end')}>End now</Button>
          </>
        )}
        {!isReady && <Button onPress={() => press('restart')}>Start again</Button>}
        <Button weight="quiet" onPress={leave}>
          Close
        </Button>
      </footer>
    </main>
  );
}

function saidIn(phase: ClockPhase, mode: ClockMode): string {
  if (phase.name === 'ready') return 'Ready when you are';
  if (phase.name === 'paused') return 'Paused';
  if (phase.name === 'over') return 'Pencils down. Well worked.';
  return mode === 'none' ? 'Work at your own pace' : 'Do the ones you know';
}

/** "1:05"; a countdown rounds up, so that 0:00 means the end. */
function timeText(ms: number, mode: ClockMode): string {
  const seconds = mode === 'down' ? Math.ceil(ms / 1000) : Math.floor(ms / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
