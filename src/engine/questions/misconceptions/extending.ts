// Roman numerals, numbers below zero, multiples, factors and squares, ratio, estimates, expressions and procedures.
import type { Misconception } from '../misconceptions.js';

const COMMON = 'common practice';

export const EXTENDING_MISCONCEPTIONS = {
  'roman.always-adds': {
    does: 'adds every letter, also a smaller one that stands before a larger one',
    help: 'Look for a smaller letter in front of a larger one first: it is taken away.',
    source: COMMON,
  },
  'roman.letters-mixed': {
    does: 'mixes up the worth of two Roman letters',
    help: 'Make a strip with I, V, X, L, C, D, M and their numbers and keep it in view.',
    source: COMMON,
  },
  'negative.size-not-order': {
    does: 'orders numbers below zero by their size, as if they were above it',
    help: 'Hold a thermometer upright and ask which of the two is lower.',
    source: COMMON,
  },
  'negative.same-number': {
    does: 'gives the number itself instead of its opposite',
    help: 'Fold a number line at zero and see where the number lands.',
    source: COMMON,
  },
  'negative.opposite-is-double': {
    does: 'doubles the number instead of going to the other side of zero',
    help: 'Fold a number line at zero and see where the number lands.',
    source: COMMON,
  },
  'multiples.near-miss': {
    does: 'picks a number near a multiple instead of the multiple itself',
    help: 'Say the table aloud and touch the numbers that come up.',
    source: COMMON,
  },
  'multiples.product': {
    does: 'multiplies the two numbers although a smaller multiple will do',
    help: 'Say the table of the larger number and stop at the first that fits.',
    source: COMMON,
  },
  'multiples.sum': {
    does: 'adds the two numbers instead of finding a multiple of both',
    help: 'Say the table of the larger number and stop at the first that the other divides too.',
    source: COMMON,
  },
  'factors.common-not-highest': {
    does: 'stops at a common factor that is not the highest',
    help: 'List the factors of both, ring those in both lists and take the last one.',
    source: COMMON,
  },
  'factors.pairs-counted': {
    does: 'counts the pairs of factors instead of the factors',
    help: 'Write both numbers of each pair in one list, smallest first, and count that.',
    source: COMMON,
  },
  'primes.words-swapped': {
    does: 'mixes up the words prime and composite',
    help: 'A composite number makes a rectangle more than one row deep; a prime number does not.',
    source: COMMON,
  },
  'primes.first-passed-over': {
    does: 'passes over the first prime number and gives the next',
    help: 'Test every number in turn and stop at the first that has no other pair.',
    source: COMMON,
  },
  'primes.largest-factor': {
    does: 'gives the largest factor without asking whether it is prime',
    help: 'Split each factor again until no part can be split.',
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
    does: 'is one out in the number that is multiplied by itself',
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
    help: 'Write the unit after every number: times, cups or tins?',
    source: COMMON,
  },
  'ratio.one-number-divides': {
    does: 'divides by one number of the ratio instead of by all the parts',
    help: 'Draw a bar with all the parts of the ratio and count them.',
    source: COMMON,
  },
  'estimate.one-place-out': {
    does: 'estimates ten times too large or too small',
    help: 'Say the rounded numbers aloud with their places: 40 times 6 is 24 tens.',
    source: COMMON,
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
  'letter.lone-not-counted': {
    does: 'does not count a letter that stands without a number',
    help: 'Write n as 1n once, then add the numbers in front.',
    source: COMMON,
  },
  'letter.first-in-brackets': {
    does: 'multiplies only the first part in the brackets',
    help: 'Draw the bracket as many times as it is taken and count both parts.',
    source: COMMON,
  },
  'letter.sides-swapped': {
    does: 'swaps the two sides of a subtraction or a division',
    help: 'Put a small number in for the letter and act the words out.',
    source: COMMON,
  },
  'plus.as-times': {
    does: 'multiplies the two numbers instead of adding them',
    help: 'Ask whether there are several equal lots or one amount and then some more.',
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
  'equals.difference-wrong-way': {
    does: 'changes the missing number the opposite way, although a difference stays when both numbers change alike',
    help: 'Mark both numbers on a number line and slide the pair along together.',
    source: COMMON,
  },
  'exact.whole-not-carried': {
    does: 'forgets the whole that the parts make together',
    help: 'Add the parts first and ask whether they fill another whole.',
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
