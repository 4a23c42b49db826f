// Volume of boxes.
import { add, multiply, type Rational, rational, toNumber } from '../../numbers/rational.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import {
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

/** Whether edges may be those of the drawn box: none a mere slice of a unit, none many times another. */
function isBoxlike(edges: readonly number[]): boolean {
  const [short, long] = [Math.min(...edges), Math.max(...edges)];
  return short >= 1 && long <= 4 * short;
}

function cuboid(a: Quantity, b: number, c: number, { locale }: TemplateContext): Draft {
  const layer = multiply(a.value, rational(b));
  const volume = multiply(layer, rational(c));
  const answer = (value: Rational) => quantityAnswer(value, a.style, locale, 'cm³');
  const drawn = isBoxlike([toNumber(a.value), b, c]);
  return {
    text: `A box is ${a.text}\u00a0cm by ${b}\u00a0cm by ${c}\u00a0cm. What is its volume in cm³?`,
    answer: answer(volume),
    expression: `${a.expression} * ${b} * ${c}`,
    features: {
      size: sizeOf(toNumber(volume)) * 0.6,
      extraSteps: 1,
      unlike: a.value.d > 1,
      drawn,
      rule: b === 10 || c === 10,
    },
    strategy: [
      `${a.text} × ${b} = ${shown(layer, locale, a.style)}`,
      `${shown(layer, locale, a.style)} × ${c} = ${shown(volume, locale, a.style)}`,
    ],
    slips: [
      { misconception: 'meas.layer-only', answer: answer(layer) },
      { misconception: 'meas.edges-added', answer: answer(add(a.value, rational(b + c))) },
    ],
    ...(drawn
      ? {
          figure: {
            kind: 'solid' as const,
            solid: b === c && toNumber(a.value) === b ? ('cube' as const) : ('cuboid' as const),
          },
        }
      : {}),
  };
}

/** Cubes that fill a layer in rows. */
const LAYERS = [6, 8, 9, 10, 12, 14, 15, 16, 18, 20, 21, 24, 25] as const;

function layers(base: Quantity, height: number, { locale }: TemplateContext): Draft {
  const volume = multiply(base.value, rational(height));
  const answer = (value: Rational) => quantityAnswer(value, base.style, locale, 'cubes');
  return {
    text: `A box has ${height} layers of ${base.text} cubes. How many cubes is that?`,
    answer: answer(volume),
    // In the order of the text: the drawing then has a row for each layer.
    expression: `${height} * ${base.expression}`,
    features: { size: sizeOf(toNumber(base.value)) * 0.6, story: true, rule: height === 10, adjust: -0.4 },
    strategy: [`${height} × ${base.text} = ${shown(volume, locale, base.style)}`],
    slips: [
      { misconception: 'meas.layer-only', answer: answer(base.value) },
      { misconception: 'times.as-plus', answer: answer(add(base.value, rational(height))) },
    ],
    // The drawn box is wider than high, and so must be the stacked one.
    ...(height ** 2 <= toNumber(base.value)
      ? { figure: { kind: 'solid' as const, solid: 'cuboid' as const } }
      : {}),
  };
}

export const VOLUME_SKILLS: readonly Skill[] = [
  {
    id: 'meas.volume',
    title: 'Find the volume of a box',
    year: 6,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.area.rule', 'mult.three-factors'],
    codes: {
      ac9: [],
      england: ['NC-Y5-measure-5', 'NC-Y6-measure-7'],
      ccss: ['5.MD.C.4', '5.MD.C.5a', '5.MD.C.5b', '5.MD.C.3', '5.MD.C.3a', '5.MD.C.3b'],
    },
    templates: [
      {
        id: 'cuboid',
        ask: (context) =>
          cuboid(
            quantity(context.rng.int(2, 10), context.locale),
            context.rng.int(2, 6),
            context.rng.int(2, 6),
            context,
          ),
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const edge = quantityOn(day, context.locale, 0.5, 100, 1);
          if (edge === null || edge.value.d > 20) return null;
          const isLarge = toNumber(edge.value) > 12;
          return using(
            cuboid(
              edge,
              context.rng.pick(isLarge ? [2, 3, 10] : [2, 3, 4, 5]),
              context.rng.pick(isLarge ? [2, 3, 10] : [2, 4, 5, 6, 10]),
              context,
            ),
            `fills a box with an edge of ${day.text}\u00a0cm`,
          );
        },
      },
      {
        id: 'layers',
        ask: (context) =>
          layers(quantity(context.rng.pick(LAYERS), context.locale), context.rng.int(2, 6), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const base = wholeOn(day, 4, 400);
          return base === null
            ? null
            : using(
                layers(quantity(base, context.locale), context.rng.int(2, 8), context),
                `stacks layers of ${day.text} cubes`,
              );
        },
      },
    ],
  },
];
