// Flat shapes and solids: names, sides, faces, edges, vertices, lines of symmetry, radius and diameter.
import { formatWhole } from '../../numbers/format.js';
import { divide, multiply, type Rational, rational, toNumber } from '../../numbers/rational.js';
import { wholeAnswer, wordAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import {
  measured,
  type Quantity,
  quantity,
  quantityAnswer,
  quantityOn,
  shown,
  sizeOf,
  using,
  wholeOn,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

interface Flat {
  readonly shape:
    | 'triangle'
    | 'square'
    | 'rectangle'
    | 'pentagon'
    | 'hexagon'
    | 'octagon'
    | 'circle'
    | 'rhombus'
    | 'kite';
  readonly name: string;
  readonly many: string;
  readonly sides: number;
  readonly mirrors: number;
  readonly wrongMirrors: number;
  readonly lookalike: string;
}

/** Line counts are those of the regular shape, or of a rectangle, rhombus or kite that is no square. */
const FLATS: readonly Flat[] = [
  {
    shape: 'triangle',
    name: 'triangle',
    many: 'triangles',
    sides: 3,
    mirrors: 3,
    wrongMirrors: 1,
    lookalike: 'pyramid',
  },
  {
    shape: 'square',
    name: 'square',
    many: 'squares',
    sides: 4,
    mirrors: 4,
    wrongMirrors: 2,
    lookalike: 'cube',
  },
  {
    shape: 'rectangle',
    name: 'rectangle',
    many: 'rectangles',
    sides: 4,
    mirrors: 2,
    wrongMirrors: 4,
    lookalike: 'square',
  },
  {
    shape: 'pentagon',
    name: 'pentagon',
    many: 'pentagons',
    sides: 5,
    mirrors: 5,
    wrongMirrors: 1,
    lookalike: 'hexagon',
  },
  {
    shape: 'hexagon',
    name: 'hexagon',
    many: 'hexagons',
    sides: 6,
    mirrors: 6,
    wrongMirrors: 2,
    lookalike: 'pentagon',
  },
  {
    shape: 'octagon',
    name: 'octagon',
    many: 'octagons',
    sides: 8,
    mirrors: 8,
    wrongMirrors: 2,
    lookalike: 'hexagon',
  },
  {
    shape: 'circle',
    name: 'circle',
    many: 'circles',
    sides: 0,
    mirrors: 0,
    wrongMirrors: 0,
    lookalike: 'ball',
  },
  {
    shape: 'rhombus',
    name: 'rhombus',
    many: 'rhombuses',
    sides: 4,
    mirrors: 2,
    wrongMirrors: 4,
    lookalike: 'square',
  },
  { shape: 'kite', name: 'kite', many: 'kites', sides: 4, mirrors: 1, wrongMirrors: 2, lookalike: 'rhombus' },
];

const POLYGONS = FLATS.filter((flat) => flat.sides > 2);

function an(name: string): string {
  return /^[aeiou]/.test(name) ? 'an' : 'a';
}

/** The number of sides of the shape it is most easily taken for. */
function mistakenSides(flat: Flat): number {
  return { 3: 4, 4: 5, 5: 6, 6: 5, 8: 6 }[flat.sides] ?? 4;
}

function nameShape(flat: Flat): Draft {
  const sides = flat.sides === 0 ? 'It is round and has no corners.' : `It has ${flat.sides} sides.`;
  return {
    text: 'What is the name of this shape?',
    answer: wordAnswer(flat.name),
    expression: null,
    features: { drawn: true, size: flat.sides > 4 ? 2 : flat.shape === 'rectangle' ? 0.3 : 0, adjust: -0.3 },
    strategy: [sides, `So it is ${an(flat.name)} ${flat.name}.`],
    slips: [
      { misconception: 'shape.another-shape', answer: wordAnswer(flat.lookalike) },
      ...(flat.shape === 'circle'
        ? [{ misconception: 'shape.another-shape' as const, answer: wordAnswer('oval') }]
        : []),
    ],
    figure: { kind: 'shape', shape: flat.shape },
  };
}

function sidesOf(flat: Flat, corners: boolean, { locale }: TemplateContext): Draft {
  const word = corners ? 'corners' : 'sides';
  return {
    text: `How many ${word} does ${an(flat.name)} ${flat.name} have?`,
    answer: wholeAnswer(flat.sides, locale),
    expression: null,
    features: { drawn: true, size: flat.sides > 4 ? 1 : 0, adjust: -0.2 },
    strategy: [
      `Count round the shape once: ${Array.from({ length: flat.sides }, (_, i) => i + 1).join(', ')}.`,
    ],
    slips: [
      { misconception: 'shape.one-short', answer: wholeAnswer(flat.sides - 1, locale) },
      { misconception: 'shape.another-shape', answer: wholeAnswer(mistakenSides(flat), locale) },
    ],
    figure: { kind: 'shape', shape: flat.shape },
  };
}

function manyShapes(count: number, flat: Flat, { locale }: TemplateContext): Draft {
  const total = count * flat.sides;
  const tens = Math.floor(count / 10) * 10;
  const parted = tens > 0 && tens !== count;
  return {
    text: `How many sides do ${formatWhole(count, locale)} separate ${flat.many} have altogether?`,
    answer: wholeAnswer(total, locale),
    expression: `${count} * ${flat.sides}`,
    features: {
      size: sizeOf(count) * 0.8,
      fives: flat.sides === 5,
      carries: parted && (count % 10) * flat.sides >= 10 ? 1 : 0,
      extraSteps: parted ? 0.5 : 0,
      adjust: flat.sides === 4 ? -0.2 : 0,
    },
    strategy: parted
      ? [
          `One ${flat.name} has ${flat.sides} sides.`,
          `${formatWhole(tens, locale)} × ${flat.sides} = ${formatWhole(tens * flat.sides, locale)}`,
          `${count - tens} × ${flat.sides} = ${(count - tens) * flat.sides}`,
          `${formatWhole(tens * flat.sides, locale)} + ${(count - tens) * flat.sides} = ${formatWhole(total, locale)}`,
        ]
      : [
          `One ${flat.name} has ${flat.sides} sides.`,
          `${formatWhole(count, locale)} × ${flat.sides} = ${formatWhole(total, locale)}`,
        ],
    slips: [
      { misconception: 'shape.another-shape', answer: wholeAnswer(count * mistakenSides(flat), locale) },
      { misconception: 'money.added-not-multiplied', answer: wholeAnswer(count + flat.sides, locale) },
    ],
    figure: { kind: 'shape', shape: flat.shape },
  };
}

function fromSticks(sticks: number, flat: Flat, { locale }: TemplateContext): Draft {
  const made = Math.floor(sticks / flat.sides);
  const rest = sticks % flat.sides;
  return {
    text: `How many separate ${flat.many} can be made from ${formatWhole(sticks, locale)} sticks, one stick a side?`,
    answer: wholeAnswer(made, locale),
    expression: rest === 0 ? `${sticks} / ${flat.sides}` : `floor(${sticks} / ${flat.sides})`,
    features: { size: sizeOf(sticks), extraSteps: rest === 0 ? 0.5 : 1, story: true },
    strategy: [
      `Each ${flat.name} needs ${flat.sides} sticks.`,
      `${made} × ${flat.sides} = ${formatWhole(made * flat.sides, locale)}`,
      ...(rest > 0 ? [`${rest} left over, too few for another one.`] : []),
    ],
    slips: [
      ...(rest > 0
        ? [
            { misconception: 'group.rounds-up' as const, answer: wholeAnswer(made + 1, locale) },
            { misconception: 'group.left-over-given' as const, answer: wholeAnswer(rest, locale) },
          ]
        : []),
      {
        misconception: 'shape.another-shape',
        answer: wholeAnswer(Math.floor(sticks / (flat.sides === 4 ? 3 : 4)), locale),
      },
      { misconception: 'money.multiplied-not-shared', answer: wholeAnswer(sticks * flat.sides, locale) },
    ],
    figure: { kind: 'shape', shape: flat.shape },
  };
}

interface Solid {
  readonly solid: 'cube' | 'cuboid' | 'square-pyramid' | 'triangular-prism';
  readonly name: string;
  readonly many: string;
  readonly faces: number;
  readonly edges: number;
  readonly vertices: number;
  readonly seen: number;
}

const SOLIDS: readonly Solid[] = [
  { solid: 'cube', name: 'cube', many: 'cubes', faces: 6, edges: 12, vertices: 8, seen: 3 },
  { solid: 'cuboid', name: 'box', many: 'boxes', faces: 6, edges: 12, vertices: 8, seen: 3 },
  {
    solid: 'square-pyramid',
    name: 'square pyramid',
    many: 'square pyramids',
    faces: 5,
    edges: 8,
    vertices: 5,
    seen: 2,
  },
  {
    solid: 'triangular-prism',
    name: 'triangular prism',
    many: 'triangular prisms',
    faces: 5,
    edges: 9,
    vertices: 6,
    seen: 2,
  },
];

const PARTS = ['faces', 'edges', 'vertices'] as const;

function solidParts(
  solid: Solid,
  part: (typeof PARTS)[number],
  count: number,
  { locale }: TemplateContext,
): Draft {
  const each = solid[part];
  const total = count * each;
  const others = PARTS.filter((other) => other !== part);
  const called = part === 'vertices' ? 'vertices (corners)' : part;
  return {
    text:
      count === 1
        ? `How many ${called} does a ${solid.name} have?`
        : `How many ${called} do ${formatWhole(count, locale)} ${solid.many} have altogether?`,
    answer: wholeAnswer(total, locale),
    expression:
      count === 1
        ? part === 'edges'
          ? `${solid.faces} + ${solid.vertices} - 2`
          : part === 'faces'
            ? `${solid.edges} - ${solid.vertices} + 2`
            : `${solid.edges} - ${solid.faces} + 2`
        : `${count} * ${each}`,
    features: {
      drawn: true,
      size: (part === 'edges' ? 1 : 0) + (count === 1 ? 0 : sizeOf(count) + 0.5),
      extraSteps: count === 1 ? 0 : 1,
    },
    strategy: [
      solid.solid === 'cube' || solid.solid === 'cuboid'
        ? {
            faces: 'Top and bottom, front and back, left and right: 2 + 2 + 2 = 6',
            edges: '4 round the top, 4 round the bottom, 4 upright: 4 + 4 + 4 = 12',
            vertices: '4 at the top, 4 at the bottom: 4 + 4 = 8',
          }[part]
        : solid.solid === 'square-pyramid'
          ? {
              faces: '1 square and 4 triangles: 1 + 4 = 5',
              edges: '4 round the square, 4 up to the point: 4 + 4 = 8',
              vertices: '4 at the square, 1 at the point: 4 + 1 = 5',
            }[part]
          : {
              faces: '2 triangles and 3 rectangles: 2 + 3 = 5',
              edges: '3 round each triangle, 3 between them: 3 + 3 + 3 = 9',
              vertices: '3 at each triangle: 3 + 3 = 6',
            }[part],
      ...(count === 1 ? [] : [`${formatWhole(count, locale)} × ${each} = ${formatWhole(total, locale)}`]),
    ],
    slips: [
      ...(part === 'faces'
        ? [{ misconception: 'shape.seen-only' as const, answer: wholeAnswer(count * solid.seen, locale) }]
        : []),
      ...others.map((other) => ({
        misconception: 'shape.parts-mixed-up' as const,
        answer: wholeAnswer(count * solid[other], locale),
      })),
      ...(count > 1
        ? [
            {
              misconception: 'money.added-not-multiplied' as const,
              answer: wholeAnswer(count + each, locale),
            },
          ]
        : []),
    ],
    figure: { kind: 'solid', solid: solid.solid },
  };
}

function symmetry(flat: Flat, { locale }: TemplateContext): Draft {
  const isRegular = flat.mirrors === flat.sides;
  const name =
    isRegular && flat.sides !== 4
      ? `regular ${flat.name}`
      : flat.shape === 'rectangle' || flat.shape === 'rhombus'
        ? `${flat.name} that is not a square`
        : flat.name;
  const shownName =
    flat.shape === 'triangle'
      ? 'triangle with three equal sides'
      : flat.shape === 'kite'
        ? 'kite that is not a rhombus'
        : name;
  return {
    text: `How many lines of symmetry does ${an(shownName)} ${shownName} have?`,
    answer: wholeAnswer(flat.mirrors, locale),
    expression: null,
    features: { drawn: true, size: flat.mirrors > 4 ? 1.5 : flat.mirrors > 2 ? 1 : 0.5 },
    strategy: [
      isRegular
        ? `All ${flat.sides} sides are equal, so there are as many fold lines: ${flat.sides}.`
        : flat.shape === 'rectangle'
          ? 'It folds onto itself across the middle, upright and level, not along a diagonal: 1 + 1 = 2'
          : flat.shape === 'rhombus'
            ? 'It folds onto itself along both diagonals only: 1 + 1 = 2'
            : 'Only the long diagonal folds it onto itself: 1.',
    ],
    slips: [
      {
        misconception: isRegular || flat.shape === 'rhombus' ? 'shape.upright-only' : 'shape.diagonals-fold',
        answer: wholeAnswer(flat.wrongMirrors, locale),
      },
      {
        misconception: isRegular ? 'shape.upright-only' : 'shape.diagonals-fold',
        answer: wholeAnswer(isRegular ? (flat.wrongMirrors === 1 ? 2 : 1) : 4, locale),
      },
      { misconception: 'shape.one-short', answer: wholeAnswer(flat.mirrors + 1, locale) },
    ],
    figure: { kind: 'shape', shape: flat.shape },
  };
}

function circle(size: Quantity, fromRadius: boolean, unit: string, { locale }: TemplateContext): Draft {
  const value = fromRadius ? multiply(size.value, rational(2)) : divide(size.value, rational(2));
  const answer = (amount: Rational) => quantityAnswer(amount, size.style, locale, unit);
  const given = measured(size, unit, locale);
  return {
    text: fromRadius
      ? `A circle has a radius of ${given}. What is its diameter?`
      : `A circle has a diameter of ${given}. What is its radius?`,
    answer: answer(value),
    expression: fromRadius ? `2 * ${size.expression}` : `${size.expression} / 2`,
    features: {
      size: sizeOf(toNumber(size.value)) * 0.3,
      unlike: value.d > 1,
      extraSteps: fromRadius ? 0 : 0.5,
      adjust: -0.4,
    },
    strategy: [
      'The diameter is twice as long as the radius.',
      fromRadius
        ? `2 × ${size.text} = ${shown(value, locale, size.style)}`
        : `${size.text} ÷ 2 = ${shown(value, locale, size.style)}`,
    ],
    slips: [
      {
        misconception: 'shape.radius-diameter',
        answer: answer(fromRadius ? divide(size.value, rational(2)) : multiply(size.value, rational(2))),
      },
      { misconception: 'shape.radius-diameter', answer: answer(size.value) },
    ],
    figure: { kind: 'shape', shape: 'circle' },
  };
}

export const FLAT_AND_SOLID_SKILLS: readonly Skill[] = [
  {
    id: 'shape.name',
    title: 'Name flat shapes',
    year: 0,
    fluentYear: 1,
    strand: 'shape',
    prerequisites: ['place.next.20'],
    codes: {
      ac9: ['AC9MFSP01', 'AC9M1SP01'],
      england: ['NC-Y1-shape-1a', '1G-1'],
      ccss: ['K.G.A.2', '2.G.A.1'],
    },
    templates: [
      {
        id: 'name',
        ask: ({ rng }) =>
          nameShape(
            rng.pick(
              FLATS.filter((flat) => flat.mirrors > 2 || flat.sides === 0 || flat.shape === 'rectangle'),
            ),
          ),
      },
    ],
  },
  {
    id: 'shape.sides',
    title: 'Count sides and corners of shapes',
    year: 2,
    fluentYear: 3,
    strand: 'shape',
    prerequisites: ['shape.name', 'place.next.20'],
    codes: { ac9: ['AC9M2SP01'], england: ['NC-Y2-shape-1', '2G-1'], ccss: ['K.G.B.4', '2.G.A.1'] },
    templates: [
      {
        id: 'sides',
        ask: (context) => sidesOf(context.rng.pick(POLYGONS), context.rng.chance(0.5), context),
      },
    ],
  },
  {
    id: 'shape.sides.many',
    title: 'Work out the sides of many shapes',
    year: 3,
    fluentYear: 4,
    strand: 'shape',
    prerequisites: ['shape.sides', 'mult.table.4'],
    codes: { ac9: ['AC9M3SP01', 'AC9M3N06'], england: ['NC-Y2-shape-1', '3MD-1'], ccss: ['2.G.A.1'] },
    templates: [
      {
        id: 'sides',
        ask: (context) => manyShapes(context.rng.int(2, 12), context.rng.pick(POLYGONS.slice(0, 5)), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const count = wholeOn(day, 2, 400);
          const flat = context.rng.pick(POLYGONS.slice(0, 6));
          return count === null
            ? null
            : using(manyShapes(count, flat, context), `counts the sides of ${day.text} ${flat.many}`);
        },
      },
      {
        id: 'sticks',
        ask: (context) => {
          const flat = context.rng.pick(POLYGONS.slice(0, 5));
          return fromSticks(flat.sides * context.rng.int(3, 10) + context.rng.int(0, 2), flat, context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const sticks = wholeOn(day, 9, 500);
          const flat = context.rng.pick(POLYGONS.slice(0, 5));
          return sticks === null
            ? null
            : using(fromSticks(sticks, flat, context), `makes ${flat.many} from ${day.text} sticks`);
        },
      },
    ],
  },
  {
    id: 'shape.solid',
    title: 'Count faces, edges and vertices',
    year: 2,
    fluentYear: 4,
    strand: 'shape',
    prerequisites: ['shape.sides'],
    codes: { ac9: ['AC9M3SP01'], england: ['NC-Y2-shape-2'], ccss: ['2.G.A.1'] },
    templates: [
      {
        id: 'parts',
        ask: (context) => solidParts(context.rng.pick(SOLIDS), context.rng.pick(PARTS), 1, context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const count = wholeOn(day, 2, 100);
          if (count === null) return null;
          const solid = context.rng.pick(SOLIDS);
          const part = context.rng.pick(PARTS);
          return using(
            solidParts(solid, part, count, context),
            `counts the ${part} of ${day.text} ${solid.many}`,
          );
        },
      },
    ],
  },
  {
    id: 'shape.symmetry',
    title: 'Find lines of symmetry',
    year: 4,
    fluentYear: 5,
    strand: 'shape',
    prerequisites: ['shape.sides'],
    codes: { ac9: ['AC9M4SP03'], england: ['NC-Y4-shape-3', '4G-3'], ccss: ['4.G.A.3'] },
    templates: [{ id: 'lines', ask: (context) => symmetry(context.rng.pick(POLYGONS), context) }],
  },
  {
    id: 'shape.circle',
    title: 'Link radius and diameter',
    year: 6,
    fluentYear: 6,
    strand: 'shape',
    prerequisites: ['shape.sides'],
    codes: { ac9: [], england: ['NC-Y6-shape-4'], ccss: [] },
    templates: [
      {
        id: 'circle',
        ask: (context) =>
          circle(quantity(context.rng.int(3, 30), context.locale), context.rng.chance(0.5), 'cm', context),
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const size = quantityOn(day, context.locale, 0.1, 1000, 2);
          if (size === null) return null;
          const unit = toNumber(size.value) > 100 || size.style === 'fraction' ? 'm' : 'cm';
          const fromRadius = context.rng.chance(0.5);
          return using(
            circle(size, fromRadius, unit, context),
            `has a ${fromRadius ? 'radius' : 'diameter'} of ${day.text}`,
          );
        },
      },
    ],
  },
];
