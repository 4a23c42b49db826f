import type { Skill } from './skill.js';

export const DECIMAL_SKILLS: readonly Skill[] = [];
