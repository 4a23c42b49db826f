import type { Skill } from './skill.js';

export const ALGEBRA_SKILLS: readonly Skill[] = [];
