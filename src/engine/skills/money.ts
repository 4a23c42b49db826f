// Money: coins and notes, change, costs, parts of an amount.
import { CHANGE_SKILLS } from './money/change.js';
import { COIN_SKILLS } from './money/coins.js';
import { COST_SKILLS } from './money/costs.js';
import { FILL_UP_SKILLS } from './money/fill-up.js';
import { OFFER_SKILLS } from './money/offers.js';
import { PART_OF_MONEY_SKILLS } from './money/part-of.js';
import { SHARING_SKILLS } from './money/sharing.js';
import { MONEY_UNIT_SKILLS } from './money/units.js';
import type { Skill } from './skill.js';

export const MONEY_SKILLS: readonly Skill[] = [
  ...COIN_SKILLS,
  ...MONEY_UNIT_SKILLS,
  ...CHANGE_SKILLS,
  ...FILL_UP_SKILLS,
  ...COST_SKILLS,
  ...SHARING_SKILLS,
  ...PART_OF_MONEY_SKILLS,
  ...OFFER_SKILLS,
];
