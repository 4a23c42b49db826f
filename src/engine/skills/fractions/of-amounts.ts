// A fraction of a quantity, and the quantity from its fraction.
import { divide, multiply, rational, subtract } from '../../numbers/rational.js';
import { numericTemplate, type Sketch, type Subject } from '../sketch.js';
import type { Skill } from '../skill.js';
import { countables, storyName } from '../story.js';
import { isProper, properFraction } from './naming.js';

/** top/bottom of the subject's quantity; the unit fraction first. */
function fractionOf(x: Subject, top: number, bottom: number, features: Sketch['features']): Sketch {
  const part = divide(x.value, rational(bottom));
  const answer = multiply(part, rational(top));
  return {
    text: `${top}/${bottom} of ${x.text}`,
    value: answer,
    expression: `(${top}/${bottom}) * ${x.expr}`,
    features,
    strategy: [
      `${x.text} ÷ ${bottom} = ${x.t(part)}`,
      ...(top > 1 ? [`${top} × ${x.t(part)} = ${x.t(answer)}`] : []),
    ],
    slips: [
      ['fractions.one-part-only', top > 1 ? part : null],
      ['fractions.part-left', subtract(x.value, answer)],
      ['fractions.takes-top', top > 1 ? divide(x.value, rational(top)) : null],
      [
        'divide.as-minus',
        top === 1 && x.value.n > bottom * x.value.d ? subtract(x.value, rational(bottom)) : null,
      ],
      ['divide.halves-once', bottom === 4 && top === 1 ? divide(x.value, rational(2)) : null],
      ['fractions.bottom-only', multiply(x.value, rational(top))],
    ],
    uses: `finds ${top}/${bottom} of ${x.text}`,
  };
}

const UNIT_BOTTOMS = [2, 3, 4, 5, 6, 8, 10] as const;
const PARTS = [
  [2, 3],
  [3, 4],
  [2, 5],
  [3, 5],
  [4, 5],
  [5, 6],
  [3, 8],
  [5, 8],
  [7, 8],
  [3, 10],
  [7, 10],
] as const;

