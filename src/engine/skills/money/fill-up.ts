// Filling an amount up to a whole one.
import { wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { changeCountedApart, changeLargerLessSmaller } from '../../questions/slips/measuring.js';
import { minorOn, price, priceOperand, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { money } from './amounts.js';
import { countUp } from './count-up.js';

function fillUp(minor: number, whole: number, { locale }: TemplateContext): Draft {
  const missing = whole - minor;
  const inMinor = missing < 100;
  const { minorName } = locale.currency;
  const text = inMinor
    ? `How many ${minorName[1]} must be added to ${price(minor, locale)} to make ${price(whole, locale)}?`
    : `How much must be added to ${price(minor, locale)} to make ${price(whole, locale)}?`;
  const answerOf = (value: number) => (inMinor ? wholeAnswer(value, locale) : money(value, locale));
  return {
    text,
    answer: answerOf(missing),
    ...(inMinor ? { accepts: [price(missing, locale)] } : {}),
    expression: inMinor ? `${whole} - ${minor}` : `${priceOperand(whole)} - ${priceOperand(minor)}`,
    features: {
      unknownInside: true,
      size: minor >= 100 ? 0.4 : 0,
      carries: missing % 10 === 0 ? 0 : 1,
      adjust: missing % 50 === 0 ? -0.6 : -0.2,
    },
    strategy: inMinor
      ? missing % 10 === 0
        ? [`${price(minor, locale)} + ${price(missing, locale)} = ${price(whole, locale)}`]
        : [
            `${price(minor, locale)} + ${price(missing % 10, locale)} = ${price(minor + (missing % 10), locale)}`,
            ...(missing > 10
              ? [
                  `${price(minor + (missing % 10), locale)} + ${price(missing - (missing % 10), locale)} = ${price(whole, locale)}`,
                ]
              : []),
            ...(missing > 10 ? [`${missing % 10} + ${missing - (missing % 10)} = ${missing}`] : []),
          ]
      : countUp(minor, whole, locale),
    slips: inMinor
      ? [
          { misconception: 'meas.complement-ten', answer: answerOf(missing + 10) },
          { misconception: 'part.rest-given', answer: answerOf(minor % 100 === 0 ? 100 : minor % 100) },
        ]
      : [
          { misconception: 'money.change-apart', answer: answerOf(changeCountedApart(whole, minor)) },
          {
            misconception: 'money.change-larger-less-smaller',
            answer: answerOf(changeLargerLessSmaller(whole, minor)),
          },
        ],
  };
}

export const FILL_UP_SKILLS: readonly Skill[] = [
  {
    id: 'money.fill-up',
    family: 'make up to a whole',
    title: 'Fill money up to the next whole amount',
    year: 3,
    fluentYear: 4,
    strand: 'money',
    prerequisites: ['money.coins.count', 'add.to100'],
    codes: { ac9: ['AC9M3M06', 'AC9M3N06'], england: ['NC-Y3-measure-3'], ccss: ['2.MD.C.8'] },
    templates: [
      {
        id: 'fill',
        ask: (context) => {
          const { rng } = context;
          const dollars = rng.int(0, 8);
          return fillUp(dollars * 100 + rng.int(1, 19) * 5, (dollars + 1) * 100, context);
        },
        dayKinds: ['whole', 'money'],
        askOn: (day, context) => {
          const { rng, locale } = context;
          const minor = wholeOn(day, 2, 99) ?? minorOn(day, 5, 999_900);
          if (minor === null || minor % 100 === 0) return null;
          const next = Math.ceil(minor / 100) * 100;
          const targets = [
            next,
            next,
            ...(minor > 100 ? [1000, 2000, 10_000].filter((target) => target > next).slice(0, 1) : []),
          ];
          const target = rng.pick(targets);
          return using(
            fillUp(minor, target, context),
            `fills ${price(minor, locale)} up to ${price(target, locale)}`,
          );
        },
      },
    ],
  },
];
