import type { Skill } from './skill.js';

export const MEASURE_SKILLS: readonly Skill[] = [];
