// Multiplying by tens, hundreds and thousands, and facts scaled up.
import { multiply, type Rational, rational } from '../../numbers/rational.js';
import { tenTimesWholePart } from '../../questions/slips/decimal-operations.js';
import { numericTemplate, type SketchSlip, wholeWithin } from '../sketch.js';
import type { Skill } from '../skill.js';
import { timesStory, withStory } from '../retold.js';
import { tenTimesOff } from './zeros.js';

const DIVISORS_FOR_TENS = [2, 3, 4, 5, 6, 7, 8, 9] as const;

/** An amount with a point times ten; left as it is, it would show no place that was missed. */
function slipsAtThePoint(amount: Rational, product: Rational): SketchSlip[] {
  return [
    ['decimals.whole-part-only', amount.n > amount.d ? tenTimesWholePart(amount) : null],
    ['decimals.point-forgotten', product.d > 1 ? multiply(product, rational(100)) : null],
  ];
}

/** The skills on multiplying by tens, hundreds and thousands, and facts scaled up. */
export const SCALING_SKILLS: readonly Skill[] = [
  {
    id: 'mult.by10',
    family: 'times 10',
    title: 'Multiply whole numbers and money by 10',
    year: 3,
    fluentYear: 4,
    strand: 'multiplication',
    prerequisites: ['mult.table.10', 'place.three-digit'],
    codes: { ac9: ['AC9M3A03', 'AC9M4N05'], england: ['3NF-3', '4MD-1'], ccss: ['3.NBT.A.3'] },
    templates: [
      numericTemplate({
        id: 'ten-lots',
        kinds: ['whole', 'money'],
        free: (rng) => rng.int(11, 320),
        // Whole amounts of money are as easy as whole numbers.
        suits: (value, form) =>
          form === 'money' && value.d > 1 ? value.n <= 20 * value.d : value.n >= 2 && value.n <= 1000,
        make: (x) => {
          const answer = multiply(x.value, rational(10));
          return {
            text: x.rng.chance(0.5) ? `10 × ${x.text}` : `${x.text} × 10`,
            value: answer,
            expression: `10 * ${x.expr}`,
            features: {
              rule: true,
              size: x.n > 100 ? 1 : x.n < 13 ? -0.5 : 0,
              adjust: x.form === 'money' && x.d > 1 ? 1 : 0,
            },
            strategy: [`10 times ${x.text} is ${x.t(answer)}`],
            slips: [
              tenTimesOff(x, answer, 'more'),
              ['times.as-plus', x.form === 'whole' ? x.n + 10 : null],
              ...(x.d === 1 ? [tenTimesOff(x, answer, 'less')] : slipsAtThePoint(x.value, answer)),
            ],
            uses: `multiplies ${x.text} by 10`,
          };
        },
      }),
      numericTemplate({
        id: 'how-many-tens',
        kinds: ['whole'],
        free: (rng) => 10 * rng.int(12, 95),
        suits: (value) => value.d === 1 && value.n % 10 === 0 && value.n >= 100 && value.n <= 9990,
        make: (x) => {
          const gap = `10 × ? = ${x.text}`;
          const text = x.pick([gap, `How many tens are in ${x.text}?`]);
          return {
            text,
            value: x.n / 10,
            expression: `${x.n} / 10`,
            features: { rule: true, unknownInside: true, size: x.n > 1000 ? 1 : 0 },
            strategy: [`10 × ${x.t(x.n / 10)} = ${x.text}`],
            slips: [
              ['times.zero-count', x.n % 100 === 0 ? x.n / 100 : null],
              // Only the gap has a sum printed that could be done as it stands.
              [text === gap ? 'divide.not-undone' : 'divide.as-times', 10 * x.n],
            ],
            uses: `counts the tens in ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'mult.by100',
    family: 'times 10',
    title: 'Multiply whole numbers and money by 100 and 1000',
    year: 4,
    fluentYear: 5,
    strand: 'multiplication',
    prerequisites: ['mult.by10', 'place.thousands'],
    codes: {
      ac9: ['AC9M4N05'],
      england: ['4MD-1', '4NF-3', 'NC-Y5-multdiv-7'],
      ccss: ['4.NBT.A.1', '5.NBT.A.2'],
    },
    templates: [
      numericTemplate({
        id: 'scaled-up',
        kinds: ['whole', 'money'],
        free: (rng) => rng.int(3, 240),
        suits: (value, form) =>
          form === 'money' ? value.n <= 10 * value.d : value.n >= 2 && value.n <= 12_500,
        make: (x) => {
          const by = x.form === 'money' || x.n >= 1000 ? 100 : x.pick([100, 100, 1000]);
          const answer = multiply(x.value, rational(by));
          return {
            text: `${x.text} × ${x.t(by, 'whole')}`,
            value: answer,
            expression: `${x.expr} * ${by}`,
            features: {
              rule: true,
              size: (by === 1000 ? 1 : 0) + (x.n > 100 ? 1 : 0),
              adjust: x.form === 'money' && x.d > 1 ? 0.8 : 0.2,
            },
            strategy: [
              by === 100
                ? `${x.text} × 10 = ${x.t(multiply(x.value, rational(10)))}`
                : `${x.text} × 100 = ${x.t(multiply(x.value, rational(100)))}`,
              `${x.t(multiply(x.value, rational(by / 10)))} × 10 = ${x.t(answer)}`,
            ],
            slips: [
              tenTimesOff(x, answer, 'less'),
              tenTimesOff(x, answer, 'more'),
              ['times.as-plus', x.form === 'whole' ? x.n + by : null],
            ],
            uses: `multiplies ${x.text} by ${by}`,
          };
        },
      }),
      numericTemplate({
        id: 'packs-of-100',
        kinds: ['whole'],
        free: (rng) => rng.int(4, 90),
        suits: wholeWithin(2, 500),
        make: (x) => {
          return {
            text: x.pick([
              `A school buys ${x.text} packs of 100 sheets. How many sheets is that?`,
              `A box holds 100 pins. How many pins are in ${x.text} boxes?`,
            ]),
            value: 100 * x.n,
            expression: `100 * ${x.n}`,
            features: { rule: true, story: true, size: x.n > 100 ? 1 : 0, adjust: 0.2 },
            strategy: [`${x.text} × 10 = ${x.t(10 * x.n)}`, `${x.t(10 * x.n)} × 10 = ${x.t(100 * x.n)}`],
            slips: [
              ['times.zero-count', 10 * x.n],
              ['times.zero-count', 1000 * x.n],
              ['times.as-plus', x.n + 100],
            ],
            uses: `finds 100 times ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'mult.tens',
    title: 'Multiply by multiples of ten',
    year: 4,
    fluentYear: 5,
    strand: 'multiplication',
    prerequisites: ['mult.by10', 'mult.table.3', 'mult.table.4'],
    codes: { ac9: ['AC9M4N05', 'AC9M4A02'], england: ['3NF-3', '4NF-3'], ccss: ['3.NBT.A.3'] },
    templates: withStory(timesStory, [
      numericTemplate({
        id: 'digit-by-tens',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 12),
        suits: wholeWithin(2, 12),
        make: (x) => {
          const k = x.pick(DIVISORS_FOR_TENS);
          const unit = x.pick([10, 10, 100]);
          const answer = x.n * k * unit;
          return {
            text: `${x.text} × ${k * unit}`,
            value: answer,
            expression: `${x.n} * ${k * unit}`,
            features: {
              size: (x.n > 5 ? 0.7 : 0) + (k > 5 ? 0.7 : 0) + (unit === 100 ? 0.5 : 0),
              fives: k === 5 || x.n === 5,
              tie: k === x.n,
            },
            strategy: [`${x.text} × ${k} = ${x.n * k}`, `${x.n * k} × ${unit} = ${x.t(answer)}`],
            slips: [
              ['times.zero-count', answer / 10],
              ['times.zero-count', answer * 10],
              ['times.neighbour', x.n * (k - 1) * unit],
              ['times.as-plus', x.n + k * unit],
            ],
            uses: `multiplies ${x.text} by ${k * unit}`,
          };
        },
      }),
      numericTemplate({
        id: 'tens-by-digit',
        kinds: ['whole'],
        free: (rng) => 10 * rng.int(2, 9),
        suits: (value) =>
          value.d === 1 &&
          value.n >= 20 &&
          ((value.n <= 120 && value.n % 10 === 0) || (value.n <= 1200 && value.n % 100 === 0)),
        make: (x) => {
          const k = x.rng.int(3, 9);
          const unit = x.n % 100 === 0 ? 100 : 10;
          const base = x.n / unit;
          return {
            text: `${x.text} × ${k}`,
            value: x.n * k,
            expression: `${x.n} * ${k}`,
            features: { size: (base > 5 ? 0.7 : 0) + (k > 5 ? 0.7 : 0), fives: k === 5 || base === 5 },
            strategy: [`${base} × ${k} = ${base * k}`, `${base * k} × ${unit} = ${x.t(x.n * k)}`],
            slips: [
              ['times.zero-count', (x.n * k) / 10],
              ['times.zero-count', x.n * k * 10],
              ['times.neighbour', x.n * (k + 1)],
            ],
            uses: `multiplies ${x.text} by ${k}`,
          };
        },
      }),
    ]),
  },
  {
    id: 'mult.large',
    title: 'Multiply large round numbers',
    year: 5,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.tens', 'mult.by100', 'place.million'],
    codes: { ac9: ['AC9M5N06'], england: ['NC-Y5-multdiv-5', '5NF-2'], ccss: ['4.NBT.B.5'] },
    templates: [
      numericTemplate({
        id: 'thousands',
        kinds: ['whole'],
        free: (rng) => 500 * rng.int(5, 80),
        suits: (value) => value.d === 1 && value.n >= 1000 && value.n <= 500_000 && value.n % 100 === 0,
        make: (x) => {
          const k = x.pick([2, 3, 4, 5, 6, 8]);
          const step = 10 ** (String(x.n).length - 1);
          const big = x.n - (x.n % step);
          const small = x.n % step;
          return {
            text: k === 2 ? `Double ${x.text}` : `${x.text} × ${k}`,
            value: x.n * k,
            expression: `${x.n} * ${k}`,
            features: {
              size: (k > 5 ? 1 : 0) + (k === 2 ? -1 : 0),
              carries: small * k >= step ? 1 : 0,
              extraSteps: small > 0 ? 1 : 0,
              fives: k === 5,
            },
            strategy:
              small > 0
                ? [
                    `${x.t(big)} × ${k} = ${x.t(big * k)}`,
                    `${x.t(small)} × ${k} = ${x.t(small * k)}`,
                    `${x.t(big * k)} + ${x.t(small * k)} = ${x.t(x.n * k)}`,
                  ]
                : [
                    `${x.t(x.n / step)} × ${k} = ${(x.n / step) * k}`,
                    `${x.t((x.n / step) * k)} × ${x.t(step)} = ${x.t(x.n * k)}`,
                  ],
            slips: [
              ['times.zero-count', (x.n * k) / 10],
              ['times.largest-only', small > 0 ? big * k + small : null],
              ['times.zero-count', x.n * k * 10],
              ['times.neighbour', x.n * (k - 1)],
            ],
            uses: k === 2 ? `doubles ${x.text}` : `multiplies ${x.text} by ${k}`,
          };
        },
      }),
      numericTemplate({
        id: 'by-powers',
        kinds: ['whole'],
        free: (rng) => 500 * rng.int(5, 80),
        suits: (value) => value.d === 1 && value.n >= 1000,
        make: (x) => {
          const by = x.pick(x.n > 50_000 ? [10, 20] : [10, 100, 20, 50]);
          const ten = by % 100 === 0 ? 100 : 10;
          return {
            text: `${x.text} × ${by}`,
            value: x.n * by,
            expression: `${x.n} * ${by}`,
            features: {
              rule: by === ten,
              extraSteps: by === ten ? 0 : 1,
              size: by === 50 ? 1 : 0,
              fives: by === 50,
            },
            strategy: [
              ...(ten === 100
                ? [`${x.text} × 10 = ${x.t(x.n * 10)}`, `${x.t(x.n * 10)} × 10 = ${x.t(x.n * 100)}`]
                : by === 10
                  ? [`10 times ${x.text} is ${x.t(x.n * 10)}`]
                  : [`${x.text} × ${ten} = ${x.t(x.n * ten)}`]),
              ...(by === ten ? [] : [`${x.t(x.n * ten)} × ${by / ten} = ${x.t(x.n * by)}`]),
            ],
            slips: [
              ['times.zero-count', x.n * by * 10],
              ['times.zero-count', by === 10 ? null : (x.n * by) / 10],
              ['times.step-forgotten', by === ten ? null : x.n * ten],
              ['times.as-plus', x.n + by],
            ],
            uses: `multiplies ${x.text} by ${by}`,
          };
        },
      }),
    ],
  },
];
