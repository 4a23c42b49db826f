// What percentage means, and percent beside fractions and decimals.
import { divide, multiply, rational } from '../../numbers/rational.js';
import { complementWithExtraTen } from '../../questions/slips/column-addition.js';
import { asImproper } from '../fractions/mixed-steps.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';

const HUNDRED = rational(100);

/** The skills on what percent means, and percent beside fractions and decimals. */
export const PERCENT_MEANING_SKILLS: readonly Skill[] = [
  {
    id: 'pct.hundred',
    family: 'rules of 0 and 1',
    title: 'Percentages are out of a hundred',
    year: 5,
    fluentYear: 6,
    strand: 'percentages',
    prerequisites: ['dec.parts', 'frac.equal', 'add.to100'],
    codes: { ac9: ['AC9M5N04'], england: ['NC-Y5-fractions-11'], ccss: ['6.RP.A.3c'] },
    templates: [
      numericTemplate({
        id: 'out-of-hundred',
        kinds: ['whole'],
        free: (rng) => rng.int(1, 99),
        suits: (value) => value.d === 1 && value.n < 100,
        make: (x) => {
          const ask = x.rng.int(0, 2);
          const rest = 100 - x.n;
          const thing = x.pick(['tiles', 'seats', 'squares', 'beads']);
          return {
            text:
              ask === 0
                ? `${x.text} of 100 ${thing} ${x.n === 1 ? 'is' : 'are'} green. What percentage are green?`
                : ask === 1
                  ? `${x.text}% + ?% = 100%`
                  : `${x.text}% of the ${thing} are blue. What percentage are not blue?`,
            value: ask === 0 ? x.n : rest,
            expression: ask === 0 ? `${x.n} / 100 * 100` : `100 - ${x.n}`,
            features: {
              rule: ask === 0,
              story: ask !== 1,
              unknownInside: ask === 1,
              carries: ask > 0 && x.n % 10 !== 0 ? 1 : 0,
              adjust: -0.6,
            },
            strategy: ask === 0 ? [`${x.n} out of 100 is ${x.n}%`] : [`${x.n} + ${rest} = 100`],
            slips:
              ask === 0
                ? [
                    ['part.rest-given', rest],
                    [
                      x.n % 10 === 0 ? 'percent.tenths-as-percent' : 'decimals.place-missed',
                      rational(x.n, 10),
                    ],
                  ]
                : [
                    ['fractions.complement-of-top', x.n],
                    // A one-digit percent has no tens of which one could be too many.
                    ['complement.extra-ten', x.n > 9 ? complementWithExtraTen(x.n, rest) : null],
                    ['fact.one-out', x.n > 9 ? null : rest - 1],
                  ],
            uses: ask === 0 ? `reads ${x.text} out of a hundred` : `completes ${x.text}% to a hundred`,
          };
        },
      }),
      numericTemplate({
        id: 'hundred-percent',
        kinds: ['whole', 'decimal', 'money', 'fraction'],
        free: (rng) => rng.int(3, 200),
        suits: (value) => value.n > 0,
        make: (x) => ({
          text: `100% of ${x.text}`,
          value: x.value,
          expression: `(100 / 100) * ${x.expr}`,
          features: { rule: true, adjust: -0.7 },
          strategy: [`100% is all of it, so ${x.text}`],
          slips: [
            ['percent.as-amount', 100],
            ['percent.divides-by-it', divide(x.value, HUNDRED)],
            ['percent.times-it', multiply(x.value, HUNDRED)],
          ],
          uses: `takes all of ${x.text}`,
        }),
      }),
    ],
  },
  {
    id: 'pct.match',
    title: 'Match percentages with fractions and decimals',
    year: 5,
    fluentYear: 6,
    strand: 'percentages',
    prerequisites: ['pct.hundred', 'dec.fraction'],
    codes: { ac9: ['AC9M5N04'], england: ['NC-Y5-fractions-12', 'NC-Y6-fractions-11'], ccss: ['6.RP.A.3c'] },
    templates: [
      numericTemplate({
        id: 'to-percent',
        kinds: ['fraction', 'decimal'],
        free: (rng) =>
          rng.pick([
            rational(1, 2),
            rational(1, 4),
            rational(3, 4),
            rational(1, 5),
            rational(2, 5),
            rational(4, 5),
            rational(1, 10),
            rational(7, 10),
            rational(9, 20),
            rational(3, 25),
          ]),
        suits: (value) => value.d > 1 && 100 % value.d === 0 && value.n <= 4 * value.d,
        make: (x) => {
          const percent = x.n * (100 / x.d);
          return {
            text: x.rng.chance(0.5)
              ? `${x.text} = ?%`
              : x.n < x.d
                ? `What percentage is the same as ${x.text}?`
                : `${x.text} = ?%`,
            value: percent,
            form: 'whole',
            expression: `${x.form === 'fraction' ? `(${x.n}/${x.d})` : x.expr} * 100`,
            features: {
              size: x.form === 'fraction' && x.d > 10 ? 1 : 0,
              extraSteps: x.n > x.d ? 1 : 0,
              adjust: x.d === 2 ? -0.8 : x.form === 'decimal' ? -0.3 : 0,
            },
            strategy:
              x.form === 'fraction'
                ? [...asImproper(x), `1/${x.d} = ${100 / x.d}/100`, `${x.n} × ${100 / x.d} = ${percent}`]
                : [`${x.text} = ${percent}/100`],
            slips: [
              ['percent.tenths-as-percent', percent % 10 === 0 ? percent / 10 : null],
              [
                'fractions.digits-after-point',
                x.form === 'fraction' && x.n < x.d ? Number(`${x.n}${x.d}`) : null,
              ],
              ['percent.count-as-percent', x.form === 'fraction' && x.n < x.d ? x.n : null],
              ['fractions.bottom-only', x.form === 'fraction' && x.n < x.d ? x.d : null],
              ['decimals.place-missed', x.form === 'fraction' ? null : percent * 10],
              ['part.rest-given', percent < 100 ? 100 - percent : null],
              ['fractions.whole-ignored', percent > 100 ? percent % 100 : null],
            ],
            uses: `writes ${x.text} as a percentage`,
          };
        },
      }),
      numericTemplate({
        id: 'from-percent',
        kinds: ['whole'],
        free: (rng) => 5 * rng.int(1, 19),
        suits: (value) => value.d === 1 && value.n < 100,
        make: (x) => {
          const bottoms = [2, 4, 5, 10, 20, 100].filter((d) => (x.n * d) % 100 === 0);
          const d = x.pick(bottoms.length > 1 ? bottoms.slice(0, -1) : bottoms);
          const asDecimal = x.rng.chance(0.5);
          return {
            text: asDecimal ? `What is ${x.text}% as a decimal?` : `${x.text}% = ?/${d}`,
            value: asDecimal ? rational(x.n, 100) : (x.n * d) / 100,
            form: asDecimal ? 'decimal' : 'whole',
            expression: asDecimal ? `${x.n} / 100` : `${x.n} / 100 * ${d}`,
            features: {
              size: x.n < 10 || (!asDecimal && d === 20) ? 1 : 0,
              adjust: d === 100 && !asDecimal ? -0.8 : d === 2 ? -0.5 : -0.2,
            },
            strategy: asDecimal
              ? [`${x.n} ÷ 100 = ${x.t(rational(x.n, 100), 'decimal')}`]
              : [`${x.n}% = ${x.n}/100`, ...(d === 100 ? [] : [`${x.n}/100 = ${(x.n * d) / 100}/${d}`])],
            slips: asDecimal
              ? [
                  ['decimals.place-missed', rational(x.n, 10)],
                  ['decimals.place-missed', rational(x.n, 1000)],
                ]
              : [
                  ['percent.as-amount', x.n],
                  ['decimals.place-missed', d === 100 ? x.n * 10 : null],
                  ['divide.neighbour', d === 100 ? null : (x.n * d) / 100 + 1],
                ],
            uses: `writes ${x.text}% in another way`,
          };
        },
      }),
    ],
  },
];
