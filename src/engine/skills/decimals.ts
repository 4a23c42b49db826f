// Decimals: reading, comparing, rounding, matching with fractions, adding, scaling, multiplying.
import { DECIMAL_SUM_SKILLS } from './decimals/adding.js';
import { BY_DECIMAL_SKILLS } from './decimals/by-decimals.js';
import { DECIMAL_COMPARING_SKILLS } from './decimals/comparing.js';
import { DECIMAL_FRACTION_SKILLS } from './decimals/matching.js';
import { DECIMAL_PRODUCT_SKILLS } from './decimals/multiplying.js';
import { DECIMAL_READING_SKILLS } from './decimals/reading.js';
import { ROUNDING_SKILLS } from './decimals/rounding.js';
import { DECIMAL_SCALING_SKILLS } from './decimals/scaling.js';
import { DECIMAL_PLACE_SKILLS } from './decimals/places.js';
import { ESTIMATING_SKILLS } from './decimals/estimating.js';
import type { Skill } from './skill.js';

/** Skills of the decimals strand, in teaching order within each subject. */
export const DECIMAL_SKILLS: readonly Skill[] = [
  ...DECIMAL_READING_SKILLS,
  ...DECIMAL_COMPARING_SKILLS,
  ...ROUNDING_SKILLS,
  ...DECIMAL_FRACTION_SKILLS,
  ...DECIMAL_SUM_SKILLS,
  ...DECIMAL_SCALING_SKILLS,
  ...DECIMAL_PRODUCT_SKILLS,
  ...BY_DECIMAL_SKILLS,
  ...DECIMAL_PLACE_SKILLS,
  ...ESTIMATING_SKILLS,
];
