// Multiplying and dividing decimals and money by one digit.
import { add, divide, floor, multiply, rational, subtract } from '../../numbers/rational.js';
import { multiplyPartsApart, withoutPoint } from '../../questions/slips/decimal-operations.js';
import { divideDigits } from '../../questions/slips/quotients.js';
import { drawDecimal, placesOf } from './draw-decimal.js';
import { numericTemplate, type Sketch, type Subject } from '../sketch.js';
import type { Skill } from '../skill.js';
import { itemFor } from '../money/things.js';
import { storyName } from '../story.js';

const HALF = rational(1, 2);

const TENTH = rational(1, 10);

const HUNDRED = rational(100);

/** k groups of a decimal or an amount of money: wholes and parts apart, then together. */
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
      ['decimals.parts-apart', x.form === 'decimal' ? multiplyPartsApart(x.value, k) : null],
      // Money is written with two places: $16.50 without its point is $1650.
      [
        'decimals.point-forgotten',
        x.form === 'money' && answer.d > 1 ? multiply(answer, HUNDRED) : withoutPoint(answer),
      ],
      ['decimals.whole-part-only', whole > 0 && rest.n > 0 ? add(a, rest) : null],
      ['decimals.place-missed', multiply(answer, TENTH)],
      ['times.neighbour', multiply(x.value, rational(k - 1))],
    ],
    uses: `makes ${k} groups of ${x.text}`,
  };
}

/** Whether the parts after the point make a new whole when multiplied. */
function carriesPast(x: Subject, k: number): number {
  return (x.n % x.d) * k >= x.d ? 1 : 0;
}

/** The skills on multiplying and dividing decimals and money by one digit. */
export const DECIMAL_PRODUCT_SKILLS: readonly Skill[] = [
  {
    id: 'dec.double',
    family: 'double',
    title: 'Double decimals',
    year: 4,
    fluentYear: 5,
    strand: 'decimals',
    prerequisites: ['dec.next-whole', 'mult.double.2d'],
    codes: { ac9: [], england: ['NC-Y4-fractions-10', '5NF-2'], ccss: ['5.NBT.B.7'] },
    templates: [
      numericTemplate({
        id: 'double',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, rng.pick([1, 1, 2]), 0, 15),
        suits: (value) => placesOf(value) <= 3 && value.n <= 100_000 * value.d,
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
    family: 'half',
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
        suits: (value) => placesOf(value) <= 3 && value.n <= 100_000 * value.d,
        make: (x) => {
          const answer = multiply(x.value, HALF);
          const digits = x.n * (10 ** placesOf(x.value) / x.d);
          const whole = floor(x.value);
          const [wholeHalf, rest] = [rational(whole, 2), subtract(x.value, rational(whole))];
          const odd = whole % 2 === 1;
          const alone = divideDigits(digits, 2);
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
              whole > 0 && rest.n > 0
                ? [
                    `${x.t(whole)} ÷ 2 = ${x.t(wholeHalf)}`,
                    `${x.t(rest)} ÷ 2 = ${x.t(multiply(rest, HALF))}`,
                    `${x.t(wholeHalf)} + ${x.t(multiply(rest, HALF))} = ${x.t(answer)}`,
                  ]
                : [`${x.t(answer)} + ${x.t(answer)} = ${x.text}`],
            slips: [
              [
                'divide.digits-alone',
                alone === null
                  ? null
                  : { value: rational(alone, 10 ** placesOf(x.value)), places: placesOf(x.value) },
              ],
              ['decimals.point-forgotten', withoutPoint(answer)],
              ['divide.as-times', multiply(x.value, rational(2))],
              ['divide.one-part-only', whole > 0 ? add(wholeHalf, rest) : null],
            ],
            uses: `halves ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.times-whole',
    family: 'cost of several',
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
          const [one, many] = itemFor((x.n * 100) / x.d, x.rng);
          return {
            ...lots(x, k, {
              carries: cents ? carriesPast(x, k) : 0,
              size: (k > 5 ? 0.7 : 0) + (cents && (x.n * (100 / x.d)) % 10 !== 0 ? 0.7 : 0),
              story: true,
              extraSteps: cents && x.n > x.d ? 0.5 : 0,
              adjust: cents ? 0 : -0.8,
            }),
            text: x.pick([
              `One ${one} costs ${x.text}. What do ${k} ${many} cost?`,
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
    family: 'share an amount',
    title: 'Divide a decimal or an amount of money by one digit',
    year: 6,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.half', 'dec.times-whole', 'div.2d1d'],
    codes: { ac9: [], england: ['NC-Y6-fractions-9'], ccss: ['5.NBT.B.7', '6.NS.B.3'] },
    templates: [
      numericTemplate({
        id: 'share',
        kinds: ['decimal', 'money'],
        free: (rng) => rational(rng.int(3, 9) * rng.int(2, 30), 10),
        suits: (value, form) =>
          (form === 'money' || value.d > 1) && placesOf(value) <= 2 && value.n <= 10_000 * value.d,
        make: (x) => {
          const k = x.pick([3, 4, 5, 6, 8, 9]);
          const answer = divide(x.value, rational(k));
          // Thousandths are too much to keep in mind here.
          if (placesOf(answer) > 2) return null;
          const digits = x.n * (10 ** placesOf(x.value) / x.d);
          const exact = digits % k === 0;
          const whole = floor(answer);
          const big = rational(whole * k);
          const rest = subtract(x.value, big);
          return {
            text:
              x.form === 'money'
                ? x.pick([
                    `${k} friends share ${x.text} equally. How much does each get?`,
                    `${x.text} ÷ ${k}`,
                  ])
                : x.pick([
                    `${x.text} ÷ ${k}`,
                    `You cut ${x.text}\u00a0m of ribbon into ${k} equal pieces. How many ${x.locale.spelling.metre}s is each?`,
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
];
