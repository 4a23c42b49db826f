// Shapes and solids, angles, symmetry and position.
import type { Misconception } from '../misconceptions.js';
import { COMMON } from './common.js';

export const SHAPE_MISCONCEPTIONS = {
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
    help: 'Turn, shade and resize a paper shape and count its sides and corners each time.',
    source: 'from memory (van Hiele levels)',
  },
  'shape.flat-or-solid': {
    does: 'mixes up flat shapes and solids',
    help: 'Draw it or pick it up? Sort pictures and real things into two hoops.',
    source: COMMON,
  },
  'shape.other-face': {
    does: 'names another face of the solid, or its outline',
    help: 'Put a finger on the face in question and draw around it on paper.',
    source: COMMON,
  },
  'shape.other-cut': {
    does: 'pictures the solid cut another way',
    help: 'Cut a piece of soft clay and press the cut face onto paper.',
    source: COMMON,
  },
  'shape.net-not-folded': {
    does: 'does not follow where each piece goes when the net folds up',
    help: 'Copy the net on squared paper, cut it out and fold it one piece at a time.',
    source: COMMON,
  },
  'shape.prism-part-missed': {
    does: 'leaves out one end or both ends of the prism, or what lies between them',
    help: 'Count three parts: this end, the other end, and what joins them.',
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
    help: 'Mark the two sides of a pair alike, with a new mark for each pair, and count the pairs.',
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
  'shape.one-side-only': {
    does: 'takes only one side of the mirror line and leaves the other out',
    help: 'Fold along the line: each side has as much as the other, and both count.',
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
    help: 'Show it with an arm: a corner is 90°, a straight line 180°, all the way around 360°.',
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
  'shape.crossing-perpendicular': {
    does: 'takes any two lines that cross for perpendicular',
    help: 'Hold the corner of a sheet of paper where the lines cross: only a square corner counts.',
    source: COMMON,
  },
  'shape.face-missed': {
    does: 'leaves faces out, or takes only one face of each pair',
    help: 'Hold a box and mark opposite faces alike.',
    source: COMMON,
  },
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
} as const satisfies Record<string, Misconception>;
