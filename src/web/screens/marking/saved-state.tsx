// Whether every mark has reached the disk, in words.
import { sentencesOf } from '../../app/client.js';
import { Button } from '../../parts/button.js';
import type { MarkingDesk } from './marking-desk.js';
import styles from './marking.module.css';
import type { OutboxState } from './outbox.js';

interface Props {
  readonly outbox: OutboxState;
  readonly desk: MarkingDesk;
}

export function SavedState({ outbox: { unsent, failure, isFinal, isKept }, desk }: Props) {
  return (
    <div className={failure ? styles.unsaved : styles.saved} role="status" aria-label="Saving">
      {failure ? (
        <>
          <p>
            <strong>Not saved yet: {unsent === 1 ? '1 mark' : `${unsent} marks`}.</strong>{' '}
            {sentencesOf(failure).message}{' '}
            {isFinal
              ? sentencesOf(failure).hint
              : isKept
                ? 'They are kept in this browser and sent again by themselves.'
                : 'Leave this page open: they are sent again by themselves.'}
          </p>
          <Button onPress={() => desk.sendNow()}>Try now</Button>
          {isFinal && <Button onPress={() => desk.dropUnsent()}>Let them go</Button>}
        </>
      ) : (
        <p>{unsent > 0 ? 'Saving…' : 'Saved'}</p>
      )}
    </div>
  );
}
