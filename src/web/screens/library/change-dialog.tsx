// Everything about one child and its sets: why it has this one, another instead, back to the box, and the band.
import { useState } from 'react';
import { type LibrarySet, type RotaChild, type RotaSet, SetBand } from '#api/sets.js';
import { BANDS, type Band, bandOfYear } from '#engine/curriculum/bands.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { DialogFrame } from '../../parts/dialog-frame.js';
import styles from './library.module.css';
import type { RotaActs } from './rota-part.js';
import { bandTitle, bandWord, setName } from './set-words.js';
import { SetTag } from './set-tag.js';

interface Props {
  readonly child: RotaChild;
  readonly free: readonly RotaSet[];
  readonly sets: readonly LibrarySet[];
  readonly acts: RotaActs;
  readonly onClose: () => void;
}

export function ChangeDialog({ child, free, sets, acts, onClose }: Props) {
  const words = useWords();
  const [shown, setShown] = useState<Band>(child.band);
  const { shownAs, holds } = child;
  const choices = free.filter(({ band }) => band === shown);
  const had = new Set(child.had);
  const act = (run: () => void) => {
    run();
    onClose();
  };
  return (
    <DialogFrame title={shownAs} onClose={onClose}>
      <div className={styles.now}>
        {holds ? (
          <>
            <p>
              Has <SetTag set={holds} /> since {words.shortDate(holds.since)}.{' '}
              <span className={styles.soft}>{holds.why}</span>
            </p>
            <Button onPress={() => act(() => acts.takeBack(child))}>Take it back unfinished</Button>
          </>
        ) : (
          <p>
            {child.waiting ? `${child.waiting.message} ${child.waiting.hint}` : 'Has no set at the moment.'}
          </p>
        )}
      </div>
      <div className={styles.field}>
        <h3 id="give-title">{holds ? 'Give another set instead' : 'Give a set'}</h3>
        <ChoiceRow
          label="Sets of band"
          choices={BANDS.map((id) => ({ id, label: bandWord(id) }))}
          chosen={shown}
          onChoose={(id) => setShown(SetBand.catch(shown).parse(id))}
        />
        {choices.length === 0 ? (
          <p className={styles.soft}>No {shown} set is free today.</p>
        ) : (
          <ul className={styles.choices} aria-labelledby="give-title">
            {choices.map((set) => (
              <li key={set.id}>
                <Button onPress={() => act(() => acts.give(child, set.id))}>
                  <span className="unseen">Give </span>
                  <SetTag set={set} />
                  {had.has(set.id) && <span className={styles.soft}>had before</span>}
                </Button>
              </li>
            ))}
          </ul>
        )}
      </div>
      <div className={styles.field}>
        <h3>Band of {shownAs}</h3>
        <ChoiceRow
          label={`Band of ${shownAs}`}
          choices={[
            { id: 'year', label: `As ${words.year(child.year)}: ${bandOfYear(child.year)}` },
            ...BANDS.map((id) => ({ id, label: bandWord(id) })),
          ]}
          chosen={child.bandChosen ? child.band : 'year'}
          onChoose={(id) => {
            const band = SetBand.safeParse(id);
            acts.setBand(child, band.success ? band.data : null);
            setShown(band.success ? band.data : bandOfYear(child.year));
          }}
        />
        <p className={styles.soft}>
          {bandTitle(child.band, words)}. A set that the child has now stays until it is finished.
        </p>
      </div>
      <p className={styles.soft}>{hadSentence(child, sets)}</p>
      <div className={styles.end}>
        <Button onPress={onClose}>Done</Button>
      </div>
    </DialogFrame>
  );
}

function hadSentence({ shownAs, had }: RotaChild, sets: readonly LibrarySet[]): string {
  const names = sets.filter(({ id }) => had.includes(id)).map(setName);
  return names.length === 0
    ? `${shownAs} has not finished one of these yet.`
    : `Finished so far: ${names.join(', ')}.`;
}
