// A backup in one file, and putting one back.
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { FILE_PATHS } from '#api/endpoints.js';
import { send, sentencesOf } from '../../app/client.js';
import { Button } from '../../parts/button.js';
import { ConfirmDialog } from '../../parts/confirm-dialog.js';
import { Notice } from '../../parts/notice.js';
import { TextInput } from '../../parts/text-input.js';
import styles from './settings.module.css';

export function BackupSection() {
  const [passphrase, setPassphrase] = useState('');
  const [file, setFile] = useState<File | null>(null);
  const queries = useQueryClient();
  const take = useMutation({ mutationFn: () => saveBackup(passphrase) });
  const putBack = useMutation({
    mutationFn: async (chosen: File) => {
      const form = new FormData();
      form.set('file', chosen);
      form.set('passphrase', passphrase);
      form.set('replace', 'yes');
      await send(FILE_PATHS.restore, { method: 'POST', body: form });
    },
    onSuccess: () => queries.invalidateQueries(),
    onSettled: () => setFile(null),
  });
  const failure = take.error ?? putBack.error;
  return (
    <section className={styles.section}>
      <h2>Backup</h2>
      <p>One file with everything. Save one each week, and before the holidays.</p>
      <TextInput
        label="Passphrase"
        type="password"
        value={passphrase}
        onChange={setPassphrase}
        hint="Optional, at least 8 characters. A file saved with a passphrase opens only with it: keep it somewhere safe."
      />
      <div className={styles.actions}>
        <Button onPress={() => take.mutate()} isDisabled={take.isPending}>
          {take.isPending ? 'Saving…' : 'Save a backup'}
        </Button>
        <FileTrigger onSelect={(files) => setFile(files?.[0] ?? null)}>
          <Button>Put a backup back…</Button>
        </FileTrigger>
      </div>
      {failure && (
        <Notice tone="look" title={sentencesOf(failure).message}>
          {sentencesOf(failure).hint}
        </Notice>
      )}
      {putBack.isSuccess && <Notice>The backup is in place.</Notice>}
      {file && (
        <ConfirmDialog
          title={`Put ${file.name} back?`}
          confirmLabel="Replace what is here"
          isBusy={putBack.isPending}
          onConfirm={() => putBack.mutate(file)}
          onClose={() => setFile(null)}
        >
          The file is checked first. If it is good, everything that is here now is replaced by what is in it.
        </ConfirmDialog>
      )}
    </section>
  );
}

async function saveBackup(passphrase: string): Promise<void> {
  const response = await send(FILE_PATHS.backup, {
    method: 'POST',
    body: JSON.stringify(passphrase === '' ? {} : { passphrase }),
    headers: { 'Content-Type': 'application/json' },
  });
  const name = /filename="([^"]+)"/.exec(response.headers.get('Content-Disposition') ?? '')?.[1];
  const url = URL.createObjectURL(await response.blob());
  const link = document.createElement('a');
  link.href = url;
  link.download = name ?? 'afterbell.backup';
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
