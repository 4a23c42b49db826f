// Multiplying and dividing decimals.
import { add, divide, floor, multiply, rational, subtract } from '../../numbers/rational.js';
import {
  appendZero,
  multiplyPartsApart,
  tenTimesWholePart,
  withoutPoint,
} from '../../questions/slips/decimal-operations.js';
import { numericTemplate, type Sketch, type Subject } from '../sketch.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';
import { drawDecimal, placesOf } from './reading.js';

const HALF = rational(1, 2);
const TENTH = rational(1, 10);

/** k lots of a decimal or an amount of money: wholes and parts apart, then together. */
function lots(x: Subject, k: number, features: Sketch['features']): Sketch {
  const answer = multiply(x.value, rational(k));
  const whole = floor(x.value);
  const rest = subtract(x.value, rational(whole));
  const [a, b] = [rational(whole * k), multiply(rest, rational(k))];
  return {
    text: x.rng.chance(0.5) ? `${k} × ${x.text}` : `${x.text} × ${k}`,
    value: answer,
    expression: `${k} * ${x.expr}`,
    features,
    strategy:
      whole > 0 && rest.n > 0
        ? [
            `${k} × ${x.t(whole)} = ${x.t(a)}`,
            `${k} × ${x.t(rest)} = ${x.t(b)}`,
            `${x.t(a)} + ${x.t(b)} = ${x.t(answer)}`,
          ]
        : [`${k} × ${x.text} = ${x.t(answer)}`],
    slips: [
      [
        'decimals.parts-apart',
        x.form === 'decimal' ? multiplyPartsApart(x.value, k) : rest.n > 0 && whole > 0 ? add(a, rest) : null,
      ],
      ['decimals.point-forgotten', withoutPoint(answer)],
      ['times.tens-only', whole > 0 && rest.n > 0 ? add(a, rest) : null],
      ['decimals.place-missed', multiply(answer, TENTH)],
      ['times.neighbour', multiply(x.value, rational(k - 1))],
    ],
    uses: `makes ${k} lots of ${x.text}`,
  };
}

/** Whether the parts after the point make a new whole when multiplied. */
function carriesPast(x: Subject, k: number): number {
  return (x.n % x.d) * k >= x.d ? 1 : 0;
}

