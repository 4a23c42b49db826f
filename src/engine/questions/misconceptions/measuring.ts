// Money, time, measures, shape and angle, data and chance.
import type { Misconception } from '../misconceptions.js';

const COMMON = 'common practice';
const RULER =
  'Gómezescobar, Guerrero & Fernández-Cézar 2020 (reading the end point); Bragg & Outhred (Grades 5 and 6)';
const AREA = 'Machaba 2016 (area and perimeter mixed up)';
const METRIC = 'Gilman 2013 (large to small unit is easier than small to large)';
const CENTRE = 'Ismail & Chan 2015 (measures of central tendency, an error analysis)';

export const MEASURING_MISCONCEPTIONS = {
  // Money
  'money.coins-counted': {
    does: 'counts how many coins there are, whatever each one is worth',
    help: 'Touch each coin and say its value, then the running total: 20, 40, 50.',
    source: COMMON,
  },
  'money.piece-missed': {
    does: 'leaves one of the pieces out of the total',
    help: 'Sort from the largest to the smallest and tick each piece off as it is added.',
    source: COMMON,
  },
  'money.small-pieces': {
    does: 'uses smaller pieces of money where a larger one fits',
    help: 'Ask each time: what is the biggest piece of money that still fits?',
    source: COMMON,
  },
  'money.unit-ignored': {
    does: 'compares or joins the numbers and overlooks the units they are in',
    help: 'Write both amounts in the same unit first.',
    source: COMMON,
  },
  'money.large-unit-wins': {
    does: 'takes the amount in the larger unit to be more, whatever the numbers say',
    help: 'Write both amounts in the small unit first.',
    source: COMMON,
  },
  'money.factor-ten': {
    does: 'moves between the small and the large unit by ten instead of a hundred',
    help: 'Count in tens of the small unit until it makes one whole: 10, 20, up to 100.',
    source: COMMON,
  },
  'money.tenths-as-cents': {
    does: 'reads the first digit after the point as single cents',
    help: 'Write a zero after it: one digit after the point counts tens of cents.',
    source: 'Martinie 2007 (rules that children apply to decimals, one of them from money)',
  },
  'money.zero-dropped': {
    does: 'leaves out the zero that keeps the place of the tens',
    help: 'Say both places: no tens and five ones, so 05.',
    source: COMMON,
  },
  'money.change-apart': {
    does: 'counts the large and the small unit up separately and so gives one whole too much',
    help: 'Count up in one line: first to the next whole amount, then on to what was paid.',
    source: COMMON,
  },
  'money.change-larger-less-smaller': {
    does: 'takes the smaller from the larger in each part instead of exchanging a whole',
    help: 'Count up from the price instead of taking away.',
    source: 'Brown & VanLehn 1980 (smaller from larger), seen here in money',
  },
  'money.cost-not-change': {
    does: 'gives what is spent instead of what is left',
    help: 'Underline the question and ask: is this what goes to the shop, or what comes back?',
    source: COMMON,
  },
  'money.whole-not-carried': {
    does: 'does not carry the whole that the small units make together',
    help: 'Swap every hundred small units for one whole before writing the total.',
    source: COMMON,
  },
  'money.small-unit-unchanged': {
    does: 'multiplies or shares only the whole part and keeps the rest as it was',
    help: 'Work on both parts and put them together at the end.',
    source: COMMON,
  },
  'money.rest-dropped': {
    does: 'works with the whole units only and drops what is left of them',
    help: 'Change what is left into the small unit and work with that too.',
    source: COMMON,
  },
  'money.multiplied-not-shared': {
    does: 'multiplies where the amount has to be shared out',
    help: 'Ask first: will one share be more or less than all of it?',
    source: COMMON,
  },
  'money.added-not-multiplied': {
    does: 'adds the two numbers where one amount is needed several times',
    help: 'Draw one box for each item and write the price in every box.',
    source: COMMON,
  },
  'money.rounds-down': {
    does: 'drops what comes after the point instead of looking for the nearest whole',
    help: 'Put the amount on a number line between the two wholes and see which is closer.',
    source: COMMON,
  },
  'money.rounds-up': {
    does: 'always goes to the next whole instead of the nearest',
    help: 'Put the amount on a number line between the two wholes and see which is closer.',
    source: COMMON,
  },
  'money.rounds-other-place': {
    does: 'rounds to another place than the one asked for',
    help: 'Underline the place in the question before rounding.',
    source: COMMON,
  },
  'money.price-only': {
    does: 'compares the prices and overlooks how much each one buys',
    help: 'Find what one item costs, or what the same number of items would cost in both shops.',
    source: COMMON,
  },
  'money.bigger-pack': {
    does: 'takes the bigger pack to be the better buy without working it out',
    help: 'Find what the same number of items costs in small packs, then compare.',
    source: COMMON,
  },
  'money.discount-is-price': {
    does: 'gives the amount taken off instead of the new price',
    help: 'Draw a bar for the old price and cut off the discount: what is left is the new price.',
    source: COMMON,
  },
  'money.percent-as-units': {
    does: 'takes the percent as an amount of money',
    help: 'Say it aloud as “out of every hundred” and find that part first.',
    source: COMMON,
  },
  // Parts of a quantity, wherever they are measured
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
  // Time
  'time.hands-swapped': {
    does: 'takes the long hand for the hours and the short hand for the minutes',
    help: 'Cover the long hand: the short hand alone already tells roughly what time it is.',
    source: 'Massaro 1991 (difficulties in telling time); common practice',
  },
  'time.hour-ahead': {
    does: 'takes the hour that is coming, not the one that has passed',
    help: 'Like a birthday: it is not 8 until the hand gets to 8.',
    source: COMMON,
  },
  'time.minute-number': {
    does: 'reads the number at the long hand as minutes',
    help: 'Count round the clock in fives to where the long hand points.',
    source: COMMON,
  },
  'time.past-to-swapped': {
    does: 'mixes up minutes past the hour and minutes to the hour',
    help: 'Ask whether the long hand is going down from 12 (past) or climbing back to it (to).',
    source: COMMON,
  },
  'time.hundred-minutes': {
    does: 'works as if an hour had a hundred minutes',
    help: 'Stop at the next full hour and go on from there, on a number line of hours.',
    source: COMMON,
  },
  'time.hundred-seconds': {
    does: 'works as if a minute had a hundred seconds',
    help: 'Watch the second hand go once round: 60 seconds, then a new minute begins.',
    source: COMMON,
  },
  'time.hour-not-moved': {
    does: 'finds the minutes but leaves the hour as it was',
    help: 'Say the full hour when it is passed, then count on.',
    source: COMMON,
  },
  'time.hour-overlooked': {
    does: 'overlooks a full hour that is passed on the way',
    help: 'Stop at each full hour on the way and say it aloud.',
    source: COMMON,
  },
  'time.hour-too-many': {
    does: 'counts one hour too many',
    help: 'Put up a finger only when a full hour has gone by.',
    source: COMMON,
  },
  'time.larger-less-smaller': {
    does: 'takes the smaller number from the larger in the hours and in the minutes, whichever comes first',
    help: 'Count up from the earlier time: to the next full hour first, then on.',
    source: 'Brown & VanLehn 1980 (smaller from larger), seen here in times',
  },
  'time.wrong-way': {
    does: 'moves in the wrong direction: later instead of earlier, or the other way around',
    help: 'Draw a time line and mark where now is before moving.',
    source: COMMON,
  },
  'time.ten-for-twelve': {
    does: 'adds or takes 10 hours instead of 12 between the two kinds of clock',
    help: 'After 12 noon go on counting: 13 is 1 pm, 14 is 2 pm.',
    source: COMMON,
  },
  'time.twelve-left-out': {
    does: 'does not move between the 12-hour and the 24-hour clock in the afternoon',
    help: 'Ask: morning or after noon? After noon the 24-hour clock goes on from 12.',
    source: COMMON,
  },
  'time.am-as-pm': {
    does: 'takes a time before noon for one after noon',
    help: 'Draw one line from midnight to midnight with noon in the middle: am lies before noon, pm after it.',
    source: COMMON,
  },
  'time.week-of-five': {
    does: 'counts a week as five school days',
    help: 'Say all the days of a week aloud and count them on fingers: seven.',
    source: COMMON,
  },
  'time.day-counted-twice': {
    does: 'counts the starting day or month as the first step',
    help: 'Put a finger on the start and count only the jumps.',
    source: COMMON,
  },
  'time.month-length': {
    does: 'mixes up how many days the months have',
    help: 'Say the months along the knuckles: a knuckle has 31 days, a gap has fewer.',
    source: COMMON,
  },
  'time.ten-in-group': {
    does: 'groups the smaller units in tens instead of the number that fits this unit',
    help: 'Keep a strip of the facts in sight: 7 days, 12 months, 24 hours, 60 minutes.',
    source: COMMON,
  },
  'time.wrong-sixty': {
    does: 'uses the number that belongs to another pair of units',
    help: 'Keep a strip of the facts in sight: 7 days, 12 months, 24 hours, 60 minutes.',
    source: COMMON,
  },
  'time.point-as-units': {
    does: 'reads the digits after the point as minutes, or as another small unit',
    help: 'Half an hour is 0.5 of an hour and 30 minutes: compare the two.',
    source: COMMON,
  },
  'time.wait-left-out': {
    does: 'leaves one part of the journey out',
    help: 'Draw the journey as a line with every stop and every wait.',
    source: COMMON,
  },
  // Measures
  'meas.factor': {
    does: 'changes units by the wrong power of ten',
    help: 'Anchor each pair of units in something real: a ruler, a metre stick, a bag of rice.',
    source: METRIC,
  },
  'meas.reversed': {
    does: 'multiplies where dividing is needed, or the other way around, when changing units',
    help: 'Ask first: will there be more of these units, or fewer?',
    source: METRIC,
  },
  'meas.units-ignored': {
    does: 'works with the numbers as they stand although their units differ',
    help: 'Write both in the same unit before doing anything else.',
    source: COMMON,
  },
  'meas.number-before-unit': {
    does: 'looks at the numbers and not at the units',
    help: 'Show both with hands or real things before looking at the numbers.',
    source: COMMON,
  },
  'meas.unit-before-number': {
    does: 'goes by the larger unit and not by how many of them there are',
    help: 'Change both to the smaller unit before comparing.',
    source: COMMON,
  },
  'meas.unit-size': {
    does: 'picks a unit that is far too large or far too small',
    help: 'Hold up or picture one of each unit: a grain of rice, a ruler, a long walk.',
    source: COMMON,
  },
  'meas.wrong-tool': {
    does: 'picks a tool that measures something else',
    help: 'Put the tools on the table and say what each one tells: how long, how heavy, how warm.',
    source: COMMON,
  },
  'meas.end-read': {
    does: 'reads the mark at the end and overlooks where the object starts',
    help: 'Count the spaces under the object, one finger step a space.',
    source: RULER,
  },
  'meas.marks-counted': {
    does: 'counts marks instead of the spaces between them',
    help: 'Lay one-centimetre cubes along the ruler: a length is made of spaces.',
    source: RULER,
  },
  'meas.scale-by-ones': {
    does: 'takes every small mark of a scale as one',
    help: 'Find two labels, count the spaces between them and work out what one space is worth.',
    source: COMMON,
  },
  'meas.label-below': {
    does: 'reads the label before the pointer and overlooks the marks after it',
    help: 'Count on from the label, mark by mark.',
    source: COMMON,
  },
  'meas.complement-ten': {
    does: 'gives a tens part that is ten too large when filling up to a whole',
    help: 'Fill up to the next ten first, then to the whole.',
    source: COMMON,
  },
  'meas.added-not-taken': {
    does: 'adds where the difference is asked for, or the other way around',
    help: 'Act it out: does the amount get more or less?',
    source: COMMON,
  },
  'meas.zero-not-crossed': {
    does: 'takes the smaller number from the larger and loses the sign below zero',
    help: 'Walk it on a thermometer: down to zero first, then on below it.',
    source: COMMON,
  },
  'meas.two-sides': {
    does: 'adds only two of the sides',
    help: 'Trace the whole edge with a finger and say each side once.',
    source: AREA,
  },
  'meas.area-for-perimeter': {
    does: 'works out the space inside instead of the distance around',
    help: 'Fence or lawn? Around is counted in lengths, inside in squares.',
    source: AREA,
  },
  'meas.perimeter-for-area': {
    does: 'works out the distance around instead of the space inside',
    help: 'Fence or lawn? Around is counted in lengths, inside in squares.',
    source: AREA,
  },
  'meas.area-as-perimeter': {
    does: 'takes the area for the distance around the shape',
    help: 'Fence or lawn? Around is counted in lengths, inside in squares.',
    source: AREA,
  },
  'meas.side-from-area': {
    does: 'takes the known side away from the area instead of dividing by it',
    help: 'Draw one row of squares along the known side and ask how many such rows there are.',
    source: COMMON,
  },
  'meas.side-for-area': {
    does: 'finds the side and stops before working out the area',
    help: 'Read the unit of the answer aloud: squares have to be counted.',
    source: COMMON,
  },
  'meas.one-rectangle': {
    does: 'works out only one of the two rectangles',
    help: 'Sketch the shape, write an area into each rectangle and then say what happens with the two.',
    source: COMMON,
  },
  'meas.sides-shortened': {
    does: 'takes the sides of the piece from the sides of the whole before multiplying',
    help: 'Draw it on grid paper, cut the piece out and count the squares that are left.',
    source: COMMON,
  },
  'meas.sides-added': {
    does: 'adds the side lengths where rows of squares have to be multiplied',
    help: 'Draw the rows of squares: so many in a row, so many rows.',
    source: AREA,
  },
  'meas.side-doubled': {
    does: 'doubles the side where it is multiplied by itself',
    help: 'Draw the square on grid paper and count a row, then the rows.',
    source: COMMON,
  },
  'meas.halves-not-quarters': {
    does: 'divides the perimeter by two instead of by the number of equal sides',
    help: 'Mark all equal sides of the shape and share the perimeter among them.',
    source: COMMON,
  },
  'meas.layer-only': {
    does: 'finds one layer or one face of the solid and stops',
    help: 'Build one layer of cubes, then ask how many layers there are.',
    source: COMMON,
  },
  'meas.edges-added': {
    does: 'adds the edges where they have to be multiplied',
    help: 'Build the solid from cubes: cubes in a row, rows in a layer, layers.',
    source: COMMON,
  },
  'meas.volume-for-surface': {
    does: 'works out the space inside the solid instead of its surface',
    help: 'Fill it or wrap it? Inside is counted in cubes, the surface in squares.',
    source: COMMON,
  },
  // Shape and angle
  'shape.one-short': {
    does: 'misses one when counting, or counts one twice',
    help: 'Mark the place where counting starts, or tick each one off.',
    source: COMMON,
  },
  'shape.another-shape': {
    does: 'takes the shape for another one that looks alike',
    help: 'Count its sides and corners aloud and say its name each time it is met.',
    source: COMMON,
  },
  'shape.triangle-names': {
    does: 'mixes up the names of the triangles',
    help: 'Mark equal sides alike: three marks equilateral, two isosceles, none scalene.',
    source: COMMON,
  },
  'shape.look-judged': {
    does: 'judges a shape by how it looks, not by its sides and corners',
    help: 'Turn, colour and resize a paper shape and count its sides and corners each time.',
    source: 'from memory (van Hiele levels)',
  },
  'shape.flat-or-solid': {
    does: 'mixes up flat shapes and solids',
    help: 'Draw it or pick it up? Sort pictures and real things into two hoops.',
    source: COMMON,
  },
  'shape.other-face': {
    does: 'names another face of the solid, or its outline',
    help: 'Put a finger on the face in question and draw round it on paper.',
    source: COMMON,
  },
  'shape.other-cut': {
    does: 'pictures the solid cut another way',
    help: 'Cut a piece of modelling clay and press the cut face onto paper.',
    source: COMMON,
  },
  'shape.net-not-folded': {
    does: 'does not follow where each piece goes when the net folds up',
    help: 'Copy the net on squared paper, cut it out and fold it one piece at a time.',
    source: COMMON,
  },
  'shape.prism-part-missed': {
    does: 'leaves out one end or both ends of the prism, or what lies between them',
    help: 'Count in three lots: this end, the other end, and what joins them.',
    source: COMMON,
  },
  'shape.seen-only': {
    does: 'counts only the faces that can be seen in the drawing',
    help: 'Hold a real box and tick off each face, also those at the back and underneath.',
    source: COMMON,
  },
  'shape.parts-mixed-up': {
    does: 'mixes up faces, edges and vertices (corners)',
    help: 'Stroke a face, run along an edge, poke a vertex: the three words with three movements.',
    source: COMMON,
  },
  'shape.diagonals-fold': {
    does: 'counts the diagonals of the shape as lines of symmetry',
    help: 'Fold a paper copy along the diagonal and see whether the edges meet.',
    source: COMMON,
  },
  'shape.upright-only': {
    does: 'sees only the upright and the level line of symmetry',
    help: 'Turn a paper copy and fold it in every direction.',
    source: COMMON,
  },
  'shape.fold-per-side': {
    does: 'gives a shape as many lines of symmetry as it has sides',
    help: 'Fold a paper copy along each line and see whether the edges meet.',
    source: COMMON,
  },
  'shape.sides-not-pairs': {
    does: 'counts sides instead of pairs of sides',
    help: 'Colour the two sides of a pair alike, with a new colour for each pair, and count the colours.',
    source: COMMON,
  },
  'shape.one-pair-only': {
    does: 'finds one pair and overlooks the others',
    help: 'Go from side to side and ask each time whether another side runs beside it.',
    source: COMMON,
  },
  'shape.slid-not-flipped': {
    does: 'slides the pattern across the mirror line instead of flipping it',
    help: 'Stand a mirror on the line: what is nearest to it stays nearest.',
    source: COMMON,
  },
  'shape.moves-mixed': {
    does: 'mixes up slides, flips and turns',
    help: 'Move a paper shape on the table and say the word each time.',
    source: COMMON,
  },
  'shape.move-changes': {
    does: 'mixes up what a move changes about a shape and what it keeps',
    help: 'Trace the shape, move the tracing and lay it on top of the shape.',
    source: COMMON,
  },
  'shape.every-corner-right': {
    does: 'takes every corner for a right angle',
    help: 'Try the corner of a sheet of paper in each corner of the shape.',
    source: COMMON,
  },
  'shape.angle-misjudged': {
    does: 'misjudges how far one arm of the angle has turned from the other',
    help: 'Lay the corner of a sheet of paper on the angle, then half of that corner.',
    source: COMMON,
  },
  'shape.equal-angles-joined': {
    does: 'gives both equal angles together instead of one of them',
    help: 'Sketch the triangle, mark the equal angles alike and share what is left between them.',
    source: COMMON,
  },
  'shape.acute-obtuse': {
    does: 'mixes up the names of the angles',
    help: 'Compare with the corner of a sheet of paper: smaller is acute, wider is obtuse.',
    source: COMMON,
  },
  'shape.wrong-total': {
    does: 'uses the total of another angle fact (90°, 180° or 360°)',
    help: 'Show it with an arm: a corner is 90°, a straight line 180°, all the way round 360°.',
    source: COMMON,
  },
  'shape.total-hundred': {
    does: 'fills up to a hundred although a right angle has 90°',
    help: 'Quarter a full turn of 360° together: 90° each.',
    source: COMMON,
  },
  'shape.one-angle-only': {
    does: 'takes only one of the given angles away',
    help: 'Add the known angles first, then fill up to the total.',
    source: COMMON,
  },
  'shape.full-turn-hundred': {
    does: 'works as if a full turn had 100 degrees',
    help: 'Four right angles make a full turn: 4 × 90.',
    source: COMMON,
  },
  'shape.other-direction': {
    does: 'turns the other way around',
    help: 'Stand up and turn with the question: clockwise is the way the hands of a clock go.',
    source: COMMON,
  },
  'shape.half-turn-quarter': {
    does: 'makes one quarter turn too many or too few',
    help: 'Count the quarter turns aloud while turning: one, two, three, four and home again.',
    source: COMMON,
  },
  'shape.radius-diameter': {
    does: 'mixes up radius and diameter',
    help: 'Draw both: the diameter goes all the way across, the radius only to the middle.',
    source: COMMON,
  },
  // Data and chance
  'data.bundle-of-four': {
    does: 'counts a tally bundle as four',
    help: 'The stroke across counts too: a full bundle is a full hand, five.',
    source: COMMON,
  },
  'data.bundle-of-ten': {
    does: 'counts a tally bundle as ten',
    help: 'The stroke across counts too: a full bundle is a full hand, five.',
    source: COMMON,
  },
  'data.key-ignored': {
    does: 'counts every picture as one and overlooks the key',
    help: 'Read the key first and count in its steps.',
    source: COMMON,
  },
  'data.other-row': {
    does: 'names the smaller group, or the one that was said last',
    help: 'Line both groups up one to one and see which row goes on longer.',
    source: COMMON,
  },
  'data.other-bar': {
    does: 'reads the column beside the one that was asked for',
    help: 'Put a finger on the label first, then go up the column and across.',
    source: COMMON,
  },
  'data.added-not-compared': {
    does: 'adds the two numbers where “how many more” asks for the difference',
    help: 'Put the two rows side by side and cover what they share.',
    source: COMMON,
  },
  'data.larger-given': {
    does: 'gives the larger number instead of how much larger it is',
    help: 'Put the two rows side by side and cover what they share.',
    source: COMMON,
  },
  'data.half-picture': {
    does: 'counts half a picture as a whole one or not at all',
    help: 'Ask what half a picture stands for and write it beside the key.',
    source: COMMON,
  },
  'data.largest-given': {
    does: 'gives the largest number in the list',
    help: 'Say what the word asks for before looking at the list: mode is the one that comes most often.',
    source: COMMON,
  },
  'data.mean-gap-given': {
    does: 'gives how far the known number lies from the mean',
    help: 'Draw both numbers as towers and level them: what one lacks, the other has above the mean.',
    source: COMMON,
  },
  'part.whole-given': {
    does: 'gives the whole instead of the part asked for',
    help: 'Point to the whole and to each part in the drawing before answering.',
    source: COMMON,
  },
  'data.one-left-out': {
    does: 'leaves one group out of the total',
    help: 'Tick off each group as it is added.',
    source: COMMON,
  },
  'data.mean-not-shared': {
    does: 'adds the numbers and does not share the total out',
    help: 'The mean is the fair share: build towers and level them.',
    source: CENTRE,
  },
  'data.mean-halved': {
    does: 'always divides by two, however many numbers there are',
    help: 'Count the numbers first: as many as there are, into so many equal shares.',
    source: CENTRE,
  },
  'data.middle-unsorted': {
    does: 'takes the middle number without putting the list in order',
    help: 'Write the numbers from smallest to largest before looking for the middle.',
    source: 'Australian Association of Mathematics Teachers, teaching pages on averages; Ismail & Chan 2015',
  },
  'data.ends-unsorted': {
    does: 'takes the first and the last number in the list as they stand',
    help: 'Find the largest and the smallest first, wherever they are in the list.',
    source: CENTRE,
  },
  'data.measures-mixed-up': {
    does: 'mixes up mean, median, mode and range',
    help: 'Make one card a word with a picture: levelled towers, the middle of a queue, the most popular, from end to end.',
    source: CENTRE,
  },
  'data.how-often-given': {
    does: 'gives how often the most frequent number appears instead of the number',
    help: 'Ask: which one is it? Then: how often?',
    source: CENTRE,
  },
  'data.part-to-part': {
    does: 'compares the wanted outcomes with the others instead of with all of them',
    help: 'Count all the outcomes first: they make the bottom number.',
    source: 'Bryant & Nunes 2012, review of children’s understanding of probability; common practice',
  },
  'data.other-event': {
    does: 'gives the chance that it does happen when asked for the chance that it does not, or the other way around',
    help: 'The two chances together make 1: draw them as one bar.',
    source: COMMON,
  },
  'data.whole-is-ten': {
    does: 'fills a decimal chance up to 10 instead of 1',
    help: 'A certain event has the chance 1: mark 0 and 1 on a line and place the decimal between them.',
    source: COMMON,
  },
  'data.half-or-half': {
    does: 'thinks that when there are two possibilities each has an even chance',
    help: 'Colour the spinner and compare the size of the parts.',
    source: 'the false assumption of equal likelihood, as in Peard (MERGA), Problems with probability',
  },
  'data.certain-likely': {
    does: 'uses one chance word for another that is close',
    help: 'Line the words up from impossible to certain and place everyday events along the line.',
    source:
      'Fischbein, Sainati Nello & Sciolis Marino 1991 (certain events are harder to grasp than possible ones)',
  },
} as const satisfies Record<string, Misconception>;
