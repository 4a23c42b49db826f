// Shape and angle: flat shapes, solids, nets, symmetry, turns, angles, lines, families and position.
import { ANGLE_SKILLS } from './shape/angles.js';
import { CIRCLE_SKILLS } from './shape/circles.js';
import { COORDINATE_SKILLS } from './shape/coordinates.js';
import { FAMILY_SKILLS } from './shape/families.js';
import { FLAT_SHAPE_SKILLS } from './shape/flat.js';
import { LINE_SKILLS } from './shape/lines.js';
import { MIRROR_SKILLS } from './shape/mirrors.js';
import { NET_SKILLS } from './shape/nets.js';
import { PLAN_SKILLS } from './shape/plan.js';
import { SOLID_SKILLS } from './shape/solids.js';
import { TURN_SKILLS } from './shape/turns.js';
import type { Skill } from './skill.js';

export const SHAPE_SKILLS: readonly Skill[] = [
  ...FLAT_SHAPE_SKILLS,
  ...SOLID_SKILLS,
  ...CIRCLE_SKILLS,
  ...TURN_SKILLS,
  ...ANGLE_SKILLS,
  ...LINE_SKILLS,
  ...FAMILY_SKILLS,
  ...NET_SKILLS,
  ...MIRROR_SKILLS,
  ...PLAN_SKILLS,
  ...COORDINATE_SKILLS,
];
