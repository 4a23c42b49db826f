// Fractions: naming, fractions of amounts, equal fractions and comparing, adding, multiplying.
import { FRACTION_SUM_SKILLS } from './fractions/adding.js';
import { COMPARING_SKILLS } from './fractions/comparing.js';
import { FRACTION_PRODUCT_SKILLS } from './fractions/multiplying.js';
import { NAMING_SKILLS } from './fractions/naming.js';
import { FRACTION_OF_SKILLS } from './fractions/of-amounts.js';
import type { Skill } from './skill.js';

export const FRACTION_SKILLS: readonly Skill[] = [
  ...NAMING_SKILLS,
  ...FRACTION_OF_SKILLS,
  ...COMPARING_SKILLS,
  ...FRACTION_SUM_SKILLS,
  ...FRACTION_PRODUCT_SKILLS,
];
