import type { Skill } from './skill.js';

export const PERCENTAGE_SKILLS: readonly Skill[] = [];
