import { describe, expect, it } from 'vitest';
import type { ChildStanding, SkillStanding } from '#api/understanding.js';
import type { ClassSkillSummary } from '#engine/learning/summary.js';
import { SKILLS } from '#engine/skills/map.js';
import { sentencesFor as sayingsFor } from './sentences.js';

const sentencesFor = (...args: Parameters<typeof sayingsFor>) => sayingsFor(...args).map(({ text }) => text);

const [easy, hard, old] = [4, 5, 0].map((year) => SKILLS.find((skill) => skill.year === year)?.id ?? '') as [
  string,
  string,
  string,
];

const standing = (skillId: string, state: SkillStanding['state'], answers = 3): SkillStanding => ({
  skillId,
  state,
  chance: 0.5,
  low: 0.3,
  high: 0.7,
  answers,
});
const child = (shownAs: string, more: Partial<ChildStanding> = {}): ChildStanding => ({
  childId: shownAs,
  shownAs,
  year: 4,
  answers: 12,
  skills: [standing(easy, 'growing')],
  findings: [],
  ...more,
});
const finding = (seen: number) => ({
  misconception: 'x',
  does: 'drops the carried ten',
  help: 'Bundle ten ones.',
  seen,
  chances: 6,
  examples: [],
});
const summary = (skill: string, needTeaching: string[]): ClassSkillSummary =>
  ({ skill, chance: 0.4, counts: {}, needTeaching }) as unknown as ClassSkillSummary;

describe('sentencesFor', () => {
  it('says nothing before anything was marked', () => {
    expect(
      sentencesFor([child('Mia', { answers: 0, findings: [finding(3)] })], [summary(easy, ['Mia'])], [4]),
    ).toEqual([]);
  });

  it('names the child with the clearest pattern, as a prompt to look', () => {
    const children = [child('Mia', { findings: [finding(2)] }), child('Omar', { findings: [finding(5)] })];
    expect(sentencesFor(children, [], [4])).toEqual([
      'See Omar: it looks as if the child drops the carried ten (5 of 6 times). Bundle ten ones.',
    ]);
  });

  it('gathers three or more for reteaching, the lowest skill first, and never one far below the class', () => {
    const names = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'];
    const skills = [easy, hard, old].map((id) => standing(id, 'needs teaching'));
    const children = names.map((name) => child(name, { skills }));
    const all = [summary(hard, names), summary(easy, names), summary(old, names)];
    const told = sentencesFor(children, all, [4, 5]);
    const title = SKILLS.find(({ id }) => id === easy)?.title.toLowerCase();
    expect(told).toEqual([`Reteach “${title}” to A, B, C, D, E, F and 2 more.`]);
    expect(sentencesFor(children, [summary(easy, ['A', 'B'])], [4])).toEqual([]);
    expect(sentencesFor(children, [summary(old, names)], [4, 5])).toEqual([]);
    // A skill that nobody was asked is a guess, not a reason to reteach.
    const unasked = names.map((name) => child(name, { skills: [standing(easy, 'needs teaching', 0)] }));
    expect(sentencesFor(unasked, [summary(easy, names)], [4])).toEqual([]);
  });

  it('brings three to six together who share a pattern, and sees another child alone', () => {
    const children = [
      ...['A', 'B', 'C'].map((name) => child(name, { findings: [finding(3)] })),
      child('Mia', { findings: [{ ...finding(2), misconception: 'y', does: 'counts the start twice' }] }),
    ];
    const sayings = sayingsFor(children, [summary(easy, ['A', 'B', 'C'])], [4]);
    expect(sayings.map(({ text }) => text)).toEqual([
      'See Mia: it looks as if the child counts the start twice (2 of 6 times). Bundle ten ones.',
      'Bring together A, B and C: of each it looks as if the child drops the carried ten. Bundle ten ones.',
    ]);
    expect(sayings.map(({ childId }) => childId)).toEqual(['Mia', 'A']);
    expect(sentencesFor(children.slice(1), [], [4])).toHaveLength(1);
  });

  it('offers more to those who are secure in most of it, after enough answers', () => {
    const secure = [standing(easy, 'secure'), standing(hard, 'secure')];
    const children = [
      child('A', { skills: secure }),
      child('B', { skills: secure }),
      child('C', { skills: secure, answers: 5 }),
    ];
    expect(sentencesFor(children, [], [4])).toEqual([
      'Ready for more: A and B could start on the harder side.',
    ]);
    expect(sentencesFor(children.slice(0, 1), [], [4])).toEqual([
      'Ready for more: A could start on the harder side.',
    ]);
  });
});
