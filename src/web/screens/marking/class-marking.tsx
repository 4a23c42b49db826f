// Marking with the class: children check their own work while the answers are shown, and the teacher taps only who missed
// what. This page is for the teacher's own screen or phone, never for the display.
import { useState } from 'react';
import { ToggleButton } from 'react-aria-components';
import type { Board } from '#engine/activities/board/board.js';
import { Button } from '../../parts/button.js';
import { Asked } from './asked-card.js';
import type { DeskView, MarkingDesk } from './marking-desk.js';
import styles from './class-marking.module.css';
import { SavedState } from './saved-state.js';

interface Props {
  readonly board: Board;
  readonly view: DeskView;
  readonly desk: MarkingDesk;
}

export function ClassMarking({ board, view, desk }: Props) {
  const [column, setColumn] = useState(() => firstOpen(board, view));
  const rung = board.rungs[column];
  const [missed, setMissed] = useState<ReadonlySet<string>>(() => wrongIn(view, column));
  const goTo = (next: number) => {
    setColumn(next);
    setMissed(wrongIn(view, next));
  };
  if (!rung) return null;
  const isLast = column === board.rungs.length - 1;
  const toggle = (id: string) => {
    const next = new Set(missed);
    if (!next.delete(id)) next.add(id);
    setMissed(next);
  };
  return (
    <section className={styles.withClass} aria-label="Marking with the class">
      <Asked rung={rung} locale={board.locale} />
      <fieldset className={styles.missTiles}>
        <legend>Tap who missed it</legend>
        {view.children.map(({ id, shownAs, absent }) => (
          <ToggleButton
            key={id}
            className={styles.missTile ?? ''}
            isSelected={missed.has(id)}
            isDisabled={absent}
            onChange={() => toggle(id)}
          >
            {absent ? `${shownAs} (away)` : shownAs}
          </ToggleButton>
        ))}
      </fieldset>
      <div className={styles.missActs}>
        <Button isDisabled={column === 0} onPress={() => goTo(column - 1)}>
          Question before
        </Button>
        <Button
          weight="main"
          onPress={() => {
            desk.markQuestion(column, missed);
            if (!isLast) goTo(column + 1);
          }}
        >
          {missed.size === 0 ? 'Everyone has it' : 'Everyone else has it'}
          {isLast ? '' : ', next'}
        </Button>
        <Button isDisabled={!view.canUndo} onPress={() => desk.undo()}>
          Take back
        </Button>
        <span>
          Question {column + 1} of {board.rungs.length}
        </span>
        <SavedState outbox={view.outbox} desk={desk} />
      </div>
      <p className="unseen" role="status">
        {view.said}
      </p>
    </section>
  );
}

/** The first question that is open for a child who is there; the first of all when none is. */
function firstOpen(board: Board, view: DeskView): number {
  const column = board.rungs.findIndex((_, at) =>
    view.rows.some((row, child) => !view.children[child]?.absent && row[at]?.state === null),
  );
  return Math.max(0, column);
}

function wrongIn(view: DeskView, column: number): ReadonlySet<string> {
  return new Set(
    view.children.flatMap(({ id }, row) => (view.rows[row]?.[column]?.state === 'wrong' ? [id] : [])),
  );
}
