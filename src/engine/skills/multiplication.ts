// Multiplication: equal groups, doubles, tables, scaling, mental products, factors.
import { FACTOR_SKILLS } from './multiplication/factors.js';
import { GROUP_SKILLS } from './multiplication/groups-and-doubles.js';
import { MULTIPLE_SKILLS } from './multiplication/multiples.js';
import { SCALING_SKILLS } from './multiplication/scaling.js';
import { SHORTCUT_SKILLS } from './multiplication/shortcuts.js';
import { SPLITTING_SKILLS } from './multiplication/splitting.js';
import { SQUARE_SKILLS } from './multiplication/squares.js';
import { TABLE_SKILLS } from './multiplication/tables.js';
import { RATE_SKILLS } from './multiplication/rates.js';
import { RATIO_SKILLS } from './multiplication/ratios.js';
import { ESTIMATE_SKILLS } from './multiplication/estimates.js';
import type { Skill } from './skill.js';

/** Skills of the multiplication strand, in teaching order within each subject. */
export const MULTIPLICATION_SKILLS: readonly Skill[] = [
  ...GROUP_SKILLS,
  ...TABLE_SKILLS,
  ...SCALING_SKILLS,
  ...SPLITTING_SKILLS,
  ...SHORTCUT_SKILLS,
  ...MULTIPLE_SKILLS,
  ...FACTOR_SKILLS,
  ...SQUARE_SKILLS,
  ...RATIO_SKILLS,
  ...RATE_SKILLS,
  ...ESTIMATE_SKILLS,
];
