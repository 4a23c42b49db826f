// Costs: totals, comparing two prices, several of the same.
import { formatWhole } from '../../numbers/format.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import {
  borrowsIn,
  carriesIn,
  minorOn,
  price,
  priceOperand,
  sizeOf,
  using,
  wholeOn,
} from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { atStart, itemFor, thingFor } from './things.js';
import { money } from './amounts.js';

function total(first: number, second: number, { rng, locale }: TemplateContext): Draft {
  const sum = first + second;
  const crosses = (first % 100) + (second % 100) >= 100;
  const carries = carriesIn(first, second);
  // A bread roll is not bought along with a bike.
  const story = rng.chance(0.5) && Math.max(first, second) <= 8 * Math.min(first, second);
  const one = thingFor(first, rng);
  const two = thingFor(second, rng);
  const text =
    story && one !== two
      ? `${atStart(one)} is ${price(first, locale)} and ${two} is ${price(second, locale)}. How much in all?`
      : `${price(first, locale)} + ${price(second, locale)}`;
  const whole = Math.floor(second / 100) * 100;
  return {
    text,
    answer: money(sum, locale),
    expression: `${priceOperand(first)} + ${priceOperand(second)}`,
    features: {
      size: sizeOf(sum / 100) * 0.5,
      carries,
      story: story && one !== two,
      tie: first === second,
      adjust: carries === 0 ? -0.4 : 0,
    },
    strategy:
      whole > 0 && whole !== second
        ? [
            `${price(first, locale)} + ${price(whole, locale)} = ${price(first + whole, locale)}`,
            `${price(first + whole, locale)} + ${price(second - whole, locale)} = ${price(sum, locale)}`,
          ]
        : [`${price(first, locale)} + ${price(second, locale)} = ${price(sum, locale)}`],
    slips: [
      ...(crosses
        ? [{ misconception: 'money.whole-not-carried' as const, answer: money(sum - 100, locale) }]
        : []),
      ...(second > 100
        ? [{ misconception: 'money.piece-missed' as const, answer: money(first + (second % 100), locale) }]
        : []),
      { misconception: 'operation.swapped', answer: money(Math.abs(first - second), locale) },
    ],
  };
}

/** One digit other than zeros: 4, 30, 500. */
function isRound(value: number): boolean {
  return /^[1-9]0+$/.test(String(value));
}

function several(count: number, each: number, { rng, locale }: TemplateContext): Draft {
  const cost = count * each;
  const [, many] = itemFor(each, rng);
  const whole = Math.floor(each / 100) * 100;
  const cents = each % 100;
  const parted = whole > 0 && cents > 0;
  return {
    text: `What do ${formatWhole(count, locale)} ${many} cost at ${price(each, locale)} each?`,
    answer: money(cost, locale),
    expression: `${count} * ${priceOperand(each)}`,
    features: {
      size: (sizeOf(count) + sizeOf(each / 100)) * 0.4,
      extraSteps: isRound(count) || isRound(each) ? 0 : (count > 10 ? 1 : 0) + (count > 2 ? 0.5 : 0),
      carries: Math.min(
        2,
        (cents * Math.min(count, 9) >= 100 ? 1 : 0) + (each % 10 === 5 && count > 2 ? 1 : 0),
      ),
      rule: count === 10 || each === 100 || each === 1000,
      story: true,
      adjust: count === 2 ? -0.5 : 0,
    },
    strategy: parted
      ? [
          `${formatWhole(count, locale)} × ${price(whole, locale)} = ${price(count * whole, locale)}`,
          `${formatWhole(count, locale)} × ${price(cents, locale)} = ${price(count * cents, locale)}`,
          `${price(count * whole, locale)} + ${price(count * cents, locale)} = ${price(cost, locale)}`,
        ]
      : [`${formatWhole(count, locale)} × ${price(each, locale)} = ${price(cost, locale)}`],
    slips: [
      ...(parted
        ? [
            {
              misconception: 'money.small-unit-unchanged' as const,
              answer: money(count * whole + cents, locale),
            },
          ]
        : []),
      { misconception: 'money.added-not-multiplied', answer: money(count * 100 + each, locale) },
      { misconception: 'money.piece-missed', answer: money(cost - each, locale) },
    ],
  };
}

