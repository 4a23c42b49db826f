// Solids seen, folded, sliced: names, faces, nets, cross-sections and prisms.
import type { FigureSpec } from '../../figures/figure.js';
import type { Locale } from '../../numbers/locale.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { inSentence, offered, worded } from '../offered.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

type SolidKind = Extract<FigureSpec, { kind: 'solid' }>['solid'];
type NetKind = Extract<FigureSpec, { kind: 'net' }>['net'];

interface Named {
  readonly solid: SolidKind;
  readonly name: string;
  readonly accepts: readonly string[];
  readonly lookalike: string;
  readonly why: string;
}

/** Solids with the names in use; a cuboid is a rectangular prism in Australia and the United States. */
function namedSolids(locale: Locale): readonly Named[] {
  const box = locale.id === 'en-GB' ? 'cuboid' : 'rectangular prism';
  return [
    { solid: 'cube', name: 'cube', accepts: [], lookalike: 'square', why: '6 equal square faces' },
    {
      solid: 'cuboid',
      name: box,
      accepts: ['cuboid', 'rectangular prism', 'box'].filter((name) => name !== box),
      lookalike: 'rectangle',
      why: '6 rectangles, not all alike',
    },
    {
      solid: 'cylinder',
      name: 'cylinder',
      accepts: [],
      lookalike: 'circle',
      why: 'two round ends and a curved side',
    },
    { solid: 'cone', name: 'cone', accepts: [], lookalike: 'triangle', why: 'one round end and a point' },
    { solid: 'sphere', name: 'sphere', accepts: ['ball'], lookalike: 'circle', why: 'round every way' },
    {
      solid: 'square-pyramid',
      name: 'pyramid',
      accepts: ['square pyramid', 'square-based pyramid'],
      lookalike: 'triangle',
      why: 'a flat base and sides that meet in a point',
    },
    {
      solid: 'triangular-prism',
      name: 'triangular prism',
      accepts: ['prism'],
      lookalike: 'pyramid',
      why: 'two triangles with rectangles between them',
    },
  ];
}

const nameSolid = templateOf<number>({
  id: 'name',
  free: (rng) => rng.int(0, 6),
  draft: (which, { locale }) => {
    const { solid, name, accepts, lookalike, why } = namedSolids(locale)[which] as Named;
    return worded({
      text: 'What is the name of this solid?',
      right: name,
      accepts,
      wrong: [['shape.another-shape', lookalike]],
      features: { drawn: true, size: which > 4 ? 1 : which === 1 ? 0.5 : 0 },
      strategy: [`It has ${why}`.replace('has round', 'is round'), `So it is a ${name}`],
      figure: { kind: 'solid', solid },
    });
  },
});

const FLAT_OR_SOLID = [
  ['a circle', 'flat'],
  ['a triangle', 'flat'],
  ['a square', 'flat'],
  ['a hexagon', 'flat'],
  ['a cube', 'solid'],
  ['a ball', 'solid'],
  ['a cone', 'solid'],
  ['a cylinder', 'solid'],
] as const;

const flatOrSolid = templateOf<(typeof FLAT_OR_SOLID)[number]>({
  id: 'flat-or-solid',
  free: (rng) => rng.pick(FLAT_OR_SOLID),
  draft: ([what, is]) =>
    offered({
      text: `Is ${what} a flat shape or a solid?`,
      right: is === 'flat' ? 'a flat shape' : 'a solid',
      accepts: [is],
      wrong: [['shape.flat-or-solid', is === 'flat' ? 'a solid' : 'a flat shape']],
      features: { adjust: -0.3 },
      strategy: [
        is === 'flat'
          ? 'It can be drawn on paper, with no thickness'
          : 'You can hold it in your hand and it has thickness',
      ],
    }),
});

const FACES = [
  ['the ends of a cylinder', 'circle', 'rectangle'],
  ['the flat face of a cone', 'circle', 'triangle'],
  ['every face of a cube', 'square', 'cube'],
  ['the two ends of a triangular prism', 'triangle', 'rectangle'],
  ['the faces between the ends of a triangular prism', 'rectangle', 'triangle'],
  ['the base of a square pyramid', 'square', 'triangle'],
  ['the sloping faces of a square pyramid', 'triangle', 'square'],
] as const;

