// Perimeter, area and volume.
import { formatWhole } from '../../numbers/format.js';
import { add, divide, multiply, type Rational, rational, toNumber } from '../../numbers/rational.js';
import { wholeAnswer } from '../../questions/answer.js';
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
  wholeOn,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

const SQUARE_UNITS: Readonly<Record<string, string>> = { cm: 'cm²', m: 'm²' };

/** Thinking effort of a product: nothing for facts, more for several digits. */
function productSize(a: Quantity, b: Quantity): number {
  return (
    (sizeOf(toNumber(a.value)) + sizeOf(toNumber(b.value))) * 0.5 + (a.value.d > 1 || b.value.d > 1 ? 0.7 : 0)
  );
}

const REGULAR = [
  { name: 'a square', sides: 4, shape: 'square' },
  { name: 'a triangle with three equal sides', sides: 3, shape: 'triangle' },
  { name: 'a regular pentagon', sides: 5, shape: 'pentagon' },
  { name: 'a regular hexagon', sides: 6, shape: 'hexagon' },
] as const;

function regularPerimeter(
  side: Quantity,
  kind: (typeof REGULAR)[number],
  unit: string,
  { locale }: TemplateContext,
): Draft {
  const around = multiply(side.value, rational(kind.sides));
  const answer = (value: Rational) => quantityAnswer(value, side.style, locale, unit);
  return {
    text: `What is the perimeter of ${kind.name} with sides of ${measured(side, unit, locale)}?`,
    answer: answer(around),
    expression: `${kind.sides} * ${side.expression}`,
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
      ...(kind.sides === 4
        ? [
            {
              misconception: 'meas.area-for-perimeter' as const,
              answer: answer(multiply(side.value, side.value)),
            },
          ]
        : [
            {
              misconception: 'shape.another-shape' as const,
              answer: answer(multiply(side.value, rational(4))),
            },
          ]),
      { misconception: 'shape.one-short', answer: answer(multiply(side.value, rational(kind.sides - 1))) },
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
      labels: [measured(length, unit, locale), measured(width, unit, locale)],
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
    text: `The perimeter of ${kind.name} is ${measured(around, unit, locale)}. How long is one side?`,
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

function gridArea(rows: number, columns: number, { locale }: TemplateContext): Draft {
  return {
    text: `A rectangle is made of ${rows} ${rows === 1 ? 'row' : 'rows'} of ${columns} squares. How many squares is its area?`,
    answer: wholeAnswer(rows * columns, locale),
    expression: `${rows} * ${columns}`,
    features: {
      size: (sizeOf(rows) + sizeOf(columns)) * 0.5 + (rows > 5 && columns > 5 ? 0.5 : 0),
      tie: rows === columns,
      fives: rows === 5 || columns === 5,
      drawn: rows <= 12 && columns <= 12,
    },
    strategy: [`${rows} × ${columns} = ${formatWhole(rows * columns, locale)}`],
    slips: [
      { misconception: 'meas.sides-added', answer: wholeAnswer(rows + columns, locale) },
      { misconception: 'meas.perimeter-for-area', answer: wholeAnswer(2 * (rows + columns), locale) },
      { misconception: 'shape.one-short', answer: wholeAnswer(rows * columns - 1, locale) },
    ],
    ...(rows <= 12 && columns <= 12 ? { figure: { kind: 'grid-rectangle' as const, rows, columns } } : {}),
  };
}

function rectangleArea(length: Quantity, width: Quantity, unit: string, { locale }: TemplateContext): Draft {
  const inside = area(length.value, width.value);
  const squared = SQUARE_UNITS[unit] ?? unit;
  const style = length.style;
  const answer = (value: Rational) => quantityAnswer(value, style, locale, squared);
  const whole = Math.floor(toNumber(length.value));
  const tens = length.value.d === 1 ? length.value.n - (length.value.n % 10) : whole;
  const rest = add(length.value, rational(-tens));
  const parted = tens > 0 && rest.n > 0 && toNumber(length.value) > (length.value.d === 1 ? 12 : 1);
  return {
    text: `A rectangle has sides of ${measured(length, unit, locale)} and ${measured(width, unit, locale)}. What is its area in square ${unit === 'm' ? locale.spelling.metre : `centi${locale.spelling.metre}`}s?`,
    answer: answer(inside),
    expression: `${length.expression} * ${width.expression}`,
    features: {
      size: productSize(length, width),
      extraSteps: parted ? 1 : 0,
      drawn: true,
      unlike: style === 'fraction',
      rule: width.value.n === 10 && width.value.d === 1,
    },
    strategy: parted
      ? [
          `${tens} × ${width.text} = ${shown(multiply(rational(tens), width.value), locale, style)}`,
          `${shown(rest, locale, style)} × ${width.text} = ${shown(multiply(rest, width.value), locale, style)}`,
          `${shown(multiply(rational(tens), width.value), locale, style)} + ${shown(multiply(rest, width.value), locale, style)} = ${shown(inside, locale, style)}`,
        ]
      : [`${length.text} × ${width.text} = ${shown(inside, locale, style)}`],
    slips: [
      { misconception: 'meas.perimeter-for-area', answer: answer(perimeter(length.value, width.value)) },
      { misconception: 'meas.sides-added', answer: answer(halfPerimeter(length.value, width.value)) },
    ],
    figure: {
      kind: 'shape',
      shape: 'rectangle',
      labels: [measured(length, unit, locale), measured(width, unit, locale)],
    },
  };
}

function missingSide(inside: Quantity, width: number, { locale }: TemplateContext): Draft {
  const length = divide(inside.value, rational(width));
  const answer = (value: Rational) => quantityAnswer(value, inside.style, locale, 'cm');
  return {
    text: `A rectangle has an area of ${inside.text}\u00a0cm² and is ${width}\u00a0cm wide. How long is it in centi${locale.spelling.metre}s?`,
    answer: answer(length),
    expression: `${inside.expression} / ${width}`,
    features: {
      size: sizeOf(toNumber(inside.value)) * 0.5,
      unknownInside: true,
      unlike: length.d > 1,
      drawn: true,
    },
    strategy: [`${inside.text} ÷ ${width} = ${shown(length, locale, inside.style)}`],
    slips: [
      {
        misconception: 'money.multiplied-not-shared',
        answer: answer(multiply(inside.value, rational(width))),
      },
      ...(toNumber(inside.value) > width
        ? [
            {
              misconception: 'meas.sides-added' as const,
              answer: answer(add(inside.value, rational(-width))),
            },
          ]
        : []),
      ...(toNumber(inside.value) > 2 * width
        ? [
            {
              misconception: 'meas.perimeter-for-area' as const,
              answer: answer(divide(add(inside.value, rational(-2 * width)), rational(2))),
            },
          ]
        : []),
    ],
    figure: { kind: 'shape', shape: 'rectangle', labels: ['?', `${width}\u00a0cm`] },
  };
}

/** From the way round a square to the space inside: the hard end of this strand. */
function areaFromPerimeter(around: Quantity, { locale }: TemplateContext): Draft {
  const side = divide(around.value, rational(4));
  const inside = multiply(side, side);
  const answer = (value: Rational) => quantityAnswer(value, around.style, locale, 'cm²');
  return {
    text: `The perimeter of a square is ${around.text}\u00a0cm. What is its area in square centi${locale.spelling.metre}s?`,
    answer: answer(inside),
    expression: `(${around.expression} / 4) * (${around.expression} / 4)`,
    features: {
      size: sizeOf(toNumber(around.value)) * 0.7,
      extraSteps: 2,
      unknownInside: true,
      unlike: side.d > 1,
    },
    strategy: [
      `${around.text} ÷ 4 = ${shown(side, locale, around.style)}`,
      `${shown(side, locale, around.style)} × ${shown(side, locale, around.style)} = ${shown(inside, locale, around.style)}`,
    ],
    slips: [
      {
        misconception: 'meas.halves-not-quarters',
        answer: answer(multiply(divide(around.value, rational(2)), divide(around.value, rational(2)))),
      },
      { misconception: 'meas.side-doubled', answer: answer(multiply(side, rational(2))) },
      { misconception: 'meas.perimeter-for-area', answer: answer(side) },
    ],
  };
}

function cuboid(a: Quantity, b: number, c: number, { locale }: TemplateContext): Draft {
  const layer = multiply(a.value, rational(b));
  const volume = multiply(layer, rational(c));
  const answer = (value: Rational) => quantityAnswer(value, a.style, locale, 'cm³');
  return {
    text: `A box is ${a.text}\u00a0cm long, ${b}\u00a0cm wide and ${c}\u00a0cm high. What is its volume in cubic centi${locale.spelling.metre}s?`,
    answer: answer(volume),
    expression: `${a.expression} * ${b} * ${c}`,
    features: {
      size: sizeOf(toNumber(volume)) * 0.6,
      extraSteps: 1,
      unlike: a.value.d > 1,
      drawn: true,
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
    figure: { kind: 'solid', solid: 'cuboid' },
  };
}

function layers(base: Quantity, height: number, { locale }: TemplateContext): Draft {
  const volume = multiply(base.value, rational(height));
  const answer = (value: Rational) => quantityAnswer(value, base.style, locale, 'cubes');
  return {
    text: `A box holds ${base.text} cubes in each layer and has ${height} layers. How many cubes does it hold?`,
    answer: answer(volume),
    expression: `${base.expression} * ${height}`,
    features: { size: sizeOf(toNumber(base.value)) * 0.6, story: true, rule: height === 10, adjust: -0.4 },
    strategy: [`${height} × ${base.text} = ${shown(volume, locale, base.style)}`],
    slips: [
      { misconception: 'meas.layer-only', answer: answer(base.value) },
      { misconception: 'meas.edges-added', answer: answer(add(base.value, rational(height))) },
    ],
    figure: { kind: 'solid', solid: 'cuboid' },
  };
}

export const RECTANGLE_SKILLS: readonly Skill[] = [
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
          return using(
            regularPerimeter(
              side,
              kind,
              toNumber(side.value) > 80 || side.style === 'fraction' ? 'm' : 'cm',
              context,
            ),
            `draws ${kind.name} with sides of ${day.text}`,
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
            `walks round a rectangle ${day.text} long`,
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
            `has a perimeter of ${day.text}`,
          );
        },
      },
    ],
  },
  {
    id: 'meas.area.squares',
    title: 'Find an area by rows of squares',
    year: 4,
    fluentYear: 5,
    strand: 'measures',
    prerequisites: ['meas.compare', 'mult.table.4'],
    codes: { ac9: ['AC9M4M02'], england: ['NC-Y4-measure-3'], ccss: ['2.G.A.2', '3.MD.C.6', '3.MD.C.7a'] },
    templates: [
      {
        id: 'grid',
        ask: (context) => gridArea(context.rng.int(2, 10), context.rng.int(3, 10), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const columns = wholeOn(day, 2, 100);
          return columns === null
            ? null
            : using(
                gridArea(context.rng.int(2, columns > 12 ? 5 : 10), columns, context),
                `has rows of ${day.text} squares`,
              );
        },
      },
    ],
  },
  {
    id: 'meas.area.rule',
    title: 'Find the area of a rectangle from its sides',
    year: 5,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.area.squares', 'meas.perimeter'],
    codes: {
      ac9: ['AC9M5M02', 'AC9M6M02'],
      england: ['NC-Y5-measure-4', '5G-2'],
      ccss: ['3.MD.C.7b', '4.MD.A.3'],
    },
    templates: [
      {
        id: 'area',
        ask: (context) =>
          rectangleArea(
            quantity(context.rng.int(4, 30), context.locale),
            quantity(context.rng.int(2, 9), context.locale),
            context.rng.pick(['cm', 'm']),
            context,
          ),
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const length = quantityOn(day, context.locale, 0.1, 400, 1);
          if (length === null || length.value.d > 20) return null;
          const width = context.rng.pick([2, 3, 4, 5, 6, 8, 10]);
          const unit = toNumber(length.value) > 80 || length.style === 'fraction' ? 'm' : 'cm';
          return using(
            rectangleArea(length, quantity(width, context.locale), unit, context),
            `finds the area of a rectangle ${day.text} long`,
          );
        },
      },
      {
        id: 'missing-side',
        ask: (context) => {
          const width = context.rng.int(2, 9);
          return missingSide(quantity(width * context.rng.int(3, 20), context.locale), width, context);
        },
        dayKinds: ['whole', 'decimal'],
        askOn: (day, context) => {
          const inside = quantityOn(day, context.locale, 2, 1000, 1);
          if (inside === null) return null;
          const widths = [2, 3, 4, 5, 6, 8, 9, 10].filter(
            (width) => width < toNumber(inside.value) && 100 % divide(inside.value, rational(width)).d === 0,
          );
          return widths.length === 0
            ? null
            : using(missingSide(inside, context.rng.pick(widths), context), `has an area of ${day.text}`);
        },
      },
    ],
  },
  {
    id: 'meas.area.from-perimeter',
    title: 'Find the area of a square from its perimeter',
    year: 6,
    fluentYear: 6,
    strand: 'measures',
    prerequisites: ['meas.area.rule', 'meas.perimeter.side'],
    codes: { ac9: ['AC9M6M02'], england: ['NC-Y6-measure-4', 'NC-Y6-measure-5'], ccss: ['4.MD.A.3'] },
    templates: [
      {
        id: 'square',
        ask: (context) => areaFromPerimeter(quantity(context.rng.int(2, 12) * 4, context.locale), context),
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const around = quantityOn(day, context.locale, 1, 400, 1);
          if (around === null) return null;
          const side = divide(around.value, rational(4));
          const digits = String(side.n).replace(/0+$/, '').length;
          if (around.style === 'decimal' ? 10 % side.d !== 0 || digits > 2 : side.d > 8) return null;
          return using(areaFromPerimeter(around, context), `has a perimeter of ${day.text}`);
        },
      },
    ],
  },
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
      ccss: ['5.MD.C.4', '5.MD.C.5a', '5.MD.C.5b'],
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
            `is ${day.text}\u00a0cm long`,
          );
        },
      },
      {
        id: 'layers',
        ask: (context) =>
          layers(quantity(context.rng.int(6, 25), context.locale), context.rng.int(2, 6), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const base = wholeOn(day, 4, 400);
          return base === null
            ? null
            : using(
                layers(quantity(base, context.locale), context.rng.int(2, 8), context),
                `has ${day.text} cubes in a layer`,
              );
        },
      },
    ],
  },
];
