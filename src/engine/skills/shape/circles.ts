// Radius and diameter.
import { divide, multiply, type Rational, rational, toNumber } from '../../numbers/rational.js';
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
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

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
      'The diameter is twice as long as the radius',
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
    figure: { kind: 'shape', shape: 'circle', labels: [fromRadius ? given : '?'] },
  };
}

export const CIRCLE_SKILLS: readonly Skill[] = [
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
            `starts from a ${fromRadius ? 'radius' : 'diameter'} of ${day.text}`,
          );
        },
      },
    ],
  },
];
