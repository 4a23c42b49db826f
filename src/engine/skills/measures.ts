// Measures: reading and comparing, units, perimeter, area and volume.
import { AREA_SKILLS } from './measures/area.js';
import { BOX_SKILLS } from './measures/boxes.js';
import { COMPARING_SKILLS } from './measures/compare.js';
import { CONVERSION_SKILLS } from './measures/convert.js';
import { EVERYDAY_SKILLS } from './measures/everyday.js';
import { JOINED_AREA_SKILLS } from './measures/joined-areas.js';
import { MIXED_UNIT_SKILLS } from './measures/mixed.js';
import { PERIMETER_SKILLS } from './measures/perimeter.js';
import { SCALE_SKILLS } from './measures/scales.js';
import { TEMPERATURE_SKILLS } from './measures/temperature.js';
import { VOLUME_SKILLS } from './measures/volume.js';
import type { Skill } from './skill.js';

export const MEASURE_SKILLS: readonly Skill[] = [
  ...COMPARING_SKILLS,
  ...SCALE_SKILLS,
  ...TEMPERATURE_SKILLS,
  ...CONVERSION_SKILLS,
  ...MIXED_UNIT_SKILLS,
  ...PERIMETER_SKILLS,
  ...AREA_SKILLS,
  ...VOLUME_SKILLS,
  ...JOINED_AREA_SKILLS,
  ...BOX_SKILLS,
  ...EVERYDAY_SKILLS,
];
