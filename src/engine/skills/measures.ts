// Measures: reading and comparing, units, perimeter, area and volume.
import { READING_SKILLS } from './measures/compare.js';
import { CONVERSION_SKILLS } from './measures/convert.js';
import { RECTANGLE_SKILLS } from './measures/rectangles.js';
import type { Skill } from './skill.js';

export const MEASURE_SKILLS: readonly Skill[] = [
  ...READING_SKILLS,
  ...CONVERSION_SKILLS,
  ...RECTANGLE_SKILLS,
];
