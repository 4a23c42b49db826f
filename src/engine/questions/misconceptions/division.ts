// Division, what is left over, factors, multiples and primes.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

export const DIVISION_MISCONCEPTIONS = {
  'divide.as-minus': {
    does: 'takes away instead of dividing',
    help: 'Deal the things out one by one and see what each pile gets.',
    source: COMMON,
  },
  'divide.neighbour': {
    does: 'lands one away from the right share',
    help: 'Check by multiplying back.',
    source: COMMON,
  },
  'divide.as-times': {
    does: 'multiplies where the question needs dividing',
    help: 'Ask first whether the answer should be bigger or smaller.',
    source: COMMON,
  },
  'divide.not-undone': {
    does: 'works the numbers out as they are printed instead of working back to the missing number',
    help: 'Cover the gap, read the sentence aloud and ask what undoes it.',
    source: COMMON,
  },
  'divide.digits-alone': {
    does: 'divides each digit on its own and drops what is left over',
    help: 'Split into friendly parts instead: 84 is 60 and 24.',
    source: COMMON,
  },
  'divide.remainder-dropped': {
    does: 'drops what is left over',
    help: 'Multiply back and see how many are still to be shared.',
    source: COMMON,
  },
  'divide.quotient-for-remainder': {
    does: 'gives the number of groups where what is left over is asked for',
    help: 'Ask “groups or left over?” and underline what is wanted.',
    source: COMMON,
  },
  'divide.gap-for-rest': {
    does: 'gives how many are missing to one more group instead of what is left over',
    help: 'Lay the groups out and point at the things that belong to no group.',
    source: COMMON,
  },
  'divide.rest-for-gap': {
    does: 'gives what is left over instead of how many are missing to one more group',
    help: 'Draw the last group with its empty places and count those.',
    source: COMMON,
  },
  'divide.remainder-as-tenths': {
    does: 'writes what is left over after a decimal point',
    help: 'Share the left-over out: 2 left between 5 is two fifths, not two tenths.',
    source: COMMON,
  },
  'divide.remainder-as-one': {
    does: 'counts what is left over as one whole more',
    help: 'Share the left-over out: it gives each only a part of one.',
    source: COMMON,
  },
  'divide.story-rounds-down': {
    does: 'forgets that the ones left over need one more group',
    help: 'Act it out: who would be left standing?',
    source: COMMON,
  },
  'divide.one-or-self': {
    does: 'mixes up dividing by one and dividing a number by itself',
    help: 'Share six apples with one child, then with six children, and compare.',
    source: COMMON,
  },
  'divide.halves-once': {
    does: 'halves once where it takes two or three halvings',
    help: 'Fold a strip: half, then half again.',
    source: COMMON,
  },
  'divide.one-part-only': {
    does: 'divides one part of the number and forgets the other',
    help: 'Write the split underneath the number and divide both parts.',
    source: COMMON,
  },
  'divide.turned-round': {
    does: 'divides the two numbers the other way around',
    help: 'Ask “how many of these fit into that?” and point at both while reading.',
    source: COMMON,
  },
  'group.rounds-down': {
    does: 'drops the part that is left over although one more is needed',
    help: 'Ask: after that many, is the job really done?',
    source: COMMON,
  },
  'group.rounds-up': {
    does: 'counts a group that is not full',
    help: 'Ask: is there enough for one more whole one?',
    source: COMMON,
  },
  'group.left-over-given': {
    does: 'gives what is left over instead of how many groups, or the other way around',
    help: 'Write the sharing out in full: so many groups and so many left over.',
    source: COMMON,
  },
  'factors.pair-by-adding': {
    does: 'looks for two numbers that add up, not two that multiply',
    help: 'Build the number as a rectangle and read its two sides.',
    source: COMMON,
  },
  'factors.ends-forgotten': {
    does: 'forgets 1, the number itself or both when listing factors',
    help: 'List factors in pairs, always starting with 1 and the number.',
    source: COMMON,
  },
  'factors.multiple-mixed-up': {
    does: 'mixes up factors and multiples',
    help: 'Factors fit into the number; multiples are built from it.',
    source: COMMON,
  },
  'factors.last-digit-rule': {
    does: 'looks at the last digit only, whatever the divisor',
    help: 'Try the digit sum for 3 and 9, and the last two digits for 4.',
    source: COMMON,
  },
  'factors.common-not-highest': {
    does: 'stops at a common factor that is not the largest',
    help: 'List the factors of both, ring those in both lists and take the last one.',
    source: COMMON,
  },
  'factors.pairs-counted': {
    does: 'counts the pairs of factors instead of the factors',
    help: 'Write both numbers of each pair in one list, smallest first, and count that.',
    source: COMMON,
  },
  'multiples.adds-the-step': {
    does: 'counts on or back by the step from the number itself instead of finding the nearest multiple',
    help: 'Say the table aloud until it passes the number.',
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
  'primes.odd-means-prime': {
    does: 'takes odd numbers to be prime',
    help: 'Test 9, 15 and 21 with counters: can you make a rectangle more than one row deep?',
    source: COMMON,
  },
  'primes.even-only-composite': {
    does: 'tests for twos only before deciding whether a number is prime',
    help: 'Try 2, 3, 5 and 7 in turn.',
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
} as const satisfies Record<string, Misconception>;
