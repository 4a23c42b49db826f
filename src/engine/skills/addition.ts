import type { Skill } from './skill.js';

export const ADDITION_SKILLS: readonly Skill[] = [];
