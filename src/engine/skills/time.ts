// Time: clocks, time that passes, units of time and the calendar.
import type { Skill } from './skill.js';
import { CLOCK_SKILLS } from './time/clocks.js';
import { ELAPSED_SKILLS } from './time/elapsed.js';
import { TIME_UNIT_SKILLS } from './time/units.js';

export const TIME_SKILLS: readonly Skill[] = [...CLOCK_SKILLS, ...ELAPSED_SKILLS, ...TIME_UNIT_SKILLS];
