// Division: sharing, halves, facts, remainders and derived work.
import { DERIVED_DIVISION_SKILLS } from './division/derived.js';
import { DIVISION_FACT_SKILLS } from './division/facts.js';
import { FURTHER_DIVISION_SKILLS } from './division/missing-and-large.js';
import { REMAINDER_SKILLS } from './division/remainders.js';
import { SHARING_SKILLS } from './division/sharing-and-halves.js';
import type { Skill } from './skill.js';

/** Skills of the division strand, in teaching order within each subject. */
export const DIVISION_SKILLS: readonly Skill[] = [
  ...SHARING_SKILLS,
  ...DIVISION_FACT_SKILLS,
  ...DERIVED_DIVISION_SKILLS,
  ...REMAINDER_SKILLS,
  ...FURTHER_DIVISION_SKILLS,
];
