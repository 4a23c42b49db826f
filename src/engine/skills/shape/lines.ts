// Lines and corners: parallel and perpendicular, level and upright, right angles, the size of an angle at a glance.
import type { FigureSpec } from '../../figures/figure.js';
import type { Locale } from '../../numbers/locale.js';
import { unitAnswer, wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { offered } from '../offered.js';
import type { Skill } from '../skill.js';
import { templateOf } from '../template-of.js';

type Relation = Extract<FigureSpec, { kind: 'line-pair' }>['relation'];

const NAMED: Readonly<Record<Relation, string>> = {
  parallel: 'parallel',
  perpendicular: 'perpendicular',
  slanted: 'neither',
};
const REASON: Readonly<Record<Relation, string>> = {
  parallel: 'They stay the same distance apart and never meet',
  perpendicular: 'They meet at a right angle',
  slanted: 'They meet, but not at a right angle',
};

const linePair = templateOf<readonly [relation: Relation, turn: number]>({
  id: 'pair',
  free: (rng) => [rng.pick(['parallel', 'perpendicular', 'slanted'] as const), 15 * rng.int(0, 11)],
  draft: ([relation, turn]) =>
    offered({
      text: 'Are these two lines parallel, perpendicular or neither?',
      right: NAMED[relation],
      // A child who swaps the two names still says "neither" of lines that are neither.
      wrong:
        relation === 'slanted'
          ? [['shape.crossing-perpendicular', NAMED.perpendicular]]
          : [['shape.lines-mixed', NAMED[relation === 'parallel' ? 'perpendicular' : 'parallel']]],
      features: { drawn: true, size: turn % 90 === 0 ? 0 : 0.6 },
      strategy: [REASON[relation]],
      figure: { kind: 'line-pair', relation, turn },
    }),
});

const UPRIGHT = [
  ['Is the top of a calm pond', 'horizontal'],
  ['Is a table top', 'horizontal'],
  ['Is a flagpole', 'vertical'],
  ['Is the side of a door frame', 'vertical'],
  ['A rope hangs down with a weight on its end. Is the rope', 'vertical'],
  ['A ball stays where it is put on a shelf. Is the shelf', 'horizontal'],
] as const;

const levelOrUpright = templateOf<(typeof UPRIGHT)[number]>({
  id: 'level',
  free: (rng) => rng.pick(UPRIGHT),
  draft: ([what, is]) =>
    offered({
      text: `${what} horizontal or vertical?`,
      right: is,
      wrong: [['shape.lines-mixed', is === 'vertical' ? 'horizontal' : 'vertical']],
      features: { adjust: -0.2 },
      strategy: [
        is === 'vertical'
          ? 'It goes straight up and down, so it is vertical'
          : 'It is level like the horizon, so it is horizontal',
      ],
    }),
});

interface Cornered {
  readonly shape: Extract<FigureSpec, { kind: 'shape' }>['shape'];
  readonly name: string;
  readonly rightAngles: number;
  readonly parallels: number;
  readonly corners: number;
}

/** Regular where the name allows it; a parallelogram and a rhombus as drawn, without square corners. */
const CORNERED: readonly Cornered[] = [
  { shape: 'square', name: 'a square', rightAngles: 4, parallels: 2, corners: 4 },
  { shape: 'rectangle', name: 'a rectangle', rightAngles: 4, parallels: 2, corners: 4 },
  { shape: 'right-triangle', name: 'a right-angled triangle', rightAngles: 1, parallels: 0, corners: 3 },
  { shape: 'triangle', name: 'a triangle with three equal sides', rightAngles: 0, parallels: 0, corners: 3 },
  { shape: 'pentagon', name: 'a regular pentagon', rightAngles: 0, parallels: 0, corners: 5 },
  { shape: 'hexagon', name: 'a regular hexagon', rightAngles: 0, parallels: 3, corners: 6 },
  { shape: 'octagon', name: 'a regular octagon', rightAngles: 0, parallels: 4, corners: 8 },
];

/** American classrooms say "a right triangle". */
function nameIn(name: string, locale: Locale): string {
  return locale.id === 'en-US' ? name.replace('-angled', '') : name;
}

const parallelSides = templateOf<Cornered>({
  id: 'parallel-sides',
  free: (rng) => rng.pick(CORNERED),
  draft: ({ shape, name, parallels, corners }, { locale }) => ({
    text: `How many pairs of parallel sides does ${nameIn(name, locale)} have?`,
    answer: wholeAnswer(parallels, locale),
    expression: null,
    features: { drawn: true, size: corners > 4 ? 1 : 0, extraSteps: 0.5 },
    strategy: [
      parallels === 0
        ? 'No side has another parallel to it: 0'
        : `Each side pairs with the one opposite: ${corners} ÷ 2 = ${parallels}`,
    ],
    slips: wholeSlips(
      [
        ['shape.sides-not-pairs', corners],
        ['shape.lines-mixed', shape === 'right-triangle' ? 1 : null],
        ['shape.one-pair-only', parallels > 1 ? 1 : null],
      ],
      locale,
    ),
    figure: { kind: 'shape', shape },
  }),
});

const rightAnglesIn = templateOf<Cornered>({
  id: 'in-shape',
  free: (rng) => rng.pick(CORNERED),
  draft: ({ shape, name, rightAngles, corners }, { locale }) => ({
    text: `How many right angles does ${nameIn(name, locale)} have?`,
    answer: wholeAnswer(rightAngles, locale),
    expression: null,
    features: { drawn: true, size: rightAngles === 4 ? 0 : 0.6 },
    strategy: [
      rightAngles === 0
        ? 'Hold the corner of a sheet against each corner: none fits, so 0'
        : `Hold the corner of a sheet against each corner: it fits ${rightAngles} of them`,
    ],
    slips: wholeSlips(
      [
        ['shape.every-corner-right', rightAngles === corners ? null : corners],
        ['shape.one-short', rightAngles > 1 ? rightAngles - 1 : rightAngles === 1 ? 2 : null],
      ],
      locale,
    ),
    figure: { kind: 'shape', shape },
  }),
});

const againstRight = templateOf<readonly [degrees: number, turn: number]>({
  id: 'against-right',
  free: (rng) => [rng.pick([30, 40, 50, 60, 120, 130, 140, 150, 90]), rng.pick([0, 0, 30, 90, 200])],
  draft: ([degrees, turn]) => {
    const is = degrees < 90 ? 'smaller' : degrees > 90 ? 'larger' : 'equal';
    return offered({
      text: 'Is this angle smaller than, equal to or larger than a right angle?',
      right: is,
      accepts: is === 'equal' ? ['equal to'] : [`${is} than`],
      wrong: (['smaller', 'larger'] as const)
        .filter((other) => other !== is)
        .map((other) => ['shape.angle-misjudged', other] as const),
      features: { drawn: true, size: turn === 0 ? 0 : 0.5 },
      strategy: [
        degrees === 90
          ? 'The corner of a sheet fits exactly'
          : `The corner of a sheet is ${degrees < 90 ? 'wider' : 'narrower'} than the angle`,
      ],
      figure: { kind: 'angle', degrees, turn, plainArc: true },
    });
  },
});

/** Where the angle stands between halves of a right angle, which tells it from the sizes offered beside it. */
function nearHalves(degrees: number): string {
  if (degrees === 90) return 'It is a right angle, 90°';
  if (degrees === 45) return 'It is half a right angle: about 45°';
  if (degrees === 135) return 'It is one and a half right angles: about 135°';
  if (degrees < 45) return `It is less than half a right angle, 45°: about ${degrees}°`;
  if (degrees < 90) return `It is between half a right angle, 45°, and a right angle: about ${degrees}°`;
  return degrees < 135
    ? `It is between a right angle and one and a half, 135°: about ${degrees}°`
    : `It is more than one and a half right angles, 135°: about ${degrees}°`;
}

const nearestSize = templateOf<readonly [degrees: number, others: readonly number[], turn: number]>({
  id: 'nearest',
  free: (rng) => {
    const degrees = rng.pick([30, 45, 60, 90, 120, 135, 150]);
    const others = [degrees - 90, degrees + 45, degrees + 90, degrees - 45].filter((n) => n > 10 && n < 180);
    return [degrees, rng.shuffle(others).slice(0, 2), rng.pick([0, 0, 20, 90])];
  },
  draft: ([degrees, others, turn], { rng, locale }) => {
    const [a, b, c] = rng.shuffle([degrees, ...others]);
    return {
      text: `How big is this angle: ${a}°, ${b}° or ${c}°?`,
      answer: unitAnswer(degrees, '°', locale),
      expression: null,
      features: { drawn: true, fewChoices: true, extraSteps: 0.5, size: turn === 0 ? 0 : 0.6 },
      strategy: [nearHalves(degrees)],
      slips: others.map((other) => ({
        misconception: 'shape.angle-misjudged' as const,
        answer: unitAnswer(other, '°', locale),
      })),
      figure: { kind: 'angle', degrees, turn, plainArc: true },
    };
  },
});

export const LINE_SKILLS: readonly Skill[] = [
  {
    id: 'shape.right-angles',
    title: 'Spot right angles',
    year: 3,
    fluentYear: 4,
    strand: 'shape',
    prerequisites: ['shape.sides', 'shape.turn'],
    codes: {
      ac9: ['AC9M3M05'],
      england: ['NC-Y3-shape-2', 'NC-Y3-shape-3', '3G-1'],
      ccss: ['4.MD.C.5', '4.G.A.1'],
    },
    templates: [rightAnglesIn, againstRight],
  },
  {
    id: 'shape.lines',
    title: 'Tell parallel and perpendicular lines',
    year: 3,
    fluentYear: 4,
    strand: 'shape',
    prerequisites: ['shape.right-angles'],
    codes: {
      ac9: ['AC9M2SP01'],
      england: ['NC-Y3-shape-4', '3G-2'],
      ccss: ['4.G.A.1', '4.G.A.2'],
    },
    templates: [linePair, levelOrUpright, parallelSides],
  },
  {
    id: 'shape.angle.estimate',
    title: 'Estimate the size of an angle',
    year: 5,
    fluentYear: 6,
    strand: 'shape',
    prerequisites: ['shape.angle.name'],
    codes: { ac9: ['AC9M5M04'], england: ['NC-Y5-shape-2', '5G-1'], ccss: ['4.MD.C.5b'] },
    templates: [nearestSize],
  },
];
