// What a new level is called, below what it asks.
import { useState } from 'react';
import { Button } from '../../parts/button.js';
import { TextInput } from '../../parts/text-input.js';
import styles from './practice.module.css';

interface Props {
  /** The name to begin with. */
  readonly title: string;
  /** False while what it asks cannot fill a sheet. */
  readonly isReady?: boolean;
  readonly onTitle: (title: string) => void;
  readonly onClose: () => void;
  readonly children: React.ReactNode;
}

export function LevelForm({ title: first, isReady = true, onTitle, onClose, children }: Props) {
  const [title, setTitle] = useState(first);
  return (
    <form
      className={styles.newLevel}
      onSubmit={(event) => {
        event.preventDefault();
        if (title.trim() !== '' && isReady) onTitle(title);
      }}
    >
      {children}
      <TextInput
        label="What is the level called?"
        value={title}
        onChange={setTitle}
        maxLength={60}
        isRequired
      />
      <div className={styles.acts}>
        <Button type="submit" weight="main" isDisabled={!isReady}>
          Put it on the ladder
        </Button>
        <Button onPress={onClose}>Leave it</Button>
      </div>
    </form>
  );
}
