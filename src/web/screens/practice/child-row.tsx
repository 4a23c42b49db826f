// One child's row. Type how far the child got, Enter, next child; Tab goes to the circled ones.
import { useState } from 'react';
import type { Outcome, TimedChild, TimedView } from '#api/timed-room.js';
import { Button } from '../../parts/button.js';
import { outcomeOf, readEntry, type Typed, typedOf } from './outcome-entry.js';
import styles from './practice.module.css';

interface Props {
  readonly child: TimedChild;
  readonly view: TimedView;
  readonly isTimed: boolean;
  readonly onMove: (levelId: string, said: string) => void;
  readonly onUndoMove: () => void;
  readonly onRecord: (outcome: Outcome) => void;
  readonly onUndo: () => void;
  readonly onCircle: () => void;
  readonly onLook: () => void;
}

export function ChildRow(props: Props) {
  const { child, view, isTimed, onMove, onUndoMove, onRecord, onUndo, onCircle, onLook } = props;
  const { sheet, shownAs } = child;
  const outcome = sheet?.outcome ?? null;
  const [draft, setDraft] = useState<Typed | null>(null);
  const typed = draft ?? typedOf(outcome);
  const form = view.forms.find(({ key }) => key === sheet?.formKey);
  const [fault, setFault] = useState<string | null>(null);
  const { levels } = view.ladder;
  const level = (id: string | null) => levels.find((one) => one.id === id)?.title ?? '';

  /** Saves what was typed, or says what is wrong with it. */
  const save = (): void => {
    if (draft === null || !sheet || !form) return;
    if (isEmpty(draft) && outcome === null) {
      setDraft(null);
      return;
    }
    const entry = readEntry(draft, form.questions.length);
    setFault(entry.ok ? null : entry.message);
    if (!entry.ok) return;
    setDraft(null);
    onRecord(outcomeOf(entry, outcome, isTimed ? sheet.minutes : null));
  };
  const onKey = (event: React.KeyboardEvent<HTMLInputElement>) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    if (draft !== null && form && !isEmpty(draft)) {
      const entry = readEntry(draft, form.questions.length);
      if (!entry.ok) return setFault(entry.message);
    }
    // Leaving the box is what saves, so that a count is stored once however the row is left.
    const next = nextBox(event.currentTarget);
    if (next) next.focus();
    else event.currentTarget.blur();
  };
  const box = (name: keyof Typed, label: string, width: string) => (
    <input
      className={styles[width]}
      aria-label={`${label}, ${shownAs}`}
      aria-invalid={fault !== null}
      inputMode="numeric"
      autoComplete="off"
      data-box={name}
      value={typed[name]}
      onChange={(event) => {
        setFault(null);
        setDraft({ ...typed, [name]: event.target.value });
      }}
      onKeyDown={onKey}
      onFocus={(event) => event.target.select()}
      onBlur={(event) => {
        // Going over to the row's other box is not leaving the row.
        if (!event.currentTarget.closest('tr')?.contains(event.relatedTarget)) save();
      }}
    />
  );
  return (
    <tr data-away={child.absent || undefined} data-child={child.id}>
      <th scope="row">
        <button type="button" className={styles.name} onClick={onLook}>
          {shownAs}
        </button>
        {child.absent && <span className={styles.soft}> away</span>}
      </th>
      <td>
        <select
          aria-label={`Level of ${shownAs}`}
          value={child.levelId}
          onChange={(event) =>
            onMove(event.target.value, `${shownAs} is on ${level(event.target.value)} from the next sheet.`)
          }
        >
          {levels.map(({ id, title }, at) => (
            <option key={id} value={id}>
              {at + 1} {title}
            </option>
          ))}
        </select>
      </td>
      <td data-heading="Form">{form?.form ?? ''}</td>
      <td data-heading="Done">{sheet && box('done', 'Done', 'done')}</td>
      <td className={styles.circled} data-heading="Circled">
        {sheet && (
          <>
            {box('wrong', 'Numbers of the circled questions', 'wrong')}
            <Button aria-label={`Tap the circled questions of ${shownAs}`} onPress={onCircle}>
              Tap
            </Button>
            {sheet.canUndo && (
              <Button weight="quiet" aria-label={`Undo the count of ${shownAs}`} onPress={onUndo}>
                Undo
              </Button>
            )}
          </>
        )}
        {fault && (
          <span role="alert" className={styles.fault}>
            {fault}
          </span>
        )}
      </td>
      <td data-heading="To put right">{child.redo.length > 0 ? child.redo.length : ''}</td>
      <td data-heading="Best so far">
        <Best child={child} />
      </td>
      <td className={styles.next}>
        {child.suggestion.levelId !== null && (
          <>
            <Button
              aria-label={`${child.suggestion.move === 'up' ? 'On to' : 'Back to'} ${level(child.suggestion.levelId)}, ${shownAs}`}
              onPress={() =>
                onMove(
                  child.suggestion.levelId ?? child.levelId,
                  `${shownAs} is on ${level(child.suggestion.levelId)} from the next sheet.`,
                )
              }
            >
              {child.suggestion.move === 'up' ? 'On to' : 'Back to'} {level(child.suggestion.levelId)}
            </Button>
            <span className={styles.soft}>{child.suggestion.evidence}</span>
          </>
        )}
        {child.canUndoMove && child.suggestion.levelId === null && (
          <Button weight="quiet" aria-label={`Take the move back, ${shownAs}`} onPress={onUndoMove}>
            Take the move back
          </Button>
        )}
      </td>
    </tr>
  );
}

function isEmpty({ done, wrong }: Typed): boolean {
  return done.trim() === '' && wrong.trim() === '';
}

/** The same box of the next child who has one. */
function nextBox(box: HTMLInputElement): HTMLInputElement | null {
  let row = box.closest('tr')?.nextElementSibling;
  while (row) {
    const next = row.querySelector<HTMLInputElement>('[data-box="done"]');
    if (next) return next;
    row = row.nextElementSibling;
  }
  return null;
}

function Best({ child: { best } }: { readonly child: TimedChild }) {
  if (best === null) return null;
  return (
    <span className={styles.best}>
      {best.right} right{' '}
      {best.digitsPerMinute !== null && (
        <span className={styles.soft}>{best.digitsPerMinute} digits a minute</span>
      )}
    </span>
  );
}
