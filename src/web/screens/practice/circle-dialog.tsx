// Tapping what is circled on a child's sheet: the redo row first, then the questions as far as the child got.
import { useState } from 'react';
import { ToggleButton } from 'react-aria-components';
import type { Outcome, TimedChild, TimedView } from '#api/timed-room.js';
import { Button } from '../../parts/button.js';
import { DialogFrame } from '../../parts/dialog-frame.js';
import { MathText } from '../../parts/math-text.js';
import styles from './practice.module.css';

interface Props {
  readonly child: TimedChild;
  readonly sheet: NonNullable<TimedChild['sheet']>;
  readonly form: TimedView['forms'][number] | null;
  readonly minutes: number | null;
  readonly onClose: () => void;
  readonly onRecord: (outcome: Outcome) => void;
}

export function CircleDialog({ child, sheet, form, minutes, onClose, onRecord }: Props) {
  const questions = (form?.questions ?? []).map((question, i) => ({ ...question, place: i + 1 }));
  const [attempted, setAttempted] = useState(sheet.outcome?.attempted ?? questions.length);
  const [wrong, setWrong] = useState<ReadonlySet<number>>(new Set(sheet.outcome?.wrong ?? []));
  const [redoWrong, setRedoWrong] = useState<ReadonlySet<number>>(new Set(sheet.outcome?.redoWrong ?? []));
  const [written, setWritten] = useState<Readonly<Record<string, string>>>(sheet.outcome?.written ?? {});
  const reached = [...wrong].filter((place) => place <= attempted).toSorted((a, b) => a - b);
  return (
    <DialogFrame title={`What is circled on ${child.shownAs}’s sheet`} onClose={onClose}>
      <label className={styles.labelled}>
        <span>Done, of {questions.length}</span>
        <input
          type="number"
          min={0}
          max={questions.length}
          value={attempted}
          onChange={(event) =>
            setAttempted(Math.max(0, Math.min(questions.length, Math.trunc(Number(event.target.value) || 0))))
          }
        />
      </label>
      {sheet.redo.length > 0 && (
        <fieldset className={styles.tiles}>
          <legend>Put right first: tap what is still wrong</legend>
          {sheet.redo.map(({ text, answer }, i) => (
            <Tile
              key={text}
              text={text}
              answer={answer}
              name=""
              isWrong={redoWrong.has(i + 1)}
              onToggle={() => setRedoWrong(toggled(redoWrong, i + 1))}
            />
          ))}
        </fieldset>
      )}
      <fieldset className={styles.tiles}>
        <legend>Tap what is wrong</legend>
        {questions.slice(0, attempted).map(({ text, answer, place }) => (
          <Tile
            key={place}
            text={text}
            answer={answer}
            name={String(place)}
            isWrong={wrong.has(place)}
            onToggle={() => setWrong(toggled(wrong, place))}
          />
        ))}
      </fieldset>
      {reached.length > 0 && (
        <fieldset className={styles.writtenList}>
          <legend>What was written there (if you like; right digits count)</legend>
          {reached.map((place) => (
            <label key={place} className={styles.labelled}>
              <span>
                {place}: <MathText text={questions[place - 1]?.text ?? ''} />
              </span>
              <input
                inputMode="decimal"
                maxLength={12}
                value={written[place] ?? ''}
                onChange={(event) => setWritten({ ...written, [place]: event.target.value })}
              />
            </label>
          ))}
        </fieldset>
      )}
      <div className={styles.acts}>
        <Button
          weight="main"
          onPress={() =>
            onRecord({
              attempted,
              wrong: reached,
              written: Object.fromEntries(
                Object.entries(written).filter(
                  ([place, text]) => reached.includes(Number(place)) && text.trim() !== '',
                ),
              ),
              redoWrong: [...redoWrong],
              minutes,
            })
          }
        >
          Save
        </Button>
        <Button onPress={onClose}>Leave it</Button>
      </div>
    </DialogFrame>
  );
}

function toggled(set: ReadonlySet<number>, place: number): ReadonlySet<number> {
  const next = new Set(set);
  if (!next.delete(place)) next.add(place);
  return next;
}

interface TileProps {
  readonly name: string;
  readonly text: string;
  readonly answer: string;
  readonly isWrong: boolean;
  readonly onToggle: () => void;
}

function Tile({ name, text, answer, isWrong, onToggle }: TileProps) {
  return (
    <ToggleButton className={styles.tile ?? ''} isSelected={isWrong} onChange={onToggle}>
      {name && <small>{name}</small>}
      <MathText text={text} /> <b>{answer}</b>
    </ToggleButton>
  );
}