const faceShape = templateOf<(typeof FACES)[number]>({
  id: 'face',
  free: (rng) => rng.pick(FACES),
  draft: ([where, shape, wrong]) =>
    offered({
      text: `What shape ${/^the (ends|two|faces|sloping)/.test(where) ? 'are' : 'is'} ${where}: ${[shape, wrong].sort().join(' or ')}?`,
      right: shape,
      wrong: [[wrong === 'cube' ? 'shape.flat-or-solid' : 'shape.other-face', wrong]],
      features: { size: /prism|sloping/.test(where) ? 0.7 : 0 },
      strategy: [`Think of ${where}: ${shape}`],
    }),
});

interface Net {
  readonly net: NetKind;
  readonly folds: string;
  readonly others: readonly [string, string];
  readonly why: string;
}

const NETS: readonly Net[] = [
  // No prism is offered beside a cube, which is one.
  { net: 'cube', folds: 'a cube', others: ['a pyramid', 'a cone'], why: '6 equal squares' },
  { net: 'cube-steps', folds: 'a cube', others: ['a pyramid', 'a cylinder'], why: '6 equal squares' },
  {
    net: 'cylinder',
    folds: 'a cylinder',
    others: ['a cone', 'a sphere'],
    why: '2 circles and a rectangle that rolls up',
  },
  {
    net: 'square-pyramid',
    folds: 'a square pyramid',
    others: ['a triangular prism', 'a cone'],
    why: '1 square and 4 triangles that meet in a point',
  },
  {
    net: 'triangular-prism',
    folds: 'a triangular prism',
    others: ['a square pyramid', 'a cube'],
    why: '2 triangles and 3 rectangles',
  },
];

const foldsInto = templateOf<Net>({
  id: 'folds-into',
  free: (rng) => rng.pick(NETS),
  draft: ({ net, folds, others, why }, { rng }) =>
    offered({
      text: `What does this net fold into: ${inSentence(rng.shuffle([folds, ...others]), 'or')}?`,
      right: folds,
      wrong: others.map((other) => ['shape.net-not-folded', other] as const),
      features: { drawn: true, extraSteps: 0.5, size: net === 'cube-steps' ? 1 : 0 },
      strategy: [`Its pieces: ${why}`, `So it folds into ${folds}`],
      figure: { kind: 'net', net },
    }),
});

const CUBE_NETS = [
  ['cube', true, 'Four squares go around, one closes each end'],
  ['cube-steps', true, 'Each square finds a side of its own'],
  ['not-cube-row', false, 'Two squares would cover the same side'],
  ['not-cube-block', false, 'Four squares meet in one point and cannot fold there'],
  ['open-box', false, 'There are only 5 squares, and a cube has 6 faces'],
] as const;

const makesCube = templateOf<(typeof CUBE_NETS)[number]>({
  id: 'makes-cube',
  free: (rng) => rng.pick(CUBE_NETS),
  draft: ([net, folds, why]) =>
    offered({
      text: 'Do these squares fold into a closed cube, yes or no?',
      right: folds ? 'yes' : 'no',
      wrong: [[net === 'open-box' ? 'shape.face-missed' : 'shape.net-not-folded', folds ? 'no' : 'yes']],
      features: { drawn: true, extraSteps: 1, size: net === 'cube-steps' ? 1 : 0 },
      strategy: [why],
      figure: { kind: 'net', net },
    }),
});

const PRISM_ENDS = ['triangle', 'square', 'pentagon', 'hexagon', 'octagon'] as const;
const SIDES: Readonly<Record<(typeof PRISM_ENDS)[number], number>> = {
  triangle: 3,
  square: 4,
  pentagon: 5,
  hexagon: 6,
  octagon: 8,
};

const SLICES = [
  ['a cylinder is cut straight across, parallel to its ends', 'circle', 'rectangle'],
  ['a cone is cut parallel to its base', 'circle', 'triangle'],
  ['a sphere is cut straight through', 'circle', 'oval'],
  ['a triangular prism is cut parallel to its ends', 'triangle', 'rectangle'],
  ['a square pyramid is cut parallel to its base', 'square', 'triangle'],
  ['a cube is cut parallel to its base', 'square', 'triangle'],
  ['a cylinder is cut straight down through the middle of its ends', 'rectangle', 'circle'],
] as const;

