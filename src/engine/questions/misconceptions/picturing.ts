// Positions, lines, families of shapes, surfaces, calendars, graphs and rough equivalents.
import type { Misconception } from '../misconceptions.js';

const COMMON = 'common practice';

export const PICTURING_MISCONCEPTIONS = {
  'position.swapped': {
    does: 'swaps across and up',
    help: 'Say "along the hall, then up the stairs" with a finger on the grid.',
    source: COMMON,
  },
  'position.one-out': {
    does: 'counts from one instead of from zero',
    help: 'Start with the finger on zero and count the jumps.',
    source: COMMON,
  },
  'position.wrong-way': {
    does: 'goes the opposite way, such as left for right or up for down',
    help: 'Point the way with an arm before moving.',
    source: COMMON,
  },
  'position.sign-lost': {
    does: 'leaves out or misplaces the minus sign of a point left of or below zero',
    help: 'Ask first: left or right of zero, below or above it?',
    source: COMMON,
  },
  'position.other-axis': {
    does: 'reflects in the other axis',
    help: 'Go over the axis that is the mirror with a finger, then look straight across it.',
    source: COMMON,
  },
  'shape.family-narrow': {
    does: 'thinks that a special shape cannot belong to a wider family, or takes the whole family for the special shape',
    help: 'Read the rule of the family aloud and test the shape against it.',
    source: 'from memory (van Hiele levels)',
  },
  'shape.lines-mixed': {
    does: 'mixes up parallel and perpendicular, or level and upright',
    help: 'Lay two pencils side by side, then in a cross with square corners, and name both.',
    source: COMMON,
  },
  'shape.face-missed': {
    does: 'leaves faces out, or takes only one face of each pair',
    help: 'Hold a box and mark opposite faces alike.',
    source: COMMON,
  },
  'area.half-forgotten': {
    does: 'forgets to halve when working out a triangle, or halves where there is no triangle',
    help: 'Draw the rectangle around the triangle and see that it is twice as large.',
    source: COMMON,
  },
  'measure.rough-wrong-unit': {
    does: 'uses the number that belongs to another pair of units',
    help: 'Keep one picture for each pair: a big step for a yard, a bag of flour for two pounds.',
    source: COMMON,
  },
  'time.order-by-number': {
    does: 'compares the numbers and overlooks the units of time',
    help: 'Change both to the smaller unit first.',
    source: COMMON,
  },
  'graph.other-point': {
    does: 'reads the point, slice or cell beside the one asked for',
    help: 'Go from the label with a finger, straight up or along.',
    source: COMMON,
  },
  'graph.value-not-change': {
    does: 'gives one of the two values instead of how far apart they are',
    help: 'Read both values, write them down, then compare.',
    source: COMMON,
  },
  'graph.lowest-for-highest': {
    does: 'goes to the lowest point instead of the highest, or the other way around',
    help: 'Slide a ruler down the graph and see which point it meets first.',
    source: COMMON,
  },
  'table.other-line': {
    does: 'reads another row or column than the one asked for',
    help: 'Lay a strip of paper along the row and put a finger on the heading.',
    source: COMMON,
  },
  'table.one-cell': {
    does: 'gives one number of the table instead of adding up all that are asked for',
    help: 'Put a counter on each cell that belongs to the question, then add.',
    source: COMMON,
  },
  'table.headings-counted': {
    does: 'counts the headings of the table instead of adding what stands below them',
    help: 'Ask what one cell tells: how many ribbons of that length are there?',
    source: COMMON,
  },
  'pie.slices-alike': {
    does: 'shares the whole out equally among the slices, whatever their size',
    help: 'Lay a paper quarter on the slices: are they all as large as one another?',
    source: COMMON,
  },
  'pie.slices-counted': {
    does: 'gives the number of parts instead of what they stand for',
    help: 'Write what the whole circle stands for in the middle, then share it out.',
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
} as const satisfies Record<string, Misconception>;
