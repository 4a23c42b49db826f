import type { Skill } from './skill.js';

export const SUBTRACTION_SKILLS: readonly Skill[] = [];
