// What each line comes to for a number to try, or one sentence on what is wrong with it.
import { useId } from 'react';
import { type DayNumber, parseDayNumber } from '#engine/numbers/day-number.js';
import { type LocaleId, localeOf } from '#engine/numbers/locale.js';
import { type OwnLine, readOwnLines } from '#engine/own-questions/own-lines.js';
import { askOwn, type OwnFault } from '#engine/own-questions/own-question.js';
import type { Question } from '#engine/questions/question.js';
import { MathText } from '../../parts/math-text.js';
import { TextInput } from '../../parts/text-input.js';
import styles from './my-questions.module.css';
import skills from './skills.module.css';

interface Props {
  readonly text: string;
  /** The number to try, as typed. */
  readonly number: string;
  readonly locale: LocaleId;
  readonly onNumber: (number: string) => void;
}

type Verdict =
  | { readonly is: 'ready'; readonly question: Question }
  | { readonly is: 'elsewhere' }
  | { readonly is: 'wrong'; readonly message: string };

export function MyQuestionChecks({ text, number, locale, onNumber }: Props) {
  const title = useId();
  const day = parseDayNumber(number, localeOf(locale));
  const lines = readOwnLines(text).map((line) => ({
    line: line.line,
    verdict: day.ok ? verdictOn(line, day.value, locale) : null,
  }));
  const wrong = lines.filter(({ verdict }) => verdict?.is === 'wrong').length;
  return (
    <div className={styles.side}>
      <TextInput
        label="Try them with the number"
        value={number}
        onChange={onNumber}
        isInvalid={!day.ok}
        {...(day.ok ? {} : { hint: `${day.error.message} ${day.error.hint}` })}
      />
      <h3 id={title} className={styles.checksTitle}>
        As a child will see them
      </h3>
      <p role="status" className={skills.soft}>
        {summaryOf(lines.length, wrong)}
      </p>
      <ol className={styles.checks} aria-labelledby={title}>
        {lines.map(
          ({ line, verdict }) =>
            verdict && (
              <li key={line} className={verdict.is === 'wrong' ? styles.wrong : ''}>
                <span className={styles.line}>Line {line}</span>
                <CheckedLine verdict={verdict} number={number} />
              </li>
            ),
        )}
      </ol>
    </div>
  );
}

function CheckedLine({ verdict, number }: { readonly verdict: Verdict; readonly number: string }) {
  switch (verdict.is) {
    case 'wrong':
      return <span>{verdict.message}</span>;
    case 'elsewhere':
      return <span className={skills.soft}>Right as it is, but not asked about {number}.</span>;
    case 'ready': {
      const { text, answer, slips } = verdict.question;
      return (
        <span>
          <MathText text={text} />{' '}
          <strong>
            <MathText text={answer.text} />
          </strong>
          {slips.length > 0 && (
            <span className={styles.slips}> typical slips: {slips.map((slip) => slip.text).join(', ')}</span>
          )}
        </span>
      );
    }
  }
}

function verdictOn({ read }: OwnLine, day: DayNumber, locale: LocaleId): Verdict {
  if (!read.ok) return { is: 'wrong', message: read.faults.map(faultInWords).join(' ') };
  const asked = askOwn(read.value, day, localeOf(locale));
  if (!asked.ok) return { is: 'wrong', message: `With ${day.text}: ${asked.message}` };
  return asked.value === null ? { is: 'elsewhere' } : { is: 'ready', question: asked.value };
}

const PART_WORDS = {
  question: 'Question',
  answer: 'Answer',
  slips: 'Typical slips',
  way: 'The way there',
  when: 'Only when',
  year: 'Year',
  strand: 'Strand',
} as const satisfies Record<OwnFault['part'], string>;

function faultInWords({ part, message }: OwnFault): string {
  return `${PART_WORDS[part]}: ${message}`;
}

function summaryOf(count: number, wrong: number): string {
  if (count === 0) return 'Nothing typed yet.';
  const ready = count - wrong;
  const good = ready === 1 ? '1 question is ready' : `${ready} questions are ready`;
  if (wrong === 0) return `${good}.`;
  return `${good}; ${wrong === 1 ? '1 line needs' : `${wrong} lines need`} a look and will not be asked.`;
}
