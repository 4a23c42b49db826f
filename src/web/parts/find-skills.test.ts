import { describe, expect, it } from 'vitest';
import type { SkillChoice } from '#api/make.js';
import { findSkills } from './find-skills.js';

const skills: readonly SkillChoice[] = [
  { id: 'a', title: 'Add two-digit numbers with carrying', strand: 'addition', year: 3 },
  { id: 'b', title: 'Doubles to 20', strand: 'addition', year: 1 },
  { id: 'c', title: 'Half past on a clock', strand: 'time', year: 1 },
  { id: 'd', title: 'Read a clock to the minute', strand: 'time', year: 4 },
];
const ids = (typed: string, near: readonly number[] | null = null) =>
  findSkills(skills, typed, near).flatMap((group) => group.skills.map(({ id }) => id));

describe('findSkills', () => {
  it('takes every typed word as the beginning of a word of title or strand', () => {
    expect(ids('clock')).toEqual(['c', 'd']);
    expect(ids('cl HALF')).toEqual(['c']);
    expect(ids('digit')).toEqual(['a']);
    expect(ids('addi')).toEqual(['a', 'b']);
    expect(ids('lock')).toEqual([]);
    expect(ids('  ')).toEqual(['a', 'b', 'c', 'd']);
  });

  it('groups by strand in the order of the map, and keeps to years in reach', () => {
    expect(findSkills(skills, '', null).map(({ title }) => title)).toEqual(['Addition', 'Time']);
    expect(ids('', [1])).toEqual(['b', 'c']);
    expect(ids('', [4, 5])).toEqual(['a', 'd']);
  });
});
