// Change from notes, for one thing and for two.
import type { Locale } from '../../numbers/locale.js';
import type { Draft, DraftSlip, TemplateContext } from '../../questions/draft.js';
import { changeCountedApart, changeLargerLessSmaller } from '../../questions/slips/measuring.js';
import { cashOn, price, priceOperand, sizeOf, smallestCoin, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { atStart, thingFor } from './things.js';
import { money } from './amounts.js';
import { countUp } from './count-up.js';

/** Notes that are more than a cost, in minor units; beyond the largest note, the next full hundreds. */
function payments(cost: number, locale: Locale): number[] {
  const singles = locale.currency.notes
    .filter((main) => main >= 5 && main * 100 > cost)
    .slice(0, 3)
    .map((main) => main * 100);
  return singles.length > 0 ? singles : [Math.floor(cost / 10_000) * 10_000 + 10_000];
}

function wholeChange(cost: number, paid: number, { rng, locale }: TemplateContext): Draft {
  const left = paid - cost;
  const main = cost / 100;
  return {
    text: `${atStart(thingFor(cost, rng))} costs ${price(cost, locale)}. What is the change from ${price(paid, locale)}?`,
    answer: money(left, locale),
    expression: `${paid / 100} - ${main}`,
    features: {
      size: sizeOf(paid / 100) * 0.6,
      carries: main % 10 === 0 ? 0 : paid > 1000 ? 1 : 0,
      story: true,
      adjust: paid <= 1000 ? -0.5 : 0,
    },
    strategy: wholeCountUp(cost, paid, locale),
    slips: [
      ...(main % 10 !== 0 && paid > 1000
        ? [{ misconception: 'meas.complement-ten' as const, answer: money(left + 1000, locale) }]
        : []),
      { misconception: 'money.cost-not-change', answer: money(cost, locale) },
      { misconception: 'meas.added-not-taken', answer: money(cost + paid, locale) },
    ],
  };
}

/** Up to the next ten first, then on to what was paid; in one step where that is a ten already. */
function wholeCountUp(cost: number, paid: number, locale: Locale): string[] {
  const say = (minor: number) => price(minor, locale);
  const ten = Math.ceil(cost / 1000) * 1000;
  if (ten === cost || ten >= paid) return [`${say(cost)} + ${say(paid - cost)} = ${say(paid)}`];
  return [
    `${say(cost)} + ${say(ten - cost)} = ${say(ten)}`,
    `${say(ten)} + ${say(paid - ten)} = ${say(paid)}`,
    `${say(ten - cost)} + ${say(paid - ten)} = ${say(paid - cost)}`,
  ];
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

function change(cost: number, paid: number, { rng, locale }: TemplateContext): Draft {
  return {
    text: `${atStart(thingFor(cost, rng))} costs ${price(cost, locale)}. What is the change from ${price(paid, locale)}?`,
    answer: money(paid - cost, locale),
    expression: `${priceOperand(paid)} - ${priceOperand(cost)}`,
    features: {
      size: sizeOf(paid / 100) * 0.6,
      carries: cost % 100 === 0 ? 0 : cost % 10 === 0 ? 1 : 2,
      story: true,
      adjust: -0.4,
    },
    strategy: countUp(cost, paid, locale),
    slips: changeSlips(paid, cost, locale),
  };
}

function changeForTwo(first: number, second: number, paid: number, { rng, locale }: TemplateContext): Draft {
  const total = first + second;
  const one = thingFor(first, rng);
  let two = thingFor(second, rng);
  for (let i = 0; i < 4 && two === one; i++) two = thingFor(second, rng);
  return {
    text: `${atStart(one)} costs ${price(first, locale)} and ${two === one ? 'another' : two} ${price(second, locale)}. What is the change from ${price(paid, locale)}?`,
    answer: money(paid - total, locale),
    expression: `${priceOperand(paid)} - (${priceOperand(first)} + ${priceOperand(second)})`,
    features: {
      size: sizeOf(paid / 100) * 0.6,
      carries: (first % 100) + (second % 100) >= 100 ? 2 : 1,
      extraSteps: 1,
      story: true,
    },
    strategy: [
      `${price(first, locale)} + ${price(second, locale)} = ${price(total, locale)}`,
      ...countUp(total, paid, locale),
    ],
    slips: [
      ...changeSlips(paid, total, locale),
      { misconception: 'money.piece-missed', answer: money(paid - first, locale) },
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
    title: 'Give change in whole amounts',
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
          return wholeChange(cost, rng.pick(payments(cost, locale).slice(0, 2)), context);
        },
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const main = wholeOn(day, 1, 99);
          if (main === null) return null;
          const paid = rng.pick(payments(main * 100, locale));
          return using(
            wholeChange(main * 100, paid, context),
            `makes change from ${price(paid, locale)} for ${price(main * 100, locale)}`,
          );
        },
      },
    ],
  },
  {
    id: 'money.change',
    title: 'Give exact change, small coins too',
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
          return change(cost, rng.pick(payments(cost, locale).slice(0, 2)), context);
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
            change(cost, paid, context),
            `makes change from ${price(paid, locale)} for ${price(cost, locale)}`,
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
    codes: {
      ac9: ['AC9M5N09'],
      england: ['NC-Y5-measure-7', 'NC-Y6-fourops-7', 'NC-Y6-fourops-8'],
      ccss: ['4.MD.A.2'],
    },
    templates: [
      {
        id: 'two',
        ask: (context) => {
          const { rng, locale } = context;
          const first = someCash(120, 900, context);
          const second = someCash(120, 900, context);
          return changeForTwo(first, second, rng.pick(payments(first + second, locale).slice(0, 2)), context);
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
            changeForTwo(first, second, paid, context),
            `makes change from ${price(paid, locale)} after spending ${price(first, locale)} and more`,
          );
        },
      },
    ],
  },
];
