// Multiplying and dividing by decimals.
import { divide, multiply, rational } from '../../numbers/rational.js';
import { placesOf } from './draw-decimal.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';

const HALF = rational(1, 2);

const TENTH = rational(1, 10);

/** The skills on multiplying and dividing by decimals. */
export const BY_DECIMAL_SKILLS: readonly Skill[] = [
  {
    id: 'dec.times-decimal',
    title: 'Multiply and divide by 0.1, 0.5, 0.25 and one-place decimals',
    year: 6,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.divide10', 'dec.times-whole', 'frac.unit-of'],
    codes: {
      ac9: ['AC9M6N07'],
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
              ...(other.n > 1 && other.d < 10 ? [`${text} = ${other.n}/${other.d}`] : []),
              `${x.text} ÷ ${other.d} = ${x.t(multiply(x.value, unit), 'decimal')}`,
              ...(other.n > 1
                ? [`${other.n} × ${x.t(multiply(x.value, unit), 'decimal')} = ${x.t(answer, 'decimal')}`]
                : []),
            ],
            slips: [
              ['decimals.place-missed', multiply(answer, rational(10))],
              ['decimals.place-missed', multiply(answer, TENTH)],
              ['times.as-divide', other.n === 1 ? divide(x.value, other) : null],
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
              other.n === 1 && answer.d === 1 && x.rng.chance(0.4)
                ? `How many groups of ${text} are in ${x.text}?`
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
              ['divide.as-times', multiply(x.value, other)],
            ],
            uses: `divides ${x.text} by ${text}`,
          };
        },
      }),
    ],
  },
];
