// Fractions, and parts of a quantity wherever they are measured.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

export const FRACTION_MISCONCEPTIONS = {
  'fractions.top-for-bottom': {
    does: 'mixes up the top and the bottom number',
    help: 'Bottom: how many equal parts make one whole. Top: how many of them we have.',
    source: COMMON,
  },
  'fractions.part-to-rest': {
    does: 'compares the part with the rest instead of with the whole',
    help: 'Count all the parts first and write that number below.',
    source: COMMON,
  },
  'fractions.add-tops-bottoms': {
    does: 'adds the tops and adds the bottoms',
    help: 'Name the parts: three eighths and two eighths are five eighths, still eighths.',
    source: 'Young-Loveridge et al. 2006, abstract (3/4 + 7/8 as 10/12); NFER commentary (6/14 for 6/7)',
  },
  'fractions.subtract-tops-bottoms': {
    does: 'takes top from top and bottom from bottom',
    help: 'Name the parts: the kind of part does not change when some are taken away.',
    source: COMMON,
  },
  'fractions.not-renamed': {
    does: 'adds or takes the tops without making the parts the same size first',
    help: 'Cut a bar of quarters again into eighths before counting.',
    source:
      'common denominators raise difficulty in fraction subtraction (Tatsuoka data); the slip is common practice',
  },
  'fractions.bigger-bottom-bigger': {
    does: 'thinks that a bigger bottom number means a bigger fraction',
    help: 'Share one bar among four, then among eight: who gets more?',
    source: COMMON,
  },
  'fractions.smaller-bottom-bigger': {
    does: 'looks only at how big the parts are and not at how many there are',
    help: 'Ask both questions: how big are the parts, and how many?',
    source: COMMON,
  },
  'fractions.smaller-numbers-bigger': {
    does: 'thinks that a smaller number always makes a bigger fraction',
    help: 'With parts of one size, more parts are more: shade both on equal bars.',
    source: COMMON,
  },
  'fractions.bigger-numbers-bigger': {
    does: 'takes the fraction written with the bigger numbers to be bigger',
    help: 'Draw both on bars of the same length.',
    source: COMMON,
  },
  'fractions.one-part-only': {
    does: 'finds one part and forgets to take as many as the top says',
    help: 'Draw the bar, find one part, then shade as many as the top number says.',
    source: COMMON,
  },
  'fractions.takes-top': {
    does: 'divides by the top number instead of the bottom number',
    help: 'The bottom number says how many equal parts to make.',
    source: COMMON,
  },
  'fractions.top-forgotten': {
    does: 'multiplies by the bottom number and forgets to divide by the top number',
    help: 'Find one of the parts first; the top number says how many parts there are.',
    source: COMMON,
  },
  'fractions.bottom-forgotten': {
    does: 'divides by the top number and leaves the bottom number out',
    help: 'Write the whole in those parts first: 2 is six thirds.',
    source: COMMON,
  },
  'fractions.part-left': {
    does: 'finds the part that is left over instead of the part asked for',
    help: 'Underline what is asked and shade it on a bar.',
    source: COMMON,
  },
  'fractions.part-for-whole': {
    does: 'gives a number out of the fraction instead of the whole number',
    help: 'Read it aloud, with a stop after the wholes: three wholes, and two thirds.',
    source: COMMON,
  },
  'fractions.whole-kept': {
    does: 'keeps the whole number although it is already there',
    help: 'Cover the wholes on both sides and see what remains.',
    source: COMMON,
  },
  'fractions.equal-by-adding': {
    does: 'adds the same amount to top and bottom, or takes it away, to make an equal fraction',
    help: 'Cut every part of a bar in two: both numbers double.',
    source: COMMON,
  },
  'fractions.top-unchanged': {
    does: 'changes one of the two numbers but keeps the other as it was',
    help: 'Cut every part of a bar in two and count the shaded parts again.',
    source: COMMON,
  },
  'fractions.divisor-given': {
    does: 'gives the number that top and bottom are divided by',
    help: 'Write the new fraction out in full and put the answer into its gap.',
    source: COMMON,
  },
  'fractions.factor-missed': {
    does: 'misses a factor that both numbers share',
    help: 'Try 2, 3 and 5 in turn on both numbers, and again after each step.',
    source: COMMON,
  },
  'fractions.factor-imagined': {
    does: 'sees a shared factor where there is none',
    help: 'Write the factors of both numbers in two rows and look for one in both.',
    source: COMMON,
  },
  'fractions.whole-ignored': {
    does: 'leaves out the whole part of the number',
    help: 'Draw the whole bars too, cut into the same parts.',
    source: COMMON,
  },
  'fractions.whole-as-one-part': {
    does: 'counts each whole as one part',
    help: 'One whole is four quarters: draw it and count.',
    source: COMMON,
  },
  'fractions.digits-joined': {
    does: 'reads the digits of a mixed number side by side',
    help: 'Read it aloud: one and three quarters.',
    source: COMMON,
  },
  'fractions.parts-as-number': {
    does: 'gives the number of parts without saying which parts they are',
    help: 'Ask “one what?”: one quarter, written 1/4.',
    source: COMMON,
  },
  'fractions.steps-by-whole': {
    does: 'steps by a whole one instead of by one part',
    help: 'Jump along a number line marked in these parts: one part is one small jump.',
    source: COMMON,
  },
  'fractions.counts-both': {
    does: 'counts both numbers on by one',
    help: 'Say it in words: two fifths, three fifths, four fifths; the fifths stay fifths.',
    source: COMMON,
  },
  'fractions.counts-bottom': {
    does: 'counts the bottom number on instead of the top number',
    help: 'Say it in words: two fifths, three fifths, four fifths; the fifths stay fifths.',
    source: COMMON,
  },
  'fractions.marks-counted': {
    does: 'counts the marks instead of the steps between them',
    help: 'Draw each jump as an arc and count the arcs from 0 to 1.',
    source: COMMON,
  },
  'fractions.complement-of-top': {
    does: 'repeats the parts that are given instead of finding the rest of the whole',
    help: 'Shade the bar and count the empty parts.',
    source: COMMON,
  },
  'fractions.multiplies-both': {
    does: 'multiplies top and bottom by the whole number',
    help: 'Three groups of two fifths: count fifths, 2, 4, 6 fifths.',
    source: COMMON,
  },
  'fractions.two-on-both': {
    does: 'doubles or halves both numbers of the fraction, which leaves it as large as it was',
    help: 'Shade the fraction on a bar: twice as much takes twice as many parts, and the parts stay the same size.',
    source: COMMON,
  },
  'fractions.multiplies-bottom': {
    does: 'multiplies the bottom number instead of the top number',
    help: 'Three groups of two fifths: count fifths, 2, 4, 6 fifths.',
    source: COMMON,
  },
  'fractions.always-less': {
    does: 'thinks that a fraction of a number is always less than the number',
    help: 'Take three halves of 10: one half is 5, so three are 15.',
    source: COMMON,
  },
  'fractions.whole-added-to-top': {
    does: 'adds the whole number to the top number instead of multiplying',
    help: 'Draw the fraction as many times as the whole number says and count the parts.',
    source: COMMON,
  },
  'fractions.bottom-only': {
    does: 'uses only one of the two numbers of the fraction',
    help: 'Draw a rectangle cut both ways and count the small parts.',
    source: COMMON,
  },
  'fractions.divides-as-times': {
    does: 'multiplies by the fraction when it should be dividing',
    help: 'Ask “how many quarters fit into it?” and count them on a bar.',
    source: COMMON,
  },
  'fractions.one-whole-only': {
    does: 'finds how many fit into one whole and stops there',
    help: 'Draw one bar for each whole and count the pieces in all the bars.',
    source: COMMON,
  },
  'fractions.digits-after-point': {
    does: 'copies the digits of a fraction into the decimal or percentage, or the other way around',
    help: 'Rename it in tenths or hundredths first.',
    source: COMMON,
  },
  'part.one-only': {
    does: 'finds one of the equal parts and stops',
    help: 'Draw a bar in equal parts and shade as many as the top number says.',
    source: COMMON,
  },
  'part.rest-given': {
    does: 'gives the part that was not asked for',
    help: 'Draw a bar, label both parts and point at the one in the question.',
    source: COMMON,
  },
  'part.half-for-quarter': {
    does: 'works with a half where a quarter is meant',
    help: 'Fold a strip in half and in half again: a quarter is half of a half.',
    source: COMMON,
  },
  'part.divided-by-top': {
    does: 'divides by the top number of the fraction instead of the bottom number',
    help: 'The bottom number says how many equal parts the whole is cut into.',
    source: COMMON,
  },
  'part.bottom-as-amount': {
    does: 'takes the bottom number of the fraction as the amount itself',
    help: 'A quarter is not 4: it is one of four equal parts. Draw the parts.',
    source: COMMON,
  },
  'part.whole-given': {
    does: 'gives the whole instead of the part asked for',
    help: 'Point to the whole and to each part in the drawing before answering.',
    source: COMMON,
  },
} as const satisfies Record<string, Misconception>;
