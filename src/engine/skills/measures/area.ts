// Area of rectangles.
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
import { longSideFirst, productSize } from './product-size.js';

const SQUARE_UNITS: Readonly<Record<string, string>> = { cm: 'cm²', m: 'm²' };

function gridArea(rows: number, columns: number, { locale }: TemplateContext): Draft {
  return {
    text: `A rectangle has ${rows} ${rows === 1 ? 'row' : 'rows'} of ${columns} squares. How many squares is that?`,
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
    text: `A rectangle is ${measured(length, unit, locale)} by ${measured(width, unit, locale)}. What is its area in ${squared}?`,
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
      labels: longSideFirst(length, width).map((side) => measured(side, unit, locale)),
    },
  };
}

function missingSide(inside: Quantity, width: number, { locale }: TemplateContext): Draft {
  const length = divide(inside.value, rational(width));
  const answer = (value: Rational) => quantityAnswer(value, inside.style, locale, 'cm');
  return {
    text: `A rectangle of ${inside.text}\u00a0cm² has a side of ${width}\u00a0cm. How long is its other side?`,
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
              misconception: 'meas.side-from-area' as const,
              answer: answer(add(inside.value, rational(-width))),
            },
          ]
        : []),
      ...(toNumber(inside.value) > 2 * width
        ? [
            {
              misconception: 'meas.area-as-perimeter' as const,
              answer: answer(divide(add(inside.value, rational(-2 * width)), rational(2))),
            },
          ]
        : []),
    ],
    figure: {
      kind: 'shape',
      shape: 'rectangle',
      labels: toNumber(length) < width ? [`${width}\u00a0cm`, '?'] : ['?', `${width}\u00a0cm`],
    },
  };
}

/** From the way round a square to the space inside: the hard end of this strand. */
function areaFromPerimeter(around: Quantity, { locale }: TemplateContext): Draft {
  const side = divide(around.value, rational(4));
  const inside = multiply(side, side);
  const answer = (value: Rational) => quantityAnswer(value, around.style, locale, 'cm²');
  return {
    text: `A square has a perimeter of ${around.text}\u00a0cm. What is its area in cm²?`,
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
      { misconception: 'meas.side-for-area', answer: answer(side) },
    ],
  };
}

export const AREA_SKILLS: readonly Skill[] = [
  {
    id: 'meas.area.squares',
    title: 'Find an area by rows of squares',
    year: 4,
    fluentYear: 5,
    strand: 'measures',
    prerequisites: ['meas.compare', 'mult.table.4'],
    codes: {
      ac9: ['AC9M4M02'],
      england: ['NC-Y4-measure-3'],
      ccss: ['2.G.A.2', '3.MD.C.6', '3.MD.C.7a', '3.MD.C.5', '3.MD.C.5a', '3.MD.C.5b'],
    },
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
                `counts rows of ${day.text} squares`,
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
        ask: (context) => {
          const length = context.rng.int(4, 30);
          const width = context.rng.int(2, 9);
          return rectangleArea(
            quantity(length, context.locale),
            // The drawn rectangle has a long and a short side.
            quantity(width === length ? width - 1 : width, context.locale),
            context.rng.pick(['cm', 'm']),
            context,
          );
        },
        dayKinds: ['whole', 'decimal', 'fraction'],
        askOn: (day, context) => {
          const length = quantityOn(day, context.locale, 0.1, 400, 1);
          if (length === null || length.value.d > 20) return null;
          const width = context.rng.pick(
            [2, 3, 4, 5, 6, 8, 10].filter((each) => each !== toNumber(length.value)),
          );
          const unit = toNumber(length.value) > 80 || length.style === 'fraction' ? 'm' : 'cm';
          return using(
            rectangleArea(length, quantity(width, context.locale), unit, context),
            `finds the area of a rectangle with a side of ${measured(length, unit, context.locale)}`,
          );
        },
      },
      {
        id: 'missing-side',
        ask: (context) => {
          const width = context.rng.int(2, 9);
          const length = context.rng.int(3, 20);
          return missingSide(
            quantity(width * (length === width ? length + 1 : length), context.locale),
            width,
            context,
          );
        },
        dayKinds: ['whole', 'decimal'],
        askOn: (day, context) => {
          const inside = quantityOn(day, context.locale, 2, 1000, 1);
          if (inside === null) return null;
          const widths = [2, 3, 4, 5, 6, 8, 9, 10].filter(
            (width) =>
              width < toNumber(inside.value) &&
              width * width !== toNumber(inside.value) &&
              100 % divide(inside.value, rational(width)).d === 0,
          );
          return widths.length === 0
            ? null
            : using(
                missingSide(inside, context.rng.pick(widths), context),
                `finds a side from an area of ${day.text}`,
              );
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
          if (around.style === 'decimal' ? 10 % side.d !== 0 || digits > 2 : side.d > 2) return null;
          return using(areaFromPerimeter(around, context), `finds an area from a perimeter of ${day.text}`);
        },
      },
    ],
  },
];
