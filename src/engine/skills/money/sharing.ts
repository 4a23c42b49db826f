// Sharing an amount, rounding it, cost by weight and saving up.
import { rational, roundTo } from '../../numbers/rational.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { storyName } from '../story.js';
import { minorOn, price, priceOperand, sizeOf, smallestCoin, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { itemFor } from './things.js';
import { money } from './amounts.js';
import { KILOS } from './by-weight.js';
import { priceStory, withStory } from '../retold.js';

function share(amount: number, people: number, { rng, locale }: TemplateContext): Draft {
  const each = amount / people;
  const isCash = each % smallestCoin(locale) === 0;
  const [one, many] = itemFor(each, rng);
  const whole = Math.floor(amount / 100);
  return {
    text:
      isCash && rng.chance(0.6)
        ? `${people} friends share ${price(amount, locale)} equally. How much does each get?`
        : `${people} ${many} cost ${price(amount, locale)}. What does one ${one} cost?`,
    answer: money(each, locale),
    expression: `${priceOperand(amount)} / ${people}`,
    features: {
      size: sizeOf(amount / 100) * 0.5,
      extraSteps: people > 5 ? 1 : 0,
      carries: whole % people === 0 ? 0 : 1,
      rule: people === 10,
      story: true,
      adjust: people === 2 ? -0.4 : 0,
    },
    strategy:
      whole % people !== 0 && each > 100 && each % 100 !== 0
        ? [
            `${price(amount, locale)} = ${price(Math.floor(each / 100) * people * 100, locale)} + ${price(amount - Math.floor(each / 100) * people * 100, locale)}`,
            `${price(Math.floor(each / 100) * people * 100, locale)} ÷ ${people} = ${price(Math.floor(each / 100) * 100, locale)}`,
            `${price(amount - Math.floor(each / 100) * people * 100, locale)} ÷ ${people} = ${price(each - Math.floor(each / 100) * 100, locale)}`,
            `${price(Math.floor(each / 100) * 100, locale)} + ${price(each % 100, locale)} = ${price(each, locale)}`,
          ]
        : [`${price(amount, locale)} ÷ ${people} = ${price(each, locale)}`],
    slips: [
      ...(whole >= people && amount % 100 !== 0
        ? [
            {
              misconception: 'money.small-unit-unchanged' as const,
              answer: money(Math.floor(whole / people) * 100 + (amount % 100), locale),
            },
          ]
        : []),
      ...(whole % people !== 0 && whole > people
        ? [
            {
              misconception: 'money.rest-dropped' as const,
              answer: money(Math.floor(whole / people) * 100, locale),
            },
          ]
        : []),
      { misconception: 'money.multiplied-not-shared', answer: money(amount * people, locale) },
    ],
  };
}

function nearestMain(minor: number, { locale }: TemplateContext): Draft {
  const nearest = roundTo(rational(minor), rational(100)).n;
  const down = Math.floor(minor / 100) * 100;
  const name = locale.currency.mainName[0];
  return {
    text: `What is ${price(minor, locale)} to the nearest ${name}?`,
    answer: money(nearest, locale),
    expression: `round(${priceOperand(minor)})`,
    features: { size: sizeOf(minor / 100) * 0.3, adjust: Math.abs(50 - (minor % 100)) <= 10 ? 0.3 : -0.3 },
    strategy: [
      `${price(minor, locale)} is between ${down === 0 ? `${locale.currency.symbol}0` : price(down, locale)} and ${price(down + 100, locale)}`,
      minor % 100 === 50
        ? `Exactly halfway, so go up to ${price(nearest, locale)}`
        : `It is closer to ${nearest === 0 ? `${locale.currency.symbol}0` : price(nearest, locale)}`,
    ],
    slips: [
      { misconception: 'money.rounds-down', answer: money(down, locale) },
      { misconception: 'money.rounds-up', answer: money(down + 100, locale) },
      ...(minor % 10 === 0
        ? []
        : [
            {
              misconception: 'money.rounds-other-place' as const,
              answer: money(Math.round(minor / 10) * 10, locale),
            },
          ]),
    ],
  };
}

function saving(each: number, goal: number, who: string, { locale }: TemplateContext): Draft {
  const weeks = Math.ceil(goal / each);
  const exact = goal % each === 0;
  return {
    text: `${who} saves ${price(each, locale)} a week. How many weeks does it take to save at least ${price(goal, locale)}?`,
    answer: wholeAnswer(weeks, locale),
    expression: `ceil(${priceOperand(goal)} / ${priceOperand(each)})`,
    features: {
      size: sizeOf(weeks) + (each % 100 === 0 ? 0 : 1),
      extraSteps: exact ? 0 : 1,
      carries: each % 10 === 0 ? 0 : 1,
      story: true,
    },
    strategy: [
      ...(exact
        ? []
        : [`${weeks - 1} × ${price(each, locale)} = ${price((weeks - 1) * each, locale)}, not yet enough`]),
      `${weeks} × ${price(each, locale)} = ${price(weeks * each, locale)}`,
    ],
    slips: [
      ...(exact
        ? []
        : [{ misconception: 'group.rounds-down' as const, answer: wholeAnswer(weeks - 1, locale) }]),
      { misconception: 'pattern.step-missed', answer: wholeAnswer(weeks + 1, locale) },
    ],
  };
}

export const SHARING_SKILLS: readonly Skill[] = [
  {
    id: 'money.share',
    family: 'share an amount',
    title: 'Share an amount of money equally',
    year: 5,
    fluentYear: 6,
    strand: 'money',
    prerequisites: ['money.several', 'div.2d1d'],
    codes: { ac9: ['AC9M5N09'], england: ['NC-Y5-measure-7'], ccss: ['4.MD.A.2', '6.RP.A.3b'] },
    templates: [
      {
        id: 'share',
        ask: (context) => {
          const people = context.rng.int(2, 8);
          return share(people * context.rng.int(4, 60) * 10, people, context);
        },
        dayKinds: ['money', 'whole', 'decimal'],
        askOn: (day, context) => {
          const { locale, rng } = context;
          if (100 % day.value.d !== 0) return null;
          const minor = (day.value.n * 100) / day.value.d;
          if (minor < 40 || minor > 100_000) return null;
          const step = day.kind === 'money' ? 1 : 5;
          const ways = [2, 3, 4, 5, 6, 8, 10].filter(
            (people) => minor % (people * step) === 0 && minor / people >= 5,
          );
          if (ways.length === 0) return null;
          const people = rng.pick(ways);
          return using(
            share(minor, people, context),
            `shares ${price(minor, locale)} ${people === 2 ? 'between' : 'among'} ${people}`,
          );
        },
      },
    ],
  },
  {
    id: 'money.round',
    family: 'round',
    title: 'Round money to the nearest whole amount',
    year: 4,
    fluentYear: 5,
    strand: 'money',
    prerequisites: ['money.convert', 'place.part-neighbours'],
    codes: { ac9: ['AC9M4N07', 'AC9M5N08'], england: ['NC-Y4-measure-4'], ccss: ['4.MD.A.2'] },
    templates: withStory(priceStory, [
      {
        id: 'nearest',
        ask: (context) => nearestMain(context.rng.int(1, 19) * 100 + context.rng.int(1, 19) * 5, context),
        dayKinds: ['money'],
        askOn: (day, context) => {
          const minor = minorOn(day, 1, 1_000_000);
          return minor === null || minor % 100 === 0
            ? null
            : using(
                nearestMain(minor, context),
                `rounds ${day.text} to the nearest ${context.locale.currency.mainName[0]}`,
              );
        },
      },
    ]),
  },
  {
    id: 'money.by-weight',
    title: 'Find the cost of goods sold by the kilogram',
    year: 6,
    fluentYear: 6,
    strand: 'money',
    prerequisites: ['money.several', 'dec.times-whole'],
    codes: { ac9: ['AC9M6N09'], england: ['NC-Y5-measure-7', 'NC-Y6-measure-1'], ccss: ['6.RP.A.3b'] },
    templates: [KILOS],
  },
  {
    id: 'money.saving',
    title: 'Find how long saving up takes',
    year: 6,
    fluentYear: 6,
    strand: 'money',
    prerequisites: ['money.several', 'money.share', 'div.remainder'],
    codes: { ac9: ['AC9M6N09'], england: ['NC-Y5-measure-7'], ccss: ['6.RP.A.3b'] },
    templates: [
      {
        id: 'weeks',
        ask: (context) =>
          saving(
            context.rng.int(4, 30) * 50,
            context.rng.pick([30, 40, 50, 60, 80, 100, 120]) * 100,
            storyName(context.rng),
            context,
          ),
        dayKinds: ['money', 'whole'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const each = day.kind === 'money' ? minorOn(day, 50, 20_000) : (wholeOn(day, 2, 60) ?? 0) * 100;
          if (!each) return null;
          const goals = [20, 30, 50, 60, 100, 200, 500, 1000].filter(
            (goal) => goal * 100 > each * 2 && goal * 100 < each * 25,
          );
          if (goals.length === 0) return null;
          const goal = rng.pick(goals) * 100;
          return using(saving(each, goal, storyName(rng), context), `saves ${price(each, locale)} at a time`);
        },
      },
    ],
  },
];
