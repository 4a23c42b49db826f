import type { Skill } from './skill.js';

export const MULTIPLICATION_SKILLS: readonly Skill[] = [];
