// Settings: words and paper, school days, and keeping the data safe.
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { Settings } from '#api/settings.js';
import { call, sentencesOf } from '../../app/client.js';
import frame from '../../app/frame.module.css';
import { stateQuery } from '../../app/queries.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { Notice } from '../../parts/notice.js';
import { TermsForm } from '../../parts/terms-form.js';
import { BackupSection } from './backup-section.js';
import { ClosedDays } from './closed-days.js';
import styles from './settings.module.css';

const LOCALES = [
  { id: 'en-AU', label: 'Australia' },
  { id: 'en-NZ', label: 'New Zealand' },
  { id: 'en-GB', label: 'Britain' },
  { id: 'en-US', label: 'United States' },
] as const;

export function SettingsScreen() {
  const state = useQuery(stateQuery);
  const queries = useQueryClient();
  const save = useMutation({
    mutationFn: (settings: Settings) => call('saveSettings', {}, settings),
    onSuccess: () => queries.invalidateQueries(),
  });
  if (!state.data) {
    return (
      <main className={frame.page}>
        {state.error ? (
          <Notice tone="look" title={sentencesOf(state.error).message}>
            {sentencesOf(state.error).hint}
          </Notice>
        ) : (
          <p>Looking up the settings…</p>
        )}
      </main>
    );
  }
  const { settings, today } = state.data;
  const change = (part: Partial<Settings>) => save.mutate({ ...settings, ...part });
  return (
    <main className={`${frame.page} ${styles.page}`}>
      <p>
        <Link to="/">← Back to today</Link>
      </p>
      <h1>Settings</h1>
      {save.error && (
        <Notice tone="look" title={sentencesOf(save.error).message}>
          {sentencesOf(save.error).hint}
        </Notice>
      )}
      {save.isSuccess && <Notice>Saved.</Notice>}
      <section className={styles.section}>
        <h2>Words and paper</h2>
        <div className={styles.rows}>
          <Setting label="Words and money as in">
            <ChoiceRow
              label="Words and money as in"
              choices={LOCALES}
              chosen={settings.locale}
              onChoose={(id) => change({ locale: LOCALES.find((one) => one.id === id)?.id ?? 'en-AU' })}
            />
          </Setting>
          <Setting label="Paper in the copier">
            <ChoiceRow
              label="Paper in the copier"
              choices={[
                { id: 'A4', label: 'A4' },
                { id: 'Letter', label: 'Letter' },
              ]}
              chosen={settings.paper}
              onChoose={(id) => change({ paper: id === 'Letter' ? 'Letter' : 'A4' })}
            />
          </Setting>
          <Setting label="Slips to a page">
            <ChoiceRow
              label="Slips to a page"
              choices={[
                { id: '6', label: '6' },
                { id: '8', label: '8' },
              ]}
              chosen={String(settings.slipsPerPage)}
              onChoose={(id) => change({ slipsPerPage: id === '8' ? 8 : 6 })}
            />
          </Setting>
          <Setting label="Minutes on the display">
            <ChoiceRow
              label="Minutes on the display"
              choices={[5, 8, 10, 12, 15].map((minutes) => ({ id: String(minutes), label: String(minutes) }))}
              chosen={String(settings.minutes)}
              onChoose={(id) => change({ minutes: Number(id) })}
            />
          </Setting>
        </div>
      </section>
      <section className={styles.section}>
        <h2>School terms</h2>
        <TermsForm
          key={JSON.stringify(settings.terms)}
          terms={settings.terms}
          year={Number(today.slice(0, 4))}
          isBusy={save.isPending}
          submitLabel="Save the terms"
          onSubmit={(terms) => change({ terms })}
        />
        <ClosedDays days={settings.closedDays} onChange={(closedDays) => change({ closedDays })} />
      </section>
      <BackupSection />
      <section className={styles.section}>
        <h2>Children’s data</h2>
        <p>
          Names and results stay in one folder on this computer; Afterbell sends nothing anywhere and needs no
          network. Keep the computer locked, keep backups where children’s data may be kept, and erase what is
          no longer needed. Your school’s privacy policy and local law decide; these words are not legal
          advice.
        </p>
      </section>
    </main>
  );
}

function Setting({ label, children }: { readonly label: string; readonly children: React.ReactNode }) {
  return (
    <div className={styles.setting}>
      <span className={styles.label} aria-hidden="true">
        {label}
      </span>
      {children}
    </div>
  );
}
