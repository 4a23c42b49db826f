// A level of skills from the map: choose them, then a title; its year is that of its hardest skill.
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { LadderLevel } from '#api/timed-room.js';
import { makeQuery } from '../../app/queries.js';
import { Button } from '../../parts/button.js';
import { SkillPicker } from '../../parts/skill-picker.js';
import { LevelForm } from './level-form.js';
import { madeLevel } from './made-level.js';

interface Props {
  readonly classId: string;
  /** School years of the class: their skills are offered first. */
  readonly years: readonly number[];
  readonly onAdd: (level: LadderLevel) => void;
  readonly onClose: () => void;
}

/** Skills that one level may mix. */
const MOST_OF_A_LEVEL = 12;

export function NewSkillLevel({ classId, years, onAdd, onClose }: Props) {
  const make = useQuery(makeQuery(classId));
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [picking, setPicking] = useState(true);
  if (!make.data) return null;
  const { skills } = make.data;
  if (picking)
    return (
      <SkillPicker
        skills={skills}
        years={years}
        chosen={chosen}
        onChange={setChosen}
        onClose={() => (chosen.length === 0 ? onClose() : setPicking(false))}
      />
    );
  const known = skills.filter(({ id }) => chosen.includes(id));
  const year = Math.max(...known.map((skill) => skill.year));
  return (
    <LevelForm
      title=""
      onTitle={(title) =>
        onAdd(madeLevel(title, year, { skills: chosen.slice(0, MOST_OF_A_LEVEL), lines: null }))
      }
      onClose={onClose}
    >
      <p>{known.map((skill) => skill.title).join(', ')}</p>
      <div>
        <Button onPress={() => setPicking(true)}>Other skills</Button>
      </div>
    </LevelForm>
  );
}
