// Perimeter: the way round a shape, and a side from it.
import { divide, multiply, type Rational, rational, toNumber } from '../../numbers/rational.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { area, halfPerimeter, perimeter } from '../../questions/slips/measuring.js';
import {
  measured,
  type Quantity,
  quantity,
  quantityAnswer,
  quantityOn,
  shown,
  sizeOf,
  using,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { longSideFirst, productSize } from './product-size.js';

const REGULAR = [
  { name: 'A square', sides: 4, shape: 'square' },
  { name: 'A triangle with 3 equal sides', sides: 3, shape: 'triangle' },
  { name: 'A regular pentagon', sides: 5, shape: 'pentagon' },
  { name: 'A regular hexagon', sides: 6, shape: 'hexagon' },
] as const;

/** The largest side whose square children know. */
const LARGEST_SQUARED = 12;

function regularPerimeter(
  side: Quantity,
  kind: (typeof REGULAR)[number],
  unit: string,
  { locale }: TemplateContext,
): Draft {
  const around = multiply(side.value, rational(kind.sides));
  const answer = (value: Rational) => quantityAnswer(value, side.style, locale, unit);
  return {
    text: `Each side of a ${kind.shape} is ${measured(side, unit, locale)}. What is its perimeter?`,
    answer: answer(around),
    // Side by side: "4 * (1/4)" would be drawn as a quarter of 4.
    expression:
      side.style === 'fraction'
        ? Array.from({ length: kind.sides }, () => side.expression).join(' + ')
        : `${kind.sides} * ${side.expression}`,
    features: {
      size: productSize(side, quantity(kind.sides, locale)),
      carries: side.value.d === 1 && side.value.n > 10 && (side.value.n % 10) * kind.sides >= 10 ? 1 : 0,
      fives: kind.sides === 5,
      drawn: true,
      unlike: side.style === 'fraction',
    },
    strategy: [`${kind.sides} × ${side.text} = ${shown(around, locale, side.style)}`],
    slips: [
      { misconception: 'meas.two-sides', answer: answer(multiply(side.value, rational(2))) },
      // Larger squares and parts of a unit are too hard to work out for this to be a slip.
      ...(kind.sides === 4 && side.value.d === 1 && side.value.n <= LARGEST_SQUARED
        ? [
            {
              misconception: 'meas.area-for-perimeter' as const,
              answer: answer(multiply(side.value, side.value)),
            },
          ]
        : []),
      {
        misconception: 'shape.one-short',
        answer: answer(multiply(side.value, rational(kind.sides === 3 ? 4 : kind.sides - 1))),
      },
    ],
    figure: { kind: 'shape', shape: kind.shape, labels: [measured(side, unit, locale)] },
  };
}

function rectanglePerimeter(
  length: Quantity,
  width: Quantity,
  unit: string,
  { locale }: TemplateContext,
): Draft {
  const around = perimeter(length.value, width.value);
  const half = halfPerimeter(length.value, width.value);
  const style = length.style;
  const answer = (value: Rational) => quantityAnswer(value, style, locale, unit);
  return {
    text: `A rectangle has sides of ${measured(length, unit, locale)} and ${measured(width, unit, locale)}. What is its perimeter?`,
    answer: answer(around),
    expression: `2 * (${length.expression} + ${width.expression})`,
    features: {
      size: productSize(length, width),
      extraSteps: 1,
      drawn: true,
      unlike: style === 'fraction',
      adjust: -0.4,
    },
    strategy: [
      `${length.text} + ${width.text} = ${shown(half, locale, style)}`,
      `2 × ${shown(half, locale, style)} = ${shown(around, locale, style)}`,
    ],
    slips: [
      { misconception: 'meas.two-sides', answer: answer(half) },
      { misconception: 'meas.area-for-perimeter', answer: answer(area(length.value, width.value)) },
    ],
    figure: {
      kind: 'shape',
      shape: 'rectangle',
      labels: longSideFirst(length, width).map((side) => measured(side, unit, locale)),
    },
  };
}

function sideFromPerimeter(
  around: Quantity,
  kind: (typeof REGULAR)[number],
  unit: string,
  { locale }: TemplateContext,
): Draft {
  const side = divide(around.value, rational(kind.sides));
  const answer = (value: Rational) => quantityAnswer(value, around.style, locale, unit);
  return {
    text: `${kind.name} has a perimeter of ${measured(around, unit, locale)}. How long is one side?`,
    answer: answer(side),
    expression: `${around.expression} / ${kind.sides}`,
    features: {
      size: sizeOf(toNumber(around.value)) * 0.5,
      unknownInside: true,
      unlike: around.style === 'fraction' || side.d > 1,
      drawn: true,
    },
    strategy: [`${around.text} ÷ ${kind.sides} = ${shown(side, locale, around.style)}`],
    slips: [
      { misconception: 'meas.halves-not-quarters', answer: answer(divide(around.value, rational(2))) },
      {
        misconception: 'money.multiplied-not-shared',
        answer: answer(multiply(around.value, rational(kind.sides))),
      },
    ],
    figure: { kind: 'shape', shape: kind.shape, labels: ['?'] },
  };
}

export const PERIMETER_SKILLS: readonly Skill[] = [
  {
    id: 'meas.perimeter',
    title: 'Find a perimeter',
    year: 4,
    fluentYear: 5,
    strand: 'measures',
    prerequisites: ['meas.tape', 'mult.2d1d'],
    codes: {
      ac9: ['AC9M4M02', 'AC9M5M02'],
      england: ['NC-Y3-measure-2', 'NC-Y4-measure-2', '4G-2'],
      ccss: ['3.MD.D.8', '4.MD.A.3'],
    },
    templates: [
      {
        id: 'regular',
        ask: (context) =>
          regularPerimeter(
            quantity(context.rng.int(3, 30), context.locale),
            context.rng.pick(REGULAR),
            'cm',
            context,
          ),
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const side = quantityOn(day, context.locale, 0.1, 400, 2);
          if (side === null || side.value.d > 100) return null;
          const kind = context.rng.pick(REGULAR);
          const unit = toNumber(side.value) > 80 || side.style === 'fraction' ? 'm' : 'cm';
          return using(
            regularPerimeter(side, kind, unit, context),
            `finds the perimeter of a ${kind.shape} with sides of ${measured(side, unit, context.locale)}`,
          );
        },
      },
      {
        id: 'rectangle',
        ask: (context) => {
          const width = context.rng.int(2, 20);
          return rectanglePerimeter(
            quantity(width + context.rng.int(1, 20), context.locale),
            quantity(width, context.locale),
            context.rng.pick(['cm', 'm']),
            context,
          );
        },
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const length = quantityOn(day, context.locale, 1.1, 400, 1);
          if (length === null) return null;
          const size = Math.ceil(toNumber(length.value));
          const width = context.rng.int(1, Math.max(1, Math.min(size - 1, size > 20 ? 60 : 20)));
          const unit = size > 80 || length.style === 'fraction' ? 'm' : 'cm';
          return using(
            rectanglePerimeter(length, quantity(width, context.locale), unit, context),
            `walks around a rectangle ${measured(length, unit, context.locale)} long`,
          );
        },
      },
    ],
  },
  {
    id: 'meas.perimeter.side',
    title: 'Find a side from the perimeter',
    year: 5,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.perimeter'],
    codes: {
      ac9: ['AC9M5M02'],
      england: ['NC-Y5-measure-3', 'NC-Y5-shape-5'],
      ccss: ['3.MD.D.8', '4.MD.A.3'],
    },
    templates: [
      {
        id: 'side',
        ask: (context) => {
          const kind = context.rng.pick(REGULAR);
          return sideFromPerimeter(
            quantity(kind.sides * context.rng.int(3, 20), context.locale),
            kind,
            'cm',
            context,
          );
        },
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const around = quantityOn(day, context.locale, 1, 1000, 2);
          if (around === null) return null;
          const isDecimal = around.style === 'decimal';
          const kinds = REGULAR.filter((kind) => {
            const side = divide(around.value, rational(kind.sides));
            return isDecimal ? 100 % side.d === 0 : side.d <= 12;
          });
          if (kinds.length === 0) return null;
          return using(
            sideFromPerimeter(
              around,
              context.rng.pick(kinds),
              toNumber(around.value) > 100 || !isDecimal ? 'm' : 'cm',
              context,
            ),
            `finds a side from a perimeter of ${day.text}`,
          );
        },
      },
    ],
  },
];
