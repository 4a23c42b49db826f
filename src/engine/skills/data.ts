// Data and chance: reading graphs, averages, chance.
import { CHANCE_SKILLS } from './data/chance.js';
import { CHANCE_WORD_SKILLS } from './data/chance-words.js';
import { COLUMN_SKILLS } from './data/columns.js';
import { GRAPH_SKILLS } from './data/graphs.js';
import { MEAN_SKILLS } from './data/mean.js';
import { MEASURED_SKILLS } from './data/measured.js';
import { MIDDLE_SKILLS } from './data/middle.js';
import { PICTURE_SKILLS } from './data/pictures.js';
import { TABLE_SKILLS } from './data/tables.js';
import { TALLY_SKILLS } from './data/tallies.js';
import { TIMETABLE_SKILLS } from './data/timetables.js';
import type { Skill } from './skill.js';

export const DATA_SKILLS: readonly Skill[] = [
  ...TALLY_SKILLS,
  ...PICTURE_SKILLS,
  ...COLUMN_SKILLS,
  ...MIDDLE_SKILLS,
  ...MEAN_SKILLS,
  ...CHANCE_WORD_SKILLS,
  ...CHANCE_SKILLS,
  ...TABLE_SKILLS,
  ...TIMETABLE_SKILLS,
  ...MEASURED_SKILLS,
  ...GRAPH_SKILLS,
];
