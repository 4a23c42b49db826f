// Percentages: meaning, matching fractions and decimals, percent of an amount, discounts, the whole from a percent.
import { add, divide, floor, multiply, type Rational, rational, subtract } from '../numbers/rational.js';
import { placesOf } from './decimals/reading.js';
import { numericTemplate, type Sketch, type Subject } from './sketch.js';
import type { Skill } from './skill.js';
import { storyName } from './story.js';

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
      ['percent.discount-for-price', subtract(x.value, answer)],
      ['decimals.place-missed', divide(answer, rational(10))],
    ],
    uses: `finds ${percent}% of ${x.text}`,
  };
}

const quantityRange = (value: Rational, form: string): boolean =>
  form === 'whole' ? value.n >= 4 && value.n <= 1_000_000 : value.n <= 500 * value.d && placesOf(value) <= 2;

export const PERCENTAGE_SKILLS: readonly Skill[] = [
  {
    id: 'pct.hundred',
    title: 'Percent means out of a hundred',
    year: 5,
    fluentYear: 6,
    strand: 'percentages',
    prerequisites: ['dec.parts', 'frac.equal'],
    codes: { ac9: ['AC9M5N04'], england: ['NC-Y5-fractions-11'], ccss: ['6.RP.A.3c'] },
    templates: [
      numericTemplate({
        id: 'out-of-hundred',
        kinds: ['whole'],
        free: (rng) => rng.int(1, 99),
        suits: (value) => value.d === 1 && value.n < 100,
        make: (x) => {
          const ask = x.rng.int(0, 2);
          const rest = 100 - x.n;
          const thing = x.pick(['tiles', 'seats', 'squares', 'beads']);
          return {
            text:
              ask === 0
                ? `${x.text} of 100 ${thing} are green. What percent are green?`
                : ask === 1
                  ? `${x.text}% + ?% = 100%`
                  : `${x.text}% of the ${thing} are blue. What percent are not blue?`,
            value: ask === 0 ? x.n : rest,
            expression: ask === 0 ? `${x.n} / 100 * 100` : `100 - ${x.n}`,
            features: {
              rule: ask === 0,
              story: ask !== 1,
              unknownInside: ask === 1,
              carries: ask > 0 && x.n % 10 !== 0 ? 1 : 0,
              adjust: -0.6,
            },
            strategy: ask === 0 ? [`${x.n} out of 100 is ${x.n}%`] : [`${x.n} + ${rest} = 100`],
            slips:
              ask === 0
                ? [
                    ['percent.discount-for-price', rest],
                    ['percent.tenths-as-percent', rational(x.n, 10)],
                  ]
                : [
                    ['fractions.complement-of-top', x.n],
                    ['decimals.whole-too-many', rest + 10],
                  ],
            uses: ask === 0 ? `reads ${x.text} out of a hundred` : `completes ${x.text}% to a hundred`,
          };
        },
      }),
      numericTemplate({
        id: 'hundred-percent',
        kinds: ['whole', 'decimal', 'money', 'fraction'],
        free: (rng) => rng.int(3, 200),
        suits: (value) => value.n > 0,
        make: (x) => ({
          text: `100% of ${x.text}`,
          value: x.value,
          expression: `(100 / 100) * ${x.expr}`,
          features: { rule: true, adjust: -0.7 },
          strategy: [`100% is all of it, so ${x.text}`],
          slips: [
            ['percent.as-amount', 100],
            ['percent.divides-by-it', divide(x.value, HUNDRED)],
            ['times.zero-count', multiply(x.value, HUNDRED)],
          ],
          uses: `takes all of ${x.text}`,
        }),
      }),
    ],
  },
  {
    id: 'pct.match',
    title: 'Match percentages with fractions and decimals',
    year: 5,
    fluentYear: 6,
    strand: 'percentages',
    prerequisites: ['pct.hundred', 'dec.fraction'],
    codes: { ac9: ['AC9M5N04'], england: ['NC-Y5-fractions-12', 'NC-Y6-fractions-11'], ccss: ['6.RP.A.3c'] },
    templates: [
      numericTemplate({
        id: 'to-percent',
        kinds: ['fraction', 'decimal'],
        free: (rng) =>
          rng.pick([
            rational(1, 2),
            rational(1, 4),
            rational(3, 4),
            rational(1, 5),
            rational(2, 5),
            rational(4, 5),
            rational(1, 10),
            rational(7, 10),
            rational(9, 20),
            rational(3, 25),
          ]),
        suits: (value) => value.d > 1 && 100 % value.d === 0 && value.n <= 4 * value.d,
        make: (x) => {
          const percent = x.n * (100 / x.d);
          return {
            text: x.rng.chance(0.5)
              ? `${x.text} = ?%`
              : x.n < x.d
                ? `What percent is the same as ${x.text}?`
                : `${x.text} = ?%`,
            value: percent,
            form: 'whole',
            expression: `${x.form === 'fraction' ? `(${x.n}/${x.d})` : x.expr} * 100`,
            features: {
              size: x.form === 'fraction' && x.d > 10 ? 1 : 0,
              extraSteps: x.n > x.d ? 1 : 0,
              adjust: x.d === 2 ? -0.8 : x.form === 'decimal' ? -0.3 : 0,
            },
            strategy:
              x.form === 'fraction'
                ? [`1/${x.d} = ${100 / x.d}/100`, `${x.n} × ${100 / x.d} = ${percent}`]
                : [`${x.text} = ${percent}/100`],
            slips: [
              ['percent.tenths-as-percent', percent % 10 === 0 ? percent / 10 : null],
              ['fractions.digits-after-point', x.form === 'fraction' ? Number(`${x.n}${x.d}`) : null],
              ['percent.count-as-percent', x.form === 'fraction' ? x.d : percent * 10],
              ['percent.discount-for-price', percent < 100 ? 100 - percent : null],
              ['fractions.whole-ignored', percent > 100 ? percent % 100 : null],
            ],
            uses: `writes ${x.text} as a percent`,
          };
        },
      }),
      numericTemplate({
        id: 'from-percent',
        kinds: ['whole'],
        free: (rng) => 5 * rng.int(1, 19),
        suits: (value) => value.d === 1 && value.n < 100,
        make: (x) => {
          const bottoms = [2, 4, 5, 10, 20, 100].filter((d) => (x.n * d) % 100 === 0);
          const d = x.pick(bottoms.length > 1 ? bottoms.slice(0, -1) : bottoms);
          const asDecimal = x.rng.chance(0.5);
          return {
            text: asDecimal ? `Write ${x.text}% as a decimal` : `${x.text}% = ?/${d}`,
            value: asDecimal ? rational(x.n, 100) : (x.n * d) / 100,
            form: asDecimal ? 'decimal' : 'whole',
            expression: asDecimal ? `${x.n} / 100` : `${x.n} / 100 * ${d}`,
            features: {
              size: x.n < 10 || (!asDecimal && d === 20) ? 1 : 0,
              adjust: d === 100 && !asDecimal ? -0.8 : d === 2 ? -0.5 : -0.2,
            },
            strategy: asDecimal
              ? [`${x.n} ÷ 100 = ${x.t(rational(x.n, 100), 'decimal')}`]
              : [`${x.n}% = ${x.n}/100`, `${x.n}/100 = ${(x.n * d) / 100}/${d}`],
            slips: asDecimal
              ? [
                  ['decimals.place-missed', rational(x.n, 10)],
                  ['decimals.place-missed', rational(x.n, 1000)],
                ]
              : [
                  ['percent.count-as-percent', x.n],
                  ['percent.tenths-as-percent', d === 100 ? x.n * 10 : 1],
                ],
            uses: `writes ${x.text}% in another way`,
          };
        },
      }),
    ],
  },
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
    templates: [
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
    ],
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
            text: x.pick([
              `${x.text} people watch a play and ${percent}% of them are children. How many are children?`,
              `A nursery grows ${x.text} trees and ${percent}% of them are figs. How many fig trees are there?`,
            ]),
          };
        },
      }),
    ],
  },
  {
    id: 'pct.discount',
    title: 'Prices after a percent off or a percent more',
    year: 6,
    fluentYear: 6,
    strand: 'percentages',
    prerequisites: ['pct.of'],
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
              ? `The price of ${price} goes up by ${percent}%. What is the new price?`
              : x.pick([
                  `A ${thing} costs ${price} and is sold at ${percent}% off. What is the sale price?`,
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
              ['divide.not-undone', more ? subtract(x.value, off) : add(x.value, off)],
            ],
            uses: more ? `raises ${price} by ${percent}%` : `takes ${percent}% off ${price}`,
          };
        },
      }),
    ],
  },
  {
    id: 'pct.whole',
    title: 'Find the whole, or the percent, from a part',
    year: 6,
    fluentYear: 6,
    strand: 'percentages',
    prerequisites: ['pct.of', 'frac.whole-from-part'],
    codes: { ac9: ['AC9M6N07'], england: ['NC-Y6-ratio-2', 'NC-Y6-fractions-11'], ccss: ['6.RP.A.3c'] },
    // Works backwards; common practice.
    shift: 0.5,
    templates: [
      numericTemplate({
        id: 'whole-from-percent',
        kinds: ['whole', 'decimal', 'money', 'fraction'],
        free: (rng) => rng.int(3, 60),
        suits: (value, form) =>
          form === 'whole' ? value.n >= 2 && value.n <= 1000 : value.n <= 50 * value.d && value.d <= 100,
        make: (x) => {
          const [percent, by] = x.pick([
            [10, 10],
            [50, 2],
            [25, 4],
            [20, 5],
          ] as const);
          const answer = multiply(x.value, rational(by));
          return {
            text: x.rng.chance(0.5)
              ? `${percent}% of ? = ${x.text}`
              : `${percent}% of a number is ${x.text}. What is the number?`
                  .replace('a number', x.form === 'money' ? 'an amount' : 'a number')
                  .replace('the number?', x.form === 'money' ? 'the amount?' : 'the number?'),
            value: answer,
            expression: `${x.expr} / (${percent} / 100)`,
            features: {
              unknownInside: true,
              rule: percent === 10,
              extraSteps: x.n > 12 * x.d && percent !== 10 ? 1 : 0,
              unlike: x.d > 1,
              adjust: percent === 50 ? -0.8 : 0.2,
            },
            strategy: [`100 ÷ ${percent} = ${by}`, `${by} × ${x.text} = ${x.t(answer)}`],
            slips: [
              ['divide.not-undone', divide(x.value, rational(by))],
              ['percent.divides-by-it', multiply(x.value, rational(percent))],
              ['percent.as-amount', add(x.value, rational(percent))],
            ],
            uses: `takes ${x.text} as ${percent}% of a whole`,
          };
        },
      }),
      numericTemplate({
        id: 'percent-from-part',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 45),
        suits: (value) => value.d === 1 && value.n >= 2 && value.n <= 400,
        make: (x) => {
          const percent = x.pick([10, 20, 25, 50, 75, 40, 60]);
          if ((x.n * 100) % percent !== 0) return null;
          const whole = (x.n * 100) / percent;
          return {
            text: x.rng.chance(0.5)
              ? `What percent of ${x.t(whole)} is ${x.text}?`
              : `${storyName(x.rng)} scores ${x.text} goals from ${x.t(whole)} shots. What percent is that?`,
            value: percent,
            expression: `${x.n} / ${whole} * 100`,
            features: {
              extraSteps: percent === 50 ? 0 : 1,
              size: percent > 50 || percent === 40 ? 1 : 0,
              adjust: percent === 50 ? -0.6 : 0,
            },
            strategy: [`${x.n}/${whole} = ${percent}/100`],
            slips: [
              ['percent.count-as-percent', x.n],
              ['percent.discount-for-price', percent === 50 ? null : 100 - percent],
              ['divide.as-minus', whole - x.n],
              ['percent.divides-by-it', whole % x.n === 0 ? whole / x.n : null],
            ],
            uses: `compares ${x.text} with ${x.t(whole)}`,
          };
        },
      }),
      numericTemplate({
        id: 'percent-of-day-part',
        kinds: ['fraction', 'decimal'],
        free: (rng) => rng.pick([rational(3, 4), rational(2, 5), rational(3, 5), rational(7, 10)]),
        suits: (value) => value.d > 1 && 100 % value.d === 0 && value.n < value.d,
        make: (x) => {
          const unit = floor(rational(100, x.d));
          const percent = x.n * unit;
          return {
            text: `${x.text} of the seats are taken. What percent of the seats are free?`,
            value: 100 - percent,
            form: 'whole',
            expression: `100 * (1 - ${x.form === 'fraction' ? `${x.n}/${x.d}` : x.expr})`,
            features: { story: true, extraSteps: 1, size: x.d > 10 ? 1 : 0, adjust: x.d === 2 ? -0.8 : -0.2 },
            strategy: [`${x.text} = ${percent}/100`, `100 − ${percent} = ${100 - percent}`],
            slips: [
              ['fractions.complement-of-top', percent],
              ['percent.count-as-percent', x.form === 'fraction' ? x.d - x.n : null],
              ['percent.tenths-as-percent', (100 - percent) % 10 === 0 ? (100 - percent) / 10 : null],
            ],
            uses: `takes ${x.text} from a whole, in percent`,
          };
        },
      }),
    ],
  },
];
