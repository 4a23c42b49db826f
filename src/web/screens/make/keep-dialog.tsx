// Putting what was made on the shelf, so that the rota can hand it out.
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { LibrarySet } from '#api/sets.js';
import { BANDS, type Band, yearsOfBand } from '#engine/curriculum/bands.js';
import { call, sentencesOf } from '../../app/client.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { DialogFrame } from '../../parts/dialog-frame.js';
import { Notice } from '../../parts/notice.js';
import styles from './make.module.css';
import { usualBand } from './set-numbers.js';
import { Words } from './wish-parts.js';
import type { Activity } from './worker/messages.js';

interface Props {
  readonly classId: string;
  readonly activities: readonly Activity[];
  readonly onKept: (sets: readonly LibrarySet[]) => void;
  readonly onClose: () => void;
}

export function KeepDialog({ classId, activities, onKept, onClose }: Props) {
  const words = useWords();
  const queries = useQueryClient();
  const [band, setBand] = useState<Band>(usualBand(activities[0]?.years ?? []));
  const keep = useMutation({
    mutationFn: () =>
      call('keepSets', { classId }, { band, contents: activities.map((one) => ({ ...one })) }),
    onSuccess: ({ sets }) => {
      void queries.invalidateQueries({ queryKey: ['library', classId] });
      onKept(sets);
      onClose();
    },
  });
  const count = activities.length;
  const what = count === 1 ? 'this set' : `these ${count} sets`;
  const bandWords = Object.fromEntries(BANDS.map((id) => [id, words.years(yearsOfBand(id))])) as Record<
    Band,
    string
  >;
  return (
    <DialogFrame title={`Keep ${what}`} onClose={onClose}>
      <p>
        They get the next free numbers on the shelf, and the rota can hand them out once they are in their
        box.
      </p>
      <Words label="Kept for" ids={BANDS} words={bandWords} chosen={band} onChoose={setBand} />
      {keep.error && (
        <Notice tone="look" title={sentencesOf(keep.error).message}>
          {sentencesOf(keep.error).hint}
        </Notice>
      )}
      <div className={styles.dialogButtons}>
        <Button onPress={onClose}>Not now</Button>
        <Button weight="main" onPress={() => keep.mutate()} isDisabled={keep.isPending}>
          Keep {what}
        </Button>
      </div>
    </DialogFrame>
  );
}
