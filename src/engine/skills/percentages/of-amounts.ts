// A percent of an amount, and prices after a percent off or more.
import { add, divide, multiply, rational, type Rational, subtract } from '../../numbers/rational.js';
import { placesOf } from '../decimals/draw-decimal.js';
import { numericTemplate, type Sketch, type Subject } from '../sketch.js';
import type { Skill } from '../skill.js';
import { percentStory, withStory } from '../retold.js';

const HUNDRED = rational(100);

/** How a percent is built from an easy one: [percent, divide by, times]. */
const EASY = [
  [50, 2, 1],
  [10, 10, 1],
  [25, 4, 1],
  [20, 5, 1],
  [1, 100, 1],
] as const;

const BUILT = [
  [75, 4, 3],
  [30, 10, 3],
  [40, 10, 4],
  [5, 20, 1],
  [60, 10, 6],
  [70, 10, 7],
  [80, 10, 8],
  [90, 10, 9],
] as const;

function percentSteps(x: Subject, percent: number): string[] {
  const easy = [...EASY, ...BUILT].find(([p]) => p === percent);
  const part = (p: number) => x.t(divide(multiply(x.value, rational(p)), HUNDRED));
  if (percent === 5) return [`${x.text} ÷ 10 = ${part(10)}`, `${part(10)} ÷ 2 = ${part(5)}`];
  if (easy) {
    const unit = divide(x.value, rational(easy[1]));
    return [
      `${x.text} ÷ ${easy[1]} = ${x.t(unit)}`,
      ...(easy[2] > 1 ? [`${easy[2]} × ${x.t(unit)} = ${part(percent)}`] : []),
    ];
  }
  const tens = percent - (percent % 10);
  const ones = percent % 10;
  return [
    `${tens}% is ${part(tens)}`,
    `${ones}% is ${part(ones)}`,
    `${part(tens)} + ${part(ones)} = ${part(percent)}`,
  ];
}

/** percent of the subject's quantity, asked barely. */
function percentOf(x: Subject, percent: number, features: Sketch['features']): Sketch {
  const answer = divide(multiply(x.value, rational(percent)), HUNDRED);
  const ten = divide(x.value, rational(10));
  return {
    text: `${percent}% of ${x.text}`,
    value: answer,
    expression: `(${percent} / 100) * ${x.expr}`,
    features,
    strategy: percentSteps(x, percent),
    slips: [
      ['percent.divides-by-it', percent > 1 ? divide(x.value, rational(percent)) : null],
      ['percent.as-amount', percent],
      [
        'percent.step-forgotten',
        percent === 10
          ? null
          : percent > 10 && percent % 10 === 0
            ? ten
            : percent === 75
              ? divide(x.value, rational(4))
              : percent === 25
                ? divide(x.value, rational(2))
                : ten,
      ],
      ['part.rest-given', subtract(x.value, answer)],
      ['decimals.place-missed', divide(answer, rational(10))],
    ],
    uses: `finds ${percent}% of ${x.text}`,
  };
}

const quantityRange = (value: Rational, form: string): boolean =>
  form === 'whole'
    ? value.n >= 4 && value.n <= 1_000_000
    : value.n <= 100_000 * value.d && placesOf(value) <= 2;

