// Who is in the class: change, add, erase.
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useNavigate, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import type { Child, NewChild } from '#api/class.js';
import { call, sentencesOf } from '../../app/client.js';
import { classQuery, stateQuery } from '../../app/queries.js';
import { Button } from '../../parts/button.js';
import { ConfirmDialog } from '../../parts/confirm-dialog.js';
import { Notice } from '../../parts/notice.js';
import { RosterForm } from '../../parts/roster/roster-form.js';
import { ChildRow } from './child-row.js';
import styles from './children.module.css';

export function ChildrenScreen() {
  const { classId } = useParams({ from: '/class/$classId/children' });
  const detail = useQuery(classQuery(classId));
  const queries = useQueryClient();
  const navigate = useNavigate();
  const [isAdding, setIsAdding] = useState(false);
  const [erasing, setErasing] = useState<Child | 'class' | null>(null);
  const refresh = async () => {
    await queries.invalidateQueries({ queryKey: ['class', classId] });
    await queries.invalidateQueries({ queryKey: stateQuery.queryKey });
  };
  const add = useMutation({
    mutationFn: (children: NewChild[]) => call('addChildren', { classId }, { children }),
    onSuccess: async () => {
      setIsAdding(false);
      await refresh();
    },
  });
  const erase = useMutation({
    mutationFn: async (target: Child | 'class') => {
      if (target === 'class') await call('eraseClass', { classId }, null);
      else await call('eraseChild', { childId: target.id }, null);
      return target;
    },
    onSuccess: async (target) => {
      setErasing(null);
      await refresh();
      if (target === 'class') await navigate({ to: '/' });
    },
  });
  const failure = detail.error ?? add.error ?? erase.error;
  return (
    <div className={styles.screen}>
      <div className={styles.head}>
        <h1>{detail.data?.name ?? 'Children'}</h1>
        {!isAdding && <Button onPress={() => setIsAdding(true)}>Add children</Button>}
      </div>
      {failure && (
        <Notice tone="look" title={sentencesOf(failure).message}>
          {sentencesOf(failure).hint}
        </Notice>
      )}
      {isAdding && detail.data && (
        <section className={styles.adding} aria-label="Add children">
          <RosterForm
            years={detail.data.years}
            isBusy={add.isPending}
            submitLabel={(count) => `Add ${count === 1 ? 'this child' : `these ${count} children`}`}
            onSubmit={(children) => add.mutate(children)}
          />
          <Button weight="quiet" onPress={() => setIsAdding(false)}>
            Add nobody
          </Button>
        </section>
      )}
      <ul className={styles.list}>
        {detail.data?.children.map((child) => (
          <ChildRow key={child.id} child={child} onChanged={refresh} onErase={() => setErasing(child)} />
        ))}
      </ul>
      {detail.data && (
        <div className={styles.end}>
          <Button weight="quiet" onPress={() => setErasing('class')}>
            Erase the whole class…
          </Button>
        </div>
      )}
      {erasing !== null && (
        <ConfirmDialog
          title={
            erasing === 'class'
              ? 'Erase the whole class?'
              : `Erase ${erasing.givenName} ${erasing.familyName}?`
          }
          confirmLabel={erasing === 'class' ? 'Erase the class' : 'Erase this child'}
          isBusy={erase.isPending}
          onConfirm={() => erase.mutate(erasing)}
          onClose={() => setErasing(null)}
        >
          {erasing === 'class'
            ? 'Every child, board and mark of this class is deleted for good. Save a backup first if the school must keep records.'
            : 'Name, slips and marks are deleted for good and cannot be brought back. Earlier backups still hold them.'}
        </ConfirmDialog>
      )}
    </div>
  );
}
