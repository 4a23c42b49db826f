// Change from notes, for one thing and for two.
import type { Locale } from '../../numbers/locale.js';
import type { Draft, DraftSlip, TemplateContext } from '../../questions/draft.js';
import { changeCountedApart, changeLargerLessSmaller } from '../../questions/slips/measuring.js';
import { storyName } from '../story.js';
import { cashOn, price, priceOperand, sizeOf, smallestCoin, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { thingFor } from './things.js';
import { money } from './amounts.js';
import { countUp } from './count-up.js';

function note(main: number, locale: Locale): string {
  return `${locale.currency.symbol}${main} ${locale.id === 'en-US' ? 'bill' : 'note'}`;
}

/** Notes that are more than a cost, in minor units; beyond the largest note, the next full hundreds in notes. */
function payments(cost: number, locale: Locale): { minor: number; text: string }[] {
  const singles = locale.currency.notes
    .filter((main) => main >= 5 && main * 100 > cost)
    .slice(0, 3)
    .map((main) => ({ minor: main * 100, text: `a ${note(main, locale)}` }));
  if (singles.length > 0) return singles;
  const main = Math.floor(cost / 10_000) * 100 + 100;
  return [
    {
      minor: main * 100,
      text: `${locale.currency.symbol}${main} in notes`.replace(
        'notes',
        locale.id === 'en-US' ? 'bills' : 'notes',
      ),
    },
  ];
}

function wholeChange(
  cost: number,
  paid: { minor: number; text: string },
  who: string,
  thing: string,
  { locale }: TemplateContext,
): Draft {
  const change = paid.minor - cost;
  const main = cost / 100;
  return {
    text: `${who} pays for ${thing} that costs ${price(cost, locale)} with ${paid.text}. How much change is there?`,
    answer: money(change, locale),
    expression: `${paid.minor / 100} - ${main}`,
    features: {
      size: sizeOf(paid.minor / 100) * 0.6,
      carries: main % 10 === 0 ? 0 : paid.minor > 1000 ? 1 : 0,
      story: true,
      adjust: paid.minor <= 1000 ? -0.5 : 0,
    },
    strategy: [`${price(cost, locale)} + ${price(change, locale)} = ${price(paid.minor, locale)}`],
    slips: [
      ...(main % 10 !== 0 && paid.minor > 1000
        ? [{ misconception: 'meas.complement-ten' as const, answer: money(change + 1000, locale) }]
        : []),
      { misconception: 'money.cost-not-change', answer: money(cost, locale) },
      { misconception: 'meas.added-not-taken', answer: money(cost + paid.minor, locale) },
    ],
  };
}

function changeSlips(paid: number, cost: number, locale: Locale): DraftSlip[] {
  return [
    { misconception: 'money.change-apart', answer: money(changeCountedApart(paid, cost), locale) },
    {
      misconception: 'money.change-larger-less-smaller',
      answer: money(changeLargerLessSmaller(paid, cost), locale),
    },
    { misconception: 'money.cost-not-change', answer: money(cost, locale) },
  ];
}

function change(
  cost: number,
  paid: { minor: number; text: string },
  who: string,
  thing: string,
  { locale }: TemplateContext,
): Draft {
  return {
    text: `${who} buys ${thing} for ${price(cost, locale)} and pays with ${paid.text}. How much change is there?`,
    answer: money(paid.minor - cost, locale),
    expression: `${priceOperand(paid.minor)} - ${priceOperand(cost)}`,
    features: {
      size: sizeOf(paid.minor / 100) * 0.6,
      carries: cost % 100 === 0 ? 0 : cost % 10 === 0 ? 1 : 2,
      story: true,
      adjust: -0.4,
    },
    strategy: countUp(cost, paid.minor, locale),
    slips: changeSlips(paid.minor, cost, locale),
  };
}

function changeForTwo(
  first: number,
  second: number,
  paid: { minor: number; text: string },
  who: string,
  { rng, locale }: TemplateContext,
): Draft {
  const total = first + second;
  const one = thingFor(first, rng);
  let two = thingFor(second, rng);
  for (let i = 0; i < 4 && two === one; i++) two = thingFor(second, rng);
  return {
    text: `${who} buys ${one} for ${price(first, locale)} and ${two === one ? 'another' : two} for ${price(second, locale)}, and pays with ${paid.text}. How much change is there?`,
    answer: money(paid.minor - total, locale),
    expression: `${priceOperand(paid.minor)} - (${priceOperand(first)} + ${priceOperand(second)})`,
    features: {
      size: sizeOf(paid.minor / 100) * 0.6,
      carries: (first % 100) + (second % 100) >= 100 ? 2 : 1,
      extraSteps: 1,
      story: true,
    },
    strategy: [
      `${price(first, locale)} + ${price(second, locale)} = ${price(total, locale)}`,
      ...countUp(total, paid.minor, locale),
    ],
    slips: [
      ...changeSlips(paid.minor, total, locale),
      { misconception: 'data.one-left-out', answer: money(paid.minor - first, locale) },
    ],
  };
}

/** A multiple of the smallest coin between the bounds. */
function someCash(low: number, high: number, { rng, locale }: TemplateContext): number {
  const step = Math.max(5, smallestCoin(locale));
  return rng.int(Math.ceil(low / step), Math.floor(high / step)) * step;
}

const CHANGE_CODES = {
  ac9: ['AC9M3N06', 'AC9M4N08'],
  england: ['NC-Y3-measure-3', 'NC-Y4-measure-4'],
  ccss: ['2.MD.C.8', '4.MD.A.2'],
} as const;

export const CHANGE_SKILLS: readonly Skill[] = [
  {
    id: 'money.change.whole',
    title: 'Give change in whole dollars',
    year: 2,
    fluentYear: 3,
    strand: 'money',
    prerequisites: ['money.coins.count', 'sub.within20'],
    codes: { ac9: ['AC9M2N06'], england: ['NC-Y2-measure-5'], ccss: ['2.MD.C.8'] },
    templates: [
      {
        id: 'note',
        ask: (context) => {
          const { rng, locale } = context;
          const cost = rng.int(1, 19) * 100;
          return wholeChange(
            cost,
            rng.pick(payments(cost, locale).slice(0, 2)),
            storyName(rng),
            thingFor(cost, rng),
            context,
          );
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const main = wholeOn(day, 1, 99);
          if (main === null) return null;
          const paid = rng.pick(payments(main * 100, locale));
          return using(
            wholeChange(main * 100, paid, storyName(rng), thingFor(main * 100, rng), context),
            `makes change from ${price(paid.minor, locale)} for ${price(main * 100, locale)}`,
          );
        },
      },
    ],
  },
  {
    id: 'money.change',
    title: 'Give change in dollars and cents',
    year: 4,
    fluentYear: 5,
    strand: 'money',
    prerequisites: ['money.change.whole', 'money.fill-up'],
    codes: CHANGE_CODES,
    templates: [
      {
        id: 'note',
        ask: (context) => {
          const { rng, locale } = context;
          const cost = someCash(105, 1990, context);
          return change(
            cost,
            rng.pick(payments(cost, locale).slice(0, 2)),
            storyName(rng),
            thingFor(cost, rng),
            context,
          );
        },
        dayKinds: ['money', 'decimal'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const cost =
            day.kind === 'money'
              ? cashOn(day, locale, 50, 40_000)
              : 100 % day.value.d === 0 && day.value.n / day.value.d < 100
                ? (day.value.n * 100) / day.value.d
                : null;
          if (cost === null || cost < 50 || cost % smallestCoin(locale) !== 0) return null;
          const paid = rng.pick(payments(cost, locale));
          return using(
            change(cost, paid, storyName(rng), thingFor(cost, rng), context),
            `makes change from ${price(paid.minor, locale)} for ${price(cost, locale)}`,
          );
        },
      },
    ],
  },
  {
    id: 'money.change.two',
    title: 'Give change after buying two things',
    year: 5,
    fluentYear: 6,
    strand: 'money',
    prerequisites: ['money.change', 'money.total'],
    codes: { ac9: ['AC9M5N09'], england: ['NC-Y5-measure-7'], ccss: ['4.MD.A.2'] },
    templates: [
      {
        id: 'two',
        ask: (context) => {
          const { rng, locale } = context;
          const first = someCash(120, 900, context);
          const second = someCash(120, 900, context);
          return changeForTwo(
            first,
            second,
            rng.pick(payments(first + second, locale).slice(0, 2)),
            storyName(rng),
            context,
          );
        },
        dayKinds: ['money', 'whole'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const first =
            day.kind === 'money' ? cashOn(day, locale, 50, 20_000) : (wholeOn(day, 2, 90) ?? 0) * 100;
          if (!first) return null;
          const second = someCash(Math.max(50, first * 0.3), Math.max(120, first * 1.2), context);
          const paid = rng.pick(payments(first + second, locale).slice(0, 2));
          return using(
            changeForTwo(first, second, paid, storyName(rng), context),
            `makes change from ${price(paid.minor, locale)} after spending ${price(first, locale)} and more`,
          );
        },
      },
    ],
  },
];