/** The skills on a percent of an amount, and prices after a percent off or more. */
export const PERCENT_OF_SKILLS: readonly Skill[] = [
  {
    id: 'pct.of.easy',
    title: 'Find 50%, 25%, 20%, 10% and 1% of an amount',
    year: 5,
    fluentYear: 6,
    strand: 'percentages',
    prerequisites: ['pct.hundred', 'frac.unit-of', 'dec.divide10'],
    codes: {
      ac9: ['AC9M5N04', 'AC9M6N07'],
      england: ['NC-Y6-ratio-2', 'NC-Y5-fractions-12'],
      ccss: ['6.RP.A.3c'],
    },
    templates: withStory(percentStory, [
      numericTemplate({
        id: 'of',
        kinds: ['whole', 'money', 'decimal'],
        free: (rng) => 10 * rng.int(2, 60),
        suits: quantityRange,
        make: (x) => {
          const [percent, by] = x.pick(EASY);
          const answer = divide(x.value, rational(by));
          if (x.form !== 'money' && placesOf(answer) > 2) return null;
          return percentOf(x, percent, {
            rule: percent === 10,
            extraSteps: x.n % by === 0 ? 0 : 1,
            size: percent === 20 || percent === 1 ? 1 : x.n > 10_000 ? 0.5 : 0,
            adjust: percent === 50 ? -0.8 : 0,
          });
        },
      }),
    ]),
  },
  {
    id: 'pct.of',
    title: 'Find other percentages of an amount',
    year: 6,
    fluentYear: 6,
    strand: 'percentages',
    prerequisites: ['pct.of.easy'],
    codes: { ac9: ['AC9M6N07'], england: ['NC-Y6-ratio-2'], ccss: ['6.RP.A.3c'] },
    // Two or three facts to combine; common practice.
    shift: 0.6,
    templates: [
      numericTemplate({
        id: 'of',
        kinds: ['whole', 'money', 'decimal'],
        free: (rng) => 20 * rng.int(1, 30),
        suits: quantityRange,
        make: (x) => {
          const percent = x.pick([5, 15, 30, 35, 40, 60, 70, 75, 80, 90]);
          const answer = divide(multiply(x.value, rational(percent)), HUNDRED);
          if (x.form !== 'money' && placesOf(answer) > 3) return null;
          return percentOf(x, percent, {
            extraSteps: (percent % 10 === 5 && percent !== 5 ? 1 : 0) + (answer.d > 1 ? 1 : 0),
            size: percent > 50 ? 0.5 : 0,
            adjust: percent === 5 ? -0.2 : 0,
          });
        },
      }),
      numericTemplate({
        id: 'story',
        kinds: ['whole'],
        free: (rng) => 20 * rng.int(2, 20),
        suits: (value) => value.d === 1 && value.n >= 20 && value.n <= 2000 && value.n % 5 === 0,
        make: (x) => {
          const percent = x.pick([20, 30, 40, 60, 75, 80].filter((p) => (x.n * p) % 100 === 0));
          const sketch = percentOf(x, percent, { story: true, size: percent > 50 ? 0.5 : 0 });
          return {
            ...sketch,
            // People and trees come whole, in wrong answers too.
            slips: sketch.slips.filter(
              ([, wrong]) => wrong === null || typeof wrong !== 'object' || ('d' in wrong && wrong.d === 1),
            ),
            text: x.pick([
              `${percent}% of ${x.text} people are children. How many children is that?`,
              `${percent}% of ${x.text} trees are figs. How many fig trees is that?`,
            ]),
          };
        },
      }),
    ],
  },
  {
    id: 'pct.discount',
    family: 'discount',
    title: 'Prices after a percentage off or a percentage more',
    year: 6,
    fluentYear: 6,
    strand: 'percentages',
    prerequisites: ['pct.of', 'sub.2d2d.borrow'],
    codes: { ac9: ['AC9M6N07'], england: ['NC-Y6-ratio-2'], ccss: ['6.RP.A.3c'] },
    // Common practice.
    shift: 0.3,
    templates: [
      numericTemplate({
        id: 'off',
        kinds: ['money', 'whole'],
        free: (rng) => 4 * rng.int(3, 40),
        suits: (value, form) =>
          form === 'money'
            ? value.n <= 1000 * value.d && value.n >= value.d
            : value.n >= 4 && value.n <= 2000,
        make: (x) => {
          const percent = x.pick([10, 20, 25, 50]);
          const off = divide(multiply(x.value, rational(percent)), HUNDRED);
          const more = x.rng.chance(0.25);
          const answer = more ? add(x.value, off) : subtract(x.value, off);
          const price = x.t(x.value, 'money');
          const thing = x.pick(
            x.value.n > 60 * x.value.d
              ? ['bike', 'tent', 'keyboard']
              : x.value.n < 15 * x.value.d
                ? ['notebook', 'plant', 'ball']
                : ['jacket', 'board game', 'backpack'],
          );
          return {
            text: more
              ? `A price of ${price} goes up by ${percent}%. What is the new price?`
              : x.pick([
                  `A ${thing} costs ${price} but is ${percent}% off. What is the sale price?`,
                  `${percent}% off ${price}. What is left to pay?`,
                ]),
            value: answer,
            form: 'money',
            expression: more ? `${x.expr} * (1 + ${percent} / 100)` : `${x.expr} * (1 - ${percent} / 100)`,
            features: {
              story: true,
              extraSteps: 1 + (off.d > 1 ? 0.5 : 0),
              rule: percent === 10,
              adjust: percent === 50 ? -0.8 : 0,
            },
            strategy: [
              `${price} ÷ ${100 / percent} = ${x.t(off, 'money')}`,
              `${price} ${more ? '+' : '−'} ${x.t(off, 'money')} = ${x.t(answer, 'money')}`,
            ],
            slips: [
              ['percent.discount-for-price', off],
              [
                'percent.as-amount',
                more
                  ? add(x.value, rational(percent))
                  : x.value.n > percent * x.value.d
                    ? subtract(x.value, rational(percent))
                    : null,
              ],
              ['operation.swapped', more ? subtract(x.value, off) : add(x.value, off)],
            ],
            uses: more ? `raises ${price} by ${percent}%` : `takes ${percent}% off ${price}`,
          };
        },
      }),
    ],
  },
];
