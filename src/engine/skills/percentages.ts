// Percentages: meaning, percent of amounts, the whole from a percent.
import { PERCENT_MEANING_SKILLS } from './percentages/meaning.js';
import { PERCENT_OF_SKILLS } from './percentages/of-amounts.js';
import { WHOLE_FROM_PERCENT_SKILLS } from './percentages/whole-from-percent.js';
import type { Skill } from './skill.js';

/** Skills of the percentages strand, in teaching order within each subject. */
export const PERCENTAGE_SKILLS: readonly Skill[] = [
  ...PERCENT_MEANING_SKILLS,
  ...PERCENT_OF_SKILLS,
  ...WHOLE_FROM_PERCENT_SKILLS,
];
