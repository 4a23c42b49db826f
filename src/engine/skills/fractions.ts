// Fractions: naming, completing, fractions of amounts, equal fractions and comparing, adding, multiplying, dividing.
import { FRACTION_SUM_SKILLS } from './fractions/adding.js';
import { COMPARING_SKILLS } from './fractions/comparing.js';
import { COMPLETING_SKILLS } from './fractions/completing.js';
import { FRACTION_DIVISION_SKILLS } from './fractions/dividing.js';
import { FRACTION_PRODUCT_SKILLS } from './fractions/multiplying.js';
import { NAMING_SKILLS } from './fractions/naming.js';
import { FRACTION_OF_SKILLS } from './fractions/of-amounts.js';
import { WHOLE_FROM_PART_SKILLS } from './fractions/whole-from-part.js';
import { PICTURE_FRACTION_SKILLS } from './fractions/pictures.js';
import { SIMPLEST_SKILLS } from './fractions/simplest.js';
import { FRACTION_STORY_SKILLS } from './fractions/stories.js';
import type { Skill } from './skill.js';

/** Skills of the fractions strand, in teaching order within each subject. */
export const FRACTION_SKILLS: readonly Skill[] = [
  ...NAMING_SKILLS,
  ...COMPLETING_SKILLS,
  ...FRACTION_OF_SKILLS,
  ...WHOLE_FROM_PART_SKILLS,
  ...COMPARING_SKILLS,
  ...FRACTION_SUM_SKILLS,
  ...FRACTION_PRODUCT_SKILLS,
  ...FRACTION_DIVISION_SKILLS,
  ...PICTURE_FRACTION_SKILLS,
  ...SIMPLEST_SKILLS,
  ...FRACTION_STORY_SKILLS,
];
