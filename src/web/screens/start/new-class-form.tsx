// A new class in three steps on one page: what it is called, who is in it, when school is on.
import { useMutation, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { NewChild } from '#api/class.js';
import { DEFAULT_SETTINGS, type DaySpan } from '#api/settings.js';
import { call, sentencesOf } from '../../app/client.js';
import { stateQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { Notice } from '../../parts/notice.js';
import { RosterForm } from '../../parts/roster/roster-form.js';
import { TermsForm } from '../../parts/terms-form.js';
import { TextInput } from '../../parts/text-input.js';
import { YearPicker } from '../../parts/year-picker.js';
import styles from './start.module.css';

interface Props {
  readonly onMade: (classId: string) => void | Promise<void>;
  readonly onBack: () => void;
}

export function NewClassForm({ onMade, onBack }: Props) {
  const { data: state } = useQuery(stateQuery);
  const words = useWords();
  const [name, setName] = useState('');
  const [years, setYears] = useState<number[]>([4]);
  const [madeId, setMadeId] = useState<string | null>(null);
  const make = useMutation({
    mutationFn: (children: NewChild[]) =>
      call('createClass', {}, { name: name.trim() || 'My class', years, children }),
    onSuccess: ({ id }) => (state && state.settings.terms.length > 0 ? onMade(id) : setMadeId(id)),
  });
  const saveTerms = useMutation({
    mutationFn: (terms: DaySpan[]) =>
      call('saveSettings', {}, { ...(state?.settings ?? DEFAULT_SETTINGS), terms }),
    onSuccess: () => (madeId ? onMade(madeId) : undefined),
  });
  const failure = make.error ?? saveTerms.error;
  return (
    <div className={styles.making}>
      {madeId === null ? (
        <>
          <TextInput
            label="Name of the class"
            value={name}
            onChange={setName}
            placeholder="4/5 Banksia"
            autoFocus
          />
          <div>
            <p className={styles.label}>{words.yearWord} levels</p>
            <YearPicker years={years} onChange={setYears} />
          </div>
          <RosterForm
            years={years}
            isBusy={make.isPending}
            submitLabel={(count) => `Start with ${count === 1 ? 'this child' : `these ${count} children`}`}
            onSubmit={(children, className) => {
              if (name.trim() === '' && className !== '') setName(className);
              make.mutate(children);
            }}
          />
          <Button weight="quiet" onPress={onBack}>
            Back to the first page
          </Button>
        </>
      ) : (
        <>
          <h2>When is school on?</h2>
          <p>Afterbell plans for school days only. You can change these dates at any time.</p>
          <TermsForm
            terms={[]}
            year={Number((state?.today ?? '2026').slice(0, 4))}
            isBusy={saveTerms.isPending}
            submitLabel="Save and see today"
            onSubmit={(terms) => saveTerms.mutate(terms)}
          />
          <Button weight="quiet" onPress={() => void onMade(madeId)}>
            Skip this for now
          </Button>
        </>
      )}
      {failure && (
        <Notice tone="look" title={sentencesOf(failure).message}>
          {sentencesOf(failure).hint}
        </Notice>
      )}
    </div>
  );
}
