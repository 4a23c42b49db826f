// The shelf: sets by band, ten to a box, each ticked off on its way from the printer to the box.
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { LibrarySet } from '#api/sets.js';
import { BANDS } from '#engine/curriculum/bands.js';
import type { SetKind, SetStep } from '#engine/planning/set-shelf.js';
import { call, sentencesOf } from '../../app/client.js';
import { libraryQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { Notice } from '../../parts/notice.js';
import { BoxPrint } from './box-print.js';
import { BoxTable } from './box-table.js';
import styles from './library.module.css';
import { MakeForm } from './make-form.js';
import { SetDialog } from './set-dialog.js';
import { bandTitle, countOf, KIND_WORDS, STEP_WORDS } from './set-words.js';

interface Props {
  readonly classId: string;
  readonly kind: SetKind;
  readonly sets: readonly LibrarySet[];
}

export interface Ticks {
  readonly setIds: readonly string[];
  readonly step: SetStep;
  readonly done: boolean;
}

export function ShelfPart({ classId, kind, sets }: Props) {
  const words = useWords();
  const queries = useQueryClient();
  const [last, setLast] = useState<Ticks | null>(null);
  const [open, setOpen] = useState<string | null>(null);
  const [printing, setPrinting] = useState<readonly string[] | null>(null);
  const refresh = () =>
    Promise.all([
      queries.invalidateQueries({ queryKey: libraryQuery(classId).queryKey }),
      queries.invalidateQueries({ queryKey: ['rota', classId] }),
    ]);
  const tick = useMutation({
    mutationFn: ({ ticks }: { readonly ticks: Ticks; readonly isUndo: boolean }) =>
      call('markSets', { classId }, { ...ticks, setIds: [...ticks.setIds] }),
    onSuccess: async (_, { ticks, isUndo }) => {
      setLast(isUndo ? null : ticks);
      await refresh();
    },
  });
  const onPaper = sets.filter(({ id }) => printing?.includes(id));
  if (onPaper.length > 0)
    return (
      <BoxPrint
        classId={classId}
        sets={onPaper}
        onTick={(ticks) => tick.mutate({ ticks, isUndo: false })}
        onClose={() => setPrinting(null)}
      />
    );
  const openSet = sets.find(({ id }) => id === open);
  const bands = BANDS.filter((band) => sets.some((set) => set.band === band));
  return (
    <section className={styles.part} aria-label="Shelf">
      {sets.length === 0 && (
        <div className={styles.empty}>
          <h2>No {KIND_WORDS[kind].many} on the shelf yet</h2>
          <p>
            A set is printed, cut and laminated once. It then lies in a numbered bag, ten bags to a box, and
            goes from child to child: nobody gets the same one twice until all the others are done.
          </p>
        </div>
      )}
      <MakeForm classId={classId} kind={kind} onMade={refresh} />
      {tick.error && (
        <Notice tone="look" title={sentencesOf(tick.error).message}>
          {sentencesOf(tick.error).hint}
        </Notice>
      )}
      {sets.length > 0 && (
        <div className={styles.ticked}>
          <p role="status">
            {last
              ? tickedSentence(last, sets, kind)
              : 'Tick each step as it is done; arrow keys move from box to box.'}
          </p>
          {last && (
            <Button
              onPress={() => tick.mutate({ ticks: { ...last, done: !last.done }, isUndo: true })}
              isDisabled={tick.isPending}
            >
              Undo
            </Button>
          )}
          <p className={styles.care}>
            An adult cuts and laminates. Small pieces are not for children under three.
          </p>
        </div>
      )}
      {bands.map((band) => (
        <section key={band} className={styles.band} aria-labelledby={`band-${band}`}>
          <h2 id={`band-${band}`}>{bandTitle(band, words)}</h2>
          {boxesOf(sets.filter((set) => set.band === band)).map((box) => (
            <BoxTable
              key={box[0]?.box}
              sets={box}
              onTick={(ticks) => tick.mutate({ ticks, isUndo: false })}
              onOpen={setOpen}
              onPrint={() => setPrinting(box.map(({ id }) => id))}
            />
          ))}
        </section>
      ))}
      {openSet && <SetDialog set={openSet} onChanged={refresh} onClose={() => setOpen(null)} />}
    </section>
  );
}

function boxesOf(sets: readonly LibrarySet[]): LibrarySet[][] {
  const boxes = new Map<number, LibrarySet[]>();
  for (const set of sets) boxes.set(set.box, [...(boxes.get(set.box) ?? []), set]);
  return [...boxes.values()];
}

function tickedSentence({ setIds, step, done }: Ticks, sets: readonly LibrarySet[], kind: SetKind): string {
  const only = sets.find(({ id }) => id === setIds[0]);
  const which =
    setIds.length === 1 && only ? `Set ${only.band} ${only.number}` : countOf(kind, setIds.length);
  return done
    ? `${which}: ${STEP_WORDS[step].toLowerCase()}.`
    : `${which}: not ${STEP_WORDS[step].toLowerCase()} after all.`;
}
