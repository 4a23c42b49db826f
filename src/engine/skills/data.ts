// Data and chance: reading graphs, averages, chance.
import { CHANCE_SKILLS } from './data/chance.js';
import { CHANCE_WORD_SKILLS } from './data/chance-words.js';
import { COLUMN_SKILLS } from './data/columns.js';
import { MEAN_SKILLS } from './data/mean.js';
import { MIDDLE_SKILLS } from './data/middle.js';
import { TALLY_SKILLS } from './data/tallies.js';
import type { Skill } from './skill.js';

export const DATA_SKILLS: readonly Skill[] = [
  ...TALLY_SKILLS,
  ...COLUMN_SKILLS,
  ...MIDDLE_SKILLS,
  ...MEAN_SKILLS,
  ...CHANCE_WORD_SKILLS,
  ...CHANCE_SKILLS,
];