function difference(first: number, second: number, { rng, locale }: TemplateContext): Draft {
  const high = Math.max(first, second);
  const low = Math.min(first, second);
  const thing = thingFor(high, rng);
  return {
    text: `${atStart(thing)} is ${price(first, locale)} here and ${price(second, locale)} there. What is the difference?`,
    answer: money(high - low, locale),
    expression: `${priceOperand(high)} - ${priceOperand(low)}`,
    features: { size: sizeOf(high / 100) * 0.5, carries: borrowsIn(high, low), story: true },
    strategy: [`${price(low, locale)} + ${price(high - low, locale)} = ${price(high, locale)}`],
    slips: [
      { misconception: 'meas.added-not-taken', answer: money(high + low, locale) },
      ...(high % 100 < low % 100
        ? [{ misconception: 'money.change-apart' as const, answer: money(high - low + 100, locale) }]
        : []),
      { misconception: 'data.larger-given', answer: money(high, locale) },
    ],
  };
}

/** Another amount not far from the given one, in steps of 5. */
function nearby(minor: number, { rng }: TemplateContext): number {
  const step = minor < 1000 ? 5 : minor < 10_000 ? 50 : 500;
  const other = Math.max(1, Math.round((minor * rng.int(30, 140)) / 100 / step)) * step;
  return other === minor ? other + step : other;
}

export const COST_SKILLS: readonly Skill[] = [
  {
    id: 'money.total',
    family: 'add to a part',
    title: 'Add two amounts of money',
    year: 3,
    fluentYear: 4,
    strand: 'money',
    prerequisites: ['money.convert', 'add.2d2d.carry'],
    codes: { ac9: ['AC9M3N06', 'AC9M4N08'], england: ['NC-Y3-measure-3'], ccss: ['4.MD.A.2'] },
    templates: [
      {
        id: 'sum',
        ask: (context) => {
          const first = context.rng.int(10, 180) * 5;
          return total(first, nearby(first, context), context);
        },
        dayKinds: ['money', 'whole'],
        askOn: (day, context) => {
          const minor =
            day.kind === 'money' ? minorOn(day, 20, 1_000_000) : (wholeOn(day, 1, 1000) ?? 0) * 100;
          if (!minor) return null;
          const { rng } = context;
          const second = rng.chance(0.3)
            ? rng.int(1, 9) * 100
            : day.kind === 'whole'
              ? rng.int(1, 9) * 100 + rng.int(0, 9) * 10
              : nearby(minor, context);
          return using(total(minor, second, context), `adds to ${price(minor, context.locale)}`);
        },
      },
    ],
  },
  {
    id: 'money.difference',
    family: 'difference',
    title: 'Compare two prices',
    year: 4,
    fluentYear: 5,
    strand: 'money',
    prerequisites: ['money.total', 'money.fill-up'],
    codes: { ac9: ['AC9M4N08'], england: ['NC-Y4-measure-4'], ccss: ['4.MD.A.2'] },
    templates: [
      {
        id: 'cheaper',
        ask: (context) => {
          const first = context.rng.int(30, 180) * 5;
          return difference(first, nearby(first, context), context);
        },
        dayKinds: ['money'],
        askOn: (day, context) => {
          const minor = minorOn(day, 100, 1_000_000);
          return minor === null
            ? null
            : using(
                difference(minor, nearby(minor, context), context),
                `compares ${day.text} with another price`,
              );
        },
      },
    ],
  },
  {
    id: 'money.several',
    family: 'cost of several',
    title: 'Find the cost of several of the same',
    year: 4,
    fluentYear: 5,
    strand: 'money',
    prerequisites: ['money.total', 'mult.2d1d'],
    codes: {
      ac9: ['AC9M4N08', 'AC9M5N09'],
      england: ['NC-Y4-measure-4', 'NC-Y5-measure-7'],
      ccss: ['4.MD.A.2', '6.RP.A.3b'],
    },
    templates: [
      {
        id: 'each',
        ask: (context) =>
          several(context.rng.int(2, 9), context.rng.int(4, 60) * 10 + context.rng.pick([0, 0, 5]), context),
        dayKinds: ['money', 'whole'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const each = minorOn(day, 20, 200_000);
          if (each !== null) {
            const count = rng.pick([2, 3, 4, 5, 10, 6, 8]);
            return using(several(count, each, context), `takes ${count} times ${price(each, locale)}`);
          }
          const whole = wholeOn(day, 2, 400);
          if (whole === null) return null;
          if (rng.chance(0.5)) {
            const count = rng.int(2, 9);
            return using(
              several(count, whole * 100, context),
              `takes ${count} times ${price(whole * 100, locale)}`,
            );
          }
          const cost = rng.pick([100, 200, 300, 500, 1000, 150, 250, 120, 80]);
          return using(several(whole, cost, context), `buys ${day.text} at ${price(cost, locale)} each`);
        },
      },
    ],
  },
];
