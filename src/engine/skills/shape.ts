// Shape and angle: flat shapes, solids, symmetry, turns and angles.
import { ANGLE_SKILLS } from './shape/angles.js';
import { FLAT_AND_SOLID_SKILLS } from './shape/shapes.js';
import type { Skill } from './skill.js';

export const SHAPE_SKILLS: readonly Skill[] = [...FLAT_AND_SOLID_SKILLS, ...ANGLE_SKILLS];