export const DECIMAL_PRODUCT_SKILLS: readonly Skill[] = [
  {
    id: 'dec.double',
    title: 'Double decimals',
    year: 4,
    fluentYear: 5,
    strand: 'decimals',
    prerequisites: ['dec.next-whole', 'mult.double.2d'],
    codes: { ac9: ['AC9M4N08'], england: ['NC-Y4-fractions-10', '5NF-2'], ccss: ['5.NBT.B.7'] },
    templates: [
      numericTemplate({
        id: 'double',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, rng.pick([1, 1, 2]), 0, 15),
        suits: (value) => placesOf(value) <= 3 && value.n <= 500 * value.d,
        make: (x) => ({
          ...lots(x, 2, {
            tie: true,
            carries: carriesPast(x, 2),
            size: placesOf(x.value) > 1 ? 1 : 0,
            extraSteps: floor(x.value) >= 10 ? 0.5 : 0,
          }),
          text: x.pick([`Double ${x.text}`, `2 × ${x.text}`, `${x.text} + ${x.text}`]),
          uses: `doubles ${x.text}`,
        }),
      }),
    ],
  },
  {
    id: 'dec.half',
    title: 'Halve decimals',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.double', 'div.half.large'],
    codes: { ac9: ['AC9M5N07'], england: ['6NPV-4', '5NPV-4', 'NC-Y6-fractions-9'], ccss: ['5.NBT.B.7'] },
    templates: [
      numericTemplate({
        id: 'half',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 0, 10),
        suits: (value) => placesOf(value) <= 3 && value.n <= 500 * value.d,
        make: (x) => {
          const answer = multiply(x.value, HALF);
          const digits = x.n * (10 ** placesOf(x.value) / x.d);
          const whole = floor(x.value);
          const evenWhole = whole - (whole % 2);
          const rest = subtract(x.value, rational(evenWhole));
          const odd = whole % 2 === 1;
          return {
            text: x.pick([`Half of ${x.text}`, `${x.text} ÷ 2`]),
            value: answer,
            expression: `${x.expr} / 2`,
            features: {
              carries: odd ? 1 : 0,
              extraSteps: digits % 2,
              size: placesOf(x.value) > 1 ? 0.5 : 0,
              adjust: digits % 2 === 0 && !odd ? -0.5 : 0,
            },
            strategy:
              evenWhole > 0
                ? [
                    `${x.t(evenWhole)} ÷ 2 = ${x.t(evenWhole / 2)}`,
                    `${x.t(rest)} ÷ 2 = ${x.t(multiply(rest, HALF))}`,
                    `${x.t(evenWhole / 2)} + ${x.t(multiply(rest, HALF))} = ${x.t(answer)}`,
                  ]
                : [`${x.t(answer)} + ${x.t(answer)} = ${x.text}`],
            slips: [
              [
                'divide.digits-alone',
                odd
                  ? add(rational(Math.floor(whole / 2)), multiply(subtract(x.value, rational(whole)), HALF))
                  : null,
              ],
              ['decimals.point-forgotten', withoutPoint(answer)],
              ['divide.as-times', multiply(x.value, rational(2))],
              ['divide.one-part-only', evenWhole > 0 ? add(rational(evenWhole / 2), rest) : null],
            ],
            uses: `halves ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.times10',
    title: 'Multiply decimals by 10, 100 and 1000',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.parts', 'mult.by100'],
    codes: { ac9: ['AC9M6N06'], england: ['5MD-1', 'NC-Y5-multdiv-7'], ccss: ['5.NBT.A.2'] },
    templates: [
      numericTemplate({
        id: 'scaled-up',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, rng.pick([1, 1, 2]), 0, 20),
        suits: (value) => placesOf(value) <= 3 && value.n <= 1000 * value.d,
        make: (x) => {
          const by = x.pick([10, 10, 100, 1000]);
          const answer = multiply(x.value, rational(by));
          const places = placesOf(x.value);
          const pad = Math.log10(by) > places;
          return {
            text: x.rng.chance(0.7) ? `${x.text} × ${by}` : `${by} × ${x.text}`,
            value: answer,
            expression: `${x.expr} * ${by}`,
            features: {
              rule: true,
              size: Math.round(Math.log10(by)) - 1,
              extraSteps: pad ? 1 : 0,
              adjust: 0.4,
            },
            strategy:
              by === 10
                ? [`${x.text} × 10 = ${x.t(answer)}`]
                : [
                    `${x.text} × 10 = ${x.t(multiply(x.value, rational(10)))}`,
                    `${x.t(multiply(x.value, rational(10)))} × ${by / 10} = ${x.t(answer)}`,
                  ],
            slips: [
              ['decimals.zero-appended', by === 10 ? appendZero(x.value) : x.value],
              ['decimals.place-missed', multiply(answer, TENTH)],
              ['decimals.place-missed', multiply(answer, rational(10))],
              ['decimals.parts-apart', by === 10 ? tenTimesWholePart(x.value) : null],
            ],
            uses: `multiplies ${x.text} by ${by}`,
          };
        },
      }),
      numericTemplate({
        id: 'which-power',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, rng.pick([1, 2]), 0, 10),
        suits: (value) => placesOf(value) <= 2 && value.n <= 100 * value.d,
        make: (x) => {
          const by = x.pick([10, 100, 1000]);
          return {
            text: `${x.text} × ? = ${x.t(multiply(x.value, rational(by)))}`,
            value: by,
            expression: `${x.e(multiply(x.value, rational(by)))} / ${x.expr}`,
            features: { rule: true, unknownInside: true, size: Math.round(Math.log10(by)) - 1 },
            strategy: [`${x.text} × ${by} = ${x.t(multiply(x.value, rational(by)))}`],
            slips: [
              ['decimals.place-missed', by * 10],
              ['decimals.place-missed', by / 10],
            ],
            uses: `scales ${x.text} up`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.divide10',
    title: 'Divide by 10 and 100 with decimal answers',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.times10', 'div.by10'],
    codes: { ac9: ['AC9M6N06'], england: ['NC-Y4-fractions-7', '5MD-1'], ccss: ['5.NBT.A.2'] },
    templates: [
      numericTemplate({
        id: 'scaled-down',
        kinds: ['whole', 'decimal', 'money'],
        free: (rng) => rng.int(3, 480),
        suits: (value, form) =>
          form === 'whole'
            ? value.n % 10 !== 0 && value.n <= 9999
            : placesOf(value) <= 2 && value.n <= 500 * value.d,
        make: (x) => {
          const by =
            x.form === 'money'
              ? x.pick([10, 100])
              : x.form === 'decimal' && placesOf(x.value) > 1
                ? 10
                : x.pick([10, 10, 100, ...(x.form === 'whole' && x.n > 9 ? [1000] : [])]);
          const answer = divide(x.value, rational(by));
          return {
            text: `${x.text} ÷ ${by}`,
            value: answer,
            expression: `${x.expr} / ${by}`,
            features: {
              rule: true,
              size: Math.round(Math.log10(by)) - 1 + (answer.n * 10 < answer.d ? 1 : 0),
              adjust: x.form === 'decimal' ? 0.7 : 0.3,
            },
            strategy:
              by === 10
                ? [`${x.t(answer)} × 10 = ${x.text}`]
                : [
                    `${x.text} ÷ 10 = ${x.t(divide(x.value, rational(10)))}`,
                    `${x.t(divide(x.value, rational(10)))} ÷ ${by / 10} = ${x.t(answer)}`,
                  ],
            slips: [
              ['decimals.place-missed', multiply(answer, rational(10))],
              ['decimals.place-missed', multiply(answer, TENTH)],
              ['divide.as-times', multiply(x.value, rational(by))],
            ],
            uses: `divides ${x.text} by ${by}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.times-whole',
    title: 'Multiply a decimal or an amount of money by one digit',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.double', 'mult.2d1d'],
    codes: { ac9: ['AC9M5N09'], england: ['NC-Y6-fractions-8', '5NF-2'], ccss: ['5.NBT.B.7'] },
    templates: [
      numericTemplate({
        id: 'times',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 0, 10),
        suits: (value) => placesOf(value) <= 2 && value.n <= 100 * value.d,
        make: (x) => {
          const k = x.rng.int(3, 9);
          return lots(x, k, {
            carries: carriesPast(x, k),
            size: (k > 5 ? 0.7 : 0) + (placesOf(x.value) > 1 ? 1 : 0),
            fives: k === 5,
            extraSteps: floor(x.value) > 0 ? 0.5 : 0,
            adjust: x.n < x.d && placesOf(x.value) === 1 ? -0.5 : 0,
          });
        },
      }),
      numericTemplate({
        id: 'price',
        kinds: ['money'],
        free: (rng) => rational(5 * rng.int(7, 99), 100),
        suits: (value) => value.n <= 50 * value.d,
        make: (x) => {
          const k = x.rng.int(3, 8);
          const cents = x.d > 1;
          return {
            ...lots(x, k, {
              carries: cents ? carriesPast(x, k) : 0,
              size: (k > 5 ? 0.7 : 0) + (cents && (x.n * (100 / x.d)) % 10 !== 0 ? 0.7 : 0),
              story: true,
              extraSteps: cents && x.n > x.d ? 0.5 : 0,
              adjust: cents ? 0 : -0.8,
            }),
            text: x.pick([
              `One ice cream costs ${x.text}. What do ${k} ice creams cost?`,
              `${storyName(x.rng)} saves ${x.text} a week. How much is that in ${k} weeks?`,
              `${k} × ${x.text}`,
            ]),
          };
        },
      }),
    ],
  },
  {
    id: 'dec.divide-whole',
    title: 'Divide a decimal or an amount of money by one digit',
    year: 6,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.half', 'dec.times-whole', 'div.2d1d'],
    codes: { ac9: ['AC9M6N09'], england: ['NC-Y6-fractions-9'], ccss: ['5.NBT.B.7', '6.NS.B.3'] },
    templates: [
      numericTemplate({
        id: 'share',
        kinds: ['decimal', 'money'],
        free: (rng) => rational(rng.int(3, 9) * rng.int(2, 30), 10),
        suits: (value) => placesOf(value) <= 2 && value.n <= 500 * value.d,
        make: (x) => {
          const k = x.pick([3, 4, 5, 6, 8, 9]);
          const answer = divide(x.value, rational(k));
          if (placesOf(answer) > 3) return null;
          const digits = x.n * (10 ** placesOf(x.value) / x.d);
          const exact = digits % k === 0;
          const whole = floor(answer);
          const big = rational(whole * k);
          const rest = subtract(x.value, big);
          return {
            text:
              x.form === 'money'
                ? x.pick([
                    `${k} friends share ${x.text} equally. How much does each friend get?`,
                    `${x.text} ÷ ${k}`,
                  ])
                : x.pick([
                    `${x.text} ÷ ${k}`,
                    `A ribbon of ${x.text} ${x.locale.spelling.metre}s is cut into ${k} equal pieces. How many ${x.locale.spelling.metre}s long is each piece?`,
                  ]),
            value: answer,
            expression: `${x.expr} / ${k}`,
            features: {
              extraSteps: exact ? (whole > 0 && rest.n > 0 ? 0.5 : 0) : 1,
              fives: k === 5,
              size: k > 5 ? 0.7 : 0,
              adjust: exact && digits / k <= 12 ? -0.5 : 0,
            },
            strategy:
              whole > 0 && rest.n > 0
                ? [
                    `${x.t(big)} ÷ ${k} = ${whole}`.replace(String(whole), x.t(whole)),
                    `${x.t(rest)} ÷ ${k} = ${x.t(divide(rest, rational(k)))}`,
                    `${x.t(whole)} + ${x.t(divide(rest, rational(k)))} = ${x.t(answer)}`,
                  ]
                : [`${k} × ${x.t(answer)} = ${x.text}`],
            slips: [
              ['decimals.place-missed', multiply(answer, rational(10))],
              ['decimals.place-missed', multiply(answer, TENTH)],
              ['divide.one-part-only', whole > 0 && rest.n > 0 ? add(rational(whole), rest) : null],
              ['divide.as-minus', x.n > k * x.d ? subtract(x.value, rational(k)) : null],
            ],
            uses: `divides ${x.text} by ${k}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.times-tens',
    title: 'Multiply a decimal by 20, 30, 50 or 200',
    year: 6,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.times10', 'dec.times-whole'],
    codes: { ac9: ['AC9M6N06'], england: ['6NPV-1', '6AS/MD-2'], ccss: ['5.NBT.B.7'] },
    templates: [
      numericTemplate({
        id: 'times',
        kinds: ['decimal', 'money'],
        free: (rng) => drawDecimal(rng, 1, 0, 10),
        suits: (value) => placesOf(value) <= 2 && value.n <= 50 * value.d && value.d > 1,
        make: (x) => {
          const [k, unit] = x.pick([
            [2, 10],
            [3, 10],
            [4, 10],
            [5, 10],
            [2, 100],
            [3, 100],
          ] as const);
          const ten = multiply(x.value, rational(unit));
          const answer = multiply(ten, rational(k));
          return {
            text: `${x.text} × ${k * unit}`,
            value: answer,
            expression: `${x.expr} * ${k * unit}`,
            features: {
              extraSteps: 1,
              size: (unit === 100 ? 0.5 : 0) + (x.n > 5 * x.d ? 0.5 : 0) + (placesOf(x.value) > 1 ? 0.5 : 0),
              fives: k === 5,
            },
            strategy: [`${x.text} × ${unit} = ${x.t(ten)}`, `${x.t(ten)} × ${k} = ${x.t(answer)}`],
            slips: [
              ['decimals.place-missed', multiply(answer, TENTH)],
              ['decimals.place-missed', multiply(answer, rational(10))],
              ['times.step-forgotten', ten],
            ],
            uses: `multiplies ${x.text} by ${k * unit}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.times-decimal',
    title: 'Multiply and divide by 0.1, 0.5, 0.25 and one-place decimals',
    year: 6,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.divide10', 'dec.times-whole', 'frac.unit-of'],
    codes: {
      ac9: ['AC9M6N07', 'AC9M6N09'],
      england: ['6AS/MD-2', 'NC-Y6-fractions-11'],
      ccss: ['5.NBT.B.7', '6.NS.B.3'],
    },
    // The answer moves against the usual expectation; common practice.
    shift: 0.7,
    templates: [
      numericTemplate({
        id: 'times-part',
        kinds: ['decimal', 'whole'],
        freeForm: 'whole',
        free: (rng) => rng.int(4, 80),
        suits: (value, form) =>
          form === 'whole'
            ? value.n >= 2 && value.n <= 1000
            : placesOf(value) <= 2 && value.n <= 100 * value.d,
        make: (x) => {
          const other = x.pick([
            TENTH,
            HALF,
            rational(1, 4),
            rational(1, 5),
            rational(2, 5),
            rational(3, 10),
            rational(7, 10),
          ]);
          const answer = multiply(x.value, other);
          if (placesOf(answer) > 3) return null;
          const text = x.t(other, 'decimal');
          const unit = rational(1, other.d);
          return {
            text: x.rng.chance(0.5) ? `${text} × ${x.text}` : `${x.text} × ${text}`,
            value: answer,
            form: 'decimal',
            expression: `${x.expr} * ${x.e(other)}`,
            features: {
              extraSteps: other.n > 1 ? 1 : 0,
              size: placesOf(x.value) > 1 ? 1 : 0,
              adjust: other.d === 10 && other.n === 1 ? -0.4 : other.d === 2 ? -0.3 : 0,
              unlike: x.d > 1 && other.n > 1,
            },
            strategy: [
              `${x.text} ÷ ${other.d} = ${x.t(multiply(x.value, unit), 'decimal')}`,
              ...(other.n > 1
                ? [`${other.n} × ${x.t(multiply(x.value, unit), 'decimal')} = ${x.t(answer, 'decimal')}`]
                : []),
            ],
            slips: [
              ['decimals.place-missed', multiply(answer, rational(10))],
              ['decimals.place-missed', multiply(answer, TENTH)],
              ['fractions.divides-as-times', other.n === 1 ? divide(x.value, other) : null],
            ],
            uses: `multiplies ${x.text} by ${text}`,
          };
        },
      }),
      numericTemplate({
        id: 'divide-by-part',
        kinds: ['decimal', 'whole'],
        freeForm: 'whole',
        free: (rng) => rng.int(2, 24),
        suits: (value, form) =>
          form === 'whole' ? value.n >= 2 && value.n <= 200 : placesOf(value) <= 2 && value.n <= 50 * value.d,
        make: (x) => {
          const other = x.pick([
            TENTH,
            HALF,
            rational(1, 5),
            rational(1, 4),
            rational(2, 5),
            rational(3, 10),
            rational(3, 5),
            rational(9, 10),
          ]);
          const answer = divide(x.value, other);
          if (placesOf(answer) > (other.n === 1 ? 1 : 0)) return null;
          const text = x.t(other, 'decimal');
          const scale = 10 ** Math.max(placesOf(other), placesOf(x.value));
          return {
            text:
              other.n === 1 && x.rng.chance(0.4)
                ? `How many lots of ${text} are in ${x.text}?`
                : `${x.text} ÷ ${text}`,
            value: answer,
            form: 'decimal',
            expression: `${x.expr} / ${x.e(other)}`,
            features: {
              extraSteps: 1 + (other.n > 1 ? 0.5 : 0),
              size: scale === 100 ? 0.7 : 0,
              adjust: other.d === 10 && other.n === 1 ? -0.6 : other.d === 2 ? -0.3 : 0.2,
              unlike: placesOf(x.value) !== placesOf(other) && x.d > 1,
            },
            strategy: [
              `${x.text} × ${scale} = ${x.t(multiply(x.value, rational(scale)), 'decimal')}`,
              `${text} × ${scale} = ${x.t(multiply(other, rational(scale)), 'decimal')}`,
              `${x.t(multiply(x.value, rational(scale)), 'decimal')} ÷ ${x.t(multiply(other, rational(scale)), 'decimal')} = ${x.t(answer, 'decimal')}`,
            ],
            slips: [
              ['decimals.place-missed', multiply(answer, TENTH)],
              ['decimals.place-missed', multiply(answer, rational(10))],
              ['fractions.divides-as-times', multiply(x.value, other)],
            ],
            uses: `divides ${x.text} by ${text}`,
          };
        },
      }),
    ],
  },
];
