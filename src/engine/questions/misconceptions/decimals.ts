// Decimals and percentages.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

export const DECIMAL_MISCONCEPTIONS = {
  'decimals.whole-number': {
    does: 'reads the digits after the point as a whole number',
    help: 'Write both with the same number of digits after the point, or build them with tenths and hundredths.',
    source: 'Whole-number rule: Sackur-Grisvard & Leonard 1985; Martinie 2007, abstract',
  },
  'decimals.longer-larger': {
    does: 'takes the decimal with more digits to be larger',
    help: 'Place both on a number line marked in tenths.',
    source: 'Longer-is-larger: Stacey & Steinle, University of Melbourne decimals pages',
  },
  'decimals.shorter-larger': {
    does: 'takes the decimal with fewer digits to be larger',
    help: 'Compare tenths first, then hundredths.',
    source: 'Shorter-is-larger: Stacey & Steinle, University of Melbourne decimals pages',
  },
  'decimals.parts-apart': {
    does: 'works with the digits before and after the point as two separate whole numbers',
    help: 'Ten tenths make one whole: trade them with blocks.',
    source: COMMON,
  },
  'decimals.whole-part-only': {
    does: 'multiplies the whole part and leaves the part after the point as it was',
    help: 'Write both parts out: 2 wholes and 6 tenths, each taken three times.',
    source: COMMON,
  },
  'decimals.right-aligned': {
    does: 'lines the digits up at the right end instead of at the point',
    help: 'Write the point first, one below the other, or fill up with a zero.',
    source: 'right-aligned subtraction (4.7 − 0.24 as 0.23), seen as quoted by another text',
  },
  'decimals.zero-appended': {
    does: 'writes zeros at the end, as for a whole number',
    help: 'Slide the digits on a place-value chart: tenths become ones.',
    source: 'x10 adds a zero (2.5 × 10 as 2.50), seen as quoted by another text',
  },
  'decimals.point-forgotten': {
    does: 'leaves the decimal point out of the answer',
    help: 'Estimate with whole numbers first: 3.6 × 4 is a bit less than 16.',
    source: COMMON,
  },
  'decimals.place-missed': {
    does: 'moves the digits one place too many or too few',
    help: 'Say what one tenth or one hundredth of ten is, and check against that.',
    source: COMMON,
  },
  'decimals.cut-short': {
    does: 'cuts the digits off instead of rounding to the nearest',
    help: 'Mark on a line what it lies between: which end is nearer?',
    source: COMMON,
  },
  'decimals.rounds-up-always': {
    does: 'rounds up whatever comes after',
    help: 'Find the middle between the two nearest first.',
    source: COMMON,
  },
  'decimals.whole-too-many': {
    does: 'fills up the part and the whole as well, ending one whole too far',
    help: 'Check by adding back: 3.6 and 0.4 make 4.',
    source: COMMON,
  },
  'decimals.tenths-as-ones': {
    does: 'counts tenths as if they were ones',
    help: 'Point to the place on a chart while saying “tenths”.',
    source: COMMON,
  },
  'decimals.hundredths-as-tenths': {
    does: 'takes tenths for hundredths or the other way around',
    help: 'Show one tenth as ten hundredths on a square of a hundred.',
    source: COMMON,
  },
  'percent.as-amount': {
    does: 'uses the number before the % sign as if it were the amount itself',
    help: 'Ask “15 out of every hundred of what?”.',
    source: COMMON,
  },
  'percent.divides-by-it': {
    does: 'divides by the number before the % sign',
    help: 'Build it from 10%, which is a tenth; 20% is a fifth.',
    source: COMMON,
  },
  'percent.times-it': {
    does: 'multiplies by the number before the % sign',
    help: 'Say it as a part of the whole: 100% is all of it, 50% is half, 25% is a quarter.',
    source: COMMON,
  },
  'percent.times-in-whole': {
    does: 'says how many times the part fits into the whole, not what percentage it is',
    help: 'Go on from there: if it fits four times, it is a quarter, and a quarter of a hundred is 25.',
    source: COMMON,
  },
  'percent.step-forgotten': {
    does: 'stops at an easy percentage, such as 10%, and forgets the last step',
    help: 'Write the easy percentage first and then how the one asked for is made of it.',
    source: COMMON,
  },
  'percent.discount-for-price': {
    does: 'gives the amount taken off or added, not the new price',
    help: 'Draw a bar for the old price, then cut the discount off it or join the rise to it.',
    source: COMMON,
  },
  'percent.tenths-as-percent': {
    does: 'reads tenths as hundredths, 0.4 as 4%',
    help: 'Shade 0.4 on a square of a hundred: that is 40 small squares.',
    source: COMMON,
  },
  'percent.count-as-percent': {
    does: 'writes the count as a percentage although the whole is not a hundred',
    help: 'Scale the whole to a hundred first.',
    source: COMMON,
  },
} as const satisfies Record<string, Misconception>;
