// Decimals and fractions of one value.
import { compare, divide, floor, type Rational, rational, subtract } from '../../numbers/rational.js';
import { asImproper } from '../fractions/mixed-steps.js';
import { placesOf } from './draw-decimal.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';

/**
 * The digits of a fraction copied behind the point: 2/5 as 0.25. Null for mixed numbers and hundredths, and for tenths and
 * twentieths, where the copy ends in a zero that nobody would see in 0.71.
 */
function copiedDigits({ n, d }: Rational): Rational | null {
  const digits = `${n}${d}`;
  return n < d && d < 100 && d % 10 !== 0 ? rational(Number(digits), 10 ** digits.length) : null;
}

/** Only the top behind the point: 9/20 as 0.9. Null where tenths or hundredths are written so. */
function topAlone({ n, d }: Rational): Rational | null {
  return n < d && d > 10 && d < 100 ? rational(n, 10 ** String(n).length) : null;
}

/** The skills on decimals and fractions of one value. */
export const DECIMAL_FRACTION_SKILLS: readonly Skill[] = [
  {
    id: 'dec.fraction',
    title: 'Match decimals and fractions',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.parts', 'frac.equal'],
    codes: {
      ac9: ['AC9M4N03', 'AC9M5N04'],
      england: ['NC-Y4-fractions-6', '5F-3', 'NC-Y5-fractions-6', '5NPV-4'],
      ccss: ['4.NF.C.6'],
    },
    templates: [
      numericTemplate({
        id: 'to-fraction',
        kinds: ['decimal'],
        free: (rng) =>
          rng.pick([
            rational(1, 2),
            rational(1, 4),
            rational(3, 4),
            rational(1, 5),
            rational(2, 5),
            rational(3, 5),
            rational(4, 5),
            rational(3, 20),
            rational(9, 20),
          ]),
        suits: (value) => placesOf(value) <= 2 && value.n <= 10 * value.d && value.d > 1,
        make: (x) => {
          const bottom = x.d < 10 || x.rng.chance(0.5) ? x.d : 100;
          const top = x.n * (bottom / x.d);
          const whole = floor(x.value);
          return {
            text: `${x.text} = ?/${bottom}`,
            value: top,
            form: 'whole',
            expression: `${x.expr} * ${bottom}`,
            features: {
              size: bottom === 20 || bottom === 25 || bottom === 50 ? 1 : 0,
              adjust: bottom === 2 ? -0.8 : bottom === 100 ? -0.3 : 0,
              extraSteps: x.n > x.d ? 1 : 0,
            },
            strategy:
              whole > 0
                ? [
                    `${whole} = ${whole * bottom}/${bottom}`,
                    `${x.t(subtract(x.value, rational(whole)))} = ${top % bottom}/${bottom}`,
                    `${whole * bottom} + ${top % bottom} = ${top}`,
                  ]
                : [
                    `1/${bottom} = ${x.t(rational(1, bottom))}`,
                    `${top} × ${x.t(rational(1, bottom))} = ${x.text}`,
                  ],
            slips: [
              ['fractions.digits-after-point', whole > 0 ? null : x.n * (10 ** placesOf(x.value) / x.d)],
              ['fractions.whole-ignored', whole > 0 ? top % bottom : null],
              ['fractions.whole-as-one-part', whole > 0 ? whole + (top % bottom) : null],
              ['decimals.hundredths-as-tenths', bottom === 100 && top % 10 === 0 ? top / 10 : null],
              ['part.rest-given', top < bottom && bottom < 100 ? bottom - top : null],
              ['decimals.place-missed', bottom === 100 ? top * 10 : null],
            ],
            uses: `writes ${x.text} as a fraction`,
          };
        },
      }),
      numericTemplate({
        id: 'to-hundredths',
        kinds: ['fraction'],
        free: (rng) =>
          rng.pick([
            rational(1, 2),
            rational(1, 4),
            rational(3, 4),
            rational(2, 5),
            rational(3, 5),
            rational(7, 10),
            rational(9, 20),
            rational(6, 25),
          ]),
        suits: (value) => placesOf(value) <= 2 && value.n <= 10 * value.d,
        make: (x) => {
          const whole = floor(x.value);
          const hundredths = x.n * (100 / x.d);
          const tenths = placesOf(x.value) === 1 && x.rng.chance(0.5) && x.d !== 10;
          const ask = x.rng.int(0, 1);
          const bottom = tenths ? 10 : 100;
          const value = tenths ? hundredths / 10 : hundredths;
          return ask === 0
            ? {
                text: `${x.text} = ?/${bottom}`,
                value,
                form: 'whole',
                expression: `(${x.n}/${x.d}) * ${bottom}`,
                features: {
                  extraSteps: whole > 0 ? 1 : 0,
                  size: x.d > 5 && x.d !== 10 ? 1 : 0,
                  adjust: tenths ? -0.4 : -0.2,
                },
                strategy: [
                  ...asImproper(x),
                  `1/${x.d} = ${bottom / x.d}/${bottom}`,
                  `${x.n} × ${bottom / x.d} = ${value}`,
                ],
                slips: [
                  ['fractions.top-unchanged', x.n % x.d],
                  ['fractions.whole-ignored', whole > 0 ? value % bottom : null],
                  ['fractions.equal-by-adding', whole > 0 ? null : x.n + bottom - x.d],
                ],
                uses: `writes ${x.text} in ${tenths ? 'tenths' : 'hundredths'}`,
              }
            : {
                text: `What is ${x.text} as a decimal?`,
                value: x.value,
                form: 'decimal',
                expression: `${x.n} / ${x.d}`,
                features: {
                  extraSteps: whole > 0 ? 1 : 0,
                  size: x.d > 5 && x.d !== 10 ? 1 : 0,
                  adjust: x.d === 2 ? -0.6 : 0,
                },
                strategy: [
                  `${x.n % x.d}/${x.d} = ${hundredths % 100}/100`,
                  `${x.text} = ${x.t(x.value, 'decimal')}`,
                ],
                slips: [
                  ['fractions.digits-after-point', copiedDigits(x.value)],
                  [
                    'fractions.digits-after-point',
                    whole === 0 && x.d < 10 ? rational(x.n * 10 + x.d, 10) : null,
                  ],
                  ['fractions.bottom-only', whole === 0 && x.d < 10 ? rational(x.d, 10) : topAlone(x.value)],
                  ['decimals.tenths-as-ones', whole === 0 && x.d === 10 ? x.n : null],
                  ['fractions.whole-ignored', whole > 0 ? rational(x.n % x.d, x.d) : null],
                  ['decimals.place-missed', divide(x.value, rational(10))],
                ],
                uses: `writes ${x.text} as a decimal`,
              };
        },
      }),
      numericTemplate({
        id: 'compare-forms',
        kinds: ['fraction', 'decimal'],
        freeForm: 'fraction',
        free: (rng) =>
          rng.pick([rational(1, 4), rational(3, 4), rational(2, 5), rational(3, 5), rational(4, 5)]),
        suits: (value) => placesOf(value) <= 2 && value.n < value.d,
        make: (x) => {
          const other =
            x.form === 'fraction'
              ? rational(x.rng.int(1, 9), 10)
              : x.pick([
                  rational(1, 2),
                  rational(1, 4),
                  rational(3, 4),
                  rational(2, 5),
                  rational(3, 5),
                  rational(1, 5),
                ]);
          const order = compare(x.value, other);
          if (order === 0) return null;
          const first = order > 0;
          const otherForm = x.form === 'fraction' ? 'decimal' : 'fraction';
          const otherText = x.t(other, otherForm);
          const [fraction, decimal] = x.form === 'fraction' ? [x.value, other] : [other, x.value];
          // A child who copies the digits of the fraction goes wrong only where that turns the order round.
          const copied = copiedDigits(fraction);
          const turns = copied !== null && compare(copied, decimal) === -compare(fraction, decimal);
          return {
            text: `Which is greater: ${x.text} or ${otherText}?`,
            value: first ? x.value : other,
            form: first === (x.form === 'fraction') ? 'fraction' : 'decimal',
            expression: `max(${x.e(x.value)}, ${x.e(other)})`,
            features: { fewChoices: true, extraSteps: 1, size: Math.abs(order) * 10 < x.d * other.d ? 1 : 0 },
            strategy: [
              `${x.t(fraction, 'fraction')} = ${x.t(fraction, 'decimal')}`,
              `${x.t(first ? x.value : other, 'decimal')} is more than ${x.t(first ? other : x.value, 'decimal')}`,
            ],
            slips: [
              [
                turns ? 'fractions.digits-after-point' : 'compare.other-way-round',
                first ? other : x.value,
                first ? otherForm : x.form,
              ],
            ],
            uses: `compares ${x.text} with ${otherText}`,
          };
        },
      }),
    ],
  },
];
