// Estimates with decimals, percentages and fractions: a friendly number first, then the sum in the head.
import { formatDecimal, formatMoney, formatWhole } from '../../numbers/format.js';
import { add, floor, multiply, rational, type Rational, subtract, toNumber } from '../../numbers/rational.js';
import { decimalAnswer, moneyAnswer, wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { partTemplates } from '../parts.js';
import type { Skill } from '../skill.js';
import { templateOf } from '../template-of.js';

const OPERATIONS = ['+', '−', '×'] as const;

interface Rough {
  readonly value: Rational;
  readonly near: number;
  readonly other: number;
  readonly operation: (typeof OPERATIONS)[number];
}

/** A value close to `near`, never halfway: 3.9, 6.12. */
function closeTo(near: number, off: number): Rational {
  return add(rational(near), rational(off, 100));
}

const OFFS = [-20, -15, -10, -8, -5, 5, 8, 10, 12, 20] as const;

const result = (a: number, b: number, operation: Rough['operation']) =>
  operation === '+' ? a + b : operation === '−' ? a - b : a * b;

const exactly = (a: Rational, b: number, operation: Rough['operation']): Rational =>
  operation === '+'
    ? add(a, rational(b))
    : operation === '−'
      ? subtract(a, rational(b))
      : multiply(a, rational(b));

const roundFirst = templateOf<Rough>({
  id: 'round-first',
  free: (rng) => {
    const near = rng.int(3, 12);
    const operation = rng.pick(OPERATIONS);
    return {
      near,
      value: closeTo(near, rng.pick(OFFS)),
      other: operation === '−' ? rng.int(1, near - 2) : rng.int(3, 9),
      operation,
    };
  },
  draft: ({ value, near, other, operation }, { locale }) => {
    const say = formatDecimal(value, locale);
    const right = result(near, other, operation);
    const isBelow = value.n < near * value.d;
    return {
      text: `What is ${say} ${operation} ${other} if you round ${say} to a whole number first?`,
      answer: wholeAnswer(right, locale),
      expression: `${near} ${{ '+': '+', '−': '-', '×': '*' }[operation]} ${other}`,
      features: { extraSteps: 1, size: operation === '×' ? near / 12 : 0 },
      strategy: [`${say} is near ${near}`, `${near} ${operation} ${other} = ${formatWhole(right, locale)}`],
      slips: [
        { misconception: 'estimate.exact', answer: decimalAnswer(exactly(value, other, operation), locale) },
        ...wholeSlips(
          [
            isBelow
              ? ['round.cut-off', result(near - 1, other, operation)]
              : ['round.always-up', result(near + 1, other, operation)],
          ],
          locale,
        ),
      ],
    };
  },
});

interface NearPercent {
  readonly percent: number;
  readonly easy: number;
  readonly amount: number;
}

const EASY = [
  [49, 50],
  [51, 50],
  [48, 50],
  [24, 25],
  [26, 25],
  [9, 10],
  [11, 10],
  [19, 20],
  [21, 20],
] as const;

const aboutPercent = templateOf<NearPercent>({
  id: 'percent',
  free: (rng) => {
    const [percent, easy] = rng.pick(EASY);
    return { percent, easy, amount: 20 * rng.int(2, 15) };
  },
  draft: ({ percent, easy, amount }, { locale }) => {
    const right = (amount * easy) / 100;
    return {
      text: `${percent}% of ${amount} is about ${easy}% of ${amount}. What is that estimate?`,
      answer: wholeAnswer(right, locale),
      expression: `${amount} * ${easy} / 100`,
      features: { extraSteps: 0.5, size: amount / 200 },
      strategy: [`${easy}% is 1/${100 / easy}`, `${amount} ÷ ${100 / easy} = ${formatWhole(right, locale)}`],
      slips: [
        { misconception: 'estimate.exact', answer: decimalAnswer(rational(amount * percent, 100), locale) },
        ...wholeSlips(
          [
            ['percent.as-amount', easy],
            ['percent.divides-by-it', amount % easy === 0 && easy !== 10 ? amount / easy : null],
          ],
          locale,
        ),
      ],
    };
  },
});

const aboutCost = templateOf<readonly [minor: number, count: number]>({
  id: 'cost',
  free: (rng) => [100 * rng.int(2, 9) + rng.pick([-10, -5, 5, 10]), rng.int(3, 9)],
  draft: ([minor, count], { locale }) => {
    const near = Math.round(minor / 100);
    const money = (amount: Rational) => formatMoney(amount, locale);
    const price = rational(minor, 100);
    const main = locale.currency.mainName[0];
    return {
      text: `What do ${count} books at ${money(price)} cost if you round to the nearest ${main} first?`,
      answer: moneyAnswer(rational(near * count), locale),
      expression: `${near} * ${count}`,
      features: { extraSteps: 1, size: count / 9 },
      strategy: [
        `${money(price)} is near ${money(rational(near))}`,
        `${count} × ${money(rational(near))} = ${money(rational(near * count))}`,
      ],
      slips: [
        { misconception: 'estimate.exact', answer: moneyAnswer(rational(minor * count, 100), locale) },
        {
          misconception: minor < near * 100 ? 'round.cut-off' : 'round.always-up',
          answer: moneyAnswer(rational((minor < near * 100 ? near - 1 : near + 1) * count), locale),
        },
      ],
    };
  },
});

const nearWhole = partTemplates(
  'near-whole',
  ({ value, form, text, rng, t, e, locale }) => {
    const low = floor(value);
    const rest = toNumber(value) - low;
    // Halfway has no nearer side.
    if (rest === 0.5) return null;
    const near = rest > 0.5 ? low + 1 : low;
    const k = rng.int(6, 39);
    const whole = form === 'money' ? `whole ${locale.currency.mainName[1]}` : 'a whole number';
    return {
      text: `What is ${text} + ${t(k)} if you round ${text} to ${whole} first?`,
      value: near + k,
      expression: `${e(near)} + ${e(k)}`,
      features: { extraSteps: 0.5, size: k > 9 ? 0.4 : 0 },
      strategy: [`${text} is near ${t(near)}`, `${t(near)} + ${t(k)} = ${t(near + k)}`],
      slips: [
        ['estimate.exact', add(value, rational(k))],
        near === low ? ['round.always-up', low + 1 + k] : ['round.cut-off', low + k],
      ],
      uses: `estimates with ${text}`,
    };
  },
  { from: 1 },
);

export const ESTIMATING_SKILLS: readonly Skill[] = [
  {
    id: 'dec.estimate',
    title: 'Estimate with decimals, percentages and prices',
    year: 6,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.round', 'pct.of.easy', 'mult.estimate'],
    codes: { ac9: ['AC9M6N08'], england: ['NC-Y6-fourops-9'], ccss: ['4.OA.A.3'] },
    templates: [roundFirst, aboutPercent, aboutCost, ...nearWhole],
  },
];
