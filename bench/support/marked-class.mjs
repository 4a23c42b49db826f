// An invented class with a year of marked boards behind it: 27 children in two year levels, 40 boards of 12 questions.
import { addDays } from '#engine/numbers/calendar.js';
import { Rng } from '#engine/random/rng.js';
import { SKILLS } from '#engine/skills/map.js';

export const CHILDREN = 27;
export const ANSWERS_EACH = 40 * 12;
/** The day on which the class stands, after 40 school weeks. */
export const TODAY = '2026-12-01';

/** The children of a class of these years with their answers to skills near their years. */
export function markedChildren(years, seed = 1) {
  const rng = new Rng(seed);
  return Array.from({ length: CHILDREN }, (_, i) => {
    const year = years[i % years.length];
    const near = SKILLS.filter((skill) => Math.abs(skill.year - year) <= 2);
    const level = rng.unit() - 0.5;
    return {
      id: String(i),
      year,
      answers: Array.from({ length: ANSWERS_EACH }, (_, k) => ({
        skill: rng.pick(near).id,
        difficulty: rng.unit() * 2 - 1.5,
        right: rng.chance(0.72 + 0.3 * level),
        on: addDays('2026-02-06', 7 * Math.floor(k / 12)),
        questionId: `q${k}`,
        slips: [],
      })),
    };
  });
}
