// Patterns and algebra: the strand's skills in teaching order.
import { EQUATION_SKILLS } from './algebra/equations.js';
import { PATTERN_SKILLS } from './algebra/patterns.js';
import type { Skill } from './skill.js';

export const ALGEBRA_SKILLS: readonly Skill[] = [...PATTERN_SKILLS, ...EQUATION_SKILLS];
