// Counting, comparing, place value, rounding and estimates, Roman numerals, numbers below zero.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

export const PLACE_VALUE_MISCONCEPTIONS = {
  'count.off-by-one': {
    does: 'counts the starting number as the first step and so ends up off by one',
    help: 'Touch the starting number on a number line, then count the jumps, not the numbers.',
    source: 'from memory (Fuson 1992)',
  },
  'count.too-far': {
    does: 'goes one step too far',
    help: 'Stop at each number on the way and ask: is this already the one?',
    source: COMMON,
  },
  'count.wrong-way': {
    does: 'goes the wrong way along the numbers',
    help: 'Say “more” and “less” while stepping right and left on a number line.',
    source: COMMON,
  },
  'compare.reversed': {
    does: 'picks the other end of the order',
    help: 'Place the numbers on a number line and point to the side that is greater.',
    source: COMMON,
  },
  'compare.last-digit': {
    does: 'compares numbers by their last digits',
    help: 'Compare the largest places first; cover the ones and look again.',
    source: COMMON,
  },
  'compare.other-way-round': {
    does: 'gives the smaller where the larger is asked for, or the larger where the smaller is asked for',
    help: 'Let the child place both on a number line, then read the question again.',
    source: COMMON,
  },
  'place.face-value': {
    does: 'reads a digit by itself and not by its place',
    help: 'Build the number with tens and ones, then show which blocks the digit stands for.',
    source: 'from memory (Ross 1989)',
  },
  'place.reversed': {
    does: 'swaps the digits',
    help: 'Say the tens first, then write each digit under a place heading.',
    source: COMMON,
  },
  'place.teen-and-ty': {
    does: 'mixes up the -teen and the -ty numbers, such as thirteen and thirty',
    help: 'Stretch the end of the word, and build both numbers: thirteen is ten and three, thirty is three tens.',
    source: COMMON,
  },
  'place.neighbour': {
    does: 'takes the place next to the one asked for',
    help: 'Write the place headings above the digits and point before answering.',
    source: COMMON,
  },
  'place.only-the-digit': {
    does: 'gives the digit in that place instead of how many there are altogether',
    help: 'Bundle the hundreds back into tens: how many bundles of ten are there in all?',
    source: COMMON,
  },
  'place.next-word': {
    does: 'gives the number that comes next in counting',
    help: 'Keep a strip of the numbers with their words in sight and touch both together.',
    source: COMMON,
  },
  'place.zero-lost': {
    does: 'leaves out the zero that holds an empty place',
    help: 'Fill a place chart and write 0 where a column is empty.',
    source: COMMON,
  },
  'place.written-as-heard': {
    does: 'writes each part out in full, one after the other',
    help: 'Lay number cards for the parts on top of one another: the 5 covers the last 0 of 300.',
    source: COMMON,
  },
  'place.wrong-step': {
    does: 'changes a different place from the one asked for',
    help: 'Name the digit that will change before working it out.',
    source: COMMON,
  },
  'place.no-rename': {
    does: 'does not carry on into the next place when a digit passes 9 or 0',
    help: 'Count on with blocks and trade ten of them when a column is full.',
    source: COMMON,
  },
  'place.misaligned': {
    does: 'lines numbers up from the left, so that ones are added to tens',
    help: 'Line up ones under ones; place headings help.',
    source: COMMON,
  },
  'place.value-for-count': {
    does: 'mixes up how many there are of a place with what they are worth',
    help: 'Lay out the blocks: four ten-sticks are 4 tens, and they are worth 40.',
    source: COMMON,
  },
  'place.count-added': {
    does: 'adds the number to one ten or one hundred instead of counting that many of them',
    help: 'Lay the bundles out and count them aloud: ten, twenty, thirty.',
    source: COMMON,
  },
  'place.arranged-as-given': {
    does: 'leaves the digits in the order in which they are given',
    help: 'Write each digit on a card and move the cards about.',
    source: COMMON,
  },
  'place.arranged-upward': {
    does: 'puts the digits in the opposite order',
    help: 'Ask which digit should stand in the largest place.',
    source: COMMON,
  },
  'parity.swapped': {
    does: 'mixes up the words odd and even',
    help: 'Pair up counters: an odd one is left over, an even number has none.',
    source: COMMON,
  },
  'parity.first-digit': {
    does: 'looks at the first digit to tell odd from even',
    help: 'Only the ones matter: tens always make pairs.',
    source: COMMON,
  },
  'round.cut-off': {
    does: 'cuts the end off instead of choosing the nearer number',
    help: 'Mark the numbers on both sides and the halfway point on a number line.',
    source: COMMON,
  },
  'round.always-up': {
    does: 'always rounds up',
    help: 'Mark the numbers on both sides and the halfway point on a number line.',
    source: COMMON,
  },
  'round.halfway-down': {
    does: 'rounds down, instead of up, when a number is exactly halfway',
    help: 'Mark the halfway point on a number line and agree: from here on it goes up.',
    source: COMMON,
  },
  'round.wrong-place': {
    does: 'rounds to a different place from the one asked for',
    help: 'Say first what it lies between: the tens on each side, or the hundreds on each side.',
    source: COMMON,
  },
  'round.digit-only': {
    does: 'gives the rounded digit without the zeros behind it',
    help: 'Ask how large the rounded number should be: near the start, or far from it?',
    source: COMMON,
  },
  'round.in-steps': {
    does: 'rounds in stages, so that a number just below halfway is pushed up',
    help: 'Round once, straight from the number itself.',
    source: COMMON,
  },
  'estimate.exact': {
    does: 'works out the exact answer instead of rounding first',
    help: 'Cross the numbers out and write the round ones above before adding.',
    source: COMMON,
  },
  'estimate.one-place-out': {
    does: 'estimates ten times too large or too small',
    help: 'Say the rounded numbers aloud with their places: 40 times 6 is 24 tens.',
    source: COMMON,
  },
  'roman.always-adds': {
    does: 'adds every letter, also a smaller one that stands before a larger one',
    help: 'Look for a smaller letter in front of a larger one first: it is taken away.',
    source: COMMON,
  },
  'roman.four-alike': {
    does: 'writes the same letter four times instead of a smaller letter before a larger one',
    help: 'Lay letter cards: in place of a fourth card alike, put one smaller letter before the next larger one, as in IV and IX.',
    source: COMMON,
  },
  'roman.letters-mixed': {
    does: 'mixes up the worth of two Roman letters',
    help: 'Make a strip with I, V, X, L, C, D, M and their numbers and keep it in view.',
    source: COMMON,
  },
  'negative.turned-round': {
    does: 'turns the subtraction around so that nothing goes below zero',
    help: 'Step back along a number line that goes on past zero.',
    source: COMMON,
  },
  'negative.zero-counted': {
    does: 'counts zero twice or not at all when crossing it',
    help: 'Go to zero first, then see how much is still to take.',
    source: COMMON,
  },
  'negative.sign-lost': {
    does: 'loses the minus sign',
    help: 'Ask which side of zero the answer lies on.',
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
} as const satisfies Record<string, Misconception>;
