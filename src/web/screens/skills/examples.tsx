// Examples of a skill: six questions, others at a press, each with its answer and a way to get there on request.
import { useId, useMemo, useState } from 'react';
import { type LocaleId, localeOf } from '#engine/numbers/locale.js';
import { generateQuestions } from '#engine/questions/generate.js';
import { misconceptionOf } from '#engine/questions/misconceptions.js';
import type { Question } from '#engine/questions/question.js';
import type { Skill } from '#engine/skills/skill.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { FigureView } from '../../parts/figure-view.js';
import { MathText } from '../../parts/math-text.js';
import styles from './skills.module.css';

const SHOWN = 6;

export function Examples({ skill }: { readonly skill: Skill }) {
  const { locale } = useWords();
  const [seed, setSeed] = useState(1);
  const [open, setOpen] = useState<ReadonlySet<number>>(new Set());
  const questions = useMemo(
    () => generateQuestions(skill, SHOWN, seed, localeOf(locale)),
    [skill, seed, locale],
  );
  const areAllOpen = open.size === questions.length;
  const turn = (at: number) => {
    const next = new Set(open);
    if (!next.delete(at)) next.add(at);
    setOpen(next);
  };
  return (
    <section aria-labelledby="examples-title" className={styles.part}>
      <div className={styles.partHead}>
        <h3 id="examples-title">What it asks</h3>
        <div className={styles.acts}>
          <Button weight="quiet" onPress={() => setOpen(areAllOpen ? new Set() : new Set(questions.keys()))}>
            {areAllOpen ? 'Hide all answers' : 'Show all answers'}
          </Button>
          <Button
            onPress={() => {
              setSeed(seed + 1);
              setOpen(new Set());
            }}
          >
            Other examples
          </Button>
        </div>
      </div>
      <ol className={styles.examples}>
        {questions.map((question, at) => {
          // A skill with few questions may repeat one, so the place belongs to the key.
          const key = `${at}:${question.id}`;
          return (
            <Example
              key={key}
              question={question}
              locale={locale}
              place={at + 1}
              isOpen={open.has(at)}
              onTurn={() => turn(at)}
            />
          );
        })}
      </ol>
    </section>
  );
}

interface ExampleProps {
  readonly question: Question;
  readonly locale: LocaleId;
  readonly place: number;
  readonly isOpen: boolean;
  readonly onTurn: () => void;
}

function Example({ question, locale, place, isOpen, onTurn }: ExampleProps) {
  const answerId = useId();
  return (
    <li className={styles.example}>
      <div className={styles.asked}>
        <p className={styles.question}>
          <MathText text={question.text} />
        </p>
        {question.figure && <FigureView figure={question.figure} locale={locale} scale={2.4} />}
      </div>
      <Button
        weight="quiet"
        aria-expanded={isOpen}
        aria-controls={answerId}
        aria-label={isOpen ? `Hide the answer to example ${place}` : `Answer to example ${place}`}
        onPress={onTurn}
      >
        {isOpen ? 'Hide' : 'Answer'}
      </Button>
      <div id={answerId} className={styles.told} hidden={!isOpen}>
        {isOpen && <Told question={question} />}
      </div>
    </li>
  );
}

function Told({ question }: { readonly question: Question }) {
  const slips = question.slips.flatMap(({ text, misconception }) => {
    const found = misconceptionOf(misconception);
    return found ? [{ text, does: found.does }] : [];
  });
  return (
    <>
      <p className={styles.answer}>
        <MathText text={question.answer.text} />
      </p>
      <div>
        <p className={styles.small}>One way to get there</p>
        <ol className={styles.steps}>
          {question.strategy.map((step) => (
            <li key={step}>
              <MathText text={step} />
            </li>
          ))}
        </ol>
      </div>
      {slips.length > 0 && (
        <div>
          <p className={styles.small}>If a child writes</p>
          <ul className={styles.wrongs}>
            {slips.map(({ text, does }) => (
              <li key={`${text}/${does}`}>
                <strong>
                  <MathText text={text} />
                </strong>
                <span>it looks as if the child {does}.</span>
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
