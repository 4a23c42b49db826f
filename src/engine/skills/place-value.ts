// Place value: the strand's skills, simple ones first.
import { FIRST_PLACE_SKILLS } from './place-value/first-numbers.js';
import { LARGER_PLACE_SKILLS } from './place-value/larger-numbers.js';
import { PART_PLACE_SKILLS } from './place-value/parts-among-wholes.js';
import { ROUNDING_SKILLS } from './place-value/rounding.js';
import { NUMBER_WORD_SKILLS } from './place-value/number-words.js';
import { ROMAN_SKILLS } from './place-value/roman-numerals.js';
import { FIRST_COUNTING_SKILLS } from './place-value/first-counting.js';
import { NEGATIVE_SKILLS } from './place-value/negative-numbers.js';
import { BUNDLE_SKILLS } from './place-value/bundles.js';
import { MARKED_LINE_SKILLS } from './place-value/marked-lines.js';
import { DIGIT_SKILLS } from './place-value/digits.js';
import { RIDDLE_SKILLS } from './place-value/riddles.js';
import type { Skill } from './skill.js';

export const PLACE_VALUE_SKILLS: readonly Skill[] = [
  ...FIRST_PLACE_SKILLS,
  ...LARGER_PLACE_SKILLS,
  ...PART_PLACE_SKILLS,
  ...ROUNDING_SKILLS,
  ...NUMBER_WORD_SKILLS,
  ...ROMAN_SKILLS,
  ...FIRST_COUNTING_SKILLS,
  ...NEGATIVE_SKILLS,
  ...BUNDLE_SKILLS,
  ...MARKED_LINE_SKILLS,
  ...RIDDLE_SKILLS,
  ...DIGIT_SKILLS,
];
