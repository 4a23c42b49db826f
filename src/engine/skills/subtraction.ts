// Subtraction: the strand's skills, simple ones first.
import type { Skill } from './skill.js';
import { LARGER_TAKE_SKILLS } from './subtraction/larger.js';
import { PART_TAKE_SKILLS } from './subtraction/with-parts.js';
import { WITHIN_HUNDRED_TAKE_SKILLS } from './subtraction/within-hundred.js';

export const SUBTRACTION_SKILLS: readonly Skill[] = [
  ...WITHIN_HUNDRED_TAKE_SKILLS,
  ...LARGER_TAKE_SKILLS,
  ...PART_TAKE_SKILLS,
];
