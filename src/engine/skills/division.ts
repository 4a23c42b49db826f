import type { Skill } from './skill.js';

export const DIVISION_SKILLS: readonly Skill[] = [];
