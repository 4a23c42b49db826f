// The skill map: every strand's skills in one list, in strand order.
import { ADDITION_SKILLS } from './addition.js';
import { ALGEBRA_SKILLS } from './algebra.js';
import { DATA_SKILLS } from './data.js';
import { DECIMAL_SKILLS } from './decimals.js';
import { DIVISION_SKILLS } from './division.js';
import { FRACTION_SKILLS } from './fractions.js';
import { MEASURE_SKILLS } from './measures.js';
import { MONEY_SKILLS } from './money.js';
import { MULTIPLICATION_SKILLS } from './multiplication.js';
import { PERCENTAGE_SKILLS } from './percentages.js';
import { PLACE_VALUE_SKILLS } from './place-value.js';
import { SHAPE_SKILLS } from './shape.js';
import type { Skill } from './skill.js';
import { SUBTRACTION_SKILLS } from './subtraction.js';
import { TIME_SKILLS } from './time.js';

export const SKILLS: readonly Skill[] = [
  ...PLACE_VALUE_SKILLS,
  ...ADDITION_SKILLS,
  ...SUBTRACTION_SKILLS,
  ...MULTIPLICATION_SKILLS,
  ...DIVISION_SKILLS,
  ...FRACTION_SKILLS,
  ...DECIMAL_SKILLS,
  ...PERCENTAGE_SKILLS,
  ...MONEY_SKILLS,
  ...TIME_SKILLS,
  ...MEASURE_SKILLS,
  ...SHAPE_SKILLS,
  ...ALGEBRA_SKILLS,
  ...DATA_SKILLS,
];

const BY_ID: ReadonlyMap<string, Skill> = new Map(SKILLS.map((skill) => [skill.id, skill]));
const INDEX: ReadonlyMap<string, number> = new Map(SKILLS.map((skill, index) => [skill.id, index]));

/** The skill with the given id, or null. */
export function skillById(id: string): Skill | null {
  return BY_ID.get(id) ?? null;
}

/** The skill's position in {@link SKILLS}, by which the learner model numbers its dimensions; -1 when unknown. */
export function skillIndex(id: string): number {
  return INDEX.get(id) ?? -1;
}
