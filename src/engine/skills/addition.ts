// Addition: the strand's skills in teaching order.
import { WITHIN_TWENTY_SKILLS } from './addition/within-twenty.js';
import type { Skill } from './skill.js';

export const ADDITION_SKILLS: readonly Skill[] = [...WITHIN_TWENTY_SKILLS];
