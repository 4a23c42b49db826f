// A level of the teacher's own questions: tick the short ones that it asks, see at once whether they fill a sheet.
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { LadderLevel } from '#api/timed-room.js';
import { shortOwn, SMALLEST_SPACE } from '#engine/activities/timed/space.js';
import { type Locale, localeOf } from '#engine/numbers/locale.js';
import { readOwnLines } from '#engine/own-questions/own-lines.js';
import type { OwnQuestion } from '#engine/own-questions/own-question.js';
import type { Question } from '#engine/questions/question.js';
import { makeQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { Check } from '../../parts/check.js';
import { MathText } from '../../parts/math-text.js';
import { LevelForm } from './level-form.js';
import { madeLevel } from './made-level.js';
import styles from './practice.module.css';

interface Props {
  readonly classId: string;
  readonly onAdd: (level: LadderLevel) => void;
  readonly onClose: () => void;
}

/** A question that fits a timed sheet, its line in the list, and how it reads with some number. */
interface ShortOne {
  readonly line: string;
  readonly own: OwnQuestion;
  readonly example: Question;
}

export function NewOwnLevel({ classId, onAdd, onClose }: Props) {
  const { locale: localeId } = useWords();
  const make = useQuery(makeQuery(classId));
  const [left, setLeft] = useState<readonly string[]>([]);
  if (!make.data) return null;
  const locale = localeOf(localeId);
  const { short, others } = shortOnes(make.data.own, locale);
  const toMyQuestions = (
    <Link to="/class/$classId/skills" params={{ classId }} search={{ own: true }}>
      {short.length + others === 0 ? 'Write my questions' : 'Change my questions'}
    </Link>
  );
  if (short.length === 0)
    return (
      <div className={styles.newLevel}>
        <p role="status">
          {others === 0
            ? 'You have no questions of your own yet.'
            : 'All of your own questions are too long for a timed sheet, whose questions are short, such as “{n} + 9”.'}{' '}
          {toMyQuestions}
        </p>
        <div>
          <Button onPress={onClose}>Leave it</Button>
        </div>
      </div>
    );
  const ticked = short.filter(({ line }) => !left.includes(line));
  const count = new Set(
    shortOwn(
      ticked.map(({ own }) => own),
      locale,
    ).map(({ text }) => text),
  ).size;
  return (
    <LevelForm
      title="My own questions"
      isReady={count >= SMALLEST_SPACE}
      onTitle={(title) =>
        onAdd(
          madeLevel(title, Math.max(...ticked.map(({ own }) => own.year)), {
            skills: null,
            lines: ticked.map(({ line }) => line),
          }),
        )
      }
      onClose={onClose}
    >
      <fieldset className={styles.ownChoice}>
        <legend>Which of your questions?</legend>
        {short.map(({ line, example }) => (
          <Check
            key={line}
            isSelected={!left.includes(line)}
            onChange={(isTicked) => setLeft(isTicked ? left.filter((one) => one !== line) : [...left, line])}
          >
            <span>
              <MathText text={example.text} />{' '}
              <strong>
                <MathText text={example.answer.text} />
              </strong>
            </span>
          </Check>
        ))}
      </fieldset>
      <p role="status">{supplyWords(count)}</p>
      <p className={styles.soft}>
        {others > 0 && `${others === 1 ? 'One more is' : `${others} more are`} too long for a timed sheet. `}
        The level keeps these questions as they are now, so that counts can be compared. {toMyQuestions}
      </p>
    </LevelForm>
  );
}

function shortOnes(
  text: string,
  locale: Locale,
): { readonly short: readonly ShortOne[]; readonly others: number } {
  const lines = text.split(/\r?\n/);
  const readable = readOwnLines(text).flatMap(({ line, read }) =>
    read.ok ? [{ line: lines[line - 1] ?? '', own: read.value }] : [],
  );
  const unequal = readable.filter(({ own }, at) => readable.findIndex((one) => one.own.id === own.id) === at);
  const short = unequal.flatMap((one) => {
    const [example] = shortOwn([one.own], locale);
    return example ? [{ ...one, example }] : [];
  });
  return { short, others: unequal.length - short.length };
}

function supplyWords(count: number): string {
  if (count >= SMALLEST_SPACE) return `They give ${count} different questions.`;
  const give = count === 0 ? 'nothing' : count === 1 ? 'one question' : `only ${count} different questions`;
  return `They give ${give}; a timed sheet needs ${SMALLEST_SPACE}. Tick more, or write one with a formula, such as “{n} + 9”.`;
}
