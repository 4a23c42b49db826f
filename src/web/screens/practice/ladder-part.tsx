// The ladder: reorder, leave out, put levels of one's own in; minutes and the rate that a level asks.
import { useState } from 'react';
import type { Ladder, LadderLevel } from '#api/timed-room.js';
import { LADDER } from '#engine/activities/timed/ladder.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { NewOwnLevel } from './new-own-level.js';
import { NewSkillLevel } from './new-skill-level.js';
import styles from './practice.module.css';

type LadderWish = Omit<Ladder, 'own'>;

interface Props {
  readonly classId: string;
  /** School years of the class: their skills are offered first. */
  readonly years: readonly number[];
  readonly ladder: Ladder;
  /** Null puts the usual ladder back. */
  readonly onChange: (ladder: LadderWish | null) => void;
}

export function LadderPart({ classId, years, ladder, onChange }: Props) {
  const words = useWords();
  const [wish, setWish] = useState<LadderWish>(ladder);
  const [adding, setAdding] = useState<'skills' | 'own' | null>(null);
  const { levels } = wish;
  const setLevels = (next: readonly LadderLevel[]) => setWish({ ...wish, levels: [...next] });
  // A level made of the same again is the same level, with the counts that it had.
  const add = (level: LadderLevel) => {
    setAdding(null);
    setLevels([...levels.filter(({ id }) => id !== level.id), level]);
  };
  const left = LADDER.filter(({ id }) => !levels.some((level) => level.id === id));
  const isChanged = JSON.stringify(wish) !== JSON.stringify({ ...ladder });
  return (
    <section className={styles.part} aria-label="The ladder">
      <p className={styles.soft}>
        {ladder.own ? 'This is your own ladder.' : 'This is the usual ladder.'} Children stay on their level
        when you change it; marked sheets are kept.
      </p>
      <div className={styles.fields}>
        <NumberBox
          label="Minutes (2 to 5 by age is usual)"
          value={wish.minutes}
          most={15}
          onChange={(minutes) => setWish({ ...wish, minutes })}
        />
        <NumberBox
          label="Right digits a minute before the next level"
          value={wish.digitsPerMinute}
          most={120}
          onChange={(digitsPerMinute) => setWish({ ...wish, digitsPerMinute })}
        />
        <label className={styles.labelled}>
          <span>Questions on a sheet</span>
          <select
            value={wish.questions}
            onChange={(event) => setWish({ ...wish, questions: Number(event.target.value) })}
          >
            {[60, 72, 90, 120].map((count) => (
              <option key={count} value={count}>
                {count}
              </option>
            ))}
          </select>
        </label>
      </div>
      <ol className={styles.ladder}>
        {levels.map((level, at) => (
          <li key={level.id}>
            <span className={styles.levelName}>
              {level.title} <span className={styles.soft}>{words.year(level.year)}</span>
            </span>
            <Button
              weight="quiet"
              aria-label={`${level.title}: earlier`}
              isDisabled={at === 0}
              onPress={() => setLevels(swapped(levels, at - 1))}
            >
              Earlier
            </Button>
            <Button
              weight="quiet"
              aria-label={`${level.title}: later`}
              isDisabled={at === levels.length - 1}
              onPress={() => setLevels(swapped(levels, at))}
            >
              Later
            </Button>
            <Button
              weight="quiet"
              aria-label={`${level.title}: leave out`}
              isDisabled={levels.length === 1}
              onPress={() => setLevels(levels.filter(({ id }) => id !== level.id))}
            >
              Leave out
            </Button>
          </li>
        ))}
      </ol>
      <div className={styles.acts}>
        <Button onPress={() => setAdding('skills')}>Add a level of skills</Button>
        <Button onPress={() => setAdding('own')}>Add a level of my own questions</Button>
        {left.length > 0 && (
          <select
            aria-label="Bring a usual level back"
            value=""
            onChange={(event) => {
              const back = left.find(({ id }) => id === event.target.value);
              if (back) setLevels([...levels, givenLevel(back)]);
            }}
          >
            <option value="">Bring a usual level back…</option>
            {left.map(({ id, title }) => (
              <option key={id} value={id}>
                {title}
              </option>
            ))}
          </select>
        )}
        <Button weight="main" isDisabled={!isChanged} onPress={() => onChange(wish)}>
          Save the ladder
        </Button>
        {ladder.own && <Button onPress={() => onChange(null)}>Back to the usual ladder</Button>}
      </div>
      {adding === 'skills' && (
        <NewSkillLevel classId={classId} years={years} onAdd={add} onClose={() => setAdding(null)} />
      )}
      {adding === 'own' && <NewOwnLevel classId={classId} onAdd={add} onClose={() => setAdding(null)} />}
    </section>
  );
}

function givenLevel({ id, title, year, room }: (typeof LADDER)[number]): LadderLevel {
  return { id, title, year, room, skills: null, lines: null };
}

function swapped(levels: readonly LadderLevel[], at: number): LadderLevel[] {
  const next = [...levels];
  [next[at], next[at + 1]] = [next[at + 1] as LadderLevel, next[at] as LadderLevel];
  return next;
}

interface NumberBoxProps {
  readonly label: string;
  readonly value: number | null;
  readonly most: number;
  readonly onChange: (value: number | null) => void;
}

function NumberBox({ label, value, most, onChange }: NumberBoxProps) {
  return (
    <label className={styles.labelled}>
      <span>{label}</span>
      <input
        type="number"
        min={1}
        max={most}
        placeholder="usual"
        value={value ?? ''}
        onChange={(event) => {
          const next = Math.trunc(Number(event.target.value));
          onChange(event.target.value === '' || next < 1 ? null : Math.min(most, next));
        }}
      />
    </label>
  );
}
