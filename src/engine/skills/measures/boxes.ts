// Boxes: joined boxes, edges in parts, the surface of a cube or a box.
import { formatWhole } from '../../numbers/format.js';
import { multiply, rational } from '../../numbers/rational.js';
import { unitAnswer } from '../../questions/answer.js';
import { unitSlips } from '../../questions/slips/whole-slips.js';
import { operand, quantity, quantityAnswer } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

const joined = templateOf<readonly [first: number, width: number, depth: number, height: number]>({
  id: 'joined',
  free: (rng) => [rng.int(10, 60), rng.int(2, 5), rng.int(2, 4), rng.int(2, 4)],
  on: onWhole(5, 500, (n, rng) => [n, rng.int(2, 5), rng.int(2, 4), rng.int(2, 4)]),
  draft: ([first, width, depth, height], { locale }) => {
    const second = width * depth * height;
    return {
      text: `A box of ${first}\u00a0cm³ and one of ${width} cm by ${depth} cm by ${height} cm are joined. How many cm³ in all?`,
      answer: unitAnswer(first + second, 'cm³', locale),
      expression: `${first} + ${width} * ${depth} * ${height}`,
      features: { extraSteps: 1.5, size: Math.min(2, (first + second) / 100) },
      strategy: [
        `${width} × ${depth} × ${height} = ${second}`,
        `${formatWhole(first, locale)} + ${second} = ${formatWhole(first + second, locale)}`,
      ],
      slips: unitSlips(
        [
          ['meas.edges-added', first + width + depth + height],
          // Before the layer: where both come to the same, a box left out is the likelier.
          ['addend.left-out', second],
          ['meas.layer-only', first + width * depth],
        ],
        'cm³',
        locale,
      ),
      usesNumber: `joins a box of ${first}\u00a0cm³ to another`,
    };
  },
});

const partEdge = templateOf<readonly [n: number, d: number, width: number, height: number]>({
  id: 'part-edge',
  free: (rng) => {
    const [n, d] = rng.pick([
      [1, 2],
      [1, 4],
      [3, 4],
      [3, 2],
      [5, 2],
    ] as const);
    return [n, d, 2 * rng.int(1, 3), rng.int(2, 5)];
  },
  draft: ([n, d, width, height], { locale }) => {
    const edge = rational(n, d);
    const say = (value: typeof edge) => quantity(value, locale, 'fraction').text;
    const volume = multiply(edge, rational(width * height));
    const answer = (value: typeof edge) => quantityAnswer(value, 'fraction', locale, 'm³');
    return {
      text: `A box is ${say(edge)} m by ${width} m by ${height} m. What is its volume in m³?`,
      answer: answer(volume),
      expression: `${operand(edge)} * ${width} * ${height}`,
      features: { extraSteps: 1, unlike: true },
      strategy: [
        `${width} × ${height} = ${width * height}`,
        `${say(edge)} × ${width * height} = ${say(volume)}`,
      ],
      slips: [
        { misconception: 'meas.layer-only', answer: answer(rational(width * height)) },
        { misconception: 'meas.edges-added', answer: answer(rational(n + (width + height) * d, d)) },
      ],
    };
  },
});

const cubeSurface = templateOf<number>({
  id: 'cube-surface',
  free: (rng) => rng.int(2, 10),
  on: onWhole(1, 20, (n) => n),
  draft: (edge, { locale }) => ({
    text: `A cube has edges of ${edge} cm. What is its surface area in cm²?`,
    answer: unitAnswer(6 * edge * edge, 'cm²', locale),
    expression: `6 * ${edge} * ${edge}`,
    features: { extraSteps: 1, size: Math.min(2, edge / 6) },
    strategy: [
      `One face: ${edge} × ${edge} = ${edge * edge}`,
      `6 faces: 6 × ${edge * edge} = ${6 * edge * edge}`,
    ],
    slips: unitSlips(
      [
        ['meas.layer-only', edge * edge],
        ['shape.face-missed', 4 * edge * edge],
        ['meas.volume-for-surface', edge * edge * edge],
      ],
      'cm²',
      locale,
    ),
    figure: { kind: 'net', net: 'cube' },
    usesNumber: `covers a cube with edges of ${edge}\u00a0cm`,
  }),
});

const boxSurface = templateOf<readonly [a: number, b: number, c: number]>({
  id: 'box-surface',
  free: (rng) => [rng.int(2, 6), rng.int(2, 5), rng.int(1, 4)],
  draft: ([a, b, c], { locale }) => {
    const [top, front, side] = [a * b, a * c, b * c];
    const half = top + front + side;
    return {
      text: `A box is ${a} cm by ${b} cm by ${c} cm. What is its surface area in cm²?`,
      answer: unitAnswer(2 * half, 'cm²', locale),
      expression: `2 * (${a} * ${b} + ${a} * ${c} + ${b} * ${c})`,
      features: { extraSteps: 2, size: Math.min(2, half / 40) },
      strategy: [
        `Top, front and side: ${top}, ${front} and ${side}`,
        `${top} + ${front} + ${side} = ${half}`,
        `Each comes twice: 2 × ${half} = ${2 * half}`,
      ],
      slips: unitSlips(
        [
          ['shape.face-missed', half],
          ['meas.volume-for-surface', a * b * c],
          ['shape.face-missed', 2 * half - top],
        ],
        'cm²',
        locale,
      ),
      figure: { kind: 'net', net: a === b && b === c ? 'cube' : 'cuboid' },
    };
  },
});

export const BOX_SKILLS: readonly Skill[] = [
  {
    id: 'meas.volume.joined',
    title: 'Find the volume of joined boxes and of boxes with a part edge',
    year: 6,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.volume', 'frac.times-whole'],
    codes: { ac9: [], england: ['NC-Y6-measure-7'], ccss: ['5.MD.C.5', '5.MD.C.5c', '6.G.A.2'] },
    templates: [joined, partEdge],
  },
  {
    id: 'meas.surface',
    title: 'Find the surface area of a cube or a box',
    year: 6,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.area.rule', 'shape.net'],
    codes: { ac9: [], england: ['NC-Y6-shape-2'], ccss: ['6.G.A.4'] },
    templates: [cubeSurface, boxSurface],
  },
];
