// Multiplying fractions.
import { add, divide, floor, multiply, rational, subtract } from '../../numbers/rational.js';
import { multiplyBoth } from '../../questions/slips/fraction-operations.js';
import { numericTemplate, type Subject } from '../sketch.js';
import type { Skill } from '../skill.js';
import { isSmallFraction, properFraction } from './draw-fraction.js';
import { asImproper, asPrinted, over, timesSteps, wholesAndTop } from './mixed-steps.js';

/** An even number of wholes is halved apart from its part; else every part is cut in two where the top is odd. */
function halfSteps(x: Subject): string[] {
  const [whole, rest] = wholesAndTop(x);
  if (whole > 0 && whole % 2 === 0) {
    const part = rational(rest, 2 * x.d);
    return [
      `${x.t(whole)} ÷ 2 = ${x.t(whole / 2)}`,
      `${rest}/${x.d} ÷ 2 = ${x.t(part)}`,
      `${x.t(whole / 2)} + ${x.t(part)} = ${x.t(divide(x.value, rational(2)))}`,
    ];
  }
  return x.n % 2 === 0
    ? [
        ...asImproper(x),
        `${x.t(x.n)} ÷ 2 = ${x.t(x.n / 2)}`,
        `${over(x, x.n, x.d)} ÷ 2 = ${over(x, x.n / 2, x.d)}`,
        ...asPrinted(x, x.n / 2, x.d),
      ]
    : [
        ...asImproper(x),
        `${over(x, x.n, x.d)} = ${over(x, 2 * x.n, 2 * x.d)}`,
        `${over(x, 2 * x.n, 2 * x.d)} ÷ 2 = ${over(x, x.n, 2 * x.d)}`,
        ...asPrinted(x, x.n, 2 * x.d),
      ];
}

