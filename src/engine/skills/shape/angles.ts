// Angles: names and sums.
import { formatWhole } from '../../numbers/format.js';
import { rational, subtract, toNumber } from '../../numbers/rational.js';
import type { Rational } from '../../numbers/rational.js';
import { choiceAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import {
  type Quantity,
  quantity,
  quantityAnswer,
  quantityOn,
  shown,
  using,
  wholeOn,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

function nameOf(degrees: number): string {
  if (degrees < 90) return 'acute';
  if (degrees === 90) return 'right';
  if (degrees < 180) return 'obtuse';
  return degrees === 180 ? 'straight' : 'reflex';
}

function angleName(degrees: number, { locale }: TemplateContext): Draft {
  const right = nameOf(degrees);
  const isReflexAsked = degrees > 180;
  const choices = isReflexAsked ? ['obtuse', 'straight', 'reflex'] : ['acute', 'right', 'obtuse'];
  return {
    text: `Is an angle of ${formatWhole(degrees, locale)}° ${choices[0]}, ${choices[1]} or ${choices[2]}?`,
    answer: choiceAnswer(right),
    expression: null,
    features: {
      fewChoices: true,
      drawn: true,
      size: Math.abs(degrees - 90) < 10 || Math.abs(degrees - 180) < 10 ? 1 : 0,
    },
    strategy: [
      degrees < 90
        ? `${degrees} < 90, smaller than a right angle`
        : degrees === 90
          ? 'A right angle has exactly 90°'
          : degrees < 180
            ? `${degrees} is between 90 and 180`
            : `${degrees} is more than a straight line, 180°`,
      `So it is ${right === 'right' ? 'a right angle' : right}`,
    ],
    slips: choices
      .filter((name) => name !== right)
      .map((name) => ({ misconception: 'shape.acute-obtuse' as const, answer: choiceAnswer(name) })),
    figure: { kind: 'angle', degrees },
  };
}

const TOTALS = [
  { total: 90, text: 'a right angle' },
  { total: 180, text: 'a straight line' },
  { total: 360, text: 'a full turn' },
] as const;

function missingAngle(known: Quantity, sum: (typeof TOTALS)[number], { locale }: TemplateContext): Draft {
  const missing = subtract(rational(sum.total), known.value);
  const answer = (value: Rational) => quantityAnswer(value, known.style, locale, '°');
  const wrongTotals = TOTALS.filter(
    (other) => other.total !== sum.total && other.total > toNumber(known.value),
  );
  const whole = known.value.d === 1 ? known.value.n : 0;
  const toTen = whole % 10 === 0 ? 0 : 10 - (whole % 10);
  return {
    text: `Two angles make ${sum.text}. One is ${known.text}°. What is the other?`,
    answer: answer(missing),
    expression: `${sum.total} - ${known.expression}`,
    features: {
      size: sum.total === 360 ? 1 : sum.total === 180 ? 0.6 : 0,
      carries: whole % 10 === 0 && known.value.d === 1 ? 0 : 1,
      unlike: known.value.d > 1,
      drawn: true,
      adjust: -0.3,
    },
    strategy: [
      `${sum.text[0]?.toUpperCase()}${sum.text.slice(1)} has ${sum.total}°`,
      ...(toTen > 0 && sum.total - whole > 10
        ? [
            `${whole} + ${toTen} = ${whole + toTen}`,
            `${whole + toTen} + ${sum.total - whole - toTen} = ${sum.total}`,
            `${toTen} + ${sum.total - whole - toTen} = ${sum.total - whole}`,
          ]
        : [`${sum.total} − ${known.text} = ${shown(missing, locale, known.style)}`]),
    ],
    slips: [
      ...wrongTotals.map((other) => ({
        misconception: 'shape.wrong-total' as const,
        answer: answer(subtract(rational(other.total), known.value)),
      })),
      ...(sum.total === 90 && toNumber(known.value) < 100
        ? [
            {
              misconception: 'shape.total-hundred' as const,
              answer: answer(subtract(rational(100), known.value)),
            },
          ]
        : []),
      {
        misconception: 'meas.complement-ten',
        answer: answer(subtract(rational(sum.total + 10), known.value)),
      },
    ],
    ...(known.value.d === 1 && sum.total < 360
      ? { figure: { kind: 'angle' as const, degrees: whole, label: `${known.text}°` } }
      : {}),
  };
}

function threeOnLine(
  first: number,
  second: number,
  sum: (typeof TOTALS)[number],
  { locale }: TemplateContext,
): Draft {
  const known = first + second;
  const missing = sum.total - known;
  const answer = (value: number) => quantityAnswer(rational(value), 'decimal', locale, '°');
  const wrongTotals = TOTALS.filter((other) => other.total !== sum.total && other.total > known);
  return {
    text: `Three angles make ${sum.text}. Two are ${first}° and ${second}°. What is the third?`,
    answer: answer(missing),
    expression: `${sum.total} - (${first} + ${second})`,
    features: {
      size: sum.total === 360 ? 1 : 0.6,
      carries: (first % 10) + (second % 10) >= 10 ? 1 : 0,
      extraSteps: 1,
    },
    strategy: [`${first} + ${second} = ${known}`, `${sum.total} − ${known} = ${missing}`],
    slips: [
      { misconception: 'shape.one-angle-only', answer: answer(sum.total - first) },
      ...wrongTotals.map((other) => ({
        misconception: 'shape.wrong-total' as const,
        answer: answer(other.total - known),
      })),
    ],
  };
}

/** The least angle in degrees at which the labels in a triangle's corners keep clear of one another. */
const LEAST_DRAWN = 28;

function triangle(first: number, second: number, { locale }: TemplateContext): Draft {
  const known = first + second;
  const isRoomy = Math.min(first, second, 180 - known) >= LEAST_DRAWN;
  const answer = (value: number) => quantityAnswer(rational(value), 'decimal', locale, '°');
  return {
    text: `A triangle has angles of ${first}° and ${second}°. What is the third?`,
    answer: answer(180 - known),
    expression: `180 - (${first} + ${second})`,
    features: {
      size: first % 10 === 0 && second % 10 === 0 ? 0 : 0.7,
      carries: (first % 10) + (second % 10) >= 10 ? 1 : 0,
      extraSteps: 1,
      drawn: isRoomy,
      adjust: -0.4,
    },
    strategy: [
      'The angles of a triangle make 180° together',
      `${first} + ${second} = ${known}`,
      `180 − ${known} = ${180 - known}`,
    ],
    slips: [
      { misconception: 'shape.one-angle-only', answer: answer(180 - first) },
      { misconception: 'shape.wrong-total', answer: answer(360 - known) },
    ],
    ...(isRoomy
      ? {
          figure: {
            kind: 'shape' as const,
            shape: 'triangle' as const,
            corners: [`${first}°`, `${second}°`, '?'],
          },
        }
      : {}),
  };
}

function isosceles(given: number, isTop: boolean, { locale }: TemplateContext): Draft {
  const other = isTop ? rational(180 - given, 2) : rational(180 - 2 * given);
  const answer = (value: Rational) => quantityAnswer(value, 'decimal', locale, '°');
  return {
    text: isTop
      ? `A triangle has two equal angles and one of ${given}°. How big is each equal angle?`
      : `A triangle has two angles of ${given}°. What is the third?`,
    answer: answer(other),
    expression: isTop ? `(180 - ${given}) / 2` : `180 - 2 * ${given}`,
    features: {
      size: given % 10 === 0 ? 0 : 0.7,
      extraSteps: isTop ? 2 : 1,
      carries: given % 10 === 0 ? 0 : 1,
    },
    strategy: isTop
      ? [`180 − ${given} = ${180 - given}`, `${180 - given} ÷ 2 = ${shown(other, locale)}`]
      : [`2 × ${given} = ${2 * given}`, `180 − ${2 * given} = ${180 - 2 * given}`],
    slips: [
      {
        misconception: isTop ? 'shape.equal-angles-joined' : 'shape.one-angle-only',
        answer: answer(rational(180 - given)),
      },
      {
        misconception: 'shape.wrong-total',
        answer: answer(isTop ? rational(360 - given, 2) : rational(360 - 2 * given)),
      },
    ],
  };
}

const ANGLE_SUMS = {
  ac9: ['AC9M6M04'],
  england: ['NC-Y5-shape-4a', 'NC-Y5-shape-4b', 'NC-Y6-shape-5'],
  ccss: ['4.MD.C.7'],
} as const;

export const ANGLE_SKILLS: readonly Skill[] = [
  {
    id: 'shape.angle.name',
    title: 'Name acute, right, obtuse and reflex angles',
    year: 4,
    fluentYear: 5,
    strand: 'shape',
    prerequisites: ['shape.turn'],
    codes: { ac9: ['AC9M4M04', 'AC9M5M04'], england: ['NC-Y4-shape-2', 'NC-Y5-shape-2'], ccss: ['4.G.A.1'] },
    templates: [
      {
        id: 'name',
        ask: (context) =>
          angleName(
            context.rng.pick([
              90,
              context.rng.int(5, 85),
              context.rng.int(95, 175),
              context.rng.int(185, 350),
            ]),
            context,
          ),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const degrees = wholeOn(day, 1, 359);
          return degrees === null || degrees === 180
            ? null
            : using(angleName(degrees, context), `names an angle of ${day.text}°`);
        },
      },
    ],
  },
  {
    id: 'shape.angle.missing',
    title: 'Find the angle that completes a right angle, a line or a full turn',
    year: 5,
    fluentYear: 6,
    strand: 'shape',
    prerequisites: ['shape.angle.name', 'add.to100', 'sub.3d'],
    codes: ANGLE_SUMS,
    templates: [
      {
        id: 'two',
        ask: (context) => {
          const sum = context.rng.pick(TOTALS);
          return missingAngle(quantity(context.rng.int(5, sum.total - 5), context.locale), sum, context);
        },
        dayKinds: ['whole', 'decimal'],
        askOn: (day, context) => {
          const known = quantityOn(day, context.locale, 0.5, 355, 1);
          if (known === null) return null;
          const sums = TOTALS.filter((sum) => sum.total > toNumber(known.value));
          const sum = context.rng.pick(sums);
          return using(missingAngle(known, sum, context), `fills ${day.text}° up to ${sum.text}`);
        },
      },
      {
        id: 'three',
        ask: (context) =>
          threeOnLine(
            context.rng.int(20, 80),
            context.rng.int(20, 90),
            context.rng.pick(TOTALS.slice(1)),
            context,
          ),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const first = wholeOn(day, 5, 320);
          if (first === null) return null;
          const sums = TOTALS.slice(1).filter((sum) => sum.total - first >= 20);
          const sum = context.rng.pick(sums);
          return using(
            threeOnLine(first, context.rng.int(5, sum.total - first - 10), sum, context),
            `fills ${day.text}° and another angle up to ${sum.text}`,
          );
        },
      },
    ],
  },
  {
    id: 'shape.angle.triangle',
    title: 'Find the third angle of a triangle',
    year: 6,
    fluentYear: 6,
    strand: 'shape',
    prerequisites: ['shape.angle.missing'],
    codes: { ac9: [], england: ['NC-Y6-shape-3'], ccss: [] },
    templates: [
      {
        id: 'third',
        ask: (context) => triangle(context.rng.int(20, 80), context.rng.int(20, 80), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const first = wholeOn(day, 5, 150);
          if (first === null) return null;
          const high = 170 - first;
          const second =
            context.rng.chance(0.5) && high >= 20
              ? Math.floor(context.rng.int(10, high) / 10) * 10
              : context.rng.int(10, high);
          return using(triangle(first, second, context), `finds the third angle beside one of ${day.text}°`);
        },
      },
      {
        id: 'isosceles',
        ask: (context) =>
          context.rng.chance(0.5)
            ? isosceles(context.rng.int(10, 80) * 2, true, context)
            : isosceles(context.rng.int(20, 80), false, context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const given = wholeOn(day, 5, 170);
          if (given === null) return null;
          const isTop = given >= 88 || context.rng.chance(0.5);
          return using(
            isosceles(given, isTop, context),
            isTop
              ? `finds the equal angles of a triangle whose third is ${day.text}°`
              : `finds the third angle of a triangle with two of ${day.text}°`,
          );
        },
      },
    ],
  },
];
