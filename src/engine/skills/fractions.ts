import type { Skill } from './skill.js';

export const FRACTION_SKILLS: readonly Skill[] = [];
