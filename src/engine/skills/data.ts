import type { Skill } from './skill.js';

export const DATA_SKILLS: readonly Skill[] = [];
