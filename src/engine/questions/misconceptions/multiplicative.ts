// Multiplication, division, fractions, decimals, percentages.
import type { Misconception } from '../misconceptions.js';

const COMMON = 'common practice';

export const MULTIPLICATIVE_MISCONCEPTIONS = {
  'times.as-plus': {
    does: 'adds the numbers instead of multiplying them',
    help: 'Build the groups with counters and say “three lots of four” before writing the sign.',
    source: COMMON,
  },
  'times.as-divide': {
    does: 'divides where the question needs multiplying',
    help: 'Read the sign as “lots of” and ask first: will the answer be more or less than the number?',
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
    does: 'adds one instead of taking one lot',
    help: 'Show one bag of six: one lot of six is just six.',
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
    help: 'Cover the gap and ask “how many lots?”, not “how much in all?”.',
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
  'multiples.adds-the-step': {
    does: 'counts on or back by the step instead of finding the number next to it in the table',
    help: 'Say the table aloud until it passes the number.',
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
    does: 'does the sum as it is printed instead of working back to the missing number',
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
  'compare.other-way-round': {
    does: 'gives the smaller where the larger is asked for, or the larger where the smaller is asked for',
    help: 'Let the child place both on a number line, then read the question again.',
    source: COMMON,
  },
  'operation.swapped': {
    does: 'adds where the question takes away, or takes away where it adds',
    help: 'Ask before working: will the answer be bigger or smaller?',
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
    help: 'Three lots of two fifths: count fifths, 2, 4, 6 fifths.',
    source: COMMON,
  },
  'fractions.multiplies-bottom': {
    does: 'multiplies the bottom number instead of the top number',
    help: 'Three lots of two fifths: count fifths, 2, 4, 6 fifths.',
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
  'fractions.divides-wrong-way': {
    does: 'makes the parts bigger when dividing them',
    help: 'Share half a bar between two: is the share bigger or smaller than the half?',
    source: COMMON,
  },
  'fractions.digits-after-point': {
    does: 'copies the digits of a fraction into the decimal or percent, or the other way around',
    help: 'Rename it in tenths or hundredths first.',
    source: COMMON,
  },
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
    help: 'Mark the number between its two neighbours on a line: which is nearer?',
    source: COMMON,
  },
  'decimals.rounds-up-always': {
    does: 'rounds up whatever comes after',
    help: 'Find the middle between the two neighbours first.',
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
    does: 'uses the percent number as if it were the amount itself',
    help: 'Ask “15 out of every hundred of what?”.',
    source: COMMON,
  },
  'percent.divides-by-it': {
    does: 'divides by the percent number',
    help: 'Ten percent is a tenth, but twenty percent is a fifth: build it from 10%.',
    source: COMMON,
  },
  'percent.times-it': {
    does: 'multiplies by the percent number',
    help: 'Say it as a part of the whole: 100% is all of it, 50% is half, 25% is a quarter.',
    source: COMMON,
  },
  'percent.times-in-whole': {
    does: 'says how many times the part fits into the whole, not what percent it is',
    help: 'Go on from there: if it fits four times, it is a quarter, and a quarter of a hundred is 25.',
    source: COMMON,
  },
  'percent.step-forgotten': {
    does: 'stops at an easy percent, such as 10%, and forgets the last step',
    help: 'Write the easy percent first and then how the one asked for is made of it.',
    source: COMMON,
  },
  'percent.discount-for-price': {
    does: 'gives the amount taken off or added, not the new price',
    help: 'Draw a bar for the old price, then cut the discount off it or join the rise to it.',
    source: COMMON,
  },
  'percent.tenths-as-percent': {
    does: 'reads tenths as percent, 0.4 as 4%',
    help: 'Shade 0.4 on a square of a hundred: that is 40 small squares.',
    source: COMMON,
  },
  'percent.count-as-percent': {
    does: 'writes the count as a percent although the whole is not a hundred',
    help: 'Scale the whole to a hundred first.',
    source: COMMON,
  },
} as const satisfies Record<string, Misconception>;
