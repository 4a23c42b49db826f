// Money: coins and notes, change, costs, parts of an amount.
import { CHANGE_SKILLS } from './money/change.js';
import { COIN_SKILLS } from './money/coins.js';
import { COST_SKILLS } from './money/costs.js';
import { RATE_SKILLS } from './money/rates.js';
import type { Skill } from './skill.js';

export const MONEY_SKILLS: readonly Skill[] = [
  ...COIN_SKILLS,
  ...CHANGE_SKILLS,
  ...COST_SKILLS,
  ...RATE_SKILLS,
];
