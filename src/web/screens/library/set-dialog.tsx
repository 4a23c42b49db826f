// One set: what it practises, a note about it, and off the shelf as long as it is not on paper.
import { useMutation } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import type { LibrarySet } from '#api/sets.js';
import { call, sentencesOf } from '../../app/client.js';
import { Button } from '../../parts/button.js';
import { DialogFrame } from '../../parts/dialog-frame.js';
import { Notice } from '../../parts/notice.js';
import { TextInput } from '../../parts/text-input.js';
import { solveSetAddress } from '../../solve/solve-address.js';
import styles from './library.module.css';
import { KIND_WORDS, setName } from './set-words.js';

interface Props {
  readonly set: LibrarySet;
  readonly onChanged: () => Promise<unknown>;
  readonly onClose: () => void;
}

export function SetDialog({ set, onChanged, onClose }: Props) {
  const { classId } = useParams({ from: '/class/$classId' });
  const [note, setNote] = useState(set.note);
  const finish = async () => {
    await onChanged();
    onClose();
  };
  const save = useMutation({
    mutationFn: () => call('noteSet', { setId: set.id }, { note }),
    onSuccess: finish,
  });
  const remove = useMutation({
    mutationFn: () => call('removeSet', { setId: set.id }, null),
    onSuccess: finish,
  });
  const failure = save.error ?? remove.error;
  const isOnPaper = set.steps.length > 0 || set.heldBy !== null || set.finishes > 0;
  return (
    <DialogFrame
      title={`${KIND_WORDS[set.kind].one.replace(/^./, (first) => first.toUpperCase())} ${setName(set)}`}
      onClose={onClose}
    >
      {set.topics.length > 0 && (
        <div className={styles.field}>
          <h3>Practises</h3>
          <ul className={styles.topicList}>
            {set.topics.map((topic) => (
              <li key={topic}>{topic}</li>
            ))}
          </ul>
        </div>
      )}
      <p>
        <Link {...solveSetAddress(classId, set.id)}>Try it on the screen</Link>
      </p>
      <TextInput
        label="Note"
        hint="For adults: a torn strip, a lost bag. No names of children, please."
        value={note}
        onChange={setNote}
        maxLength={500}
      />
      {failure && (
        <Notice tone="look" title={sentencesOf(failure).message}>
          {sentencesOf(failure).hint}
        </Notice>
      )}
      <div className={styles.end}>
        {!isOnPaper && (
          <Button weight="quiet" onPress={() => remove.mutate()} isDisabled={remove.isPending}>
            Take it off the shelf
          </Button>
        )}
        <Button onPress={onClose}>Leave it</Button>
        <Button weight="main" onPress={() => save.mutate()} isDisabled={save.isPending}>
          Save the note
        </Button>
      </div>
    </DialogFrame>
  );
}
