// Length, mass, capacity, temperature, perimeter, area and volume.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

const RULER =
  'Gómezescobar, Guerrero & Fernández-Cézar 2020 (reading the end point); Bragg & Outhred (Grades 5 and 6)';
const AREA = 'Machaba 2016 (area and perimeter mixed up)';
const METRIC = 'Gilman 2013 (large to small unit is easier than small to large)';

export const MEASURE_MISCONCEPTIONS = {
  'meas.factor': {
    does: 'changes units by the wrong power of ten',
    help: 'Anchor each pair of units in something real: a ruler, a big step, a bag of rice.',
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
    help: 'Lay 1\u00a0cm cubes along the ruler: a length is made of spaces.',
    source: RULER,
  },
  'meas.scale-by-ones': {
    does: 'takes every small mark of a scale as one',
    help: 'Find two labels, count the spaces between them and work out what one space is worth.',
    source: COMMON,
  },
  'meas.label-below': {
    does: 'reads the last label passed and overlooks the marks after it',
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
  'meas.two-perimeters': {
    does: 'adds the distances around the two rectangles instead of the spaces inside them',
    help: 'Shade both insides and count squares: the edges do not matter here.',
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
  'measure.rough-wrong-unit': {
    does: 'uses the number that belongs to another pair of units',
    help: 'Keep one picture for each pair: a big step for a yard, a bag of flour for two pounds.',
    source: COMMON,
  },
  'area.half-forgotten': {
    does: 'forgets to halve when working out a triangle, or halves where there is no triangle',
    help: 'Draw the rectangle around the triangle and see that it is twice as large.',
    source: COMMON,
  },
} as const satisfies Record<string, Misconception>;
