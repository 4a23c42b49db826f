// Fractions of an amount of money.
import { multiply, type Rational, rational, subtract, toNumber } from '../../numbers/rational.js';
import { moneyAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { storyName } from '../story.js';
import { minorOn, operand, price, type Quantity, quantity, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

function isMoney(value: Rational): boolean {
  return 100 % value.d === 0;
}

function partOf(part: Quantity, minor: number, { locale }: TemplateContext): Draft {
  const whole = rational(minor, 100);
  const result = multiply(part.value, whole);
  const one = multiply(rational(1, part.value.d), whole);
  const top = part.value.n;
  const text = (value: Rational) => moneyAnswer(value, locale).text;
  return {
    text: `${part.text} of ${price(minor, locale)}`,
    answer: moneyAnswer(result, locale),
    expression: `${part.expression} * ${operand(whole)}`,
    features: {
      size: (part.value.d > 5 ? 1 : 0) + (minor % 100 === 0 ? 0 : 1),
      extraSteps: top === 1 ? 0 : 1,
      adjust: part.value.d === 2 ? -0.7 : -0.2,
    },
    strategy: [
      `${price(minor, locale)} ÷ ${part.value.d} = ${text(one)}`,
      ...(top > 1 ? [`${top} × ${text(one)} = ${text(result)}`] : []),
    ],
    slips: [
      ...(top > 1 ? [{ misconception: 'part.one-only' as const, answer: moneyAnswer(one, locale) }] : []),
      ...(part.value.n < part.value.d
        ? [
            {
              misconception: 'part.rest-given' as const,
              answer: moneyAnswer(subtract(whole, result), locale),
            },
          ]
        : []),
      ...(top > 1 && isMoney(rational(whole.n, whole.d * top))
        ? [
            {
              misconception: 'part.divided-by-top' as const,
              answer: moneyAnswer(rational(whole.n, whole.d * top), locale),
            },
          ]
        : []),
      ...(top < part.value.d
        ? [
            {
              misconception: 'part.bottom-as-amount' as const,
              answer: moneyAnswer(rational(part.value.d), locale),
            },
          ]
        : []),
      ...(top === 1
        ? [
            {
              misconception: 'money.multiplied-not-shared' as const,
              answer: moneyAnswer(multiply(whole, rational(part.value.d)), locale),
            },
          ]
        : []),
    ],
    ...(part.value.d <= 10 && top < part.value.d
      ? {
          figure: {
            kind: 'bar-model' as const,
            whole: price(minor, locale),
            parts: Array.from({ length: part.value.d }, () => '?'),
          },
        }
      : {}),
  };
}

function partLeft(part: Quantity, minor: number, who: string, { locale }: TemplateContext): Draft {
  const whole = rational(minor, 100);
  const spent = multiply(part.value, whole);
  const left = subtract(whole, spent);
  const one = multiply(rational(1, part.value.d), whole);
  const text = (value: Rational) => moneyAnswer(value, locale).text;
  return {
    text: `${who} has ${price(minor, locale)} and spends ${part.text} of it. How much is left?`,
    answer: moneyAnswer(left, locale),
    expression: `${operand(whole)} - ${part.expression} * ${operand(whole)}`,
    features: {
      size: (part.value.d > 5 ? 1 : 0) + (minor % 100 === 0 ? 0 : 1),
      extraSteps: part.value.n === 1 ? 1 : 2,
      story: true,
    },
    strategy: [
      `${price(minor, locale)} ÷ ${part.value.d} = ${text(one)}`,
      ...(part.value.n > 1 ? [`${part.value.n} × ${text(one)} = ${text(spent)}`] : []),
      `${price(minor, locale)} − ${text(spent)} = ${text(left)}`,
    ],
    slips: [
      { misconception: 'part.rest-given', answer: moneyAnswer(spent, locale) },
      { misconception: 'part.one-only', answer: moneyAnswer(one, locale) },
      ...(toNumber(whole) > part.value.d
        ? [
            {
              misconception: 'part.bottom-as-amount' as const,
              answer: moneyAnswer(subtract(whole, rational(part.value.d)), locale),
            },
          ]
        : []),
    ],
  };
}

/** Amounts in minor units of which the fraction is an exact amount. */
function wholesFor(part: Rational): number[] {
  const nice = [400, 500, 600, 800, 1000, 1200, 1500, 2000, 2400, 3000, 4000, 5000, 6000, 10_000];
  return nice.filter((minor) => minor % part.d === 0 && (minor / part.d) % 5 === 0);
}

export const PART_OF_MONEY_SKILLS: readonly Skill[] = [
  {
    id: 'money.part-of',
    family: 'fraction of an amount',
    title: 'Find a fraction of an amount of money',
    year: 5,
    fluentYear: 6,
    strand: 'money',
    prerequisites: ['money.share', 'frac.nonunit-of'],
    codes: { ac9: ['AC9M6N07'], england: ['NC-Y4-fractions-3', 'NC-Y4-fractions-10'], ccss: ['4.MD.A.2'] },
    templates: [
      {
        id: 'part',
        ask: (context) => {
          const { rng, locale } = context;
          const bottom = rng.pick([2, 3, 4, 5, 10]);
          const part = quantity(rational(rng.int(1, bottom - 1), bottom), locale, 'fraction');
          return partOf(part, rng.pick(wholesFor(part.value)), context);
        },
        dayKinds: ['fraction', 'money', 'whole'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          if (day.kind === 'fraction') {
            const wholes = wholesFor(day.value);
            if (wholes.length === 0 || toNumber(day.value) >= 1) return null;
            const minor = rng.pick(wholes);
            return using(
              partOf(quantity(day.value, locale, 'fraction'), minor, context),
              `finds ${day.text} of ${price(minor, locale)}`,
            );
          }
          const minor =
            day.kind === 'money' ? minorOn(day, 20, 1_000_000) : (wholeOn(day, 2, 20_000) ?? 0) * 100;
          if (!minor) return null;
          const parts = [
            rational(1, 2),
            rational(1, 4),
            rational(3, 4),
            rational(1, 5),
            rational(2, 5),
            rational(1, 10),
            rational(3, 10),
            rational(1, 3),
            rational(2, 3),
          ].filter((part) => minor % part.d === 0 && (day.kind === 'money' || (minor / part.d) % 5 === 0));
          if (parts.length === 0) return null;
          const part = quantity(rng.pick(parts), locale, 'fraction');
          return using(partOf(part, minor, context), `finds ${part.text} of ${price(minor, locale)}`);
        },
      },
      {
        id: 'left',
        ask: (context) => {
          const { rng, locale } = context;
          const bottom = rng.pick([3, 4, 5, 10]);
          const part = quantity(rational(rng.int(1, bottom - 1), bottom), locale, 'fraction');
          return partLeft(
            part,
            rng.pick(wholesFor(part.value).filter((minor) => minor > 400)),
            storyName(rng),
            context,
          );
        },
        dayKinds: ['fraction'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const wholes = wholesFor(day.value).filter((minor) => minor > 400);
          if (toNumber(day.value) >= 1 || wholes.length === 0) return null;
          const minor = rng.pick(wholes);
          return using(
            partLeft(quantity(day.value, locale, 'fraction'), minor, storyName(rng), context),
            `spends ${day.text} of ${price(minor, locale)}`,
          );
        },
      },
    ],
  },
];
