// The national curriculum in England, mathematics, years 1 to 6, and the ready-to-progress criteria: our own
// summaries.
// Source of the programmes of study (keys NC-...): a public third-party transcription, read bullet by bullet; its
// 242 bullets are 234 here and 8 left out. Many, not all, were seen a second time in excerpts of the official
// document or in reprints; Year 6 measurement and properties of shapes rest on the one transcription.
// Source of the criteria (other codes): one public third-party list of 78, and a copy of the department's table
// for 2NPV-2.
// Only about ten of them have a second source: check against the department's document before relying on them.
// Left out: NC-Y1-measure-2 (measure and record, four sub-bullets), NC-Y4-position-3 (plot points and complete a
// polygon), NC-Y5-shape-3 (draw and measure angles), NC-Y6-shape-1 (draw shapes to given sizes), NC-Y6-position-2
// (draw, translate and reflect on axes).
import { type Standard, statementsIn } from './statement.js';

/** The standard's details and its 313 statements, by year and strand. */
export const ENGLAND: Standard = {
  id: 'england',
  name: 'England',
  title:
    'National curriculum in England: mathematics programmes of study, key stages 1 and 2 (statutory), and Mathematics guidance: key stages 1 and 2, ready-to-progress criteria (non-statutory)',
  publisher: 'Department for Education (England)',
  version: 'Programmes of study: September 2013, in force from 2014. Ready-to-progress criteria: June 2020.',
  licence: 'Crown copyright, Open Government Licence v3.0 (from memory). The summaries are our own.',
  notes: [
    'The summaries are our own words, not the published ones.',
    'Codes that begin NC- are keys of ours: the programmes of study have no official codes. NC-Y4-place-2 is the second bullet of the Year 4 list on place value.',
    'The other codes are official ready-to-progress criteria, with a plain hyphen for the printed dash.',
    'Reception has no entries: it falls under the early years framework.',
    'Years inside a key stage are advisory: a school may teach a statement earlier or later in the key stage (from memory).',
  ],
  statements: [
    ...statementsIn(1, 'Place value', [
      ['NC-Y1-place-1', 'Count up and down to 100 and past it, starting from zero, one or anywhere'],
      ['NC-Y1-place-2', 'Read and write numerals to 100; skip count in twos, fives and tens'],
      ['NC-Y1-place-3', 'Say the number one before or one after any given number'],
      [
        'NC-Y1-place-4',
        'Show numbers with objects, pictures and number lines; use comparing words such as equal, fewer and most',
      ],
      ['NC-Y1-place-5', 'Read and write one to twenty in both digits and words'],
    ]),
    ...statementsIn(1, 'Addition and subtraction', [
      ['NC-Y1-addsub-1', 'Read, write and explain number sentences using plus, minus and equals'],
      ['NC-Y1-addsub-2', 'Use number bonds up to 20 together with their matching subtractions'],
      ['NC-Y1-addsub-3', 'Add and take away one- and two-digit numbers, zero included, with totals up to 20'],
      [
        'NC-Y1-addsub-4',
        'Solve one-step add or take-away problems with materials, and fill in a missing number',
      ],
    ]),
    ...statementsIn(1, 'Multiplication and division', [
      [
        'NC-Y1-multdiv-1',
        'Solve one-step grouping and sharing problems with objects, pictures and arrays, with help',
      ],
    ]),
    ...statementsIn(1, 'Fractions', [
      [
        'NC-Y1-fractions-1',
        'Recognise, name and find half of an object, shape or amount as one of two equal parts',
      ],
      [
        'NC-Y1-fractions-2',
        'Recognise, name and find a quarter of an object, shape or amount as one of four equal parts',
      ],
    ]),
    ...statementsIn(1, 'Measurement', [
      [
        'NC-Y1-measure-1a',
        'Compare lengths and heights in practical problems, including double and half as long',
      ],
      ['NC-Y1-measure-1b', 'Compare masses in practical problems with words such as heavier and lighter'],
      ['NC-Y1-measure-1c', 'Compare how full containers are, including half full and a quarter full'],
      ['NC-Y1-measure-1d', 'Compare times with words such as earlier, later, quicker and slower'],
      ['NC-Y1-measure-3', 'Recognise coins and notes and know what each is worth'],
      [
        'NC-Y1-measure-4',
        'Put events in time order with words such as yesterday, next, before and afternoon',
      ],
      ['NC-Y1-measure-5', 'Use date words: days, weeks, months and years'],
      ['NC-Y1-measure-6', "Tell o'clock and half-past times and draw them on a clock face"],
    ]),
    ...statementsIn(1, 'Properties of shapes', [
      ['NC-Y1-shape-1a', 'Name common flat shapes such as rectangles, squares, circles and triangles'],
      ['NC-Y1-shape-1b', 'Name common solid shapes such as cuboids, cubes, pyramids and spheres'],
    ]),
    ...statementsIn(1, 'Position and direction', [
      [
        'NC-Y1-position-1',
        'Describe position and movement, with whole, half, quarter and three-quarter turns',
      ],
    ]),
    ...statementsIn(2, 'Place value', [
      ['NC-Y2-place-1', 'Count in twos, threes and fives from zero, and in tens from any start, both ways'],
      ['NC-Y2-place-2', 'Say what each digit in a two-digit number is worth in tens and ones'],
      ['NC-Y2-place-3', 'Show and estimate numbers in several ways, including on a number line'],
      [
        'NC-Y2-place-4',
        'Compare and order numbers up to 100 with the less-than, greater-than and equals signs',
      ],
      ['NC-Y2-place-5', 'Read and write numbers up to 100 or more in digits and words'],
      ['NC-Y2-place-6', 'Solve problems that draw on place value and known number facts'],
    ]),
    ...statementsIn(2, 'Addition and subtraction', [
      [
        'NC-Y2-addsub-1a',
        'Solve add and subtract problems about numbers, amounts and measures with objects and pictures',
      ],
      [
        'NC-Y2-addsub-1b',
        'Solve add and subtract problems with a growing range of mental and written methods',
      ],
      ['NC-Y2-addsub-2', 'Know addition and subtraction facts to 20 fluently; work out linked facts to 100'],
      [
        'NC-Y2-addsub-3a',
        'Add ones to, or take ones from, a two-digit number, with objects, pictures or mentally',
      ],
      [
        'NC-Y2-addsub-3b',
        'Add tens to, or take tens from, a two-digit number, with objects, pictures or mentally',
      ],
      ['NC-Y2-addsub-3c', 'Add and subtract a pair of two-digit numbers, with objects, pictures or mentally'],
      ['NC-Y2-addsub-3d', 'Find the total of three one-digit numbers, with objects, pictures or mentally'],
      ['NC-Y2-addsub-4', 'Show that swapping the order leaves a sum unchanged but not a subtraction'],
      [
        'NC-Y2-addsub-5',
        'Use the inverse link between adding and subtracting for checking and for missing numbers',
      ],
    ]),
    ...statementsIn(2, 'Multiplication and division', [
      ['NC-Y2-multdiv-1', 'Know 2, 5 and 10 times table facts with their divisions; tell odd from even'],
      [
        'NC-Y2-multdiv-2',
        'Work out and write table facts as sentences with the times, divide and equals signs',
      ],
      ['NC-Y2-multdiv-3', 'Show that order does not matter when multiplying but does when dividing'],
      [
        'NC-Y2-multdiv-4',
        'Solve multiply and divide problems by arrays, repeated adding, mental methods or known facts',
      ],
    ]),
    ...statementsIn(2, 'Fractions', [
      [
        'NC-Y2-fractions-1',
        'Find, name and write a third, a quarter, two quarters and three quarters of things or amounts',
      ],
      [
        'NC-Y2-fractions-2',
        'Write simple fraction facts such as half of 6, and know two quarters equal a half',
      ],
    ]),
    ...statementsIn(2, 'Measurement', [
      [
        'NC-Y2-measure-1',
        'Pick and use standard units for length, mass, temperature and capacity, reading scales to the nearest unit',
      ],
      ['NC-Y2-measure-2', 'Compare and order measures and record with the three comparison signs'],
      ['NC-Y2-measure-3', 'Use the pound and pence symbols and put amounts together to make a value'],
      ['NC-Y2-measure-4', 'Find several sets of coins worth the same amount'],
      [
        'NC-Y2-measure-5',
        'Solve simple same-unit money problems by adding and subtracting, including change',
      ],
      ['NC-Y2-measure-6', 'Compare lengths of time and put them in order'],
      [
        'NC-Y2-measure-7',
        'Tell, write and draw times to five minutes, including quarter past and quarter to',
      ],
      ['NC-Y2-measure-8', 'Know an hour has 60 minutes and a day has 24 hours'],
    ]),
    ...statementsIn(2, 'Properties of shapes', [
      ['NC-Y2-shape-1', 'Describe flat shapes by number of sides and by symmetry about a vertical line'],
      ['NC-Y2-shape-2', 'Describe solid shapes by counting their edges, vertices and faces'],
      ['NC-Y2-shape-3', 'Spot flat shapes on the faces of solids, such as a circle on a cylinder'],
      ['NC-Y2-shape-4', 'Compare and sort common flat and solid shapes and everyday things'],
    ]),
    ...statementsIn(2, 'Position and direction', [
      ['NC-Y2-position-1', 'Arrange shapes and other objects into patterns and sequences'],
      [
        'NC-Y2-position-2',
        'Describe straight moves and quarter, half and three-quarter turns as right angles, clockwise or anticlockwise',
      ],
    ]),
    ...statementsIn(2, 'Statistics', [
      [
        'NC-Y2-stats-1',
        'Work with simple tables, tallies, block graphs and picture graphs: read them and draw them',
      ],
      ['NC-Y2-stats-2', 'Answer questions by counting items per category and ordering categories by size'],
      ['NC-Y2-stats-3', 'Answer questions about totals and comparisons of category data'],
    ]),
    ...statementsIn(3, 'Place value', [
      [
        'NC-Y3-place-1',
        'Count in fours, eights, fifties and hundreds from zero; give 10 or 100 more or less',
      ],
      ['NC-Y3-place-2', 'Say what each digit in a three-digit number is worth'],
      ['NC-Y3-place-3', 'Compare and order whole numbers as far as 1000'],
      ['NC-Y3-place-4', 'Show and estimate numbers using a range of representations'],
      ['NC-Y3-place-5', 'Read and write whole numbers to 1000 in digits and words'],
      ['NC-Y3-place-6', 'Solve number and practical problems built on three-digit place value'],
    ]),
    ...statementsIn(3, 'Addition and subtraction', [
      ['NC-Y3-addsub-1a', 'Mentally add or subtract ones with a three-digit number'],
      ['NC-Y3-addsub-1b', 'Mentally add or subtract tens with a three-digit number'],
      ['NC-Y3-addsub-1c', 'Mentally add or subtract hundreds with a three-digit number'],
      ['NC-Y3-addsub-2', 'Add and subtract numbers of three digits or fewer in columns'],
      ['NC-Y3-addsub-3', 'Estimate answers first and check with the inverse operation'],
      [
        'NC-Y3-addsub-4',
        'Solve problems, missing numbers among them, with number facts, place value and harder sums',
      ],
    ]),
    ...statementsIn(3, 'Multiplication and division', [
      ['NC-Y3-multdiv-1', 'Know the 3, 4 and 8 times tables with matching division facts'],
      [
        'NC-Y3-multdiv-2',
        'Write and work out multiplications and divisions from known tables, including two-digit by one-digit',
      ],
      [
        'NC-Y3-multdiv-3',
        'Solve multiply and divide problems: missing numbers, whole-number scaling and matching every item to every other',
      ],
    ]),
    ...statementsIn(3, 'Fractions', [
      [
        'NC-Y3-fractions-1',
        'Count in tenths both ways; know tenths come from dividing an object or a number by 10',
      ],
      [
        'NC-Y3-fractions-2',
        'Find and write unit and non-unit fractions of a set of things, small denominators',
      ],
      ['NC-Y3-fractions-3', 'Treat unit and non-unit fractions with small denominators as numbers'],
      ['NC-Y3-fractions-4', 'Use diagrams to show simple fractions that are equal'],
      ['NC-Y3-fractions-5', 'Add and subtract like-denominator fractions, staying inside one whole'],
      ['NC-Y3-fractions-6', 'Order unit fractions, and order fractions that share a denominator'],
      ['NC-Y3-fractions-7', 'Solve problems using all the year 3 fraction ideas'],
    ]),
    ...statementsIn(3, 'Measurement', [
      [
        'NC-Y3-measure-1',
        'Measure, compare, add and subtract lengths, masses and capacities in metric units',
      ],
      ['NC-Y3-measure-2', 'Measure all the way round simple flat shapes'],
      ['NC-Y3-measure-3', 'Add and subtract money and give change, using pounds and pence'],
      [
        'NC-Y3-measure-4',
        'Tell analogue time, Roman-numeral faces included, and use 12-hour and 24-hour clocks',
      ],
      [
        'NC-Y3-measure-5',
        'Read time to the nearest minute; compare seconds, minutes and hours with am, pm, noon and midnight',
      ],
      ['NC-Y3-measure-6', 'Know seconds in a minute and days in each month, ordinary year and leap year'],
      ['NC-Y3-measure-7', 'Work out and compare how long events last'],
    ]),
    ...statementsIn(3, 'Properties of shapes', [
      [
        'NC-Y3-shape-1',
        'Draw flat shapes and build solids; recognise and describe solids whichever way they face',
      ],
      ['NC-Y3-shape-2', 'See an angle as a feature of a shape or as an amount of turn'],
      [
        'NC-Y3-shape-3',
        'Spot right angles, count them in half, three-quarter and full turns, and compare other angles with them',
      ],
      ['NC-Y3-shape-4', 'Identify lines as horizontal or vertical and pairs as parallel or perpendicular'],
    ]),
    ...statementsIn(3, 'Statistics', [
      ['NC-Y3-stats-1', 'Read and present data in bar charts, pictograms and tables'],
      [
        'NC-Y3-stats-2',
        'Answer one- and two-step how-many-more questions from scaled charts, pictograms and tables',
      ],
    ]),
    ...statementsIn(4, 'Place value', [
      ['NC-Y4-place-1', 'Count in sixes, sevens, nines, twenty-fives and thousands'],
      ['NC-Y4-place-2', 'Say the number 1000 greater or smaller than a given one'],
      ['NC-Y4-place-3', 'Count back past zero and on into negative numbers'],
      ['NC-Y4-place-4', 'Say what each digit in a four-digit number is worth'],
      ['NC-Y4-place-5', 'Order and compare whole numbers greater than 1000'],
      ['NC-Y4-place-6', 'Show and estimate larger numbers using a range of representations'],
      ['NC-Y4-place-7', 'Round numbers to the nearest ten, hundred or thousand'],
      [
        'NC-Y4-place-8',
        'Solve number and practical problems with these ideas and ever larger positive numbers',
      ],
      ['NC-Y4-place-9', 'Read Roman numerals up to 100 and know how zero and place value came later'],
    ]),
    ...statementsIn(4, 'Addition and subtraction', [
      ['NC-Y4-addsub-1', 'Add and subtract numbers of four digits or fewer in columns where that suits'],
      ['NC-Y4-addsub-2', 'Check a calculation by estimating and by the inverse operation'],
      [
        'NC-Y4-addsub-3',
        'Solve two-step add and subtract problems in context, justifying operations and methods',
      ],
    ]),
    ...statementsIn(4, 'Multiplication and division', [
      ['NC-Y4-multdiv-1', 'Know all times tables to 12 by 12 with their division facts'],
      [
        'NC-Y4-multdiv-2',
        'Multiply and divide mentally with known facts: by 0 and 1, dividing by 1, three factors together',
      ],
      ['NC-Y4-multdiv-3', 'Use factor pairs and order-swapping to help mental work'],
      ['NC-Y4-multdiv-4', 'Multiply two- and three-digit numbers by one digit with a written layout'],
      [
        'NC-Y4-multdiv-5',
        'Solve multiply-and-add problems, splitting a two-digit factor, scaling and harder matching problems',
      ],
    ]),
    ...statementsIn(4, 'Fractions and decimals', [
      ['NC-Y4-fractions-1', 'Show families of common equal fractions with diagrams'],
      [
        'NC-Y4-fractions-2',
        'Count in hundredths both ways; know they come from dividing by 100 or tenths by ten',
      ],
      [
        'NC-Y4-fractions-3',
        'Find fractions of amounts, including non-unit ones that give a whole-number answer',
      ],
      ['NC-Y4-fractions-4', 'Add and subtract fractions that share a denominator, now beyond one whole'],
      ['NC-Y4-fractions-5', 'Write any number of tenths or hundredths as a decimal'],
      ['NC-Y4-fractions-6', 'Know a quarter, a half and three quarters as decimals'],
      [
        'NC-Y4-fractions-7',
        "Divide one- or two-digit numbers by 10 or 100 and name the resulting digits' values",
      ],
      ['NC-Y4-fractions-8', 'Round one-place decimals to the nearest whole number'],
      ['NC-Y4-fractions-9', 'Compare decimals of equal length with one or two places'],
      ['NC-Y4-fractions-10', 'Solve simple money and measure problems with fractions and two-place decimals'],
    ]),
    ...statementsIn(4, 'Measurement', [
      ['NC-Y4-measure-1', 'Change between units, such as kilometres to metres or hours to minutes'],
      ['NC-Y4-measure-2', 'Work out the perimeter of right-angled shapes in centimetres and metres'],
      ['NC-Y4-measure-3', 'Count squares to find the area of right-angled shapes'],
      [
        'NC-Y4-measure-4',
        'Estimate, compare and calculate with measures, money in pounds and pence included',
      ],
      ['NC-Y4-measure-5', 'Change times between analogue, digital 12-hour and digital 24-hour clocks'],
      [
        'NC-Y4-measure-6',
        'Solve problems changing time units: hours, minutes and seconds; years and months; weeks and days',
      ],
    ]),
    ...statementsIn(4, 'Properties of shapes', [
      ['NC-Y4-shape-1', 'Classify shapes, triangles and quadrilaterals among them, by property and size'],
      ['NC-Y4-shape-2', 'Identify acute and obtuse angles and order angles up to a straight line'],
      ['NC-Y4-shape-3', 'Find lines of symmetry in flat shapes at any orientation'],
      ['NC-Y4-shape-4', 'Finish a simple figure so it is symmetrical about a given line'],
    ]),
    ...statementsIn(4, 'Position and direction', [
      ['NC-Y4-position-1', 'Give positions on a grid as first-quadrant coordinates'],
      ['NC-Y4-position-2', 'Describe moves on a grid as so many units left, right, up or down'],
    ]),
    ...statementsIn(4, 'Statistics', [
      [
        'NC-Y4-stats-1',
        'Read and present discrete and continuous data, in bar charts and time graphs among others',
      ],
      [
        'NC-Y4-stats-2',
        'Use charts, pictograms, tables and graphs to find totals, differences and comparisons',
      ],
    ]),
    ...statementsIn(5, 'Place value', [
      ['NC-Y5-place-1', 'Work with numbers to a million or more: say, write, order and value each digit'],
      ['NC-Y5-place-2', 'Count on or back in tens, hundreds, thousands and so on, up to a million'],
      ['NC-Y5-place-3', 'Interpret negative numbers in context and count on and back through zero'],
      ['NC-Y5-place-4', 'Round numbers up to a million to any power of ten from ten to a hundred thousand'],
      [
        'NC-Y5-place-5',
        'Solve number and practical problems with numbers to a million, negatives and rounding',
      ],
      ['NC-Y5-place-6', 'Read Roman numerals up to 1000 and years written in them'],
    ]),
    ...statementsIn(5, 'Addition and subtraction', [
      ['NC-Y5-addsub-1', 'Add and subtract whole numbers of five or more digits, including in columns'],
      ['NC-Y5-addsub-2', 'Add and subtract larger and larger numbers mentally'],
      ['NC-Y5-addsub-3', 'Check by rounding and decide how accurate an answer must be'],
      ['NC-Y5-addsub-4', 'Solve multi-step add and subtract problems, justifying operations and methods'],
    ]),
    ...statementsIn(5, 'Multiplication and division', [
      ['NC-Y5-multdiv-1', 'Find multiples, all factor pairs of a number and common factors of two numbers'],
      ['NC-Y5-multdiv-2', 'Use the words prime, prime factor and composite correctly'],
      ['NC-Y5-multdiv-3', 'Test whether a number to 100 is prime; know by heart the primes to 19'],
      [
        'NC-Y5-multdiv-4',
        'Multiply four-digit or smaller numbers by one or two digits, long multiplication included',
      ],
      ['NC-Y5-multdiv-5', 'Multiply and divide in the head from known facts'],
      [
        'NC-Y5-multdiv-6',
        'Short-divide numbers of up to four digits by one digit and make sense of remainders',
      ],
      ['NC-Y5-multdiv-7', 'Multiply and divide whole and decimal numbers by ten, a hundred and a thousand'],
      ['NC-Y5-multdiv-8', 'Know square and cube numbers and their index notation'],
      ['NC-Y5-multdiv-9', 'Solve multiply and divide problems with factors, multiples, squares and cubes'],
      [
        'NC-Y5-multdiv-10',
        'Solve problems mixing all four operations and understand what the equals sign means',
      ],
      ['NC-Y5-multdiv-11', 'Solve problems that scale by simple fractions or use simple rates'],
    ]),
    ...statementsIn(5, 'Fractions, decimals and percentages', [
      ['NC-Y5-fractions-1', 'Compare and order fractions when every denominator is a multiple of one number'],
      [
        'NC-Y5-fractions-2',
        'Find and name fractions equal to a pictured fraction, tenths and hundredths included',
      ],
      ['NC-Y5-fractions-3', 'Convert mixed numbers to improper fractions and the other way'],
      [
        'NC-Y5-fractions-4',
        'Add and subtract fractions with equal denominators or denominators in the same multiple family',
      ],
      ['NC-Y5-fractions-5', 'Multiply proper fractions and mixed numbers by whole numbers, with pictures'],
      ['NC-Y5-fractions-6', 'Turn decimals into fractions, such as 0.71 into seventy-one hundredths'],
      ['NC-Y5-fractions-7', 'Use thousandths and link them to hundredths, tenths and decimals'],
      ['NC-Y5-fractions-8', 'Round two-place decimals to a whole number or to one place'],
      ['NC-Y5-fractions-9', 'Say, write and order decimals of up to three places'],
      ['NC-Y5-fractions-10', 'Solve problems using decimals that have up to three places'],
      [
        'NC-Y5-fractions-11',
        'Know percent means out of a hundred and write percentages as hundredths and as decimals',
      ],
      [
        'NC-Y5-fractions-12',
        'Use percentage and decimal forms of halves, quarters, fifths, and denominators that are multiples of 10 or 25',
      ],
    ]),
    ...statementsIn(5, 'Measurement', [
      ['NC-Y5-measure-1', 'Convert among metric units of length, mass and capacity'],
      ['NC-Y5-measure-2', 'Use rough metric equivalents of inches, pounds, pints and similar imperial units'],
      ['NC-Y5-measure-3', 'Work out the perimeter of joined right-angled shapes'],
      [
        'NC-Y5-measure-4',
        'Calculate and compare rectangle areas in square units and estimate irregular areas',
      ],
      ['NC-Y5-measure-5', 'Estimate volume by cubes and capacity by filling'],
      ['NC-Y5-measure-6', 'Solve problems that change one time unit into another'],
      [
        'NC-Y5-measure-7',
        'Solve four-operation problems on measures, money included, with decimals and scaling',
      ],
    ]),
    ...statementsIn(5, 'Properties of shapes', [
      ['NC-Y5-shape-1', 'Recognise cubes, cuboids and other solids from flat drawings'],
      ['NC-Y5-shape-2', 'Know angles come in degrees; judge and rank reflex, obtuse and acute ones'],
      ['NC-Y5-shape-4a', 'Know angles round a point make a full turn of 360 degrees'],
      ['NC-Y5-shape-4b', 'Know angles on a straight line make a half turn of 180 degrees'],
      ['NC-Y5-shape-4c', 'Recognise other turns that are multiples of 90 degrees'],
      ['NC-Y5-shape-5', 'Use rectangle properties to find missing sides and angles'],
      ['NC-Y5-shape-6', 'Tell regular from irregular polygons by comparing sides and angles'],
    ]),
    ...statementsIn(5, 'Position and direction', [
      [
        'NC-Y5-position-1',
        'Say where a shape lands after reflection or translation and that it is otherwise unchanged',
      ],
    ]),
    ...statementsIn(5, 'Statistics', [
      ['NC-Y5-stats-1', 'Use a line graph to find totals, differences and comparisons'],
      ['NC-Y5-stats-2', 'Complete tables and read facts from them, timetables included'],
    ]),
    ...statementsIn(6, 'Place value', [
      ['NC-Y6-place-1', 'Work with numbers to ten million: say, write, order and value each digit'],
      ['NC-Y6-place-2', 'Round a whole number as accurately as a question asks'],
      ['NC-Y6-place-3', 'Use negative numbers in context and find gaps that cross zero'],
      ['NC-Y6-place-4', 'Solve number and practical problems with large numbers, rounding and negatives'],
    ]),
    ...statementsIn(6, 'Four operations', [
      ['NC-Y6-fourops-1', 'Long-multiply numbers of up to four digits by two digits'],
      [
        'NC-Y6-fourops-2',
        'Long-divide up to four digits by two digits and give remainders as wholes, fractions or rounded',
      ],
      [
        'NC-Y6-fourops-3',
        'Short-divide up to four digits by two digits where sensible, interpreting what is left over',
      ],
      ['NC-Y6-fourops-4', 'Calculate mentally with mixed operations and large numbers'],
      ['NC-Y6-fourops-5', 'Find primes, and factors or multiples that numbers have in common'],
      ['NC-Y6-fourops-6', 'Apply the order of operations when all four are mixed'],
      ['NC-Y6-fourops-7', 'Solve multi-step add and subtract problems and justify the method'],
      ['NC-Y6-fourops-8', 'Solve problems that use any of the four operations'],
      ['NC-Y6-fourops-9', 'Estimate to check, and settle on a suitable accuracy for the problem'],
    ]),
    ...statementsIn(6, 'Fractions, decimals and percentages', [
      [
        'NC-Y6-fractions-1',
        'Simplify fractions by common factors and match denominators by common multiples',
      ],
      ['NC-Y6-fractions-2', 'Compare fractions and put them in order, including those above one'],
      [
        'NC-Y6-fractions-3',
        'Add and subtract unlike fractions and mixed numbers through equivalent fractions',
      ],
      ['NC-Y6-fractions-4', 'Multiply simple proper fractions and simplify the product'],
      ['NC-Y6-fractions-5', 'Divide a proper fraction by a whole number'],
      ['NC-Y6-fractions-6', 'See a fraction as a division and find its decimal, such as three eighths'],
      [
        'NC-Y6-fractions-7',
        'Value digits to three decimal places; multiply and divide by ten, a hundred and a thousand',
      ],
      ['NC-Y6-fractions-8', 'Multiply ones-digit decimals of up to two places by whole numbers'],
      ['NC-Y6-fractions-9', 'Divide in writing where the quotient runs to two decimal places'],
      ['NC-Y6-fractions-10', 'Solve problems whose answers must be rounded to a stated accuracy'],
      ['NC-Y6-fractions-11', 'Know and use matching simple fractions, decimals and percentages in context'],
    ]),
    ...statementsIn(6, 'Ratio and proportion', [
      ['NC-Y6-ratio-1', 'Find missing values in proportional pairs by whole-number multiplying and dividing'],
      ['NC-Y6-ratio-2', 'Calculate percentages of amounts, such as 15% of 360, and compare with percentages'],
      ['NC-Y6-ratio-3', 'Use or find the scale factor between similar shapes'],
      ['NC-Y6-ratio-4', 'Share or group unequally using fractions and multiples'],
    ]),
    ...statementsIn(6, 'Algebra', [
      ['NC-Y6-algebra-1', 'Put values into simple formulae and use them'],
      ['NC-Y6-algebra-2', 'Make and describe sequences that grow by a fixed step'],
      ['NC-Y6-algebra-3', 'Write a missing-number problem as an equation with letters'],
      ['NC-Y6-algebra-4', 'Find number pairs that make a two-unknown equation true'],
      ['NC-Y6-algebra-5', 'List every possible combination of values for two variables'],
    ]),
    ...statementsIn(6, 'Measurement', [
      ['NC-Y6-measure-1', 'Solve unit calculation and conversion problems with decimals to three places'],
      [
        'NC-Y6-measure-2',
        'Convert standard units of length, mass, volume and time both ways, with decimals to three places',
      ],
      ['NC-Y6-measure-3', 'Change miles to kilometres and kilometres to miles'],
      ['NC-Y6-measure-4', 'Know equal areas can have unequal perimeters, and the reverse'],
      ['NC-Y6-measure-5', 'Recognise when a formula will give an area or a volume'],
      ['NC-Y6-measure-6', 'Work out how much area triangles and parallelograms cover'],
      ['NC-Y6-measure-7', 'Calculate, estimate and compare volumes of cubes and cuboids in cubic units'],
    ]),
    ...statementsIn(6, 'Properties of shapes', [
      ['NC-Y6-shape-2', 'Recognise and describe simple solids and match them to nets'],
      [
        'NC-Y6-shape-3',
        'Classify shapes by property and find unknown angles in triangles, quadrilaterals and regular polygons',
      ],
      ['NC-Y6-shape-4', 'Name the parts of a circle and know the diameter is double the radius'],
      ['NC-Y6-shape-5', 'Find missing angles at a point, on a line and vertically opposite'],
    ]),
    ...statementsIn(6, 'Position and direction', [
      ['NC-Y6-position-1', 'Give positions in all four quadrants of a coordinate grid'],
    ]),
    ...statementsIn(6, 'Statistics', [
      ['NC-Y6-stats-1', 'Read and draw pie charts and line graphs and solve problems from them'],
      ['NC-Y6-stats-2', 'Work out the mean and say what it tells you'],
    ]),
    ...statementsIn(1, 'Place value', [
      ['1NPV-1', 'Count on and back anywhere in the range up to 100'],
      ['1NPV-2', 'Place numbers up to 20 on a number line and compare them with the three comparison signs'],
    ]),
    ...statementsIn(1, 'Number facts', [
      ['1NF-1', 'Become fluent with adding and subtracting within 10'],
      ['1NF-2', 'Skip count on and back in twos, fives and tens to ten multiples, and through odd numbers'],
    ]),
    ...statementsIn(1, 'Addition and subtraction', [
      ['1AS-1', 'Make and split numbers up to 10 as parts, noticing odd and even'],
      [
        '1AS-2',
        'Read, write and interpret add, subtract and equals equations and tie them to real situations',
      ],
    ]),
    ...statementsIn(1, 'Geometry', [
      ['1G-1', 'Recognise common flat and solid shapes in any orientation, knowing they need not look alike'],
      ['1G-2', 'Build flat or solid shapes from smaller pieces to copy a model'],
    ]),
    ...statementsIn(2, 'Place value', [
      ['2NPV-1', 'Value each digit of a two-digit number and partition it in standard and other ways'],
      ['2NPV-2', 'Place any two-digit number on a number line, naming the tens either side'],
    ]),
    ...statementsIn(2, 'Number facts', [
      ['2NF-1', 'Keep practising add and subtract facts within 10 until fluent'],
    ]),
    ...statementsIn(2, 'Addition and subtraction', [
      ['2AS-1', 'Add and subtract one-digit amounts in calculations that cross ten'],
      ['2AS-2', 'See subtraction as a difference and answer how-many-more questions'],
      ['2AS-3', 'Within 100, add or take only ones or only tens from a two-digit number by known facts'],
      ['2AS-4', 'Within 100, add and subtract any pair of two-digit numbers by known facts'],
    ]),
    ...statementsIn(2, 'Multiplication and division', [
      ['2MD-1', 'Write repeated addition as multiplication and find products in the 2, 5 and 10 tables'],
      ['2MD-2', 'Link how-many-groups problems to missing-factor equations and to division'],
    ]),
    ...statementsIn(2, 'Geometry', [
      ['2G-1', 'Describe and compare flat and solid shapes precisely by their properties'],
    ]),
    ...statementsIn(3, 'Place value', [
      [
        '3NPV-1',
        'Know ten tens make a hundred and say how many tens are in other three-digit multiples of 10',
      ],
      ['3NPV-2', 'Value each digit of a three-digit number and partition it in standard and other ways'],
      ['3NPV-3', 'Place any three-digit number on a number line, naming the neighbouring hundreds and tens'],
      ['3NPV-4', 'Know half, quarter, fifth and tenth of 100 and read scales with those divisions'],
    ]),
    ...statementsIn(3, 'Number facts', [
      ['3NF-1', 'Keep practising add and subtract facts that cross ten until fluent'],
      ['3NF-2', 'Recall the 10, 5, 2, 4 and 8 times tables with divisions and recognise their multiples'],
      ['3NF-3', 'Scale known add and times facts up ten times using place value'],
    ]),
    ...statementsIn(3, 'Addition and subtraction', [
      ['3AS-1', 'Find what must be added to a number to reach 100'],
      ['3AS-2', 'Add and subtract numbers of up to three digits in columns'],
      ['3AS-3', 'Use the inverse link and order rules of adding and subtracting within part-whole structure'],
    ]),
    ...statementsIn(3, 'Multiplication and division', [
      ['3MD-1', 'Use known times and division facts in problems, both sharing and grouping'],
    ]),
    ...statementsIn(3, 'Fractions', [
      ['3F-1', 'Read and write proper fractions for one or more equal parts of a whole'],
      ['3F-2', 'Find a unit fraction of an amount from known division facts'],
      ['3F-3', 'Place fractions between zero and one on a number line'],
      ['3F-4', 'Add and subtract like-denominator fractions without passing one'],
    ]),
    ...statementsIn(3, 'Geometry', [
      ['3G-1', 'Recognise right angles in shapes at any orientation and as a turn'],
      ['3G-2', 'Join marked points to draw polygons and spot parallel and perpendicular sides'],
    ]),
    ...statementsIn(4, 'Place value', [
      [
        '4NPV-1',
        'Know ten hundreds make a thousand and say how many hundreds are in four-digit multiples of 100',
      ],
      ['4NPV-2', 'Value each digit of a four-digit number and partition it in standard and other ways'],
      ['4NPV-3', 'Place any four-digit number on a line and round it to the nearest hundred or thousand'],
      ['4NPV-4', 'Know half, quarter, fifth and tenth of 1000 and read scales with those divisions'],
    ]),
    ...statementsIn(4, 'Number facts', [
      ['4NF-1', 'Recall times and division facts to 12 by 12 and recognise the multiples'],
      ['4NF-2', 'Divide two-digit numbers by one digit with a remainder and interpret it in context'],
      ['4NF-3', 'Scale known add and times facts up a hundred times using place value'],
    ]),
    ...statementsIn(4, 'Multiplication and division', [
      ['4MD-1', 'Multiply and divide whole numbers by 10 and 100, whole answers only, as scaling'],
      ['4MD-2', 'Rearrange times and division equations and use the order rule for multiplying'],
      ['4MD-3', 'Split a factor to multiply, using the distributive rule'],
    ]),
    ...statementsIn(4, 'Fractions', [
      ['4F-1', 'Place mixed numbers on a number line by reasoning about size'],
      ['4F-2', 'Change mixed numbers into improper fractions and back'],
      [
        '4F-3',
        'Add and subtract mixed numbers and improper fractions with equal denominators, crossing whole numbers',
      ],
    ]),
    ...statementsIn(4, 'Geometry', [
      ['4G-1', 'Draw polygons from first-quadrant coordinates and slide them within it'],
      ['4G-2', 'Identify regular polygons by equal sides and angles; find perimeters of any polygon'],
      ['4G-3', 'Find line symmetry, reflect shapes and complete symmetrical figures'],
    ]),
    ...statementsIn(5, 'Place value', [
      ['5NPV-1', 'Know how ones, tenths and hundredths relate, ten or a hundred times at a step'],
      ['5NPV-2', 'Value digits in numbers with two decimal places and partition them in several ways'],
      ['5NPV-3', 'Place two-place decimals on a line and round to the nearest one or tenth'],
      ['5NPV-4', 'Know half, quarter, fifth and tenth of 1 as decimals and read scales with those divisions'],
      ['5NPV-5', 'Convert units of measure, with common fractions and decimals'],
    ]),
    ...statementsIn(5, 'Number facts', [
      ['5NF-1', 'Keep practising all times tables and division facts until fluent'],
      ['5NF-2', 'Scale known add and times facts down to tenths and hundredths'],
    ]),
    ...statementsIn(5, 'Multiplication and division', [
      ['5MD-1', 'Multiply and divide by 10 and 100, decimal answers included, as scaling up or down'],
      ['5MD-2', 'Find factors, multiples and common ones; write a number as two or three factors'],
      ['5MD-3', 'Multiply up to four digits by one digit with a formal written method'],
      ['5MD-4', 'Divide up to four digits by one digit in writing and interpret remainders'],
    ]),
    ...statementsIn(5, 'Fractions', [
      ['5F-1', 'Find fractions such as three fifths of an amount'],
      ['5F-2', 'Find equivalent fractions and know they share one value and number-line position'],
      ['5F-3', 'Know by heart decimals for halves, quarters, fifths, tenths and their multiples'],
    ]),
    ...statementsIn(5, 'Geometry', [
      ['5G-1', 'Compare, estimate, measure and draw angles in degrees'],
      ['5G-2', 'Compare areas and work out rectangle areas in standard units'],
    ]),
    ...statementsIn(6, 'Place value', [
      [
        '6NPV-1',
        'Relate powers of ten from hundredths to ten million; multiply and divide by 10, 100 and 1000',
      ],
      ['6NPV-2', 'Value digits up to ten million, decimals included, and partition in several ways'],
      ['6NPV-3', 'Place numbers to ten million, decimals included, on a line and round them sensibly'],
      [
        '6NPV-4',
        'Halve, quarter, fifth and tenth any power of ten, hundredths to ten million, and read such scales',
      ],
    ]),
    ...statementsIn(6, 'Additive and multiplicative structure', [
      ['6AS/MD-1', 'Say how two numbers relate by adding and by multiplying, whole-number multipliers only'],
      ['6AS/MD-2', 'Use one given calculation to work out a related one by inverse, rules or place value'],
      ['6AS/MD-3', 'Solve problems about quantities linked by a ratio'],
      ['6AS/MD-4', 'Solve problems in which two numbers are unknown and linked'],
    ]),
    ...statementsIn(6, 'Fractions', [
      ['6F-1', 'Spot fractions that can be simplified and simplify by common factors'],
      ['6F-2', 'Give fractions a common denominator to compare close values'],
      ['6F-3', 'Compare unlike fractions, above one too, choosing reasoning or a common denominator'],
    ]),
    ...statementsIn(6, 'Geometry', [
      ['6G-1', 'Draw, build and split shapes to given lengths, angles and areas; solve related problems'],
    ]),
  ],
};
