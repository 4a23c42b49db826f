// The board full screen, for the class: read from the back row, run by keyboard or clicker. It never shows a child's result.
import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useEffect, useReducer, useState } from 'react';
import type { Sheet } from '#api/today.js';
import type { Board } from '#engine/activities/board/board.js';
import { sentencesOf } from '../app/client.js';
import { stateQuery, todayQuery } from '../app/queries.js';
import { ControlStrip } from './control-strip.js';
import styles from './display.module.css';
import { pressOf } from './keys.js';
import { afterPress, type Phase, type Press, START } from './phases.js';
import { RevealPage } from './reveal-page.js';
import { useRoom } from './use-room.js';
import { WorkPages } from './work-pages.js';

export function BoardDisplay() {
  const { classId, date } = useParams({ from: '/display/$classId/$date' });
  const { show } = useSearch({ from: '/display/$classId/$date' });
  const day = useQuery({ ...todayQuery(classId, date), staleTime: Number.POSITIVE_INFINITY });
  const { data: state } = useQuery(stateQuery);
  if (day.error) {
    const { message, hint } = sentencesOf(day.error);
    return (
      <main className={styles.screen}>
        <p className={styles.message}>
          {message} {hint}
        </p>
      </main>
    );
  }
  if (!day.data || !state) return <main className={styles.screen} aria-busy="true" />;
  const boards = boardsFor(day.data.sheets, show);
  return <Running boards={boards} minutes={state.settings.minutes} classId={classId} date={date} />;
}

/** `show` is "class-front", "class-back", "4-front" or "beside". */
function boardsFor(sheets: readonly Sheet[], show: string | undefined): Board[] {
  const byYear = sheets.filter(({ group }) => group !== 'class');
  if (show === 'beside' && byYear.length > 0) return byYear.map(({ board }) => board);
  const chosen = sheets.find(({ group, board }) => `${group}-${board.side}` === show) ?? sheets[0];
  return chosen ? [chosen.board] : [];
}

interface RunningProps {
  readonly boards: readonly Board[];
  readonly minutes: number;
  readonly classId: string;
  readonly date: string;
}

function Running({ boards, minutes, classId, date }: RunningProps) {
  const [pages, setPages] = useState(1);
  const [room, setRoom] = useRoom();
  const [isAllAtOnce, setAllAtOnce] = useState(false);
  const setup = { pages, rungs: Math.max(1, ...boards.map(({ rungs }) => rungs.length)), minutes };
  const [phase, dispatch] = useReducer((now: Phase, press: Press) => afterPress(now, press, setup), START);
  const [nowMs, setNowMs] = useState(() => Date.now());
  const navigate = useNavigate();
  const leave = () => void navigate({ to: '/class/$classId/today', params: { classId }, search: { date } });
  const press = (kind: Press['kind']) => {
    const now = Date.now();
    setNowMs(now);
    dispatch({ kind, nowMs: now });
  };

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const target = event.target as HTMLElement | null;
      if (
        target?.closest('button, a, input, select, dialog') &&
        event.key !== 'PageDown' &&
        event.key !== 'PageUp'
      )
        return;
      if (event.key === 'Escape') leave();
      if (event.key === 'f') void document.documentElement.requestFullscreen?.().catch(() => undefined);
      const kind = pressOf(event.key);
      if (!kind || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      press(kind);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  });
  useEffect(() => {
    const timer = setInterval(() => {
      const now = Date.now();
      setNowMs(now);
      dispatch({ kind: 'tick', nowMs: now });
    }, 250);
    return () => clearInterval(timer);
  }, []);

  return (
    <main className={styles.screen} aria-label="Board for the class">
      {phase.name === 'reveal' ? (
        <RevealPage boards={boards} rung={phase.rung} isShown={phase.isShown} />
      ) : (
        <WorkPages
          boards={boards}
          page={phase.page}
          room={room}
          isAllAtOnce={isAllAtOnce}
          onPages={setPages}
        />
      )}
      <ControlStrip
        number={boards[0]?.number ?? ''}
        isAllAtOnce={isAllAtOnce}
        onAllAtOnce={setAllAtOnce}
        phase={phase}
        setup={setup}
        nowMs={nowMs}
        room={room}
        onRoom={setRoom}
        onPress={press}
        onLeave={leave}
      />
    </main>
  );
}
