import type { Skill } from './skill.js';

export const PLACE_VALUE_SKILLS: readonly Skill[] = [];
