// What the questions are about: what is due, a mix, skills that the teacher picks, or her own.
import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import type { MakeView, SkillChoice } from '#api/make.js';
import { ownQuestionsIn } from '#engine/own-questions/own-lines.js';
import { Button } from '../../parts/button.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import styles from './choices.module.css';
import { SkillPicker } from '../../parts/skill-picker.js';
import { SOURCES, type Wish, type WishChange } from './wish.js';
import { SOURCE_WORDS } from './words.js';

interface Props {
  readonly wish: Wish;
  readonly view: MakeView;
  readonly onChange: (change: WishChange) => void;
}

/** Due topics named before the list is opened. */
const NAMED = 3;

export function SourceChoice({ wish, view, onChange }: Props) {
  const [isPicking, setIsPicking] = useState(false);
  // A jigsaw’s rows are sentences, not questions: nothing of it is due.
  const isJigsaw = wish.activity === 'jigsaw';
  const sources = isJigsaw ? SOURCES.filter((id) => id !== 'due') : SOURCES;
  const source = isJigsaw && wish.source === 'due' ? 'mix' : wish.source;
  const label = isJigsaw ? 'Rows about' : 'Questions about';
  const chosen = wish.skills.flatMap((id) => view.skills.find((skill) => skill.id === id) ?? []);
  return (
    <div className={styles.row}>
      <span className={styles.label} aria-hidden="true">
        {label}
      </span>
      <ChoiceRow
        label={label}
        choices={sources.map((id) => ({ id, label: SOURCE_WORDS[id] }))}
        chosen={source}
        onChoose={(id) => {
          const next = SOURCES.find((one) => one === id);
          if (!next) return;
          onChange({ source: next });
          if (next === 'chosen' && chosen.length === 0) setIsPicking(true);
        }}
      />
      {source === 'due' && <Due due={view.due} />}
      {source === 'mix' && (
        <p className={styles.note}>
          {isJigsaw ? 'Numbers that suit the years.' : 'Different topics in turn, all within reach.'}
        </p>
      )}
      {source === 'chosen' && (
        <Chosen
          skills={chosen}
          onRemove={(id) => onChange({ skills: wish.skills.filter((one) => one !== id) })}
          onPick={() => setIsPicking(true)}
        />
      )}
      {source === 'own' && <Own text={view.own} isJigsaw={isJigsaw} />}
      {isPicking && (
        <SkillPicker
          skills={view.skills}
          years={wish.years}
          chosen={wish.skills}
          onChange={(skills) => onChange({ skills })}
          onClose={() => setIsPicking(false)}
        />
      )}
    </div>
  );
}

function Own({ text, isJigsaw }: { readonly text: string; readonly isJigsaw: boolean }) {
  const { classId } = useParams({ from: '/class/$classId/make' });
  const count = ownQuestionsIn(text).length;
  const told = isJigsaw ? 'those that are number sentences' : 'with a mix where they are too few';
  return (
    <p className={styles.note}>
      {count === 0
        ? 'There are none yet.'
        : `${count === 1 ? 'One question' : `${count} questions`} of your own, ${told}.`}{' '}
      <Link to="/class/$classId/skills" params={{ classId }} search={{ own: true }}>
        {count === 0 ? 'Write my questions' : 'Change my questions'}
      </Link>
    </p>
  );
}

function Due({ due }: { readonly due: MakeView['due'] }) {
  if (due.length === 0) {
    return <p className={styles.note}>Nothing is due for this class yet, so this is a mix.</p>;
  }
  return (
    <div className={styles.note}>
      <p>Due again, and a mix around it:</p>
      <ul className={styles.due}>
        {due.slice(0, NAMED).map(({ skillId, title }) => (
          <li key={skillId}>{title}</li>
        ))}
      </ul>
      <details>
        <summary>{due.length > NAMED ? `All ${due.length}, and why` : 'Why'}</summary>
        <dl className={styles.reasons}>
          {due.map(({ skillId, title, reason }) => (
            <div key={skillId}>
              <dt>{title}</dt>
              <dd>{reason}</dd>
            </div>
          ))}
        </dl>
      </details>
    </div>
  );
}

interface ChosenProps {
  readonly skills: readonly SkillChoice[];
  readonly onRemove: (id: string) => void;
  readonly onPick: () => void;
}

function Chosen({ skills, onRemove, onPick }: ChosenProps) {
  return (
    <>
      <ul className={styles.chosen} aria-label="Chosen skills">
        {skills.map(({ id, title }) => (
          <li key={id}>
            <span>{title}</span>
            <Button weight="quiet" aria-label={`Leave out ${title}`} onPress={() => onRemove(id)}>
              ×
            </Button>
          </li>
        ))}
      </ul>
      <Button onPress={onPick}>{skills.length === 0 ? 'Choose skills' : 'Choose more skills'}</Button>
    </>
  );
}
