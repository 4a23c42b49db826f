import { describe, expect, it } from 'vitest';
import { localeOf } from '../numbers/locale.js';
import { SKILLS, skillById } from '../skills/map.js';
import type { Skill } from '../skills/skill.js';
import { practiceQuestions } from './practice.js';

const AU = localeOf('en-AU');
const skill = (id: string): Skill => {
  const found = skillById(id);
  if (!found) throw new Error(`no skill ${id}`);
  return found;
};

describe('questions of a practice sheet', () => {
  it('are as many as asked for, of each skill in turn, and the same for the same seed', () => {
    const skills = [skill('mult.table.6'), skill('add.2d2d.carry'), skill('frac.equal')];
    const made = practiceQuestions(skills, 20, 5, AU);
    expect(made).toHaveLength(20);
    expect(made.map((one) => one.skill)).toEqual(Array.from({ length: 20 }, (_, i) => skills[i % 3]?.id));
    expect(practiceQuestions(skills, 20, 5, AU)).toEqual(made);
    expect(practiceQuestions(skills, 20, 6, AU)).not.toEqual(made);
  });

  it('do not repeat a sum that two skills share', () => {
    const skills = [skill('add.within10'), skill('add.within20'), skill('add.doubles')];
    for (let seed = 1; seed <= 20; seed++) {
      const texts = practiceQuestions(skills, 24, seed, AU).map(({ text }) => text);
      expect(new Set(texts).size, `seed ${seed}`).toBe(texts.length);
    }
  });

  it('are given by every skill of the map, also by one with few questions', () => {
    for (const one of SKILLS) expect(practiceQuestions([one], 60, 1, AU), one.id).toHaveLength(60);
    expect(practiceQuestions([], 10, 1, AU)).toEqual([]);
  });
});
