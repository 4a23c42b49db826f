// Mirror patterns, and what slides, flips and turns do to a shape.
import type { FigureSpec } from '../../figures/figure.js';
import { unitAnswer, wholeAnswer } from '../../questions/answer.js';
import { unitSlips, wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import { offered } from '../offered.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

type Square = readonly [column: number, row: number];

/** Squares of the left half of a grid of six columns and four rows. */
function halfPattern(rng: Rng): readonly Square[] {
  const all = Array.from({ length: 12 }, (_, i): Square => [i % 3, Math.floor(i / 3)]);
  return rng.shuffle(all).slice(0, rng.int(3, 8));
}

const grid = (filled: readonly Square[]): FigureSpec => ({
  kind: 'symmetry-grid',
  columns: 6,
  rows: 4,
  filled,
});

const wholePattern = templateOf<readonly Square[]>({
  id: 'whole',
  free: halfPattern,
  draft: (filled, { locale }) => {
    const n = filled.length;
    return {
      text: `${n} squares are coloured on one side of the mirror line. How many are there with their mirror images?`.replace(
        'coloured',
        locale.spelling.colour === 'color' ? 'colored' : 'coloured',
      ),
      answer: wholeAnswer(2 * n, locale),
      expression: `2 * ${n}`,
      features: { drawn: true },
      strategy: [`Every square has one image: 2 × ${n} = ${2 * n}`],
      slips: wholeSlips(
        [
          ['shape.one-side-only', n],
          ['shape.one-short', 2 * n - 1],
        ],
        locale,
      ),
      figure: grid([...filled].sort((a, b) => a[1] - b[1] || a[0] - b[0])),
    };
  },
});

const imageColumn = templateOf<readonly [column: number, row: number]>({
  id: 'image',
  free: (rng) => [rng.int(1, 3), rng.int(1, 4)],
  draft: ([column, row], { locale }) => ({
    text: `Count the columns from the left. In which column is the mirror image of the dark square?`,
    answer: wholeAnswer(7 - column, locale),
    expression: `6 + 1 - ${column}`,
    features: { drawn: true, extraSteps: 0.5 },
    strategy: [
      `It is ${4 - column} from the mirror line, so its image is ${4 - column} beyond it`,
      `3 + ${4 - column} = ${7 - column}`,
    ],
    slips: wholeSlips(
      [
        ['shape.one-short', 7 - column + (column === 1 ? -1 : 1)],
        ['shape.slid-not-flipped', 3 + column],
      ],
      locale,
    ),
    figure: grid([[column - 1, row - 1]]),
  }),
});

const apart = templateOf<number>({
  id: 'apart',
  free: (rng) => rng.int(2, 9),
  on: onWhole(2, 500, (n) => n),
  draft: (n, { locale }) => ({
    text: `A point is ${n} cm from a mirror line. How far is it from its image?`,
    answer: unitAnswer(2 * n, 'cm', locale),
    expression: `2 * ${n}`,
    features: { size: Math.min(2, n / 50), extraSteps: 0.5 },
    strategy: [`The image is as far behind the line: 2 × ${n} = ${2 * n}`],
    slips: unitSlips(
      [
        ['shape.one-side-only', n],
        ['fact.one-out', 2 * n - 1],
      ],
      'cm',
      locale,
    ),
    usesNumber: `mirrors a point ${n}\u00a0cm from a line`,
  }),
});

const MOVES = [
  ['slides 4 squares along without turning', 'translation'],
  ['slides up and to the left without turning', 'translation'],
  ['is flipped over a mirror line', 'reflection'],
  ['is shown as in a mirror', 'reflection'],
  ['turns a quarter turn about one corner', 'rotation'],
  ['turns upside down about its middle', 'rotation'],
] as const;
const NAMES = ['translation', 'reflection', 'rotation'] as const;

const nameMove = templateOf<(typeof MOVES)[number]>({
  id: 'name',
  free: (rng) => rng.pick(MOVES),
  draft: ([what, name]) =>
    offered({
      text: `A shape ${what}. Is that a translation, reflection or rotation?`,
      right: name,
      wrong: NAMES.filter((other) => other !== name).map((other) => ['shape.moves-mixed', other] as const),
      features: { size: what.includes('upside') ? 0.6 : 0 },
      strategy: [
        name === 'translation'
          ? 'A slide is a translation'
          : name === 'reflection'
            ? 'A flip is a reflection'
            : 'A turn is a rotation',
      ],
    }),
});

const SAME_SIZE_AND_FORM = 'Slides, flips and turns keep the size and the form of a shape';
const KEPT = [
  ['A shape is reflected. Do its sides keep their length', true, SAME_SIZE_AND_FORM],
  ['A shape is turned. Do its angles stay the same', true, SAME_SIZE_AND_FORM],
  ['A shape slides 5 squares. Does its area change', false, SAME_SIZE_AND_FORM],
  ['A shape is reflected. Does it become larger', false, SAME_SIZE_AND_FORM],
  ['A shape is turned upside down. Does its number of sides change', false, SAME_SIZE_AND_FORM],
  [
    'A shape slides along. Does it still face the same way',
    true,
    'A slide neither turns a shape nor flips it over',
  ],
] as const;

const kept = templateOf<(typeof KEPT)[number]>({
  id: 'kept',
  free: (rng) => rng.pick(KEPT),
  draft: ([text, isTrue, because]) =>
    offered({
      text: `${text}, yes or no?`,
      right: isTrue ? 'yes' : 'no',
      wrong: [['shape.move-changes', isTrue ? 'no' : 'yes']],
      features: { adjust: -0.2 },
      strategy: [because],
    }),
});

export const MIRROR_SKILLS: readonly Skill[] = [
  {
    id: 'shape.mirror',
    title: 'Complete a mirror pattern',
    year: 4,
    fluentYear: 5,
    strand: 'shape',
    prerequisites: ['shape.symmetry', 'mult.double.small'],
    codes: { ac9: ['AC9M4SP03'], england: ['NC-Y4-shape-4', '4G-3'], ccss: ['4.G.A.3'] },
    templates: [wholePattern, imageColumn, apart],
  },
  {
    id: 'shape.moves',
    title: 'Slides, flips and turns',
    year: 5,
    fluentYear: 5,
    strand: 'shape',
    prerequisites: ['shape.mirror', 'shape.turn'],
    codes: { ac9: ['AC9M5SP03'], england: ['NC-Y5-position-1'], ccss: [] },
    templates: [nameMove, kept],
  },
];
