import { expect, it } from 'vitest';
import type { UnderstandingView } from '#api/understanding.js';
import { shownSkills } from './shown-skills.js';

const skill = (id: string, strand: string, year: number) => ({ id, title: id, strand, year });
const standing = (skillId: string, answers: number) => ({
  skillId,
  chance: 0.5,
  counts: { 'not yet sure': 0, secure: 0, growing: 0, 'needs teaching': 0 },
  needTeaching: [],
  answers,
});
const view: UnderstandingView = {
  skills: [
    skill('m', 'money', 3),
    skill('b', 'addition', 4),
    skill('a', 'addition', 2),
    skill('p', 'place-value', 5),
  ],
  class: [standing('m', 0), standing('b', 4), standing('a', 1), standing('p', 2)],
  children: [],
  sentences: [],
  markedBoards: 1,
};
const shape = (isAll: boolean) =>
  shownSkills(view, isAll).map(({ title, skills }) => [title, ...skills.map(({ id }) => id)]);

it('shows what was answered, by strand in the usual order and by year', () => {
  expect(shape(false)).toEqual([
    ['Place value', 'p'],
    ['Addition', 'a', 'b'],
  ]);
});
it('shows every skill on demand', () => {
  expect(shape(true)).toContainEqual(['Money', 'm']);
});
