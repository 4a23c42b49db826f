// Data and chance: reading graphs, averages, chance.
import { AVERAGE_SKILLS } from './data/averages.js';
import { CHANCE_SKILLS } from './data/chance.js';
import { DATA_READING_SKILLS } from './data/reading.js';
import type { Skill } from './skill.js';

export const DATA_SKILLS: readonly Skill[] = [...DATA_READING_SKILLS, ...AVERAGE_SKILLS, ...CHANCE_SKILLS];
