import type { Skill } from './skill.js';

export const SHAPE_SKILLS: readonly Skill[] = [];
