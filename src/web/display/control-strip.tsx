// The strip at the foot: the quiet countdown that children see, and the teacher's keys.
import { useState } from 'react';
import { Button } from '../parts/button.js';
import { MathText } from '../parts/math-text.js';
import styles from './display.module.css';
import { LEAST_MINUTES, type Room } from './legibility.js';
import { leftOf, type Phase, type Press, type Setup } from './phases.js';

interface Props {
  readonly number: string;
  readonly phase: Phase;
  readonly setup: Setup;
  readonly nowMs: number;
  readonly room: Room;
  readonly onRoom: (room: Room) => void;
  readonly isAllAtOnce: boolean;
  readonly onAllAtOnce: (isAllAtOnce: boolean) => void;
  readonly onPress: (kind: Press['kind']) => void;
  readonly onLeave: () => void;
}

export function ControlStrip(props: Props) {
  const { number, phase, setup, nowMs, room, onRoom, isAllAtOnce, onAllAtOnce, onPress, onLeave } = props;
  const left = leftOf(phase, nowMs);
  const isWaiting = phase.name === 'ready';
  const page = 'page' in phase && setup.pages > 1 ? `page ${phase.page + 1} of ${setup.pages}` : '';
  return (
    <footer className={styles.strip}>
      <p className={styles.number}>
        <span className="unseen">Number of the day: </span>
        <MathText text={number} />
      </p>
      <p className={styles.clock} role="timer" aria-label="Time left">
        {left === null ? (isWaiting ? clockText(setup.minutes * 60_000) : '') : clockText(left)}
      </p>
      <p className={styles.said} role="status">
        {saidIn(phase)}
      </p>
      <p className={styles.pageOf}>{page}</p>
      <div className={styles.keys}>
        {isWaiting && <Button onPress={() => onPress('next')}>Start</Button>}
        {(phase.name === 'working' || phase.name === 'paused') && (
          <>
            {setup.pages > 1 && <Button onPress={() => onPress('next')}>Turn the page</Button>}
            <Button onPress={() => onPress('pause')}>{phase.name === 'paused' ? 'Go on' : 'Pause'}</Button>
            {!phase.isLastCall && <Button onPress={() => onPress('last-call')}>Last call</Button>}
          </>
        )}
        {phase.name === 'reveal' ? (
          <>
            <Button onPress={() => onPress('back')}>Back</Button>
            <Button onPress={() => onPress('next')}>{phase.isShown ? 'Next' : 'Show the answer'}</Button>
          </>
        ) : (
          <Button onPress={() => onPress('reveal')}>Answers</Button>
        )}
        {phase.name !== 'reveal' && setup.pages > 1 && (
          <Button onPress={() => onAllAtOnce(true)}>All on one page</Button>
        )}
        {isAllAtOnce && <Button onPress={() => onAllAtOnce(false)}>Larger letters</Button>}
        <RoomForm room={room} onRoom={onRoom} />
        <Button weight="quiet" onPress={onLeave}>
          Close
        </Button>
      </div>
    </footer>
  );
}

/** "8:05" */
function clockText(ms: number): string {
  const seconds = Math.ceil(ms / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

function saidIn(phase: Phase): string {
  if (phase.name === 'ready') return 'Start when you are ready';
  if (phase.name === 'paused') return 'Paused';
  if (phase.name === 'over') return 'Pencils down';
  if (phase.name === 'working') return phase.isLastCall ? 'Last call: finish the one you are on' : '';
  return '';
}

function RoomForm({ room, onRoom }: { readonly room: Room; readonly onRoom: (room: Room) => void }) {
  const [isOpen, setIsOpen] = useState(false);
  if (!isOpen) {
    return (
      <Button weight="quiet" onPress={() => setIsOpen(true)}>
        Letter size
      </Button>
    );
  }
  return (
    <form className={styles.room} onSubmit={(event) => event.preventDefault()}>
      <label>
        Screen, inches
        <input
          type="number"
          min={10}
          max={200}
          defaultValue={room.diagonalInches}
          onBlur={(event) =>
            onRoom({ ...room, diagonalInches: Number(event.target.value) || room.diagonalInches })
          }
        />
      </label>
      <label>
        Back row, m
        <input
          type="number"
          min={1}
          max={20}
          step={0.5}
          defaultValue={room.distanceM}
          onBlur={(event) => onRoom({ ...room, distanceM: Number(event.target.value) || room.distanceM })}
        />
      </label>
      <span>Letters fill at least {LEAST_MINUTES} minutes of arc from there.</span>
    </form>
  );
}
