// One box of up to ten sets as a table: a row for each set, a box to tick for each step. Arrow keys move within it.
import { type KeyboardEvent, useRef, useState } from 'react';
import type { LibrarySet } from '#api/sets.js';
import { SET_STEPS, type SetStep } from '#engine/planning/set-shelf.js';
import { Button } from '../../parts/button.js';
import styles from './box-table.module.css';
import shared from './library.module.css';
import { setName, STEP_WORDS } from './set-words.js';
import type { Ticks } from './shelf-part.js';

interface Props {
  readonly sets: readonly LibrarySet[];
  readonly onTick: (ticks: Ticks) => void;
  readonly onOpen: (setId: string) => void;
  readonly onPrint: () => void;
}

const MOVES: Readonly<Record<string, readonly [rows: number, columns: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

export function BoxTable({ sets, onTick, onOpen, onPrint }: Props) {
  const table = useRef<HTMLTableElement>(null);
  const [place, setPlace] = useState<readonly [row: number, column: number]>([0, 1]);
  const first = sets[0];
  const last = sets.at(-1);
  if (!first || !last) return null;
  const title = `Box ${first.box}`;

  const onKeyDown = (event: KeyboardEvent) => {
    const move = MOVES[event.key];
    if (!move) return;
    event.preventDefault();
    const row = Math.min(sets.length - 1, Math.max(0, place[0] + move[0]));
    const column = Math.min(SET_STEPS.length, Math.max(0, place[1] + move[1]));
    table.current?.querySelector<HTMLButtonElement>(`[data-place="${row}-${column}"]`)?.focus();
  };
  const at = (row: number, column: number) => ({
    'data-place': `${row}-${column}`,
    tabIndex: place[0] === row && place[1] === column ? 0 : -1,
    onFocus: () => setPlace([row, column]),
    onKeyDown,
  });

  return (
    <div className={styles.boxFrame}>
      <div className={styles.boxHead}>
        <h3>
          {title}{' '}
          <span className={shared.soft}>
            {first.number === last.number ? `set ${first.number}` : `sets ${first.number} to ${last.number}`}
          </span>
        </h3>
        <Button weight="quiet" aria-label={`Print ${title}, ${first.band}`} onPress={onPrint}>
          Print {title}
        </Button>
      </div>
      <table ref={table} className={styles.grid} aria-label={`${title}, ${first.band}`}>
        <thead>
          <tr>
            <th scope="col">Set</th>
            {SET_STEPS.map((step) => (
              <th key={step} scope="col" className={styles.stepHead}>
                <span>{STEP_WORDS[step]}</span>
                <AllButton step={step} sets={sets} title={title} onTick={onTick} />
              </th>
            ))}
            <th scope="col">Where it is</th>
          </tr>
        </thead>
        <tbody>
          {sets.map((set, row) => (
            <tr key={set.id}>
              <th scope="row">
                <button
                  type="button"
                  className={styles.setButton}
                  onClick={() => onOpen(set.id)}
                  {...at(row, 0)}
                >
                  <span className={styles.setNumber}>
                    <span className="unseen">{`Set ${set.band} `}</span>
                    {set.number}
                  </span>
                  <span className={styles.topics}>{set.note || topicsLine(set)}</span>
                </button>
              </th>
              {SET_STEPS.map((step, index) => {
                const isDone = set.steps.includes(step);
                return (
                  <td key={step}>
                    <button
                      type="button"
                      className={styles.tick}
                      aria-pressed={isDone}
                      aria-label={`Set ${setName(set)}: ${STEP_WORDS[step].toLowerCase()}`}
                      data-next={set.nextStep === step || undefined}
                      onClick={() => onTick({ setIds: [set.id], step, done: !isDone })}
                      {...at(row, index + 1)}
                    >
                      <span className={styles.tickBox}>
                        {isDone && (
                          <svg viewBox="0 0 20 20" aria-hidden="true">
                            <path d="M4 11l4 4 8-10" />
                          </svg>
                        )}
                      </span>
                    </button>
                  </td>
                );
              })}
              <td className={styles.where}>{whereItIs(set)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface AllProps {
  readonly step: SetStep;
  readonly sets: readonly LibrarySet[];
  readonly title: string;
  readonly onTick: (ticks: Ticks) => void;
}

/** Ticks a step for every set of the box that is not there yet. */
function AllButton({ step, sets, title, onTick }: AllProps) {
  const open = sets.filter(({ steps }) => !steps.includes(step)).map(({ id }) => id);
  return (
    <Button
      weight="quiet"
      isDisabled={open.length === 0}
      aria-label={`all of ${title} ${STEP_WORDS[step].toLowerCase()}`}
      onPress={() => onTick({ setIds: open, step, done: true })}
    >
      all
    </Button>
  );
}

function topicsLine({ topics }: LibrarySet): string {
  return topics.length > 3
    ? `${topics.slice(0, 2).join(' · ')} · ${topics.length - 2} more`
    : topics.join(' · ');
}

function whereItIs({ heldBy, nextStep, finishes }: LibrarySet): string {
  if (heldBy !== null) return `with ${heldBy}`;
  if (nextStep !== null) return 'not ready';
  return finishes > 0 ? `box, done ${finishes === 1 ? 'once' : `${finishes} times`}` : 'box';
}