export const FRACTION_OF_SKILLS: readonly Skill[] = [
  {
    id: 'frac.half-quarter-of',
    title: 'A half or a quarter of a small number of things',
    year: 2,
    fluentYear: 3,
    strand: 'fractions',
    prerequisites: ['div.half.small'],
    codes: {
      ac9: ['AC9M2N03', 'AC9M2M02'],
      england: ['NC-Y1-fractions-2', 'NC-Y2-fractions-1', 'NC-Y2-fractions-2'],
      ccss: ['3.NF.A.1'],
    },
    templates: [
      numericTemplate({
        id: 'of',
        kinds: ['whole'],
        free: (rng) => 4 * rng.int(1, 6),
        suits: (value) => value.d === 1 && value.n % 2 === 0 && value.n >= 4 && value.n <= 24,
        make: (x) => {
          const bottom = x.n % 4 === 0 ? x.pick([2, 4, 4]) : 2;
          const sketch = fractionOf(x, 1, bottom, { size: (bottom === 4 ? 1 : 0) + x.n / 24 });
          const things = countables(x.n, x.rng);
          const name = bottom === 2 ? 'Half' : `One ${x.parts(4, 1)}`;
          return {
            ...sketch,
            text: x.pick([sketch.text, `${name} of ${x.n} ${things} are red. How many ${things} are red?`]),
            figure: x.rng.chance(0.4)
              ? { kind: 'fraction-set', total: x.n, shaded: 0, groups: bottom }
              : undefined,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.unit-of',
    title: 'A unit fraction of a quantity',
    year: 3,
    fluentYear: 4,
    strand: 'fractions',
    prerequisites: ['frac.half-quarter-of', 'div.table.34'],
    codes: {
      ac9: ['AC9M3N02', 'AC9M3N04'],
      england: ['NC-Y3-fractions-2', '3F-2'],
      ccss: ['3.NF.A.1', '5.NF.B.4'],
    },
    templates: [
      numericTemplate({
        id: 'of',
        kinds: ['whole'],
        free: (rng) => rng.pick([3, 4, 5, 6, 8, 10]) * rng.int(2, 10),
        suits: (value) => value.d === 1 && value.n >= 6 && value.n <= 1000,
        make: (x) => {
          const fits = UNIT_BOTTOMS.filter(
            (b) => b > 2 && x.n % b === 0 && x.n / b >= 2 && (x.n / b <= 12 || x.n % (10 * b) === 0),
          );
          if (fits.length === 0) return null;
          const b = x.pick(fits);
          return {
            ...fractionOf(x, 1, b, {
              size: b >= 6 && b < 10 ? 1 : 0,
              fives: b === 5,
              rule: b === 10,
              extraSteps: x.n > 120 ? 1 : 0,
            }),
            figure: x.rng.chance(0.3)
              ? {
                  kind: 'bar-model',
                  whole: x.text,
                  parts: Array.from({ length: b }, (_, i) => (i === 0 ? '?' : '')),
                }
              : undefined,
          };
        },
      }),
      numericTemplate({
        id: 'story',
        kinds: ['whole'],
        free: (rng) => rng.pick([3, 4, 5, 8]) * rng.int(3, 8),
        suits: (value) => value.d === 1 && value.n >= 9 && value.n <= 100,
        make: (x) => {
          const fits = UNIT_BOTTOMS.filter((b) => b > 2 && x.n % b === 0 && x.n / b >= 2 && x.n / b <= 12);
          if (fits.length === 0) return null;
          const b = x.pick(fits);
          const things = countables(x.n, x.rng);
          const part = `one ${x.parts(b, 1)}`;
          return {
            ...fractionOf(x, 1, b, {
              story: true,
              size: b >= 6 && b < 10 ? 1 : 0,
              fives: b === 5,
              rule: b === 10,
            }),
            text: x.pick([
              `${storyName(x.rng)} gives away ${part} of ${x.text} ${things}. How many are given away?`,
              `A path is ${x.text} ${x.locale.spelling.metre}s long, and ${part} of it is in the shade. How many ${x.locale.spelling.metre}s are in the shade?`,
            ]),
          };
        },
      }),
    ],
  },
  {
    id: 'frac.nonunit-of',
    title: 'A non-unit fraction of a whole quantity',
    year: 4,
    fluentYear: 5,
    strand: 'fractions',
    prerequisites: ['frac.unit-of', 'mult.table.3'],
    codes: {
      ac9: ['AC9M4N08', 'AC9M6N07'],
      england: ['NC-Y4-fractions-3', '5F-1'],
      ccss: ['4.NF.B.4c', '5.NF.B.4a'],
    },
    templates: [
      numericTemplate({
        id: 'of',
        kinds: ['whole'],
        free: (rng) => rng.pick([12, 15, 16, 18, 20, 24, 30, 32, 36, 40, 45, 48, 56, 60, 80, 100]),
        suits: (value) => value.d === 1 && value.n >= 6 && value.n <= 1_000_000,
        make: (x) => {
          const fits = PARTS.filter(
            ([, b]) => x.n % b === 0 && (x.n / b <= 12 || x.n % (10 * b) === 0 || x.n <= 100),
          );
          if (fits.length === 0) return null;
          const [top, b] = x.pick(fits);
          return {
            ...fractionOf(x, top, b, {
              extraSteps: x.n / b > 12 ? 1 : 0,
              size: b >= 6 && b < 10 ? 1 : 0,
              fives: b === 5,
              adjust: top === b - 1 ? -0.2 : 0,
            }),
            figure: x.rng.chance(0.25)
              ? {
                  kind: 'bar-model',
                  whole: x.text,
                  parts: Array.from({ length: b }, (_, i) => (i < top ? '?' : '')),
                }
              : undefined,
          };
        },
      }),
      numericTemplate({
        id: 'of-on-fraction',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [3, 4, 5, 8]),
        suits: (value) => isProper(value) && value.d <= 12,
        make: (x) => {
          const k = x.rng.int(x.d === 2 ? 3 : 1, 10);
          const amount = x.d * k;
          const answer = x.n * k;
          const story = x.rng.chance(0.3) && k > 1;
          return {
            text: story
              ? `${x.text} of ${amount} children walk to school. How many children walk?`
              : `${x.text} of ${amount}`,
            value: answer,
            form: 'whole',
            expression: `(${x.n}/${x.d}) * ${amount}`,
            features: {
              story,
              size: (k > 5 ? 1 : 0) + (x.d > 5 ? 0.5 : 0),
              rule: k === 1 || k === 10,
              adjust: x.n === 1 ? -0.8 : 0,
            },
            strategy: [`${amount} ÷ ${x.d} = ${k}`, ...(x.n > 1 ? [`${x.n} × ${k} = ${answer}`] : [])],
            slips: [
              ['fractions.one-part-only', x.n > 1 ? k : null],
              ['fractions.part-left', amount - answer],
              ['fractions.takes-top', x.n > 1 && amount % x.n === 0 ? amount / x.n : null],
              ['divide.as-minus', amount - x.d > 0 ? amount - x.d : null],
            ],
            uses: `finds ${x.text} of ${amount}`,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.of-money',
    title: 'A fraction of an amount of money or a decimal',
    year: 5,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.nonunit-of'],
    codes: {
      ac9: ['AC9M6N07', 'AC9M5N09'],
      england: ['NC-Y4-fractions-10', '5F-1', '6NPV-4'],
      ccss: ['5.NF.B.4a'],
    },
    templates: [
      numericTemplate({
        id: 'of',
        kinds: ['money', 'decimal'],
        free: (rng) => rational(20 * rng.int(6, 60), 100),
        suits: (value) => value.n <= 100 * value.d,
        make: (x) => {
          const [top, b] = x.pick([
            [1, 2],
            [1, 3],
            [2, 3],
            [1, 4],
            [3, 4],
            [1, 5],
            [2, 5],
            [3, 5],
            [1, 10],
            [3, 10],
          ] as const);
          return fractionOf(x, top, b, {
            extraSteps: top > 1 ? 1 : 0,
            size: b === 3 ? 1 : 0,
            rule: b === 10,
            adjust: b === 2 ? -0.8 : 0,
          });
        },
      }),
    ],
  },
  {
    id: 'frac.whole-from-part',
    title: 'Find the whole from a part',
    year: 5,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.nonunit-of'],
    codes: {
      ac9: ['AC9M5A02', 'AC9M5N09'],
      england: ['NC-Y6-ratio-4', '5F-1'],
      ccss: ['5.NF.B.5', '6.RP.A.3c'],
    },
    templates: [
      numericTemplate({
        id: 'from-unit',
        kinds: ['whole', 'decimal', 'money', 'fraction'],
        free: (rng) => rng.int(3, 40),
        suits: (value, form) =>
          form === 'whole' ? value.n >= 2 && value.n <= 5000 : value.n <= 50 * value.d && value.d <= 100,
        make: (x) => {
          const b = x.pick([2, 3, 4, 5, 8, 10]);
          const answer = multiply(x.value, rational(b));
          return {
            text:
              b === 2
                ? `Half of a number is ${x.text}. What is the number?`
                : x.pick([
                    `1/${b} of ? = ${x.text}`,
                    `One ${x.parts(b, 1)} of a number is ${x.text}. What is the number?`,
                  ]),
            value: answer,
            expression: `${x.expr} * ${b}`,
            features: {
              unknownInside: true,
              rule: b === 10,
              fives: b === 5,
              adjust: b === 2 ? -1 : 0,
              extraSteps: (x.n > 12 * x.d && b > 2 ? 0.5 : 0) + (x.d > 1 ? 0.5 : 0),
            },
            strategy: [`${b} × ${x.text} = ${x.t(answer)}`],
            slips: [
              ['divide.not-undone', divide(x.value, rational(b))],
              ['times.as-plus', rational(x.n + b * x.d, x.d)],
              ['times.neighbour', multiply(x.value, rational(b - 1))],
            ],
            uses: `takes ${x.text} as part of a whole`,
          };
        },
      }),
      numericTemplate({
        id: 'from-parts',
        kinds: ['whole'],
        free: (rng) => 6 * rng.int(1, 10),
        suits: (value) => value.d === 1 && value.n >= 4 && value.n <= 900,
        make: (x) => {
          const fits = PARTS.filter(([top]) => x.n % top === 0 && x.n / top <= 100);
          if (fits.length === 0) return null;
          const [top, b] = x.pick(fits);
          const one = x.n / top;
          return {
            text: `${top}/${b} of a number is ${x.text}. What is the number?`,
            value: one * b,
            expression: `${x.n} / (${top}/${b})`,
            features: {
              unknownInside: true,
              extraSteps: 1,
              size: (b >= 6 && b < 10 ? 1 : 0) + (one > 12 ? 0.5 : 0),
            },
            strategy: [`${x.text} ÷ ${top} = ${one}`, `${b} × ${one} = ${one * b}`],
            slips: [
              ['divide.not-undone', x.n % b === 0 ? (x.n / b) * top : null],
              ['fractions.one-part-only', one],
              ['fractions.takes-top', x.n * b],
            ],
            uses: `takes ${x.text} as part of a whole`,
            figure: x.rng.chance(0.4)
              ? {
                  kind: 'bar-model',
                  whole: '?',
                  parts: Array.from({ length: b }, (_, i) => (i < top ? ' ' : '')),
                }
              : undefined,
          };
        },
      }),
      numericTemplate({
        id: 'from-day-fraction',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [3, 4, 5]),
        suits: (value) => isProper(value) && value.d <= 10,
        make: (x) => {
          const k = x.rng.int(2, 9);
          return {
            text: `${x.text} of a number is ${x.n * k}. What is the number?`,
            value: x.d * k,
            form: 'whole',
            expression: `${x.n * k} / (${x.n}/${x.d})`,
            features: { unknownInside: true, extraSteps: x.n > 1 ? 1 : 0, size: k > 5 ? 1 : 0 },
            strategy: [`${x.n * k} ÷ ${x.n} = ${k}`, `${x.d} × ${k} = ${x.d * k}`],
            slips: [
              ['fractions.one-part-only', x.n > 1 ? k : null],
              ['fractions.takes-top', x.n * k * x.d],
              ['divide.not-undone', (x.n * x.n * k) % x.d === 0 ? (x.n * x.n * k) / x.d : null],
              ['times.as-plus', x.n * k + x.d],
            ],
            uses: `finds a whole from ${x.text} of it`,
          };
        },
      }),
    ],
  },
];
