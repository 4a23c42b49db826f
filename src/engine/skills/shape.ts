// Shape and angle: flat shapes, solids, symmetry, turns and angles.
import { ANGLE_SKILLS } from './shape/angles.js';
import { CIRCLE_SKILLS } from './shape/circles.js';
import { FLAT_SHAPE_SKILLS } from './shape/flat.js';
import { SOLID_SKILLS } from './shape/solids.js';
import { TURN_SKILLS } from './shape/turns.js';
import type { Skill } from './skill.js';

export const SHAPE_SKILLS: readonly Skill[] = [
  ...FLAT_SHAPE_SKILLS,
  ...SOLID_SKILLS,
  ...CIRCLE_SKILLS,
  ...TURN_SKILLS,
  ...ANGLE_SKILLS,
];
