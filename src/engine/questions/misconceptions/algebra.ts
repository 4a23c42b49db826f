// Patterns, the equals sign, order of operations, rules, letters and procedures.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

export const ALGEBRA_MISCONCEPTIONS = {
  'equals.answer-next': {
    does: 'writes the answer of the left side into the gap, whatever else stands on the right',
    help: 'Use a balance: both sides must weigh the same.',
    source: 'from memory (Falkner, Levi & Carpenter 1999)',
  },
  'equals.carries-on': {
    does: 'adds on everything in sight after the equals sign',
    help: 'Use a balance: both sides must weigh the same.',
    source: 'from memory (Falkner, Levi & Carpenter 1999)',
  },
  'equals.wrong-way': {
    does: 'changes the missing number the same way as its partner, not the opposite way',
    help: 'If one part grows and the whole stays, the other part must shrink.',
    source: COMMON,
  },
  'equals.difference-wrong-way': {
    does: 'changes the missing number the opposite way, although a difference stays when both numbers change alike',
    help: 'Mark both numbers on a number line and slide the pair along together.',
    source: COMMON,
  },
  'pattern.last-again': {
    does: 'repeats the item before instead of going on with the pattern',
    help: 'Chant the pattern together and clap where it starts again.',
    source: COMMON,
  },
  'pattern.starts-over': {
    does: 'starts the pattern again too early',
    help: 'Circle the part that repeats.',
    source: COMMON,
  },
  'pattern.adds-one': {
    does: 'counts by ones instead of by the steps of the pattern',
    help: 'Write the step between each number and the next.',
    source: COMMON,
  },
  'pattern.step-missed': {
    does: 'counts one step too many or too few',
    help: 'Write every number of the pattern down and number them first, second, third.',
    source: COMMON,
  },
  'pattern.wrong-way': {
    does: 'takes the pattern the wrong way',
    help: 'Ask first whether the numbers grow or shrink.',
    source: COMMON,
  },
  'pattern.one-step-only': {
    does: 'takes one step where several are needed',
    help: 'Number the places of the pattern and count the steps between the two.',
    source: COMMON,
  },
  'pattern.start-left-out': {
    does: 'multiplies the step by the place in the pattern and leaves the start out',
    help: 'Write the first number down, then count the steps on from it.',
    source: COMMON,
  },
  'pattern.counts-on': {
    does: 'counts on from the last number instead of repeating the pattern',
    help: 'Read the row aloud from the start and listen for where it begins again.',
    source: COMMON,
  },
  'order.left-to-right': {
    does: 'works strictly from left to right',
    help: 'Underline the multiplication or division and do it first.',
    source: COMMON,
  },
  'order.brackets-ignored': {
    does: 'passes over the part that is to be worked out first',
    help: 'Circle the part to be done first and write its value above.',
    source: COMMON,
  },
  'rule.one-step': {
    does: 'does only one of the two steps',
    help: 'Write an arrow for each step and a number after each arrow.',
    source: COMMON,
  },
  'rule.steps-swapped': {
    does: 'does the steps in the wrong order',
    help: 'Read the rule aloud and do each step as it is said.',
    source: COMMON,
  },
  'letter.side-by-side': {
    does: 'writes the two numbers side by side instead of multiplying',
    help: 'Read 2 × n as “two groups of n”.',
    source: 'from memory (Küchemann 1981)',
  },
  'letter.coefficient-lost': {
    does: 'counts letters without the number in front of them',
    help: 'Write 3a as a + a + a once, then count.',
    source: 'from memory (Küchemann 1981)',
  },
  'letter.joined': {
    does: 'joins numbers and letters that cannot be put together',
    help: 'Put a number of coins and a number of boxes side by side: they stay apart.',
    source: 'from memory (Küchemann 1981)',
  },
  'letter.lone-not-counted': {
    does: 'does not count a letter that stands without a number',
    help: 'Write n as 1n once, then add the numbers in front.',
    source: COMMON,
  },
  'letter.first-in-brackets': {
    does: 'multiplies only the first of the two parts',
    help: 'Write the sum out as many times as it is taken and count both parts.',
    source: COMMON,
  },
  'letter.sides-swapped': {
    does: 'swaps the two sides of a subtraction or a division',
    help: 'Put a small number in for the letter and act the words out.',
    source: COMMON,
  },
  'inequality.end-included': {
    does: 'counts the end itself although it is left out',
    help: 'Try the end number in the sentence: is it true?',
    source: COMMON,
  },
  'inequality.end-left-out': {
    does: 'leaves the end out although the sign lets it count',
    help: 'Read the line under the sign aloud as “or equal to”, then try the end number.',
    source: COMMON,
  },
  'plus.as-times': {
    does: 'multiplies the two numbers instead of adding them',
    help: 'Ask whether there are several equal groups or one amount and then some more.',
    source: COMMON,
  },
  'unknown.difference-forgotten': {
    does: 'halves the total although one number is larger than the other',
    help: 'Draw both numbers as bars and cut off what sticks out before halving.',
    source: COMMON,
  },
  'unknown.smaller-not-counted': {
    does: 'leaves the smaller number out when counting the equal parts',
    help: 'Draw the smaller number as one box and the larger as several, then count all the boxes.',
    source: COMMON,
  },
  'pairs.counted-once': {
    does: 'counts two numbers and the same two swapped as one',
    help: 'List the pairs in order from the smallest first number, without stopping in the middle.',
    source: COMMON,
  },
  'choices.paired-off': {
    does: 'pairs the things off, one with one, instead of each with each',
    help: 'Draw the first thing and a line from it to each of the others, then do the next.',
    source: COMMON,
  },
  'procedure.step-missed': {
    does: 'leaves out one round of the steps',
    help: 'Tick the rounds off on paper.',
    source: COMMON,
  },
  'procedure.odd-halved': {
    does: 'halves an odd number too and drops the half',
    help: 'Ask the question of the rule aloud before doing anything.',
    source: COMMON,
  },
  'procedure.other-branch': {
    does: 'follows the other branch of the rule',
    help: 'Ask the question of the rule aloud before doing anything.',
    source: COMMON,
  },
} as const satisfies Record<string, Misconception>;
