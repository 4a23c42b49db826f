// Multiplication, division, fractions, decimals and percentages: how far they carry a board on the day's number.
import { describe, expect, it } from 'vitest';
import { type DayKind, parseDayNumber } from '../numbers/day-number.js';
import { localeOf } from '../numbers/locale.js';
import { questionsAbout } from '../questions/generate.js';
import { commonDifficulty } from '../questions/question.js';
import { Rng } from '../random/rng.js';
import { DECIMAL_SKILLS } from './decimals.js';
import { DIVISION_SKILLS } from './division.js';
import { FRACTION_SKILLS } from './fractions.js';
import { MULTIPLICATION_SKILLS } from './multiplication.js';
import { PERCENTAGE_SKILLS } from './percentages.js';

const SKILLS = [
  ...MULTIPLICATION_SKILLS,
  ...DIVISION_SKILLS,
  ...FRACTION_SKILLS,
  ...DECIMAL_SKILLS,
  ...PERCENTAGE_SKILLS,
];

describe('the multiplicative strands', () => {
  it.each([
    ['whole', 18],
    ['decimal', 14],
    ['fraction', 14],
    ['money', 6],
  ] as const)('take a %s in enough skills', (kind: DayKind, least) => {
    const taking = SKILLS.filter((skill) => skill.templates.some(({ dayKinds }) => dayKinds?.includes(kind)));
    expect(taking.length).toBeGreaterThanOrEqual(least);
  });

  it.each([
    ['7', 30, 100],
    ['47', 24, 90],
    ['305', 20, 70],
    ['12500', 10, 30],
    ['250000', 8, 20],
    ['3.6', 20, 90],
    ['0.45', 20, 80],
    ['$4.85', 14, 40],
    ['3/4', 20, 90],
    ['1 3/4', 18, 60],
  ] as const)('on %s reach %i skills with %i questions, from easy to hard', (input, skills, questions) => {
    const locale = localeOf('en-AU');
    const parsed = parseDayNumber(input, locale);
    if (!parsed.ok) throw new Error(parsed.error.message);
    const found = SKILLS.map((skill) => questionsAbout(skill, parsed.value, new Rng(5), locale, 6)).filter(
      (list) => list.length > 0,
    );
    expect(found.length).toBeGreaterThanOrEqual(skills);
    const hardness = found.flat().map(commonDifficulty);
    expect(hardness.length).toBeGreaterThanOrEqual(questions);
    // A mixed Year 4 and 5 class stands near 4: nearly all succeed at 1, very few at 6.
    expect(Math.min(...hardness)).toBeLessThanOrEqual(1);
    expect(Math.max(...hardness)).toBeGreaterThanOrEqual(6);
  });
});
