// Patterns and algebra: the strand's skills, simple ones first.
import { BALANCE_SKILLS } from './algebra/balance.js';
import { LETTER_SKILLS } from './algebra/order-and-letters.js';
import { PATTERN_SKILLS } from './algebra/patterns.js';
import { REPEATING_SKILLS } from './algebra/repeating.js';
import { PARTS_IN_ORDER_SKILLS } from './algebra/parts-in-order.js';
import { RULE_SKILLS } from './algebra/rules.js';
import { PART_ALGEBRA_SKILLS } from './algebra/with-parts.js';
import { EXPRESSION_SKILLS } from './algebra/expressions.js';
import { PROCEDURE_SKILLS } from './algebra/procedures.js';
import type { Skill } from './skill.js';

export const ALGEBRA_SKILLS: readonly Skill[] = [
  ...REPEATING_SKILLS,
  ...PATTERN_SKILLS,
  ...BALANCE_SKILLS,
  ...RULE_SKILLS,
  ...PART_ALGEBRA_SKILLS,
  ...LETTER_SKILLS,
  ...EXPRESSION_SKILLS,
  ...PROCEDURE_SKILLS,
  ...PARTS_IN_ORDER_SKILLS,
];
