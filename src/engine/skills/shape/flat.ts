// Flat shapes: names, sides, corners and lines of symmetry.
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer, wordAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { sizeOf, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { type Flat, FLATS } from './flats.js';

const POLYGONS = FLATS.filter((flat) => flat.sides > 2);

function an(name: string): string {
  return /^[aeiou]/.test(name) ? 'an' : 'a';
}

/** One of the shapes with many sides is taken for another; where there are few, one is counted twice. */
function mistakenSides({ sides }: Flat): readonly ['shape.another-shape' | 'shape.one-short', number] {
  if (sides < 5) return ['shape.one-short', sides + 1];
  return ['shape.another-shape', sides === 5 ? 6 : sides === 6 ? 5 : 6];
}

function nameShape(flat: Flat): Draft {
  const sides =
    flat.sides === 0
      ? 'It is round and has no corners'
      : flat.shape === 'square'
        ? 'It has 4 equal sides and 4 square corners'
        : flat.shape === 'rectangle'
          ? 'It has 4 square corners, and its sides are not all equal'
          : `It has ${flat.sides} sides`;
  return {
    text: 'What is the name of this shape?',
    answer: wordAnswer(flat.name),
    expression: null,
    features: { drawn: true, size: flat.sides > 4 ? 2 : flat.shape === 'rectangle' ? 0.3 : 0, adjust: -0.3 },
    strategy: [sides, `So it is ${an(flat.name)} ${flat.name}`],
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
  const [mistake, mistaken] = mistakenSides(flat);
  return {
    text: `How many ${word} does ${an(flat.name)} ${flat.name} have?`,
    answer: wholeAnswer(flat.sides, locale),
    expression: null,
    features: { drawn: true, size: flat.sides > 4 ? 1 : 0, adjust: -0.2 },
    strategy: [
      `Count around the shape once: ${Array.from({ length: flat.sides }, (_, i) => i + 1).join(', ')}`,
    ],
    slips: [
      { misconception: 'shape.one-short', answer: wholeAnswer(flat.sides - 1, locale) },
      { misconception: mistake, answer: wholeAnswer(mistaken, locale) },
    ],
    figure: { kind: 'shape', shape: flat.shape },
  };
}

function manyShapes(count: number, flat: Flat, { locale }: TemplateContext): Draft {
  const total = count * flat.sides;
  const tens = Math.floor(count / 10) * 10;
  const parted = tens > 0 && tens !== count;
  const [mistake, mistaken] = mistakenSides(flat);
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
          `One ${flat.name} has ${flat.sides} sides`,
          `${formatWhole(tens, locale)} × ${flat.sides} = ${formatWhole(tens * flat.sides, locale)}`,
          `${count - tens} × ${flat.sides} = ${(count - tens) * flat.sides}`,
          `${formatWhole(tens * flat.sides, locale)} + ${(count - tens) * flat.sides} = ${formatWhole(total, locale)}`,
        ]
      : [
          `One ${flat.name} has ${flat.sides} sides`,
          `${formatWhole(count, locale)} × ${flat.sides} = ${formatWhole(total, locale)}`,
        ],
    slips: [
      { misconception: mistake, answer: wholeAnswer(count * mistaken, locale) },
      { misconception: 'money.added-not-multiplied', answer: wholeAnswer(count + flat.sides, locale) },
    ],
    figure: { kind: 'shape', shape: flat.shape },
  };
}

/** Each side is one stick, so a shape with longer and shorter sides cannot be made. */
const OF_STICKS = POLYGONS.slice(0, 5).filter((flat) => flat.shape !== 'rectangle');

function fromSticks(sticks: number, flat: Flat, { locale }: TemplateContext): Draft {
  const made = Math.floor(sticks / flat.sides);
  const rest = sticks % flat.sides;
  return {
    text: `How many separate ${flat.many} do ${formatWhole(sticks, locale)} sticks make, one stick a side?`,
    answer: wholeAnswer(made, locale),
    expression: rest === 0 ? `${sticks} / ${flat.sides}` : `floor(${sticks} / ${flat.sides})`,
    features: { size: sizeOf(sticks), extraSteps: rest === 0 ? 0.5 : 1, story: true },
    strategy: [
      `Each ${flat.name} needs ${flat.sides} sticks`,
      `${made} × ${flat.sides} = ${formatWhole(made * flat.sides, locale)}`,
      ...(rest > 0 ? [`${rest} left over, too few for another one`] : []),
    ],
    slips: [
      ...(rest > 0
        ? [
            { misconception: 'group.rounds-up' as const, answer: wholeAnswer(made + 1, locale) },
            { misconception: 'group.left-over-given' as const, answer: wholeAnswer(rest, locale) },
          ]
        : []),
      {
        misconception: 'shape.one-short',
        answer: wholeAnswer(Math.floor(sticks / (flat.sides === 3 ? 4 : flat.sides - 1)), locale),
      },
      { misconception: 'money.multiplied-not-shared', answer: wholeAnswer(sticks * flat.sides, locale) },
    ],
    figure: { kind: 'shape', shape: flat.shape },
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
        ? `All ${flat.sides} sides and all ${flat.sides} angles are equal, so there are as many fold lines: ${flat.sides}`
        : flat.shape === 'rectangle'
          ? 'It folds onto itself across the middle, upright and level, not along a diagonal: 1 + 1 = 2'
          : flat.shape === 'rhombus'
            ? 'It folds onto itself along both diagonals only: 1 + 1 = 2'
            : 'Only the long diagonal folds it onto itself: 1',
    ],
    slips: [
      {
        misconception: isRegular
          ? 'shape.upright-only'
          : flat.shape === 'rhombus'
            ? 'shape.fold-per-side'
            : 'shape.diagonals-fold',
        answer: wholeAnswer(flat.wrongMirrors, locale),
      },
      { misconception: 'shape.fold-per-side', answer: wholeAnswer(flat.sides, locale) },
      { misconception: 'shape.one-short', answer: wholeAnswer(flat.mirrors + 1, locale) },
    ],
    figure: { kind: 'shape', shape: flat.shape },
  };
}

export const FLAT_SHAPE_SKILLS: readonly Skill[] = [
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
          const count = wholeOn(day, 2, 100);
          const flat = context.rng.pick(POLYGONS.slice(0, 6));
          return count === null
            ? null
            : using(manyShapes(count, flat, context), `counts the sides of ${day.text} ${flat.many}`);
        },
      },
      {
        id: 'sticks',
        ask: (context) => {
          const flat = context.rng.pick(OF_STICKS);
          return fromSticks(flat.sides * context.rng.int(3, 10) + context.rng.int(0, 2), flat, context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const sticks = wholeOn(day, 9, 500);
          const flat = context.rng.pick(OF_STICKS);
          return sticks === null
            ? null
            : using(fromSticks(sticks, flat, context), `makes ${flat.many} from ${day.text} sticks`);
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
];
