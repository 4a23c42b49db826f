// Decimals: reading and comparing, adding and subtracting, multiplying and dividing.
import { DECIMAL_SUM_SKILLS } from './decimals/adding.js';
import { DECIMAL_PRODUCT_SKILLS } from './decimals/multiplying.js';
import { DECIMAL_READING_SKILLS } from './decimals/reading.js';
import type { Skill } from './skill.js';

export const DECIMAL_SKILLS: readonly Skill[] = [
  ...DECIMAL_READING_SKILLS,
  ...DECIMAL_SUM_SKILLS,
  ...DECIMAL_PRODUCT_SKILLS,
];