const slice = templateOf<(typeof SLICES)[number]>({
  id: 'slice',
  free: (rng) => rng.pick(SLICES),
  draft: ([cut, shape, wrong]) =>
    offered({
      text: `${cut.replace(/^a/, 'A')}. Is the cut face a ${[shape, wrong].sort().join(' or a ')}?`.replace(
        'a oval',
        'an oval',
      ),
      right: shape,
      wrong: [[wrong === 'oval' ? 'shape.another-shape' : 'shape.other-cut', wrong]],
      features: { extraSteps: 0.5 },
      strategy: [`Think of one thin slice: its face is a ${shape}`],
    }),
});

const PARTS = ['faces', 'edges', 'vertices'] as const;

function prismCount(
  sides: number,
  part: (typeof PARTS)[number],
): readonly [expression: string, value: number, why: string] {
  if (part === 'faces')
    return [`${sides} + 2`, sides + 2, `2 ends and ${sides} faces between them: ${sides} + 2 = ${sides + 2}`];
  if (part === 'edges')
    return [
      `3 * ${sides}`,
      3 * sides,
      `${sides} around each end and ${sides} between: 3 × ${sides} = ${3 * sides}`,
    ];
  return [`2 * ${sides}`, 2 * sides, `${sides} at each end: 2 × ${sides} = ${2 * sides}`];
}

const prismParts = templateOf<readonly [ends: string, sides: number, part: (typeof PARTS)[number]]>({
  id: 'prism',
  free: (rng) => {
    const end = rng.pick(PRISM_ENDS);
    return [`is a ${end}`.replace('a octagon', 'an octagon'), SIDES[end], rng.pick(PARTS)];
  },
  on: onWhole(3, 100, (n, rng) => [`has ${n} sides`, n, rng.pick(PARTS)]),
  draft: ([ends, sides, part], { locale }) => {
    const [expression, value, why] = prismCount(sides, part);
    return {
      text: `Each end of a prism ${ends}. How many ${part} does the prism have?`,
      answer: wholeAnswer(value, locale),
      expression,
      features: { extraSteps: 1, size: Math.min(2, sides / 8) },
      strategy: [why],
      slips: wholeSlips(
        [
          ['shape.prism-part-missed', part === 'faces' ? sides : part === 'edges' ? 2 * sides : sides],
          ['shape.parts-mixed-up', part === 'faces' ? 2 * sides : sides + 2],
        ],
        locale,
      ),
      usesNumber: `counts the ${part} of a prism whose ends have ${sides} sides`,
    };
  },
});

export const NET_SKILLS: readonly Skill[] = [
  {
    id: 'shape.solid.name',
    title: 'Name solids',
    year: 1,
    fluentYear: 2,
    strand: 'shape',
    prerequisites: ['shape.name'],
    codes: {
      ac9: ['AC9M1SP01'],
      england: ['NC-Y1-shape-1b', '1G-1', 'NC-Y3-shape-1', 'NC-Y5-shape-1'],
      ccss: ['K.G.A.2', 'K.G.A.3'],
    },
    templates: [nameSolid, flatOrSolid],
  },
  {
    id: 'shape.solid.faces',
    title: 'Find flat shapes on solids',
    year: 2,
    fluentYear: 3,
    strand: 'shape',
    prerequisites: ['shape.solid.name'],
    codes: { ac9: ['AC9M3SP01'], england: ['NC-Y2-shape-3', 'NC-Y2-shape-4'], ccss: ['2.G.A.1'] },
    templates: [faceShape],
  },
  {
    id: 'shape.net',
    title: 'Match solids and nets',
    year: 5,
    fluentYear: 6,
    strand: 'shape',
    prerequisites: ['shape.solid.faces', 'shape.solid'],
    codes: { ac9: ['AC9M5SP01'], england: ['NC-Y6-shape-2'], ccss: ['6.G.A.4'] },
    templates: [foldsInto, makesCube],
  },
  {
    id: 'shape.prism',
    title: 'Slices of solids, and the parts of a prism',
    year: 6,
    fluentYear: 6,
    strand: 'shape',
    prerequisites: ['shape.net'],
    codes: { ac9: ['AC9M6SP01'], england: ['NC-Y6-shape-2'], ccss: [] },
    templates: [slice, prismParts],
  },
];