/** The skills on multiplying fractions, doubles and halves first. */
export const FRACTION_PRODUCT_SKILLS: readonly Skill[] = [
  {
    id: 'frac.double',
    family: 'double',
    title: 'Double a fraction or a mixed number',
    year: 4,
    fluentYear: 5,
    strand: 'fractions',
    prerequisites: ['frac.add.like'],
    codes: { ac9: ['AC9M4N04'], england: ['NC-Y4-fractions-4', '4F-3'], ccss: ['4.NF.B.4b'] },
    templates: [
      numericTemplate({
        id: 'double',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng),
        suits: (value) => value.d <= 100 && value.n <= 50 * value.d,
        make: (x) => {
          const answer = multiply(x.value, rational(2));
          const whole = floor(x.value);
          const text = x.pick([`Double ${x.text}`, `2 × ${x.text}`, `${x.text} + ${x.text}`]);
          const isSum = text.includes('+');
          return {
            text,
            value: answer,
            expression: `2 * ${x.expr}`,
            features: {
              tie: true,
              extraSteps: (whole > 0 ? 1 : 0) + (answer.n % answer.d !== 0 && (x.n % x.d) * 2 > x.d ? 1 : 0),
              adjust: x.n * 2 < x.d ? -0.2 : 0,
            },
            strategy:
              whole > 0
                ? timesSteps(x, 2)
                : [
                    `2 × ${x.n} ${x.parts(x.d, x.n)} = ${2 * x.n} ${x.parts(x.d)}`,
                    ...asPrinted(x, 2 * x.n, x.d),
                  ],
            slips: [
              [
                isSum ? 'fractions.add-tops-bottoms' : 'fractions.two-on-both',
                whole === 0 ? multiplyBoth({ top: x.n, bottom: x.d }, 2) : null,
              ],
              [
                'exact.part-kept',
                whole > 0 ? add(rational(2 * whole), subtract(x.value, rational(whole))) : null,
              ],
              ['fractions.multiplies-bottom', isSum || whole > 0 ? null : { top: x.n, bottom: 2 * x.d }],
              ['times.adds-two', isSum ? null : add(x.value, rational(2))],
            ],
            uses: `doubles ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.half',
    family: 'half',
    title: 'Halve a fraction or a mixed number',
    year: 5,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.equal', 'frac.half-quarter-of'],
    codes: { ac9: [], england: ['NC-Y6-fractions-5'], ccss: ['5.NF.B.4'] },
    templates: [
      numericTemplate({
        id: 'half',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [2, 3, 4, 5, 6]),
        suits: (value) => value.d <= 25 && value.n <= 50 * value.d,
        make: (x) => {
          const answer = divide(x.value, rational(2));
          const whole = floor(x.value);
          return {
            text: x.pick([`Half of ${x.text}`, `${x.text} ÷ 2`, `1/2 of ${x.text}`]),
            value: answer,
            expression: `${x.expr} / 2`,
            features: { extraSteps: x.n > x.d ? 1 : 0, adjust: x.n % 2 === 0 ? -0.6 : 0.2 },
            strategy: halfSteps(x),
            slips: [
              ['divide.as-times', x.n < x.d ? { top: 2 * x.n, bottom: x.d } : multiply(x.value, rational(2))],
              ['fractions.two-on-both', x.n < x.d ? multiplyBoth({ top: x.n, bottom: x.d }, 2) : null],
              // Half of 4 2/3 as 2 2/3.
              [
                'exact.part-kept',
                whole > 0 && whole % 2 === 0 ? subtract(x.value, rational(whole / 2)) : null,
              ],
              ['fractions.whole-ignored', x.n > x.d ? divide(rational(x.n % x.d, x.d), rational(2)) : null],
            ],
            uses: `halves ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.times-whole',
    title: 'Multiply a fraction by a whole number',
    year: 5,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.mixed', 'frac.double'],
    codes: { ac9: [], england: ['NC-Y5-fractions-5'], ccss: ['4.NF.B.4', '4.NF.B.4b'] },
    templates: [
      numericTemplate({
        id: 'times',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [2, 3, 4, 5, 8]),
        suits: isSmallFraction,
        make: (x) => {
          const k = x.rng.int(3, 8);
          const answer = multiply(x.value, rational(k));
          // Cups come in halves, thirds, quarters and eighths.
          const story = [2, 3, 4, 8].includes(x.d) && x.n <= 3 * x.d && x.rng.chance(0.25);
          return {
            text: story
              ? `One cake needs ${x.text} of a cup of sugar. How many cups do ${k} cakes need?`.replace(
                  x.n > x.d ? ' of a cup of sugar' : '\u0000',
                  ' cups of sugar',
                )
              : x.rng.chance(0.5)
                ? `${k} × ${x.text}`
                : `${x.text} × ${k}`,
            value: answer,
            expression: `${k} * ${x.expr}`,
            features: {
              story,
              extraSteps: (answer.d === 1 ? 0 : 1) + (x.n > x.d ? 1 : 0),
              size: k > 5 ? 0.5 : 0,
              adjust: x.n === 1 ? -0.6 : k === x.d ? -0.5 : 0,
            },
            strategy: timesSteps(x, k),
            slips: [
              ['fractions.multiplies-both', multiplyBoth({ top: x.n, bottom: x.d }, k)],
              ['fractions.multiplies-bottom', x.n > x.d ? null : { top: x.n, bottom: x.d * k }],
              ['fractions.whole-ignored', x.n > x.d ? multiply(rational(x.n % x.d, x.d), rational(k)) : null],
              ['times.as-plus', add(x.value, rational(k))],
            ],
            uses: `makes ${k} groups of ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.times-fraction',
    title: 'A fraction of a fraction',
    year: 6,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.half', 'frac.times-whole'],
    codes: { ac9: [], england: ['NC-Y6-fractions-4'], ccss: ['5.NF.B.4'] },
    // Common practice.
    shift: 0.5,
    templates: [
      numericTemplate({
        id: 'product',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [2, 3, 4, 5]),
        suits: isSmallFraction,
        make: (x) => {
          const other = x.rng.chance(0.2) && x.n < x.d ? x.value : properFraction(x.rng, [2, 3, 4, 5]);
          const answer = multiply(x.value, other);
          const sum = add(x.value, other);
          return {
            text: x.rng.chance(0.6) ? `${x.t(other)} of ${x.text}` : `${x.text} × ${x.t(other)}`,
            value: answer,
            expression: `${x.expr} * ${x.e(other)}`,
            features: {
              unlike: true,
              extraSteps: (x.n > x.d ? 1 : 0) + (other.n > 1 && x.n > 1 ? 1 : 0),
              adjust: other.n === 1 && x.n === 1 ? -0.8 : 0,
              size: x.d * other.d > 30 ? 0.5 : 0,
            },
            strategy: [
              ...asImproper(x),
              `${x.t(x.n)} × ${other.n} = ${x.t(x.n * other.n)}`,
              `${x.d} × ${other.d} = ${x.d * other.d}`,
              `${over(x, x.n, x.d)} × ${other.n}/${other.d} = ${over(x, x.n * other.n, x.d * other.d)}`,
              ...asPrinted(x, x.n * other.n, x.d * other.d),
            ],
            slips: [
              [
                'fractions.add-tops-bottoms',
                x.n > x.d ? null : { top: x.n + other.n, bottom: x.d + other.d },
              ],
              ['times.as-plus', sum],
              [
                'fractions.bottom-only',
                x.n > x.d ? null : { top: x.n * other.n, bottom: Math.max(x.d, other.d) },
              ],
              ['fractions.whole-ignored', x.n > x.d ? multiply(rational(x.n % x.d, x.d), other) : null],
            ],
            uses: `finds a fraction of ${x.text}`,
          };
        },
      }),
    ],
  },
];
