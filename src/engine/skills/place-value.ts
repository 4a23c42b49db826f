// Place value: the strand's skills in teaching order.
import { FIRST_PLACE_SKILLS } from './place-value/first-numbers.js';
import { LARGER_PLACE_SKILLS } from './place-value/larger-numbers.js';
import type { Skill } from './skill.js';

export const PLACE_VALUE_SKILLS: readonly Skill[] = [...FIRST_PLACE_SKILLS, ...LARGER_PLACE_SKILLS];
