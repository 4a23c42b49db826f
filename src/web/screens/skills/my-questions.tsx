// The teacher's own questions: typed one on each line, checked as she types, kept for every activity.
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link, useBlocker } from '@tanstack/react-router';
import { type RefObject, useDeferredValue, useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import type { OwnQuestionsView } from '#api/own-questions.js';
import { call, sentencesOf } from '../../app/client.js';
import { ownQuestionsQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { Check } from '../../parts/check.js';
import { ConfirmDialog } from '../../parts/confirm-dialog.js';
import { Notice } from '../../parts/notice.js';
import { TextInput } from '../../parts/text-input.js';
import { MyQuestionChecks } from './my-question-checks.js';
import { MyQuestionsHelp } from './my-questions-help.js';
import styles from './my-questions.module.css';
import skills from './skills.module.css';

interface Props {
  readonly classId: string;
  readonly headingRef: RefObject<HTMLHeadingElement | null>;
  readonly onBack: () => void;
}

export function MyQuestions({ classId, headingRef, onBack }: Props) {
  const stored = useQuery(ownQuestionsQuery);
  return (
    <section className={styles.page} aria-labelledby="my-questions-title">
      <div className={skills.head}>
        <h2 id="my-questions-title" ref={headingRef} tabIndex={-1} className={skills.subtitle}>
          My questions
        </h2>
        <Button weight="quiet" onPress={onBack}>
          Back to the skills
        </Button>
      </div>
      {stored.error && (
        <Notice tone="look" title={sentencesOf(stored.error).message}>
          {sentencesOf(stored.error).hint}
        </Notice>
      )}
      {stored.data ? (
        <Desk classId={classId} stored={stored.data} />
      ) : (
        !stored.error && <p className={skills.soft}>Looking up your questions…</p>
      )}
    </section>
  );
}

const EXAMPLE =
  'What is double {n}? | 2 * n | n + 2; n\n{n} + {n + 2} = ? | n + n + 2\nHow many legs have 3 spiders? | 24';
/** A list of 500 questions stays below it. */
const MOST_BYTES = 100_000;

function Desk({ classId, stored }: { readonly classId: string; readonly stored: OwnQuestionsView }) {
  const { locale } = useWords();
  const queries = useQueryClient();
  const [text, setText] = useState(stored.text);
  const [onBoards, setOnBoards] = useState(stored.onBoards);
  const [number, setNumber] = useState('24');
  const [told, setTold] = useState<{ readonly tone: 'calm' | 'look'; readonly text: string } | null>(null);
  const save = useMutation({
    mutationFn: () => call('saveOwnQuestions', {}, { text, onBoards, version: stored.version }),
    onSuccess: (saved) => {
      queries.setQueryData(ownQuestionsQuery.queryKey, saved);
      setTold(null);
      return queries.invalidateQueries({ queryKey: ['make'] });
    },
  });
  // The checks follow the typing when there is time for them; the letters never wait.
  const checked = useDeferredValue(text);
  const isSaved = text === stored.text && onBoards === stored.onBoards;
  const leaving = useBlocker({
    // Looking for a skill beside the list leaves the list where it is.
    shouldBlockFn: ({ next }) => !isSaved && !('own' in next.search && next.search.own),
    enableBeforeUnload: !isSaved,
    withResolver: true,
  });
  const addFile = async (file: File | undefined) => {
    if (!file) return;
    const read = await readFile(file);
    if (!read.ok) return setTold({ tone: 'look', text: read.message });
    const { lines } = read;
    setText((now) => [...(now.trim() === '' ? [] : [now.trimEnd()]), ...lines].join('\n'));
    setTold({
      tone: 'calm',
      text: `${lines.length === 1 ? 'One line' : `${lines.length} lines`} of ${file.name} added at the end. Nothing is saved yet.`,
    });
  };
  return (
    <>
      <p className={skills.soft}>
        They come first wherever you choose “My questions” in the Make room. Type them below, one on each
        line: the question, an upright bar, the answer. Write {'{n}'} for a number that changes.
      </p>
      <MyQuestionsHelp />
      <div className={styles.desk}>
        <div className={styles.side}>
          <TextInput
            label="One question on each line"
            lines={14}
            value={text}
            onChange={setText}
            placeholder={EXAMPLE}
            spellCheck="false"
          />
          <Check isSelected={onBoards} onChange={setOnBoards}>
            Up to three of them on new boards of the day, where they suit the number
          </Check>
          <div className={styles.acts}>
            <Button weight="main" onPress={() => save.mutate()} isDisabled={isSaved || save.isPending}>
              Save
            </Button>
            <FileTrigger
              acceptedFileTypes={['.csv', '.txt', 'text/csv', 'text/plain']}
              onSelect={(files) => void addFile(files?.[0])}
            >
              <Button>Import a CSV file…</Button>
            </FileTrigger>
            <span role="status" className={skills.soft}>
              {!isSaved ? 'Not saved yet.' : save.isSuccess ? 'Saved.' : ''}
            </span>
            {isSaved && stored.text.trim() !== '' && (
              <Link to="/class/$classId/make" params={{ classId }} search={{ source: 'own' }}>
                Make something with them
              </Link>
            )}
          </div>
          {told && <Notice tone={told.tone}>{told.text}</Notice>}
          {save.error && (
            <Notice tone="look" title={sentencesOf(save.error).message}>
              {sentencesOf(save.error).hint}
            </Notice>
          )}
        </div>
        {leaving.status === 'blocked' && (
          <ConfirmDialog
            title="Leave without saving?"
            confirmLabel="Leave"
            isBusy={false}
            onConfirm={leaving.proceed}
            onClose={leaving.reset}
          >
            What you typed or imported since you last saved would be lost.
          </ConfirmDialog>
        )}
        <MyQuestionChecks text={checked} number={number} locale={locale} onNumber={setNumber} />
      </div>
    </>
  );
}

async function readFile(
  file: File,
): Promise<
  { readonly ok: true; readonly lines: readonly string[] } | { readonly ok: false; readonly message: string }
> {
  if (file.size > MOST_BYTES)
    return {
      ok: false,
      message: `${file.name} is far larger than a list of questions. Choose another file.`,
    };
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
    const { lines, problems } = await call('readOwnTable', {}, { name: file.name, text });
    const [problem] = problems;
    return lines.length > 0
      ? { ok: true, lines }
      : { ok: false, message: problem ?? `${file.name} holds no questions.` };
  } catch (error) {
    if (error instanceof TypeError)
      return {
        ok: false,
        message: `${file.name} is not plain text. Save the list as “CSV UTF-8” and choose it again.`,
      };
    const { message, hint } = sentencesOf(error);
    return { ok: false, message: `${message} ${hint}` };
  }
}
