// One board as a ladder of ruled lines, easiest first, with the line that everyone is to reach.
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { Sheet } from '#api/today.js';
import { call, sentencesOf } from '../../app/client.js';
import { todayQuery } from '../../app/queries.js';
import { Button } from '../../parts/button.js';
import { Notice } from '../../parts/notice.js';
import { RungRow } from './rung-row.js';
import { SwapDialog } from './swap-dialog.js';
import styles from './today.module.css';

interface Props {
  readonly sheet: Sheet;
  readonly classId: string;
  readonly date: string;
  readonly childCount: number;
  readonly title: string | undefined;
  readonly isNarrow: boolean;
}

export function Ladder({ sheet, classId, date, childCount, title, isNarrow }: Props) {
  const [swapping, setSwapping] = useState<number | null>(null);
  const queries = useQueryClient();
  const refresh = () => queries.invalidateQueries({ queryKey: todayQuery(classId, date).queryKey });
  const lock = useMutation({
    mutationFn: (locked: number[]) => call('lockRungs', { sheetId: sheet.id }, { locked }),
    onSuccess: refresh,
  });
  const reshuffle = useMutation({
    mutationFn: () => call('reshuffle', {}, { sheetId: sheet.id }),
    onSuccess: refresh,
  });
  const locked = sheet.board.rungs.filter((rung) => rung.locked).map(({ rung }) => rung);
  const isFixed = sheet.markCount > 0;
  const failure = lock.error ?? reshuffle.error;
  return (
    <div className={styles.ladder}>
      {title && <h2 className={styles.ladderTitle}>{title}</h2>}
      {failure && (
        <Notice tone="look">
          {sentencesOf(failure).message} {sentencesOf(failure).hint}
        </Notice>
      )}
      {isFixed && <Notice>This board has marks, so it stays as the children saw it.</Notice>}
      <ol className={styles.rungs}>
        {sheet.board.rungs.map((rung) => (
          <RungRow
            key={rung.rung}
            rung={rung}
            locale={sheet.board.locale}
            childCount={childCount}
            isNarrow={isNarrow}
            isFixed={isFixed}
            onLock={(keep) =>
              lock.mutate(keep ? [...locked, rung.rung] : locked.filter((other) => other !== rung.rung))
            }
            onSwap={() => setSwapping(rung.rung)}
          />
        ))}
      </ol>
      {!isFixed && (
        <Button onPress={() => reshuffle.mutate()} isDisabled={reshuffle.isPending}>
          {locked.length > 0 ? `Choose the others again (${locked.length} kept)` : 'Choose all again'}
        </Button>
      )}
      {swapping !== null && (
        <SwapDialog
          sheetId={sheet.id}
          rung={swapping}
          childCount={childCount}
          onClose={() => setSwapping(null)}
          onSwapped={() => {
            setSwapping(null);
            void refresh();
          }}
        />
      )}
    </div>
  );
}
