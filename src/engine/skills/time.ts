import type { Skill } from './skill.js';

export const TIME_SKILLS: readonly Skill[] = [];
