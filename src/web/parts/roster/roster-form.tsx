// Names in, checked children out: paste or choose files, see every row that cannot be kept and why, decide.
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import type { NewChild, RosterInput } from '#api/class.js';
import { call, sentencesOf } from '../../app/client.js';
import { Button } from '../button.js';
import { Notice } from '../notice.js';
import { TextInput } from '../text-input.js';
import { readRosterFiles } from './roster-files.js';
import { RosterReview } from './roster-review.js';
import styles from './roster.module.css';

/** In letters; a class of 60 stays below a tenth of it. */
const LONGEST_LIST = 100_000;

interface Props {
  readonly years: readonly number[];
  readonly isBusy: boolean;
  readonly submitLabel: (count: number) => string;
  readonly onSubmit: (children: NewChild[], className: string) => void;
}

export function RosterForm({ years, isBusy, submitLabel, onSubmit }: Props) {
  const [text, setText] = useState('');
  const [fileFault, setFileFault] = useState<string | null>(null);
  const read = useMutation({
    mutationFn: (input: Omit<RosterInput, 'defaultYear'>) =>
      call('readRoster', {}, { ...input, defaultYear: years[0] ?? 0 }),
  });
  const chooseFiles = async (files: FileList | null) => {
    if (!files || files.length === 0) return;
    const chosen = await readRosterFiles([...files]);
    if (!chosen.ok) {
      setFileFault(chosen.message);
      return;
    }
    setFileFault(null);
    setText(chosen.input.text);
    read.mutate(chosen.input);
  };
  const checkText = () => {
    if (text.length > LONGEST_LIST)
      setFileFault('That is far more text than a class list. Paste only the names of one class.');
    else {
      setFileFault(null);
      read.mutate({ text });
    }
  };
  if (read.data) {
    return (
      <RosterReview
        reading={read.data}
        years={years}
        isBusy={isBusy}
        submitLabel={submitLabel}
        onBack={() => read.reset()}
        onSubmit={(children) => onSubmit(children, read.data.className)}
      />
    );
  }
  return (
    <div className={styles.form}>
      <TextInput
        label="Names"
        lines={9}
        value={text}
        onChange={setText}
        placeholder={'Tamsin Fernhollow\nBeau Larkspindle, Year 5\nMossgate, Marisol'}
        hint="One child on each line. Add a year where it is not the first of the class, such as “Year 5”."
      />
      <div className={styles.actions}>
        <Button weight="main" onPress={checkText} isDisabled={text.trim() === '' || read.isPending}>
          Check the names
        </Button>
        <FileTrigger
          allowsMultiple
          acceptedFileTypes={['.csv', '.txt', 'text/csv', 'text/plain']}
          onSelect={(files) => void chooseFiles(files)}
        >
          <Button>Import a file…</Button>
        </FileTrigger>
        <span className={styles.soft}>CSV, or the OneRoster files users.csv and classes.csv together</span>
      </div>
      {(fileFault ?? read.error) && (
        <Notice tone="look">
          {fileFault ?? `${sentencesOf(read.error).message} ${sentencesOf(read.error).hint}`}
        </Notice>
      )}
    </div>
  );
}
