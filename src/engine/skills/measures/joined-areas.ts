// Areas beyond one whole rectangle: joined rectangles, triangles, parallelograms, sides in parts.
import { formatWhole } from '../../numbers/format.js';
import { multiply, rational } from '../../numbers/rational.js';
import { unitAnswer, wholeAnswer, writtenAnswer } from '../../questions/answer.js';
import type { Written } from '../../questions/slips/fraction-operations.js';
import { unitSlips, wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import { operand, quantity, quantityAnswer, withGap } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

interface Joined {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

const lShape = templateOf<Joined>({
  id: 'joined',
  free: (rng) => ({ a: rng.int(4, 10), b: rng.int(3, 8), c: rng.int(2, 5), d: rng.int(2, 4) }),
  draft: ({ a, b, c, d }, { locale }) => ({
    text: `${a === 8 ? 'An' : 'A'} ${a} cm by ${b} cm rectangle and a ${c} cm by ${d} cm one make an L-shape. What is its area in cm²?`,
    answer: unitAnswer(a * b + c * d, 'cm²', locale),
    expression: `${a} * ${b} + ${c} * ${d}`,
    features: { extraSteps: 1, size: Math.min(2, (a * b) / 40) },
    strategy: [`${a} × ${b} = ${a * b}`, `${c} × ${d} = ${c * d}`, `${a * b} + ${c * d} = ${a * b + c * d}`],
    slips: unitSlips(
      [
        ['meas.one-rectangle', a * b],
        ['meas.sides-added', a + b + c + d],
        ['meas.two-perimeters', 2 * (a + b) + 2 * (c + d)],
      ],
      'cm²',
      locale,
    ),
  }),
});

const cutOut = templateOf<Joined>({
  id: 'cut-out',
  free: (rng) => ({ a: rng.int(6, 10), b: rng.int(5, 9), c: rng.int(2, 4), d: rng.int(2, 4) }),
  draft: ({ a, b, c, d }, { locale }) => ({
    text: `A ${c} cm by ${d} cm corner is cut from ${a === 8 ? 'an' : 'a'} ${a} cm by ${b} cm card. What area is left in cm²?`,
    answer: unitAnswer(a * b - c * d, 'cm²', locale),
    expression: `${a} * ${b} - ${c} * ${d}`,
    features: { extraSteps: 1, size: Math.min(2, (a * b) / 40) },
    strategy: [`${a} × ${b} = ${a * b}`, `${c} × ${d} = ${c * d}`, `${a * b} − ${c * d} = ${a * b - c * d}`],
    slips: unitSlips(
      [
        ['meas.added-not-taken', a * b + c * d],
        ['meas.one-rectangle', a * b],
        ['meas.sides-shortened', (a - c) * (b - d)],
      ],
      'cm²',
      locale,
    ),
  }),
});

/** 7 × 24 as 7 × 20 and 7 × 4, in a rectangle cut in two. */
const splitArea = templateOf<readonly [rows: number, columns: number]>({
  id: 'split',
  free: (rng) => [rng.int(3, 9), 10 * rng.int(1, 4) + rng.int(2, 9)],
  on: onWhole(12, 99, (n, rng) => (n % 10 === 0 ? null : [rng.int(3, 9), n])),
  draft: ([rows, columns], { locale }) => {
    const tens = columns - (columns % 10);
    const ones = columns % 10;
    const say = (n: number) => formatWhole(n, locale);
    return {
      text: `${rows} × ${columns} = ${rows} × ${tens} + ?`,
      answer: wholeAnswer(rows * ones, locale),
      expression: `${rows} * ${columns} - ${rows} * ${tens}`,
      features: { unknownInside: true, drawn: true, size: (rows * ones) / 60 },
      strategy: [
        `${columns} is ${tens} and ${ones}`,
        `${rows} × ${ones} = ${say(rows * ones)}`,
        `So ${rows} × ${columns} = ${rows} × ${tens} + ${say(rows * ones)}`,
      ],
      slips: wholeSlips(
        [
          ['times.tens-only', ones],
          ['equals.answer-next', rows * columns],
          ['times.neighbour', (rows + 1) * ones],
        ],
        locale,
      ),
      figure: { kind: 'area-model', across: [tens, ones], down: [rows], cells: [say(rows * tens), '?'] },
      usesNumber: `cuts ${rows} × ${columns} into two rectangles`,
    };
  },
});

/** A height below the base, since the drawn triangle is wider than high; even where the base is odd, to be halved. */
function heightBelow(base: number, most: number, rng: Rng): number {
  return base % 2 === 0 ? rng.int(3, most) : 2 * rng.int(2, Math.floor(most / 2));
}

const triangle = templateOf<readonly [base: number, height: number]>({
  id: 'triangle',
  free: (rng) => {
    const base = rng.int(4, 12);
    return [base, heightBelow(base, base - 1, rng)];
  },
  on: onWhole(4, 100, (n, rng) => [n, heightBelow(n, Math.min(10, n - 1), rng)]),
  draft: ([base, height], { locale }) => ({
    text: `A triangle has a base of ${base} cm and a height of ${height} cm. What is its area in cm²?`,
    answer: unitAnswer((base * height) / 2, 'cm²', locale),
    expression: `${base} * ${height} / 2`,
    features: { extraSteps: 1, size: Math.min(2, (base * height) / 80) },
    strategy: [
      'The triangle is half of the rectangle around it',
      `${base} × ${height} = ${base * height}`,
      `${base * height} ÷ 2 = ${(base * height) / 2}`,
    ],
    slips: unitSlips(
      [
        ['area.half-forgotten', base * height],
        ['meas.sides-added', base + height],
      ],
      'cm²',
      locale,
    ),
    figure: { kind: 'shape', shape: 'right-triangle', labels: ['', `${base}\u00a0cm`, `${height} cm`] },
    usesNumber: `finds the area of a triangle on a base of ${base}\u00a0cm`,
  }),
});

const parallelogram = templateOf<readonly [base: number, height: number]>({
  id: 'parallelogram',
  free: (rng) => [rng.int(4, 12), rng.int(3, 9)],
  on: onWhole(2, 100, (n, rng) => [n, rng.int(3, 9)]),
  draft: ([base, height], { locale }) => ({
    text: `A parallelogram has a base of ${base} cm and a height of ${height} cm. What is its area in cm²?`,
    answer: unitAnswer(base * height, 'cm²', locale),
    expression: `${base} * ${height}`,
    features: { extraSteps: 0.5, size: Math.min(2, (base * height) / 60) },
    strategy: [
      'Cut off the leaning end and move it across: a rectangle',
      `${base} × ${height} = ${base * height}`,
    ],
    slips: unitSlips(
      [
        ['area.half-forgotten', (base * height) / 2],
        ['times.as-plus', base + height],
      ],
      'cm²',
      locale,
    ),
    usesNumber: `finds the area of a parallelogram on a base of ${base}\u00a0cm`,
  }),
});

const partSides = templateOf<readonly [n: number, d: number, m: number, e: number, whole: boolean]>({
  id: 'part-sides',
  free: (rng) => {
    const [n, d] = rng.pick([
      [1, 2],
      [1, 4],
      [3, 4],
      [2, 3],
      [1, 3],
    ] as const);
    const [m, e] = rng.pick([
      [1, 2],
      [1, 3],
      [2, 5],
      [1, 5],
    ] as const);
    if (rng.chance(0.4)) return [n, d, d * rng.int(1, 3), 1, true];
    // A rectangle with two equal sides would be called a square.
    return n * e === m * d ? [n, d, 1, 5, false] : [n, d, m, e, false];
  },
  draft: ([n, d, m, e, whole], { locale }) => {
    const [a, b] = [rational(n, d), rational(m, e)];
    const area = multiply(a, b);
    const say = (value: typeof a) => quantity(value, locale, 'fraction').text;
    const answer = (value: typeof a) => quantityAnswer(value, 'fraction', locale, 'm²');
    const asWritten = (wrong: Written) => {
      const bare = writtenAnswer(wrong);
      return { ...bare, text: bare.text + withGap('m²') };
    };
    return {
      text: `A ${whole ? 'strip' : 'rectangle'} is ${say(b)} m by ${say(a)} m. What is its area in m²?`,
      answer: answer(area),
      expression: `${operand(a)} * ${operand(b)}`,
      features: { unlike: true, extraSteps: whole ? 0 : 0.5 },
      strategy: whole
        ? [`${say(a)} × ${m} = ${say(area)}`]
        : [
            `The unit square is cut into ${d} × ${e} = ${d * e} equal parts`,
            `The rectangle covers ${n} × ${m} = ${n * m} of them: ${n * m}/${d * e}`,
            ...(area.d < d * e ? [`${n * m}/${d * e} = ${say(area)}`] : []),
          ],
      slips: [
        { misconception: 'meas.sides-added', answer: answer(rational(n * e + m * d, d * e)) },
        {
          misconception: whole ? 'fractions.whole-added-to-top' : 'fractions.add-tops-bottoms',
          answer: asWritten({ top: n + m, bottom: whole ? d : d + e }),
        },
      ],
    };
  },
});

export const JOINED_AREA_SKILLS: readonly Skill[] = [
  {
    id: 'meas.area.split',
    title: 'Split a product like a rectangle',
    year: 4,
    fluentYear: 5,
    strand: 'measures',
    prerequisites: ['meas.area.squares', 'mult.table.6'],
    codes: { ac9: ['AC9M4N06'], england: ['NC-Y4-multdiv-5'], ccss: ['3.MD.C.7c', '3.MD.C.7'] },
    templates: [splitArea],
  },
  {
    id: 'meas.area.joined',
    title: 'Find the area of joined rectangles',
    year: 5,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.area.rule'],
    codes: {
      ac9: ['AC9M5M02'],
      england: ['NC-Y4-measure-3', 'NC-Y5-measure-4'],
      ccss: ['3.MD.C.7d', '3.MD.C.7'],
    },
    templates: [lShape, cutOut],
  },
  {
    id: 'meas.area.triangle',
    title: 'Find the area of a triangle or a parallelogram',
    year: 6,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.area.rule', 'div.half.large'],
    codes: { ac9: [], england: ['NC-Y6-measure-6', '6G-1'], ccss: ['6.G.A.1'] },
    templates: [triangle, parallelogram],
  },
  {
    id: 'meas.area.parts',
    title: 'Find an area with fractions as sides',
    year: 6,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.area.rule', 'frac.times-fraction'],
    codes: { ac9: [], england: ['NC-Y6-fractions-4'], ccss: ['5.NF.B.4b'] },
    templates: [partSides],
  },
];
