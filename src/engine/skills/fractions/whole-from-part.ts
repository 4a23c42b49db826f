// The quantity from its fraction.
import { add, divide, multiply, rational } from '../../numbers/rational.js';
import { PARTS } from './common-parts.js';
import { isProper, properFraction } from './draw-fraction.js';
import { numericTemplate } from '../sketch.js';
import { writtenOne } from '../parts.js';
import type { Skill } from '../skill.js';

/** The skills on the quantity from its fraction. */
export const WHOLE_FROM_PART_SKILLS: readonly Skill[] = [
  {
    id: 'frac.whole-from-part',
    title: 'Find the whole from a part',
    year: 5,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.nonunit-of'],
    codes: {
      ac9: ['AC9M5A02'],
      england: ['NC-Y6-ratio-4'],
      ccss: ['6.NS.A.1'],
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
          const noun = x.form === 'money' ? 'amount' : 'number';
          const article = x.form === 'money' ? 'an' : 'a';
          const answer = multiply(x.value, rational(b));
          return {
            text:
              b === 2
                ? `Half of ${article} ${noun} is ${x.text}. What is the ${noun}?`
                : x.pick([
                    `1/${b} of ? = ${x.text}`,
                    `One ${x.parts(b, 1)} of ${article} ${noun} is ${x.text}. What is the ${noun}?`,
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
              ['times.as-plus', add(x.value, multiply(writtenOne(x.value, x.form), rational(b)))],
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
              ['part.one-only', one],
              ['fractions.top-forgotten', x.n * b],
            ],
            uses: `takes ${x.text} as part of a whole`,
            figure: x.rng.chance(0.4)
              ? {
                  kind: 'bar-model',
                  whole: '?',
                  parts: Array.from({ length: b }, () => ''),
                  shaded: top,
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
            strategy: [...(x.n > 1 ? [`${x.n * k} ÷ ${x.n} = ${k}`] : []), `${x.d} × ${k} = ${x.d * k}`],
            slips: [
              ['part.one-only', x.n > 1 ? k : null],
              ['fractions.top-forgotten', x.n * k * x.d],
              ['divide.not-undone', (x.n * x.n * k) % x.d === 0 ? (x.n * x.n * k) / x.d : null],
              // Only a unit fraction takes one multiplication, which adding can replace.
              ['times.as-plus', x.n === 1 ? k + x.d : null],
            ],
            uses: `finds a whole from ${x.text} of it`,
          };
        },
      }),
    ],
  },
];
