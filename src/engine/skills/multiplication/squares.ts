// Squares, cubes and square roots.
import { decimalPlaces, floor, multiply, rational } from '../../numbers/rational.js';
import { partOf } from '../parts.js';
import { numericTemplate, type Subject, wholeWithin } from '../sketch.js';
import type { Skill } from '../skill.js';

function carriesTimes(n: number, digit: number): number {
  return [...String(n)].filter((d, i, all) => i > 0 && Number(d) * digit >= 10 && all.length > 1).length;
}

/** Steps for a square: a fraction by its two numbers, tenths by their count, everything else part by part. */
function squareSteps(x: Subject): string[] {
  const answer = multiply(x.value, x.value);
  const whole = `${x.text} × ${x.text} = ${x.t(answer)}`;
  const tenths = (10 * x.n) / x.d;
  if (x.n < x.d && x.form === 'fraction')
    return [`${x.n} × ${x.n} = ${x.n * x.n}`, `${x.d} × ${x.d} = ${x.d * x.d}`, whole];
  if (x.n < x.d)
    return [`${tenths} × ${tenths} = ${tenths * tenths}`, `Tenths times tenths are hundredths, so ${whole}`];
  const isFact = x.d === 1 && x.n > 5 && x.n < 10;
  const big = x.d > 1 ? floor(x.value) : isFact ? 5 : x.n - (x.n % 10);
  const small = x.d > 1 ? partOf(x.value) : rational(x.n - big);
  if (big === 0 || small.n === 0) return [whole];
  const [first, second] = [multiply(x.value, rational(big)), multiply(x.value, small)];
  return [
    isFact ? `5 × ${x.text} = ${x.t(first)}` : `${x.text} × ${x.t(big)} = ${x.t(first)}`,
    isFact ? `${x.t(small)} × ${x.text} = ${x.t(second)}` : `${x.text} × ${x.t(small)} = ${x.t(second)}`,
    `${x.t(first)} + ${x.t(second)} = ${x.t(answer)}`,
  ];
}

/** The skills on squares, cubes and square roots. */
export const SQUARE_SKILLS: readonly Skill[] = [
  {
    id: 'mult.squares',
    title: 'Square and cube numbers and square roots',
    year: 5,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.table.7', 'mult.table.8', 'mult.table.9'],
    codes: { ac9: ['AC9M6N02'], england: ['NC-Y5-multdiv-8', 'NC-Y5-multdiv-9'], ccss: ['6.EE.A.1'] },
    templates: [
      numericTemplate({
        id: 'square',
        kinds: ['whole', 'decimal', 'fraction'],
        free: (rng) => rng.int(3, 15),
        suits: (value, form) =>
          form === 'whole'
            ? value.n >= 2 && value.n <= 99
            : form === 'decimal'
              ? decimalPlaces(value) === 1 && value.n < 10 * value.d
              : // Of mixed numbers those with a half go well in the head.
                value.n < value.d
                ? value.d <= 12
                : value.d === 2 && value.n < 20,
        make: (x) => {
          const answer = multiply(x.value, x.value);
          const tens = x.n - (x.n % 10);
          const ones = x.n % 10;
          return {
            text: `${x.text} × ${x.text}`,
            value: answer,
            expression: `${x.expr} * ${x.expr}`,
            features: {
              tie: x.n <= 12 && x.d === 1,
              size: x.d > 1 ? 1 : x.n <= 6 ? 0 : x.n <= 12 ? 1 : 2,
              extraSteps: x.d > 1 ? 2 : x.n <= 12 ? 0 : x.n <= 20 ? 2 : 3,
              carries: x.d === 1 && x.n > 20 && ones > 0 ? 2 : 0,
              rule: x.d === 1 && ones === 0,
              unlike: x.form === 'fraction' && x.n > x.d,
              adjust:
                x.form === 'decimal'
                  ? 1.6
                  : x.form === 'fraction'
                    ? 0.8
                    : x.n > 20 && x.n % 10 !== 0
                      ? 0.7
                      : 0,
            },
            strategy: squareSteps(x),
            slips: [
              [
                'times.square-doubles',
                x.form === 'fraction' && x.d > 2
                  ? { top: 2 * x.n, bottom: x.d }
                  : multiply(x.value, rational(2)),
              ],
              ['times.cross-forgotten', x.d === 1 && tens > 0 && ones > 0 ? tens * tens + ones * ones : null],
              ['times.neighbour', x.d === 1 ? x.n * (x.n - 1) : null],
            ],
            uses: `squares ${x.text}`,
            figure:
              x.d === 1 && x.n <= 8 && x.rng.chance(0.3)
                ? { kind: 'array', rows: x.n, columns: x.n }
                : undefined,
          };
        },
      }),
      numericTemplate({
        id: 'cube',
        kinds: ['whole'],
        free: (rng) => rng.int(2, 6),
        suits: wholeWithin(2, 12),
        make: (x) => ({
          text: `${x.text} × ${x.text} × ${x.text}`,
          value: x.n ** 3,
          expression: `${x.n} ^ 3`,
          features: {
            extraSteps: x.n > 5 ? 2 : 1,
            size: x.n > 5 ? 2 : x.n > 3 ? 1 : 0,
            carries: carriesTimes(x.n * x.n, x.n),
            rule: x.n === 10,
          },
          strategy: [`${x.text} × ${x.text} = ${x.n * x.n}`, `${x.n * x.n} × ${x.text} = ${x.t(x.n ** 3)}`],
          slips: [
            ['times.step-forgotten', x.n * x.n],
            ['times.cube-as-three', 3 * x.n],
            ['times.neighbour', x.n ** 3 - x.n * x.n],
          ],
          uses: `cubes ${x.text}`,
        }),
      }),
      numericTemplate({
        id: 'root',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 12) ** 2,
        suits: (value) =>
          value.d === 1 && value.n >= 4 && value.n <= 400 && Number.isInteger(Math.sqrt(value.n)),
        make: (x) => {
          const root = Math.round(Math.sqrt(x.n));
          const tiles = `A square has ${x.text} tiles. How many tiles long is each side?`;
          const text = x.pick([`Which number times itself makes ${x.text}?`, tiles]);
          return {
            text,
            value: root,
            expression: `sqrt(${x.n})`,
            features: { unknownInside: true, size: root > 9 ? 1 : 0 },
            strategy: [`${root} × ${root} = ${x.text}`],
            slips: [
              ['times.square-doubles', x.n % 2 === 0 ? x.n / 2 : null],
              ['squares.root-one-out', root - 1],
              ['squares.divided-by-four', text === tiles && x.n % 4 === 0 ? x.n / 4 : null],
            ],
            uses: `finds what squares to ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'nearest-square',
        kinds: ['whole'],
        free: (rng) => rng.int(11, 99),
        suits: wholeWithin(5, 400),
        make: (x) => {
          const root = Math.floor(Math.sqrt(x.n));
          if (root * root === x.n) return null;
          return {
            text: `What is the largest square number less than ${x.text}?`,
            value: root * root,
            expression: `${root} * ${root}`,
            features: { extraSteps: 1, size: root > 9 ? 1 : 0 },
            strategy: [
              `${root} × ${root} = ${root * root}`,
              `${root + 1} × ${root + 1} = ${(root + 1) ** 2}, too large`,
            ],
            slips: [
              ['squares.root-given', root],
              ['squares.next-door', (root - 1) ** 2],
              ['squares.next-door', (root + 1) ** 2],
            ],
            uses: `finds the square number below ${x.text}`,
          };
        },
      }),
    ],
  },
];
