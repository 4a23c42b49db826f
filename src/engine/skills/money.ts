import type { Skill } from './skill.js';

export const MONEY_SKILLS: readonly Skill[] = [];
