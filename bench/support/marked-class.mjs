// An invented class with a year of marked boards behind it: 27 children in two year levels, 40 boards of 12 questions, each
// child with an ability of its own that grows by one logit in the year.
import { logistic } from '#engine/learning/logistic.js';
import { addDays } from '#engine/numbers/calendar.js';
import { Rng } from '#engine/random/rng.js';
import { SKILLS } from '#engine/skills/map.js';

export const CHILDREN = 27;
export const ANSWERS_EACH = 40 * 12;
/** The day on which the class stands, after 40 school weeks. */
export const TODAY = '2026-12-01';

/** About normal, with mean 0 and standard deviation 1. */
function spread(rng) {
  return Array.from({ length: 12 }, () => rng.unit()).reduce((sum, one) => sum + one, -6);
}

/** The children of a class of these years with their answers, to skills from three years below theirs to one above. */
export function markedChildren(years, seed = 1) {
  const rng = new Rng(seed);
  return Array.from({ length: CHILDREN }, (_, i) => {
    const year = years[i % years.length];
    const near = SKILLS.filter((skill) => skill.year >= year - 3 && skill.year <= year + 1);
    const level = year - 1 + spread(rng);
    return {
      id: String(i),
      year,
      answers: Array.from({ length: ANSWERS_EACH }, (_, k) => {
        const skill = rng.pick(near);
        const board = Math.floor(k / 12);
        const difficulty = rng.unit() * 2 - 2;
        return {
          skill: skill.id,
          difficulty,
          right: rng.chance(logistic(level + board / 40 - skill.year - difficulty)),
          on: addDays('2026-02-06', 7 * board),
          questionId: `q${k}`,
          slips: [],
        };
      }),
    };
  });
}
