// Addition and subtraction, of whole numbers and of parts.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

const BROWN_BURTON = 'Brown & Burton 1978; VanLehn 1990';

export const SUM_MISCONCEPTIONS = {
  'operation.swapped': {
    does: 'adds where the question takes away, or takes away where it adds',
    help: 'Ask before working: will the answer be bigger or smaller?',
    source: COMMON,
  },
  'carry.dropped': {
    does: 'forgets to add what was carried',
    help: 'Write the carried ten where it will be added, or add the tens first.',
    source: 'from memory; common practice',
  },
  'carry.written': {
    does: 'writes both digits of a column’s total instead of carrying',
    help: 'Estimate first: could 47 and 38 make more than 100?',
    source: 'from memory; common practice',
  },
  'carry.extra': {
    does: 'carries into the next place although there is nothing to carry',
    help: 'Check the ones with a ten-frame: did they fill it?',
    source: COMMON,
  },
  'carry.always-one': {
    does: 'carries one ten, however many tens the ones make',
    help: 'Say the total of the ones in tens and ones: 25 is 2 tens and 5 ones.',
    source: COMMON,
  },
  'fact.one-out': {
    does: 'is off by one in a basic fact',
    help: 'Work from a double or from a pair that makes ten.',
    source: COMMON,
  },
  'addend.left-out': {
    does: 'leaves one of the numbers out',
    help: 'Tick each number as it is used.',
    source: COMMON,
  },
  'complement.extra-ten': {
    does: 'makes places up to ten and forgets that a full ten moves on',
    help: 'Count up: to the next ten first, then on by tens.',
    source: COMMON,
  },
  'compensate.forgotten': {
    does: 'uses an easier number and forgets to adjust',
    help: 'Say aloud what was added that should not have been.',
    source: COMMON,
  },
  'compensate.wrong-way': {
    does: 'adjusts the wrong way after using an easier number',
    help: 'Draw the jump on a number line: did it go too far or not far enough?',
    source: COMMON,
  },
  'borrow.smaller-from-larger': {
    does: 'takes the smaller digit from the larger in each column, whichever is on top',
    help: 'Act the question out with tens and ones: there are too few ones, so a ten must be broken.',
    source: BROWN_BURTON,
  },
  'borrow.no-decrement': {
    does: 'adds ten to a column but does not take one from the next',
    help: 'Trade a ten for ten ones with blocks and count the tens that are left.',
    source: BROWN_BURTON,
  },
  'borrow.from-zero': {
    does: 'turns a 0 into 9 when borrowing and takes nothing from the place beyond',
    help: 'Rename first: 305 is 30 tens and 5 ones, so taking a ten leaves 29 tens.',
    source: BROWN_BURTON,
  },
  'borrow.across-zero': {
    does: 'skips over a 0 when borrowing and leaves it as 0',
    help: 'Rename first: 305 is 30 tens and 5 ones, so taking a ten leaves 29 tens.',
    source: BROWN_BURTON,
  },
  'borrow.zero-minus-n': {
    does: 'writes the lower digit when taking it from 0',
    help: 'Ask with blocks: can you take 3 ones from no ones?',
    source: BROWN_BURTON,
  },
  'borrow.zero-minus-n-is-zero': {
    does: 'writes 0 when taking a digit from 0',
    help: 'Ask with blocks: can you take 3 ones from no ones?',
    source: 'Brown & Burton 1978, from memory',
  },
  'borrow.needless': {
    does: 'takes one from the next place although nothing was borrowed',
    help: 'Check each column first: is the upper digit large enough?',
    source: COMMON,
  },
  'difference.adds': {
    does: 'adds the two numbers when asked how much more one is',
    help: 'Draw two bars side by side and shade the part that sticks out.',
    source: COMMON,
  },
  'missing.adds-all': {
    does: 'adds all the numbers in sight instead of finding the missing one',
    help: 'Draw the whole as one bar and the known part inside it.',
    source: 'from memory (Falkner, Levi & Carpenter 1999)',
  },
  'missing.number-repeated': {
    does: 'repeats a number that is there instead of finding the missing one',
    help: 'Write the answer into the gap and read the whole sentence aloud: is it true?',
    source: COMMON,
  },
  'missing.same-operation': {
    does: 'does the same operation again instead of undoing it',
    help: 'Tell it backwards: what was there before?',
    source: COMMON,
  },
  'halfway.gap': {
    does: 'gives half of the gap instead of the number in the middle',
    help: 'Draw the two numbers on a line and jump half the gap on from the first.',
    source: COMMON,
  },
  'halfway.end': {
    does: 'goes half the gap on from the larger number instead of from the smaller one',
    help: 'Draw the two numbers on a line and mark the middle: it lies between them.',
    source: COMMON,
  },
  'exact.point-ignored': {
    does: 'adds or takes a whole number at the last digit, as if there were no point',
    help: 'Say the places: 2 is two ones, so only the ones change.',
    source: COMMON,
  },
  'exact.part-kept': {
    does: 'works on the whole parts only and keeps the other part unchanged',
    help: 'Go to the next whole number first, then on from there.',
    source: COMMON,
  },
  'exact.part-dropped': {
    does: 'works on the whole parts and drops the rest',
    help: 'Say both parts aloud, the whole and the rest, before and after.',
    source: COMMON,
  },
  'exact.whole-to-top': {
    does: 'adds a whole number to the top of the fraction, or takes it from there',
    help: 'Draw whole bars beside the parts: 4 more are four whole bars, not four parts.',
    source: COMMON,
  },
  'exact.one-too-many': {
    does: 'makes up the part and the whole separately, which is one whole too many',
    help: 'Count up to the next whole number first: that already uses one whole.',
    source: COMMON,
  },
  'exact.whole-not-carried': {
    does: 'forgets the whole that the parts make together',
    help: 'Add the parts first and ask whether they fill another whole.',
    source: COMMON,
  },
} as const satisfies Record<string, Misconception>;
