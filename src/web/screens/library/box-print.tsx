// One box of sets on paper, as it is stored: the numbers on the pieces are those of the shelf.
import { useQuery } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import type { LibrarySet } from '#api/sets.js';
import { call, sentencesOf } from '../../app/client.js';
import { Button } from '../../parts/button.js';
import { Notice } from '../../parts/notice.js';
import { PaperView } from '../make/paper-view.js';
import type { Activity } from '../make/worker/messages.js';
import styles from './library.module.css';
import { countOf } from './set-words.js';
import type { Ticks } from './shelf-part.js';

interface Props {
  readonly classId: string;
  /** Of one kind and band, at least one. */
  readonly sets: readonly LibrarySet[];
  readonly onTick: (ticks: Ticks) => void;
  readonly onClose: () => void;
}

export function BoxPrint({ classId, sets, onTick, onClose }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  const ids = sets.map(({ id }) => id);
  const contents = useQuery({
    queryKey: ['set-contents', ids],
    // What is on a set never changes.
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: () => Promise.all(ids.map((setId) => call('set', { setId }, null))),
  });
  // The page has changed around the button that was pressed.
  useEffect(() => heading.current?.focus(), []);
  const open = sets.filter(({ steps }) => !steps.includes('printed')).map(({ id }) => id);
  const [first, ...others] = (contents.data ?? []).map(({ content }) => content as unknown as Activity);
  const [set] = sets;
  if (!set) return null;
  return (
    <section className={styles.part} aria-label="Print a box">
      <div className={styles.bar}>
        <div>
          <h2 ref={heading} tabIndex={-1} className={styles.printTitle}>
            Print {set.band} box {set.box}
          </h2>
          <p className={styles.soft}>
            {countOf(set.kind, sets.length)}, numbers {sets.map(({ number }) => number).join(', ')}
          </p>
        </div>
        <div className={styles.acts}>
          <Button
            isDisabled={open.length === 0}
            onPress={() => onTick({ setIds: open, step: 'printed', done: true })}
          >
            {open.length === 0 ? 'Ticked as printed' : 'Tick them as printed'}
          </Button>
          <Button onPress={onClose}>Back to the shelf</Button>
        </div>
      </div>
      {contents.error && (
        <Notice tone="look" title={sentencesOf(contents.error).message}>
          {sentencesOf(contents.error).hint}
        </Notice>
      )}
      {contents.isPending && <p className={styles.waiting}>Taking the sets off the shelf…</p>}
      {first && (
        <PaperView
          classId={classId}
          activities={[first, ...others]}
          version={ids.join()}
          keptNumbers={sets.map(({ number }) => number)}
        />
      )}
    </section>
  );
}
