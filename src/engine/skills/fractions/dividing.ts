// Dividing fractions.
import { compare, divide, multiply, rational, subtract } from '../../numbers/rational.js';
import { multiplyBoth, type Written } from '../../questions/slips/fraction-operations.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';
import { isProper, isSmallFraction, properFraction } from './draw-fraction.js';
import { asImproper, asPrinted, over } from './mixed-steps.js';

/** A product as children leave it: over the bottom as it came, or whole. */
const productOver = (top: number, bottom: number): Written | number =>
  top % bottom === 0 ? top / bottom : { top, bottom };

/** The skills on dividing fractions: by a whole number, then by a fraction. */
export const FRACTION_DIVISION_SKILLS: readonly Skill[] = [
  {
    id: 'frac.divide-by-whole',
    title: 'Divide a fraction by a whole number',
    year: 6,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.half'],
    codes: { ac9: [], england: ['NC-Y6-fractions-5'], ccss: ['5.NF.B.7a'] },
    // Common practice.
    shift: 0.5,
    templates: [
      numericTemplate({
        id: 'share',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [2, 3, 4, 5, 6]),
        suits: isSmallFraction,
        make: (x) => {
          const k = x.rng.int(3, 6);
          const answer = divide(x.value, rational(k));
          const exactTop = x.n % k === 0;
          const story = x.d <= 12 && x.n <= 12 * x.d && x.rng.chance(0.3);
          return {
            text: story
              ? `${k} children share ${x.text} ${x.n > x.d ? 'cakes' : 'of a cake'} equally. ${x.n > k * x.d ? 'How many cakes' : 'What part of a cake'} does each get?`
              : `${x.text} ÷ ${k}`,
            value: answer,
            expression: `${x.expr} / ${k}`,
            features: {
              story,
              extraSteps: x.n > x.d ? 1 : 0,
              adjust: exactTop ? -0.6 : 0.2,
              size: x.d * k > 20 ? 0.5 : 0,
            },
            strategy: exactTop
              ? [
                  ...asImproper(x),
                  `${x.t(x.n)} ÷ ${k} = ${x.t(x.n / k)}`,
                  `${over(x, x.n, x.d)} ÷ ${k} = ${over(x, x.n / k, x.d)}`,
                  ...asPrinted(x, x.n / k, x.d),
                ]
              : [
                  ...asImproper(x),
                  `${x.d} × ${k} = ${x.d * k}`,
                  `${over(x, x.n, x.d)} ÷ ${k} = ${over(x, x.n, x.d * k)}`,
                  ...asPrinted(x, x.n, x.d * k),
                ],
            slips: [
              ['divide.as-times', x.n < x.d ? productOver(x.n * k, x.d) : multiply(x.value, rational(k))],
              ['fractions.multiplies-both', multiplyBoth({ top: x.n, bottom: x.d }, k)],
              ['fractions.whole-ignored', x.n > x.d ? divide(rational(x.n % x.d, x.d), rational(k)) : null],
              ['divide.as-minus', compare(x.value, rational(k)) > 0 ? subtract(x.value, rational(k)) : null],
            ],
            uses: `shares ${x.text} among ${k}`,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.divide-by-fraction',
    title: 'How many of a fraction fit: divide by a fraction',
    year: 6,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.mixed', 'frac.times-fraction'],
    codes: { ac9: [], england: [], ccss: ['5.NF.B.7b', '6.NS.A.1'] },
    // Common practice.
    shift: 0.9,
    templates: [
      numericTemplate({
        id: 'by-unit',
        kinds: ['fraction', 'whole'],
        freeForm: 'whole',
        free: (rng) => rng.int(2, 9),
        suits: (value, form) => (form === 'whole' ? value.n >= 2 && value.n <= 120 : isSmallFraction(value)),
        make: (x) => {
          const d = x.form === 'whole' ? x.pick([2, 3, 4, 5, 10]) : x.pick([x.d, x.d, 2 * x.d, 2, 4]);
          const unit = rational(1, d);
          const answer = divide(x.value, unit);
          if (answer.d !== 1 || d > 24) return null;
          return {
            text: x.rng.chance(0.5) ? `${x.text} ÷ 1/${d}` : `How many pieces of 1/${d} fit into ${x.text}?`,
            value: answer,
            form: 'whole',
            expression: `${x.expr} / (1/${d})`,
            features: {
              extraSteps: (x.n > x.d && x.d > 1 ? 1 : 0) + (d !== x.d && x.d > 1 ? 1 : 0),
              size: x.d === 1 && x.n > 12 ? 1 : 0,
              adjust: x.form === 'fraction' && d === x.d && x.n < x.d ? -0.8 : 0,
            },
            strategy: [`1 ÷ 1/${d} = ${d}`, `${x.text} × ${d} = ${x.t(answer, 'whole')}`],
            slips: [
              [
                'fractions.divides-as-times',
                x.n < x.d || x.d === 1 ? productOver(x.n, x.d * d) : multiply(x.value, unit),
              ],
              ['fractions.whole-ignored', x.n > x.d && x.d > 1 ? (x.n % x.d) * (d / x.d) : null],
              ['fractions.one-whole-only', d],
            ],
            uses: `finds how many pieces fit into ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'by-fraction',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [2, 3, 4, 5, 6]),
        suits: isSmallFraction,
        make: (x) => {
          const related = [2, 3, 4, 5, 8].filter((d) => x.d % d === 0 || d % x.d === 0);
          if (related.length === 0) return null;
          const other = properFraction(x.rng, related);
          const answer = divide(x.value, other);
          if (other.n === 1) return null;
          const common = Math.max(x.d, other.d);
          const [a, b] = [(x.n * common) / x.d, (other.n * common) / other.d];
          if (!Number.isInteger(a) || !Number.isInteger(b)) return null;
          return {
            text: `${x.text} ÷ ${x.t(other)}`,
            value: answer,
            expression: `${x.expr} / ${x.e(other)}`,
            features: { unlike: true, extraSteps: (answer.d === 1 ? 0 : 1) + (x.n > x.d ? 1 : 0) },
            strategy: [
              ...asImproper(x),
              ...(x.d === common ? [] : [`${over(x, x.n, x.d)} = ${over(x, a, common)}`]),
              ...(other.d === common ? [] : [`${other.n}/${other.d} = ${b}/${common}`]),
              `${over(x, a, common)} ÷ ${b}/${common} = ${x.t(a)} ÷ ${b}`,
              `${x.t(a)} ÷ ${b} = ${x.t(answer)}`,
            ],
            slips: [
              [
                'fractions.divides-as-times',
                x.n < x.d ? productOver(x.n * other.n, x.d * other.d) : multiply(x.value, other),
              ],
              ['divide.turned-round', divide(other, x.value)],
            ],
            uses: `divides ${x.text} by a fraction`,
          };
        },
      }),
      numericTemplate({
        id: 'into-whole',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [3, 4, 5]),
        suits: (value) => isProper(value) && value.d <= 25,
        make: (x) => {
          const k = x.rng.int(1, 4);
          const whole = x.n * k;
          return {
            text: x.rng.chance(0.5)
              ? `${whole} ÷ ${x.text}`
              : `How many pieces of ${x.text} fit into ${whole}?`,
            value: x.d * k,
            form: 'whole',
            expression: `${whole} / ${x.expr}`,
            features: { extraSteps: x.n > 1 ? 1 : 0, size: x.d > 5 ? 0.5 : 0 },
            strategy:
              x.n === 1
                ? [`${x.d} × ${x.text} = 1`, k > 1 ? `${k} × ${x.d} = ${x.d * k}` : `So ${x.d} fit into 1`]
                : [`${whole} = ${whole * x.d}/${x.d}`, `${whole * x.d} ÷ ${x.n} = ${x.d * k}`],
            slips: [
              ['fractions.divides-as-times', productOver(x.n * whole, x.d)],
              ['fractions.top-forgotten', whole * x.d],
              ['fractions.bottom-forgotten', k],
            ],
            uses: `counts how many pieces of ${x.text} fit`,
          };
        },
      }),
    ],
  },
];
