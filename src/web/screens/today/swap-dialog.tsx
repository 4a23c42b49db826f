// Other questions for one rung; the rest of the ladder stays as it is.
import { useMutation, useQuery } from '@tanstack/react-query';
import { call, sentencesOf } from '../../app/client.js';
import { Button } from '../../parts/button.js';
import { DialogFrame } from '../../parts/dialog-frame.js';
import { MathText } from '../../parts/math-text.js';
import { Notice } from '../../parts/notice.js';
import { childrenWho } from '../../parts/shares.js';
import styles from './swap-dialog.module.css';

interface Props {
  readonly sheetId: string;
  readonly rung: number;
  readonly childCount: number;
  readonly onClose: () => void;
  readonly onSwapped: () => void;
}

export function SwapDialog({ sheetId, rung, childCount, onClose, onSwapped }: Props) {
  const offered = useQuery({
    queryKey: ['alternatives', sheetId, rung],
    queryFn: () => call('alternatives', { sheetId, rung }, null),
  });
  const swap = useMutation({
    mutationFn: (questionId: string) => call('swapRung', { sheetId, rung }, { questionId }),
    onSuccess: onSwapped,
  });
  const failure = offered.error ?? swap.error;
  return (
    <DialogFrame title={`Another question for rung ${rung}`} onClose={onClose}>
      {failure && (
        <Notice tone="look">
          {sentencesOf(failure).message} {sentencesOf(failure).hint}
        </Notice>
      )}
      {offered.isPending && <p>Looking for questions that fit here…</p>}
      {offered.data?.alternatives.length === 0 && (
        <p>
          Nothing else fits here while the other questions stay. Swap the question beside it first, or choose
          all again.
        </p>
      )}
      <ul className={styles.list}>
        {offered.data?.alternatives.map(({ question, predicted, why }) => (
          <li key={question.id}>
            <Button onPress={() => swap.mutate(question.id)} isDisabled={swap.isPending}>
              <span className={styles.choice}>
                <span className={styles.text}>
                  <MathText text={question.text} />
                </span>
                <span className={styles.answer}>
                  <MathText text={question.answer.text} />
                </span>
                <span className={styles.share}>{childrenWho(predicted, childCount)}</span>
                <span className={styles.why}>{why}</span>
              </span>
            </Button>
          </li>
        ))}
      </ul>
      <Button weight="quiet" onPress={onClose}>
        Leave it as it is
      </Button>
    </DialogFrame>
  );
}
