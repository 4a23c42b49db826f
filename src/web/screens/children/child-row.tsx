// One child: read, or change name, short name and year.
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import type { Child } from '#api/class.js';
import { SCHOOL_YEARS } from '#engine/curriculum/years.js';
import { call, sentencesOf } from '../../app/client.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { Notice } from '../../parts/notice.js';
import { TextInput } from '../../parts/text-input.js';
import styles from './children.module.css';

interface Props {
  readonly child: Child;
  readonly onChanged: () => Promise<void>;
  readonly onErase: () => void;
}

export function ChildRow({ child, onChanged, onErase }: Props) {
  const words = useWords();
  const [draft, setDraft] = useState<Child | null>(null);
  const save = useMutation({
    mutationFn: ({ givenName, familyName, alias, year }: Child) =>
      call('changeChild', { childId: child.id }, { givenName, familyName, alias, year }),
    onSuccess: async () => {
      setDraft(null);
      await onChanged();
    },
  });
  if (!draft) {
    return (
      <li className={styles.child}>
        <span className={styles.name}>
          {child.givenName} {child.familyName}
        </span>
        <span className={styles.soft}>
          {words.year(child.year)}
          {child.alias && `, shown as ${child.alias}`}
        </span>
        <span className={styles.acts}>
          <Button weight="quiet" aria-label={`Change ${child.shownAs}`} onPress={() => setDraft(child)}>
            Change
          </Button>
          <Button weight="quiet" aria-label={`Erase ${child.shownAs}`} onPress={onErase}>
            Erase…
          </Button>
        </span>
      </li>
    );
  }
  return (
    <li className={styles.changing}>
      <TextInput
        label="Given name"
        value={draft.givenName}
        onChange={(givenName) => setDraft({ ...draft, givenName })}
        autoFocus
      />
      <TextInput
        label="Family name"
        value={draft.familyName}
        onChange={(familyName) => setDraft({ ...draft, familyName })}
      />
      <TextInput
        label="Short name on slips"
        value={draft.alias}
        onChange={(alias) => setDraft({ ...draft, alias })}
      />
      <label className={styles.year}>
        <span>{words.yearWord}</span>
        <select
          value={draft.year}
          onChange={(event) => setDraft({ ...draft, year: Number(event.target.value) })}
        >
          {SCHOOL_YEARS.map((year) => (
            <option key={year} value={year}>
              {words.year(year)}
            </option>
          ))}
        </select>
      </label>
      <Button weight="main" onPress={() => save.mutate(draft)} isDisabled={save.isPending}>
        Save
      </Button>
      <Button weight="quiet" onPress={() => setDraft(null)}>
        Leave it
      </Button>
      {save.error && (
        <Notice tone="look">
          {sentencesOf(save.error).message} {sentencesOf(save.error).hint}
        </Notice>
      )}
    </li>
  );
}
