// Place value, addition, subtraction, patterns and algebra.
import type { Misconception } from '../misconceptions.js';

const BROWN_BURTON = 'Brown & Burton 1978; VanLehn 1990';
const COMMON = 'common practice';

export const ADDITIVE_MISCONCEPTIONS = {
  'count.off-by-one': {
    does: 'counts the starting number as the first step and so ends one out',
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
  'operation.swapped': {
    does: 'adds where the question takes away, or takes away where it adds',
    help: 'Ask for the story in the child’s own words first: does the amount grow or shrink?',
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
    help: 'Mark the two neighbours and the halfway point on a number line.',
    source: COMMON,
  },
  'round.always-up': {
    does: 'always rounds up',
    help: 'Mark the two neighbours and the halfway point on a number line.',
    source: COMMON,
  },
  'round.halfway-down': {
    does: 'rounds a number exactly halfway down instead of up',
    help: 'Mark the halfway point on a number line and agree: from here on it goes up.',
    source: COMMON,
  },
  'round.wrong-place': {
    does: 'rounds to a different place from the one asked for',
    help: 'Say the two neighbours first: the tens on each side, or the hundreds on each side.',
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
    does: 'is one out in a basic fact',
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
    help: 'Count up: to the next ten first, then on in tens.',
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
  'estimate.exact': {
    does: 'works out the exact answer instead of rounding first',
    help: 'Cross the numbers out and write the round ones above before adding.',
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
  'pattern.last-again': {
    does: 'repeats the last item instead of going on with the pattern',
    help: 'Chant the pattern together and clap where it starts again.',
    source: COMMON,
  },
  'pattern.starts-over': {
    does: 'starts the pattern again too early',
    help: 'Circle the part that repeats.',
    source: COMMON,
  },
  'pattern.adds-one': {
    does: 'counts in ones instead of in the steps of the pattern',
    help: 'Write the step between each pair of neighbours.',
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
  'order.left-to-right': {
    does: 'works strictly from left to right',
    help: 'Underline the multiplication or division and do it first.',
    source: COMMON,
  },
  'order.brackets-ignored': {
    does: 'passes over the brackets',
    help: 'Circle the brackets and write their value above.',
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
    help: 'Read 2 × n as “two lots of n”.',
    source: 'from memory (Küchemann 1981)',
  },
  'negative.turned-round': {
    does: 'turns the subtraction round so that nothing goes below zero',
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
} as const satisfies Record<string, Misconception>;
