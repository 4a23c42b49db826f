// Addition: the strand's skills, simple ones first.
import { LARGER_ADDITION_SKILLS } from './addition/larger.js';
import { PART_ADDITION_SKILLS } from './addition/with-parts.js';
import { WITHIN_THOUSAND_SKILLS } from './addition/within-thousand.js';
import { WITHIN_TWENTY_SKILLS } from './addition/within-twenty.js';
import { HUNDREDS_SKILLS } from './addition/hundreds.js';
import { MORE_SUM_SKILLS } from './addition/more-sums.js';
import type { Skill } from './skill.js';

export const ADDITION_SKILLS: readonly Skill[] = [
  ...WITHIN_TWENTY_SKILLS,
  ...WITHIN_THOUSAND_SKILLS,
  ...LARGER_ADDITION_SKILLS,
  ...PART_ADDITION_SKILLS,
  ...MORE_SUM_SKILLS,
  ...HUNDREDS_SKILLS,
];
