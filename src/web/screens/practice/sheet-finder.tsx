// The code under a sheet's square leads to its child's row, of whatever day the sheet is.
import { useMutation } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import { call, sentencesOf } from '../../app/client.js';
import { Button } from '../../parts/button.js';
import styles from './practice.module.css';

export function SheetFinder() {
  const navigate = useNavigate();
  const [code, setCode] = useState('');
  const [wanted, setWanted] = useState<string | null>(null);
  const find = useMutation({
    mutationFn: (typed: string) => call('timedSheet', { code: typed.trim() }, null),
    onSuccess: async ({ classId, childId, date }) => {
      setCode('');
      await navigate({ to: '/class/$classId/practice', params: { classId }, search: { date } });
      setWanted(childId);
    },
  });
  // The row may come with the other day's answer only.
  useEffect(() => {
    if (wanted === null) return;
    const look = setInterval(() => {
      const box = document.querySelector<HTMLInputElement>(`[data-child="${wanted}"] [data-box="done"]`);
      if (!box) return;
      box.focus();
      setWanted(null);
    }, 100);
    return () => clearInterval(look);
  }, [wanted]);
  return (
    <form
      className={styles.acts}
      onSubmit={(event) => {
        event.preventDefault();
        if (code.trim() !== '') find.mutate(code);
      }}
    >
      <label className={styles.finder}>
        <span>Sheet code</span>
        <input
          value={code}
          onChange={(event) => setCode(event.target.value)}
          autoComplete="off"
          spellCheck="false"
          placeholder="under its square"
        />
      </label>
      <Button type="submit" isDisabled={find.isPending}>
        Find
      </Button>
      {find.error && (
        <span role="alert" className={styles.fault}>
          {sentencesOf(find.error).message} {sentencesOf(find.error).hint}
        </span>
      )}
    </form>
  );
}
