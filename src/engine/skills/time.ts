// Time: clocks, time that passes, units of time and the calendar.
import type { Skill } from './skill.js';
import { CALENDAR_SKILLS } from './time/calendar.js';
import { CLOCK_SKILLS } from './time/clocks.js';
import { DIGITAL_CLOCK_SKILLS } from './time/digital.js';
import { ELAPSED_SKILLS } from './time/elapsed.js';
import { JOURNEY_SKILLS } from './time/journeys.js';
import { TIME_ORDER_SKILLS } from './time/order.js';
import { TIME_UNIT_SKILLS } from './time/units.js';
import { WEEK_AND_MONTH_SKILLS } from './time/weeks-and-months.js';

export const TIME_SKILLS: readonly Skill[] = [
  ...CLOCK_SKILLS,
  ...DIGITAL_CLOCK_SKILLS,
  ...ELAPSED_SKILLS,
  ...JOURNEY_SKILLS,
  ...CALENDAR_SKILLS,
  ...WEEK_AND_MONTH_SKILLS,
  ...TIME_UNIT_SKILLS,
  ...TIME_ORDER_SKILLS,
];
