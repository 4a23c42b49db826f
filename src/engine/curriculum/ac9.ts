// The Australian Curriculum: Mathematics, version 9.0, Foundation to Year 6: codes with our own summaries.
// Source of codes and content: a public copy of ACARA's RDF/XML file for mathematics (namespace MRAC/2023/07) in
// the repository djplaner/exploring-australian-curriculum, data/v9/MAT.rdf; every code was looked up in it by
// program. Its 139 descriptions agree by year with a second, independent count (12, 15, 18, 23, 23, 24, 24).
// All 69 Number and Algebra descriptions are here. Left out, because a short warm-up cannot ask an investigation
// or a making or moving task: AC9M1SP02, AC9M1ST01, AC9M2ST01, AC9M3P02, AC9M3SP02, AC9M3ST01, AC9M3ST03,
// AC9M4P02, AC9M4SP01, AC9M4ST02, AC9M4ST03, AC9M5P02, AC9M5ST03, AC9M6P02, AC9M6SP03, AC9M6ST02, AC9M6ST03.
// The RDF writes AC9M5N10 as AC9M5N010, a slip of that file (its elaborations are AC9M5N10_E1 to E3).
import { type Standard, statementsIn } from './statement.js';

/** The standard's details and its 122 statements, by year and strand. */
export const AC9: Standard = {
  id: 'ac9',
  name: 'Australian Curriculum',
  title: 'Australian Curriculum: Mathematics, Foundation to Year 6 content descriptions',
  publisher: 'Australian Curriculum, Assessment and Reporting Authority (ACARA)',
  version: '9.0 (machine-readable release of July 2023)',
  licence:
    '© Australian Curriculum, Assessment and Reporting Authority (ACARA), CC BY 4.0 as its notice is quoted by others. The summaries are our own and are not endorsed by ACARA.',
  notes: [
    'The summaries are our own words, not the published ones.',
    'Year 0 is Foundation.',
    'Investigations and making tasks that a short warm-up cannot ask are left out.',
  ],
  statements: [
    ...statementsIn(0, 'Number', [
      ['AC9MFN01', 'Say, write, model and put in order the whole numbers from zero up to twenty or beyond'],
      [
        'AC9MFN02',
        'Say at a glance, without counting, how many things are in a small group of five or fewer',
      ],
      [
        'AC9MFN03',
        'Count groups of about twenty things, decide which has more or fewer, and justify the decision',
      ],
      ['AC9MFN04', 'Split and join groups of ten or fewer, naming both parts and the whole'],
      [
        'AC9MFN05',
        'Act out everyday joining, taking-away and how-many stories with materials, counting to find the result',
      ],
      [
        'AC9MFN06',
        'Act out fair sharing and making equal groups with materials, counting to find the result',
      ],
    ]),
    ...statementsIn(0, 'Algebra', [
      ['AC9MFA01', 'Spot, copy and carry on a repeating pattern, whatever it is made from'],
    ]),
    ...statementsIn(0, 'Measurement', [
      [
        'AC9MFM01',
        'Say which of two things is longer, heavier, holds more or lasts longer by direct comparison',
      ],
      ['AC9MFM02', 'Put weekdays and parts of the day in order and link them to familiar routines'],
    ]),
    ...statementsIn(0, 'Space', [
      ['AC9MFSP01', 'Name, sort and make familiar shapes and notice them in everyday objects'],
      ['AC9MFSP02', 'Use position words to say where a person or object is within a familiar place'],
    ]),
    ...statementsIn(0, 'Statistics', [
      ['AC9MFST01', 'Sort and compare a small collection of objects or pictures to answer a simple question'],
    ]),
    ...statementsIn(1, 'Number', [
      ['AC9M1N01', 'Read, write, model and order whole numbers up to 120 or more, including on number lines'],
      ['AC9M1N02', 'Break one- and two-digit numbers apart in several ways, including into tens and ones'],
      ['AC9M1N03', 'Work out how many in a collection of up to about 120 using equal groups and skip counts'],
      [
        'AC9M1N04',
        'Add and subtract with numbers up to 20, drawing on number bonds of ten and varied strategies',
      ],
      [
        'AC9M1N05',
        'Solve practical add and take-away stories, some with simple buying and selling, showing the steps',
      ],
      [
        'AC9M1N06',
        'Solve practical stories about sharing fairly or making equal groups, with drawings or materials',
      ],
    ]),
    ...statementsIn(1, 'Algebra', [
      [
        'AC9M1A01',
        'Continue and make number sequences built by skip counting, starting with twos, fives and tens',
      ],
      ['AC9M1A02', 'Continue and make repeating patterns and say which chunk repeats'],
    ]),
    ...statementsIn(1, 'Measurement', [
      [
        'AC9M1M01',
        'Order objects or events by length, mass, capacity or time taken, directly or through a go-between',
      ],
      ['AC9M1M02', 'Find a length by laying equal informal units end to end without gaps'],
      ['AC9M1M03', 'Say how long events last and their order, using hours, days, weeks, months or years'],
    ]),
    ...statementsIn(1, 'Space', [
      ['AC9M1SP01', 'Compare and group familiar shapes and objects by what is alike and different'],
    ]),
    ...statementsIn(1, 'Statistics', [
      [
        'AC9M1ST02',
        'Show one category of data with one-to-one displays and compare how often each answer occurs',
      ],
    ]),
    ...statementsIn(2, 'Number', [
      [
        'AC9M2N01',
        'Read, write, model and order whole numbers up to 1000 or more, including on number lines',
      ],
      [
        'AC9M2N02',
        'Partition and rename numbers of two or three digits in usual and unusual ways; explain zero as place holder',
      ],
      ['AC9M2N03', 'Know a half as one of two equal parts and reach quarters and eighths by halving again'],
      [
        'AC9M2N04',
        'Find sums and differences of numbers below 100, writing number sentences and choosing a strategy',
      ],
      [
        'AC9M2N05',
        'Use repeated addition, equal groups, arrays and partitioning for times and division by one digit',
      ],
      [
        'AC9M2N06',
        'Model everyday add, subtract, multiply and divide stories, including money, and interpret the answer in context',
      ],
    ]),
    ...statementsIn(2, 'Algebra', [
      ['AC9M2A01', 'Describe and make sequences that go up or down by the same step and fill in gaps'],
      ['AC9M2A02', 'Know addition facts to 20 fluently and turn them into matching subtraction facts'],
      [
        'AC9M2A03',
        'Know the two times table fluently and get related division facts through doubles and halves',
      ],
    ]),
    ...statementsIn(2, 'Measurement', [
      [
        'AC9M2M01',
        'Measure and compare lengths, capacities and masses with equal informal units, picking smaller ones for accuracy',
      ],
      [
        'AC9M2M02',
        'Recognise and show halves, quarters and eighths of shapes, objects and events such as an hour',
      ],
      ['AC9M2M03', 'Read dates on a calendar and count the days from one event to another'],
      ['AC9M2M04', "Read o'clock, half-past and quarter-hour times from an analog clock face"],
      ['AC9M2M05', 'Name and show turns: a quarter, a half, three quarters and all the way round'],
    ]),
    ...statementsIn(2, 'Space', [
      ['AC9M2SP01', 'Sort shapes by side count and by opposite, parallel, curved or straight features'],
      ['AC9M2SP02', 'Find positions on a simple map or plan and follow a described path'],
    ]),
    ...statementsIn(2, 'Statistics', [
      ['AC9M2ST02', 'Read and compare different graphs of the same data and say what stands out'],
    ]),
    ...statementsIn(3, 'Number', [
      ['AC9M3N01', 'Read, write and order whole numbers past 10 000 using standard naming and spacing'],
      [
        'AC9M3N02',
        'Show halves, thirds, quarters, fifths, tenths and their multiples; join like fractions to make one whole',
      ],
      [
        'AC9M3N03',
        'Find sums and differences of numbers below 1000 by place-value splitting and regrouping, without a calculator',
      ],
      [
        'AC9M3N04',
        'Find products and quotients of numbers below 100 with number sentences, diagrams, arrays and varied strategies',
      ],
      [
        'AC9M3N05',
        'Estimate how many in a collection and use estimates to judge whether an answer is sensible',
      ],
      [
        'AC9M3N06',
        'Model practical problems in all four operations, including money, with number sentences; explain the result',
      ],
      [
        'AC9M3N07',
        'Follow and write step-by-step procedures with decisions that explore numbers, then describe patterns found',
      ],
    ]),
    ...statementsIn(3, 'Algebra', [
      ['AC9M3A01', 'Treat addition and subtraction as opposites and use that to find a missing number'],
      [
        'AC9M3A02',
        'Stretch known facts within 20 into efficient mental adding and subtracting of bigger numbers',
      ],
      ['AC9M3A03', 'Know the three, four, five and ten times tables fluently with matching division facts'],
    ]),
    ...statementsIn(3, 'Measurement', [
      [
        'AC9M3M01',
        'Choose a sensible metric unit for everyday things and estimate by comparing with known measures',
      ],
      ['AC9M3M02', 'Measure and compare length, mass and capacity in metric units, reading marked scales'],
      ['AC9M3M03', 'Use links among seconds, minutes, hours and days to judge which event takes longer'],
      ['AC9M3M04', 'Explain how hours and minutes relate and read analog or digital clocks to the minute'],
      ['AC9M3M05', 'See angles as turns and judge them smaller than, equal to or bigger than a right angle'],
      ['AC9M3M06', 'Know how dollars and cents relate and show an amount of money in several ways'],
    ]),
    ...statementsIn(3, 'Space', [
      [
        'AC9M3SP01',
        'Compare and classify objects by key features, linking those features to what the object is for',
      ],
    ]),
    ...statementsIn(3, 'Statistics', [
      ['AC9M3ST02', 'Compare different graphs of a data set and say what the data means in its setting'],
    ]),
    ...statementsIn(3, 'Probability', [
      [
        'AC9M3P01',
        'Sort everyday chance events as certain, likely, unlikely or impossible and give a reason',
      ],
    ]),
    ...statementsIn(4, 'Number', [
      [
        'AC9M4N01',
        'Extend whole-number place value into tenths and hundredths; write and name decimals correctly',
      ],
      ['AC9M4N02', 'Describe what makes numbers odd or even and use those properties'],
      ['AC9M4N03', 'Find equal fractions with related denominators and connect fractions to decimals'],
      [
        'AC9M4N04',
        'Count in fraction steps past one whole and place fractions and mixed numbers on a number line',
      ],
      [
        'AC9M4N05',
        'Multiply or divide whole numbers by tens, hundreds and similar multiples, mentally, through place value',
      ],
      [
        'AC9M4N06',
        'Choose efficient methods for all four operations, with division that leaves no remainder',
      ],
      [
        'AC9M4N07',
        'Use rounding and estimating to check that calculations, including money totals, are reasonable',
      ],
      [
        'AC9M4N08',
        'Model practical problems in all four operations, including money; choose a method and interpret the answer',
      ],
      [
        'AC9M4N09',
        'Use step-by-step adding or multiplying rules to generate number sets and describe their patterns',
      ],
    ]),
    ...statementsIn(4, 'Algebra', [
      [
        'AC9M4A01',
        'Find the missing number in addition and subtraction equations by using number properties',
      ],
      [
        'AC9M4A02',
        'Know every multiplication fact to ten times ten with division facts; extend them to mental work with larger numbers',
      ],
    ]),
    ...statementsIn(4, 'Measurement', [
      [
        'AC9M4M01',
        'Read scales between the marks for temperature, time and metric measures, in suitable units',
      ],
      [
        'AC9M4M02',
        'Find or approximate the distance round a shape and the space inside it in suitable units',
      ],
      ['AC9M4M03', 'Solve elapsed-time problems using am and pm and change between time units'],
      ['AC9M4M04', 'Name and compare acute, right, obtuse, straight, reflex and full-turn angles'],
    ]),
    ...statementsIn(4, 'Space', [
      ['AC9M4SP02', 'Read and give positions and routes on a labelled grid using references and directions'],
      ['AC9M4SP03', 'Find line and rotational symmetry in shapes and complete symmetrical designs'],
    ]),
    ...statementsIn(4, 'Statistics', [
      ['AC9M4ST01', 'Read and discuss many-to-one picture graphs and column graphs made from collected data'],
    ]),
    ...statementsIn(4, 'Probability', [
      ['AC9M4P01', 'Put events or outcomes in order of likelihood and say whether one affects another'],
    ]),
    ...statementsIn(5, 'Number', [
      ['AC9M5N01', 'Compare, order and place on a number line decimals with three or more places'],
      ['AC9M5N02', 'Write whole numbers as factor products, spot multiples and test for divisibility'],
      ['AC9M5N03', 'Compare and order fractions and mixed numbers with the same or related denominators'],
      [
        'AC9M5N04',
        'Know 100% is the whole, compare using percentages, and match common ones to fractions and decimals',
      ],
      ['AC9M5N05', 'Add and subtract fractions whose denominators are equal or related'],
      [
        'AC9M5N06',
        'Multiply large numbers by one or two digits with an efficient method and check the size of the answer',
      ],
      [
        'AC9M5N07',
        'Solve division problems and express any remainder as a whole number, fraction or decimal to suit',
      ],
      ['AC9M5N08', 'Use estimation to judge whether solutions, including money ones, make sense'],
      [
        'AC9M5N09',
        'Model practical problems with all four operations, including money, choosing operations and explaining the outcome',
      ],
      [
        'AC9M5N10',
        'Write and run step-by-step procedures, with digital tools, exploring factors, multiples and divisibility patterns',
      ],
    ]),
    ...statementsIn(5, 'Algebra', [
      ['AC9M5A01', 'Treat multiplication and division as opposites and build families of linked facts'],
      [
        'AC9M5A02',
        'Find missing numbers in multiplication and division equations by using number properties',
      ],
    ]),
    ...statementsIn(5, 'Measurement', [
      [
        'AC9M5M01',
        'Pick fitting metric units for length, mass and capacity, combining or shrinking units for precision',
      ],
      ['AC9M5M02', 'Solve perimeter and area problems for regular and irregular shapes in metric units'],
      ['AC9M5M03', 'Convert between 12-hour and 24-hour time in practical problems'],
      ['AC9M5M04', 'Estimate, draw and measure angles in degrees and match sizes to angle names'],
    ]),
    ...statementsIn(5, 'Space', [
      ['AC9M5SP01', 'Match solid objects to their nets and picture the folded result'],
      ['AC9M5SP02', 'Locate and describe positions and moves with grid coordinates'],
      ['AC9M5SP03', 'Slide, flip and turn shapes, saying what stays unchanged and noting symmetry'],
    ]),
    ...statementsIn(5, 'Statistics', [
      [
        'AC9M5ST01',
        'Represent and discuss data displays, including finding the most frequent value (the mode)',
      ],
      ['AC9M5ST02', 'Read line graphs that show change over time and draw conclusions'],
    ]),
    ...statementsIn(5, 'Probability', [
      ['AC9M5P01', 'List all outcomes of a chance experiment and say whether they are equally likely'],
    ]),
    ...statementsIn(6, 'Number', [
      ['AC9M6N01', 'Use positive and negative whole numbers in context, on number lines and as coordinates'],
      [
        'AC9M6N02',
        'Identify primes, composites and squares and use what is known about them to simplify work',
      ],
      [
        'AC9M6N03',
        'Compare and order common fractions by equivalence, placing them on one number line with reasons',
      ],
      ['AC9M6N04', 'Add and subtract decimals through place value and check by estimating and rounding'],
      ['AC9M6N05', 'Solve fraction addition and subtraction problems by changing to equivalent fractions'],
      ['AC9M6N06', 'Scale decimals up or down by 10, 200, 3000 and the like mentally; check by estimation'],
      ['AC9M6N07', 'Find a common fraction, percentage or decimal part of an amount, including discounts'],
      [
        'AC9M6N08',
        'Estimate answers involving fractions, decimals and percentages, including money situations',
      ],
      [
        'AC9M6N09',
        'Model practical problems with whole numbers, fractions, decimals and percentages, justifying the choices made',
      ],
    ]),
    ...statementsIn(6, 'Algebra', [
      [
        'AC9M6A01',
        'Find and use the rule behind growing shape patterns and sequences with fractions or decimals',
      ],
      ['AC9M6A02', 'Find missing numbers in equations with brackets and mixed operations'],
      [
        'AC9M6A03',
        'Create rule-based procedures that generate number sets and explain the patterns that appear',
      ],
    ]),
    ...statementsIn(6, 'Measurement', [
      [
        'AC9M6M01',
        'Convert metric lengths, masses and capacities, using decimals where they suit the problem',
      ],
      ['AC9M6M02', 'Derive the rectangle area rule and apply it to practical problems'],
      ['AC9M6M03', 'Read timetables and itineraries and work out how long trips and events take'],
      ['AC9M6M04', 'Find unknown angles on a line, round a point and vertically opposite, giving reasons'],
    ]),
    ...statementsIn(6, 'Space', [
      ['AC9M6SP01', 'Recognise parallel slices of solids and how matching slices identify right prisms'],
      [
        'AC9M6SP02',
        'Locate points in all four quadrants and describe how coordinates change when a point moves',
      ],
    ]),
    ...statementsIn(6, 'Statistics', [
      ['AC9M6ST01', 'Compare data displays by mode, range and shape of distribution'],
    ]),
    ...statementsIn(6, 'Probability', [
      [
        'AC9M6P01',
        'Place chances on a scale from 0 to 1 or 0% to 100% and estimate them as fractions, decimals or percentages',
      ],
    ]),
  ],
};
