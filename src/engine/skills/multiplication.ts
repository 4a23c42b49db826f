// Multiplication: equal groups, doubles, tables, scaling, mental products, factors.
import { FACTOR_SKILLS } from './multiplication/factors.js';
import { GROUP_SKILLS } from './multiplication/groups-and-doubles.js';
import { MENTAL_PRODUCT_SKILLS } from './multiplication/mental.js';
import { SCALING_SKILLS } from './multiplication/scaling.js';
import { TABLE_SKILLS } from './multiplication/tables.js';
import type { Skill } from './skill.js';

export const MULTIPLICATION_SKILLS: readonly Skill[] = [
  ...GROUP_SKILLS,
  ...TABLE_SKILLS,
  ...SCALING_SKILLS,
  ...MENTAL_PRODUCT_SKILLS,
  ...FACTOR_SKILLS,
];
