// Dollars and cents: which is more, changing one into the other, amounts on a calculator.
import { formatWhole } from '../../numbers/format.js';
import { decimalPlaces, multiply, rational, toNumber } from '../../numbers/rational.js';
import { moneyAnswer, wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { minorOn, price, quantity, sizeOf, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { compareAmounts, compareOn, minorText, writtenMain, writtenMinor } from './compare.js';

function toMinor(value: ReturnType<typeof quantity>, spoken: string, { locale }: TemplateContext): Draft {
  const { currency } = locale;
  const total = multiply(value.value, rational(100)).n;
  const isWhole = value.value.d === 1;
  return {
    text: `How many ${currency.minorName[1]} are in ${spoken}?`,
    answer: wholeAnswer(total, locale),
    accepts: [minorText(total, locale)],
    expression: `${value.expression} * 100`,
    features: {
      size: isWhole ? sizeOf(value.value.n) * 0.4 : 0.6,
      rule: isWhole,
      unlike: value.style === 'fraction',
      extraSteps: value.style === 'fraction' && value.value.n % value.value.d !== 1 ? 1 : 0,
    },
    strategy: [
      `${currency.symbol}1 = 100${currency.minorSymbol}`,
      `${value.text} × 100 = ${formatWhole(total, locale)}`,
    ],
    slips: [
      ...(total % 10 === 0
        ? [{ misconception: 'money.factor-ten' as const, answer: wholeAnswer(total / 10, locale) }]
        : []),
      { misconception: 'times.zero-count', answer: wholeAnswer(total * 10, locale) },
      ...(value.style === 'fraction'
        ? [
            {
              misconception: 'part.one-only' as const,
              answer: wholeAnswer(
                Math.floor(value.value.n / value.value.d) * 100 + 100 / value.value.d,
                locale,
              ),
            },
          ]
        : []),
    ],
  };
}

function toMain(minor: number, { locale }: TemplateContext): Draft {
  const { currency } = locale;
  const remainder = minor % 100;
  return {
    text: `What is ${minorText(minor, locale)} in ${currency.mainName[1]} and ${currency.minorName[1]}?`,
    answer: moneyAnswer(rational(minor, 100), locale),
    expression: `${minor} / 100`,
    features: { size: sizeOf(minor) * 0.3, unlike: remainder > 0 && remainder < 10, rule: remainder === 0 },
    strategy: [
      `100${currency.minorSymbol} = ${currency.symbol}1`,
      `${formatWhole(minor, locale)} ÷ 100 = ${quantity(rational(minor, 100), locale).text}`,
    ],
    slips: [
      { misconception: 'money.factor-ten', answer: moneyAnswer(rational(minor, 10), locale) },
      ...(remainder > 0 && remainder < 10
        ? [
            {
              misconception: 'money.zero-dropped' as const,
              answer: moneyAnswer(rational(minor - remainder + remainder * 10, 100), locale),
            },
          ]
        : []),
    ],
  };
}

function calculator(tenthsOfMain: number, { locale }: TemplateContext): Draft {
  const shown = quantity(rational(tenthsOfMain, 10), locale);
  const { currency } = locale;
  return {
    text: `A calculator shows ${shown.text} ${currency.mainName[1]}. How do you write that amount?`,
    answer: moneyAnswer(shown.value, locale),
    expression: shown.expression,
    features: { size: sizeOf(tenthsOfMain / 10) * 0.3 },
    strategy: [
      `The first digit after the point counts tens of ${currency.minorName[1]}`,
      `${currency.symbol}${shown.text} = ${price(tenthsOfMain * 10, locale)}`,
    ],
    slips: [
      {
        misconception: 'money.tenths-as-cents',
        answer: moneyAnswer(rational(Math.floor(tenthsOfMain / 10) * 100 + (tenthsOfMain % 10), 100), locale),
      },
      { misconception: 'decimals.point-forgotten', answer: moneyAnswer(rational(tenthsOfMain), locale) },
    ],
  };
}

export const MONEY_UNIT_SKILLS: readonly Skill[] = [
  {
    id: 'money.compare',
    family: 'which is greater',
    title: 'Say which amount of money is more',
    year: 2,
    fluentYear: 3,
    strand: 'money',
    prerequisites: ['money.coins.count', 'place.compare.1000'],
    codes: { ac9: ['AC9M3M06'], england: ['NC-Y2-measure-2', 'NC-Y2-measure-3'], ccss: ['2.MD.C.8'] },
    templates: [
      {
        id: 'units',
        ask: (context) => {
          const { rng, locale } = context;
          const dollars = rng.int(1, 9);
          return rng.chance(0.5)
            ? compareAmounts(
                writtenMain(dollars * 100, locale),
                writtenMinor(rng.int(1, 9) * 10 + dollars, locale),
                -0.4,
                context,
              )
            : compareOn(dollars * 100 + rng.int(1, 19) * 5, context);
        },
        dayKinds: ['whole', 'money'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const minor = minorOn(day, 5, 10_000_000);
          if (minor !== null)
            return using(compareOn(minor, context), `compares ${day.text} with another amount`);
          const whole = wholeOn(day, 1, 1000);
          if (whole === null) return null;
          const way = rng.int(0, 2);
          if (way === 0) {
            const other = whole + rng.pick([-1, 1]) * rng.int(1, Math.max(1, Math.floor(whole / 2)));
            const safe = other > 0 && other !== whole ? other : whole + 1;
            return using(
              compareAmounts(
                writtenMain(whole * 100, locale),
                writtenMain(safe * 100, locale),
                -1.2,
                context,
              ),
              `compares ${price(whole * 100, locale)} with another amount`,
            );
          }
          const others = way === 1 ? [whole * 10, whole + 5] : [whole * 100 + 5, whole * 100 - 5];
          return using(
            compareAmounts(
              writtenMain(whole * 100, locale),
              writtenMinor(rng.pick(others), locale),
              way === 1 ? -0.2 : 0.3,
              context,
            ),
            `compares ${price(whole * 100, locale)} with another amount`,
          );
        },
      },
    ],
  },
  {
    id: 'money.convert',
    title: 'Change money to its smaller unit and back',
    year: 3,
    fluentYear: 4,
    strand: 'money',
    prerequisites: ['money.compare', 'money.coins.like'],
    codes: {
      ac9: ['AC9M3M06'],
      england: ['NC-Y3-measure-3', 'NC-Y4-measure-1'],
      ccss: ['4.MD.A.1', '2.MD.C.8'],
    },
    templates: [
      {
        id: 'to-small',
        ask: (context) => {
          const minor = context.rng.int(2, 19) * 50 + context.rng.pick([0, 5, 20, 35, 45]);
          return toMinor(
            quantity(rational(minor, 100), context.locale),
            price(minor, context.locale),
            context,
          );
        },
        dayKinds: ['whole', 'money', 'fraction', 'decimal'],
        askOn: (day, context) => {
          const { locale } = context;
          if (100 % day.value.d !== 0 || toNumber(day.value) > 1000) return null;
          if (day.kind === 'decimal' && (decimalPlaces(day.value) ?? 9) > 2) return null;
          const spoken =
            day.kind === 'fraction'
              ? toNumber(day.value) < 1
                ? `${day.text} of a ${locale.currency.mainName[0]}`
                : `${day.text} ${locale.currency.mainName[1]}`
              : day.kind === 'decimal'
                ? `${day.text} ${locale.currency.mainName[1]}`
                : price((day.value.n * 100) / day.value.d, locale);
          if (day.kind === 'money' && toNumber(day.value) < 1) return null;
          const item = quantity(day.value, locale, day.kind === 'fraction' ? 'fraction' : 'decimal');
          return using(
            toMinor(item, spoken, context),
            `changes ${spoken} to ${locale.currency.minorName[1]}`,
          );
        },
      },
      {
        id: 'to-large',
        ask: (context) =>
          toMain(context.rng.int(2, 19) * 50 + context.rng.pick([5, 20, 35, 45, 8, 3]), context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const minor = wholeOn(day, 101, 1_000_000);
          return minor === null
            ? null
            : using(
                toMain(minor, context),
                `changes ${minorText(minor, context.locale)} to ${context.locale.currency.mainName[1]}`,
              );
        },
      },
    ],
  },
  {
    id: 'money.calculator',
    title: 'Read an amount of money from a calculator',
    year: 4,
    fluentYear: 5,
    strand: 'money',
    prerequisites: ['money.convert', 'dec.parts'],
    codes: { ac9: ['AC9M4N08'], england: ['NC-Y4-fractions-10'], ccss: ['4.MD.A.2'] },
    templates: [
      {
        id: 'display',
        ask: (context) => calculator(context.rng.int(1, 25) * 10 + context.rng.int(1, 9), context),
        dayKinds: ['decimal'],
        askOn: (day, context) => {
          const count = multiply(day.value, rational(10));
          if (count.d !== 1 || count.n < 10 || count.n > 10_000) return null;
          return using(calculator(count.n, context), `reads ${day.text} as an amount of money`);
        },
      },
    ],
  },
];
