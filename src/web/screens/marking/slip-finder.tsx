// The code under a slip's QR leads to its board and its child.
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Form, Input, Label, TextField } from 'react-aria-components';
import { call, sentencesOf } from '../../app/client.js';
import { Button } from '../../parts/button.js';
import styles from './marking.module.css';
import { deskOf } from './use-desk.js';

interface Props {
  readonly classId: string;
  readonly onFound: (sheetId: string) => void;
}

export function SlipFinder({ classId, onFound }: Props) {
  const [code, setCode] = useState('');
  const queries = useQueryClient();
  const find = useMutation({
    mutationFn: (typed: string) => call('slip', { code: typed.trim() }, null),
    onSuccess: ({ sheetId, childId }) => {
      setCode('');
      onFound(sheetId);
      deskOf(sheetId, classId, queries).callChild(childId);
    },
  });
  return (
    <Form
      className={styles.slip ?? ''}
      onSubmit={(event) => {
        event.preventDefault();
        if (code.trim() !== '') find.mutate(code);
      }}
    >
      <TextField value={code} onChange={setCode} className={styles.field ?? ''}>
        <Label>Slip code</Label>
        <Input autoComplete="off" spellCheck="false" placeholder="under its square" />
      </TextField>
      <Button type="submit" isDisabled={find.isPending}>
        Find
      </Button>
      {find.error && (
        <p className={styles.slipProblem} role="alert">
          {sentencesOf(find.error).message} {sentencesOf(find.error).hint}
        </p>
      )}
    </Form>
  );
}
