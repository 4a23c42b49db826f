// Multiplication, squares and ratio.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

export const PRODUCT_MISCONCEPTIONS = {
  'times.as-plus': {
    does: 'adds the numbers instead of multiplying them',
    help: 'Build the groups with counters and say “three groups of four” before writing the sign.',
    source: COMMON,
  },
  'times.as-divide': {
    does: 'divides where the question needs multiplying',
    help: 'Read the sign as “groups of” and ask first: will the answer be more or less than the number?',
    source: COMMON,
  },
  'times.neighbour': {
    does: 'lands on the fact next door, one group too many or too few',
    help: 'Start from a fact the child is sure of, such as five groups, and step one group up or down.',
    source:
      'Wrong products tend to lie near the right one in the tables: Domahs, Delazer & Nuerk 2006, abstract; the fact next door is common practice',
  },
  'times.zero-keeps': {
    does: 'leaves a number as it is when multiplying by zero',
    help: 'Ask for “no bags of six apples” and count what is there.',
    source: 'N × 0 = N: from memory',
  },
  'times.one-adds': {
    does: 'adds one instead of taking one group',
    help: 'Show one bag of six: one group of six is just six.',
    source: COMMON,
  },
  'times.always-more': {
    does: 'thinks that multiplying always makes a number bigger',
    help: 'Read 1/2 × 10 as half of 10 and compare with 10.',
    source: COMMON,
  },
  'times.zero-one-mixed': {
    does: 'mixes up multiplying by zero and multiplying by one',
    help: 'Show no bags of six, then one bag of six, and say how many apples there are.',
    source: COMMON,
  },
  'times.adds-two': {
    does: 'adds 2 instead of doubling',
    help: 'Put the same number of counters beside the first ones: doubling is once more the same.',
    source: COMMON,
  },
  'times.adds-among-factors': {
    does: 'adds where all the numbers have to be multiplied',
    help: 'Multiply two of them, write the product down, then multiply it by the third.',
    source: COMMON,
  },
  'times.zero-count': {
    does: 'writes one zero too many or too few',
    help: 'Say the product as tens or hundreds first: 6 × 4 tens is 24 tens.',
    source: COMMON,
  },
  'times.columns-alone': {
    does: 'multiplies column by column and writes the results side by side',
    help: 'Draw the rectangle in four parts and find each part.',
    source: 'columns multiplied separately: from memory',
  },
  'times.tens-only': {
    does: 'multiplies the tens but leaves the ones as they were',
    help: 'Split the array into a tens part and a ones part, and multiply both.',
    source: COMMON,
  },
  'times.largest-only': {
    does: 'multiplies the largest part and leaves the rest as it was',
    help: 'Write the parts underneath the number and multiply each of them.',
    source: COMMON,
  },
  'times.carry-forgotten': {
    does: 'forgets what is carried over into the next place',
    help: 'Write the two parts in full and add them: 40 × 6 and 7 × 6.',
    source: COMMON,
  },
  'times.cross-forgotten': {
    does: 'multiplies tens by tens and ones by ones, and leaves out the two mixed parts',
    help: 'Draw the rectangle in four parts and tick each part as it is found.',
    source: COMMON,
  },
  'times.ones-left-out': {
    does: 'multiplies by the tens and leaves the ones out',
    help: 'Split the second number into tens and ones, and tick each part off.',
    source: COMMON,
  },
  'times.ones-added': {
    does: 'multiplies by the tens but adds the ones instead of multiplying by them',
    help: 'Ask “how many groups are still to come?” after the tens.',
    source: COMMON,
  },
  'times.product-for-factor': {
    does: 'gives the product where the missing factor is asked for',
    help: 'Cover the gap and ask “how many groups?”, not “how much in all?”.',
    source: COMMON,
  },
  'times.square-doubles': {
    does: 'doubles the number instead of multiplying it by itself',
    help: 'Draw a square of dots: seven rows of seven, not two rows.',
    source: COMMON,
  },
  'times.cube-as-three': {
    does: 'multiplies by three because the number stands there three times',
    help: 'Build the cube: a layer first, then as many layers as its side is long.',
    source: COMMON,
  },
  'times.adjust-forgotten': {
    does: 'uses an easier number but forgets to put it right at the end',
    help: 'Write the easy product first, then ask “how many groups too many?”.',
    source: COMMON,
  },
  'times.adjust-by-one': {
    does: 'puts the easier product right by one instead of by one whole group',
    help: 'Ask “one what?”: one more group, not one more thing.',
    source: COMMON,
  },
  'times.step-forgotten': {
    does: 'stops one step early and leaves out the last one',
    help: 'Jot each step below the last and tick the steps off.',
    source: COMMON,
  },
  'times.step-extra': {
    does: 'doubles once more than is needed',
    help: 'Write what each doubling gives: 2 times, 4 times, 8 times.',
    source: COMMON,
  },
  'squares.root-given': {
    does: 'gives the number that is squared instead of its square',
    help: 'Draw the square of dots: the side is one thing, all the dots another.',
    source: COMMON,
  },
  'squares.next-door': {
    does: 'takes the square number next door',
    help: 'Write the square numbers in a row and mark where the number lies.',
    source: COMMON,
  },
  'squares.root-one-out': {
    does: 'is off by one in the number that is multiplied by itself',
    help: 'Multiply the answer by itself: does it make the number in the question?',
    source: COMMON,
  },
  'squares.divided-by-four': {
    does: 'divides by 4, the number of sides of a square',
    help: 'Build a square of dots: its rows are as many as the dots in one row.',
    source: COMMON,
  },
  'ratio.adds': {
    does: 'adds or takes away where one amount is so many times the other',
    help: 'Draw one bar and copy it as many times as the story says.',
    source: 'from memory (Hart 1981, on ratio and proportion)',
  },
  'ratio.order-swapped': {
    does: 'gives the two parts in the wrong order',
    help: 'Write the names above the numbers before writing the numbers.',
    source: COMMON,
  },
  'ratio.not-simplified': {
    does: 'leaves the ratio as it stands although both numbers share a factor',
    help: 'Ask for a number that divides both.',
    source: COMMON,
  },
  'ratio.one-group': {
    does: 'stops at one group or one item',
    help: 'Ask how many such groups there are in all.',
    source: COMMON,
  },
  'ratio.part-to-part': {
    does: 'takes the other part instead of the one asked for',
    help: 'Shade the part asked for in a bar with both parts.',
    source: COMMON,
  },
  'ratio.divides': {
    does: 'compares by dividing where the difference is asked for',
    help: 'Lay two bars side by side and shade the part that sticks out.',
    source: COMMON,
  },
  'ratio.factor-given': {
    does: 'gives how many times as much it is instead of the amount',
    help: 'Write the unit after every number: times, cups or pots?',
    source: COMMON,
  },
  'ratio.one-number-divides': {
    does: 'divides by one number of the ratio instead of by all the parts',
    help: 'Draw a bar with all the parts of the ratio and count them.',
    source: COMMON,
  },
} as const satisfies Record<string, Misconception>;
