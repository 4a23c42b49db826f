// Missing numbers, large round numbers and two-digit divisors.
import { add, multiply, rational } from '../../numbers/rational.js';
import { divideDigits } from '../../questions/slips/quotients.js';
import { numericTemplate, wholeWithin } from '../sketch.js';
import { writtenOne } from '../parts.js';
import type { Skill } from '../skill.js';
import { divideStory, withStory } from '../retold.js';

/** The skills on missing numbers, large round numbers and two-digit divisors. */
export const FURTHER_DIVISION_SKILLS: readonly Skill[] = [
  {
    id: 'div.unknown',
    family: 'missing factor',
    title: 'Find the missing number in multiplications and divisions',
    year: 5,
    fluentYear: 6,
    strand: 'division',
    prerequisites: ['div.2d1d'],
    codes: {
      ac9: ['AC9M5A02', 'AC9M5A01'],
      england: ['NC-Y3-multdiv-3', '4MD-2'],
      ccss: ['3.OA.A.4', '6.EE.B.7'],
    },
    templates: [
      numericTemplate({
        id: 'dividend',
        kinds: ['whole', 'decimal', 'money', 'fraction'],
        free: (rng) => rng.int(11, 60),
        suits: (value, form) =>
          form === 'whole' ? value.n >= 3 && value.n <= 400 : value.n <= 20 * value.d && value.d <= 100,
        make: (x) => {
          const k = x.rng.int(2, x.d === 1 ? 9 : 5);
          const answer = multiply(x.value, rational(k));
          return {
            text: `? ÷ ${k} = ${x.text}`,
            value: answer,
            expression: `${x.expr} * ${k}`,
            features: {
              unknownInside: true,
              extraSteps: x.n > 12 * x.d || x.d > 1 ? 1 : 0,
              size: k > 5 ? 1 : 0,
              adjust: k === 2 ? -0.5 : 0,
              unlike: x.d > 1,
            },
            strategy: [`${k} × ${x.text} = ${x.t(answer)}`],
            slips: [
              ['divide.not-undone', x.n % (k * x.d) === 0 ? x.n / k / x.d : null],
              ['times.as-plus', add(x.value, multiply(writtenOne(x.value, x.form), rational(k)))],
              ['times.neighbour', multiply(x.value, rational(k - 1))],
            ],
            uses: `finds what gives ${x.text} when divided by ${k}`,
          };
        },
      }),
      numericTemplate({
        id: 'factor',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 45),
        suits: wholeWithin(11, 250),
        make: (x) => {
          const k = x.rng.int(3, 9);
          return {
            text: `${x.text} × ? = ${x.t(x.n * k)}`,
            value: k,
            expression: `${x.n * k} / ${x.n}`,
            features: { unknownInside: true, extraSteps: 1, fives: k === 5, size: x.n > 50 ? 1 : 0 },
            strategy: [`${x.text} × ${k} = ${x.t(x.n * k)}`],
            slips: [
              ['divide.neighbour', k + 1],
              ['divide.neighbour', k - 1],
              ['divide.as-minus', x.n * k - x.n],
            ],
            uses: `finds how many groups of ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.large',
    title: 'Divide large round numbers',
    year: 5,
    fluentYear: 6,
    strand: 'division',
    prerequisites: ['div.by10', 'div.half.large', 'place.million'],
    codes: { ac9: ['AC9M5N07'], england: ['NC-Y5-multdiv-5', '6NPV-4', '4NPV-4'], ccss: ['5.NBT.B.6'] },
    templates: [
      numericTemplate({
        id: 'round-by-digit',
        kinds: ['whole'],
        free: (rng) => 1000 * rng.int(2, 60),
        suits: (value) => value.d === 1 && value.n >= 1000 && value.n % 100 === 0,
        make: (x) => {
          const k = x.pick([2, 3, 4, 5, 8].filter((d) => x.n % (d * 10) === 0));
          const unit = x.n % (1000 * k) === 0 ? 1000 : x.n % (100 * k) === 0 ? 100 : 10;
          return {
            text: k === 2 ? `Half of ${x.text}` : `${x.text} ÷ ${k}`,
            value: x.n / k,
            expression: `${x.n} / ${k}`,
            features: {
              extraSteps: unit === 1000 ? 0 : 1,
              size: (k > 4 ? 1 : 0) + (x.n >= 100_000 ? 0.5 : 0),
              adjust: k === 2 ? -0.8 : 0,
            },
            strategy: [
              `${x.t(x.n / unit)} ÷ ${k} = ${x.t(x.n / unit / k)}`,
              `${x.t(x.n / unit / k)} × ${x.t(unit)} = ${x.t(x.n / k)}`,
            ],
            slips: [
              ['times.zero-count', x.n / k / 10],
              ['times.zero-count', (x.n / k) * 10],
              ['divide.digits-alone', divideDigits(x.n, k)],
            ],
            uses: k === 2 ? `halves ${x.text}` : `divides ${x.text} by ${k}`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.by-two-digits',
    title: 'Divide by two-digit numbers through factors and friendly multiples',
    year: 6,
    fluentYear: 6,
    strand: 'division',
    prerequisites: ['div.3d1d', 'mult.factors'],
    codes: {
      ac9: ['AC9M6N02'],
      england: ['6AS/MD-2', 'NC-Y5-multdiv-5', 'NC-Y6-fourops-2'],
      ccss: ['5.NBT.B.6', '6.NS.B.2'],
    },
    // Common practice.
    shift: 0.4,
    templates: withStory(divideStory, [
      numericTemplate({
        id: 'through-factors',
        kinds: ['whole'],
        free: (rng) => rng.pick([12, 14, 15, 16, 18, 20, 24, 25, 30, 50]) * rng.int(6, 30),
        suits: (value) => value.d === 1 && value.n >= 60,
        make: (x) => {
          const fits = (
            [
              [12, 2, 6],
              [14, 2, 7],
              [15, 3, 5],
              [16, 2, 8],
              [18, 2, 9],
              [20, 10, 2],
              [24, 4, 6],
              [25, 5, 5],
              [30, 10, 3],
              [50, 10, 5],
            ] as const
          ).filter(([d]) => x.n % d === 0 && x.n / d >= 3);
          if (fits.length === 0) return null;
          const [d, a, b] = x.pick(fits);
          const q = x.n / d;
          return {
            text: `${x.text} ÷ ${d}`,
            value: q,
            expression: `${x.n} / ${d}`,
            features: {
              extraSteps: 1,
              size: (d % 10 === 0 ? 0 : 1) + (q > 20 ? 1 : 0),
              fives: d === 25 || d === 50,
            },
            strategy: [`${x.text} ÷ ${a} = ${x.t(x.n / a)}`, `${x.t(x.n / a)} ÷ ${b} = ${x.t(q)}`],
            slips: [
              ['times.step-forgotten', x.n / a],
              ['times.step-forgotten', x.n / b],
              ['times.zero-count', x.n % 10 === 0 ? q * 10 : null],
              ['divide.neighbour', q + 1],
            ],
            uses: `divides ${x.text} by ${d}`,
          };
        },
      }),
      numericTemplate({
        id: 'from-a-product',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 60),
        suits: wholeWithin(12, 99),
        make: (x) => {
          const k = x.rng.int(11, 19);
          const product = x.n * k;
          return {
            text: `${x.t(product)} ÷ ${x.text}`,
            value: k,
            expression: `${product} / ${x.n}`,
            features: { extraSteps: 2, size: x.n > 30 ? 1 : 0, rule: x.n % 10 === 0 },
            strategy: [
              `10 × ${x.text} = ${x.t(10 * x.n)}`,
              `${x.t(product)} − ${x.t(10 * x.n)} = ${x.t(product - 10 * x.n)}`,
              `${x.t(product - 10 * x.n)} ÷ ${x.text} = ${k - 10}`,
              `10 + ${k - 10} = ${k}`,
            ],
            slips: [
              ['divide.neighbour', k + 1],
              ['divide.neighbour', k - 1],
              ['divide.one-part-only', 10],
            ],
            uses: `divides by ${x.text}`,
          };
        },
      }),
    ]),
  },
];
