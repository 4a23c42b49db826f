// Reading decimals: wholes, tenths, hundredths, and steps from them.
import { add, compare, floor, multiply, rational, subtract } from '../../numbers/rational.js';
import { addPartsApart } from '../../questions/slips/decimal-operations.js';
import { drawDecimal, placesOf } from './draw-decimal.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';

const TENTH = rational(1, 10);

const ONE = rational(1);

/** The skills on reading decimals: wholes, tenths, hundredths, and steps from them. */
export const DECIMAL_READING_SKILLS: readonly Skill[] = [
  {
    id: 'dec.parts',
    title: 'Take a decimal apart: wholes, tenths, hundredths',
    year: 3,
    fluentYear: 4,
    strand: 'decimals',
    prerequisites: ['frac.count', 'place.tens-ones'],
    codes: {
      ac9: ['AC9M4N01'],
      england: ['NC-Y3-fractions-1', 'NC-Y4-fractions-5', '5NPV-2'],
      ccss: ['4.NF.C.6'],
    },
    templates: [
      numericTemplate({
        id: 'wholes',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 1, 20),
        suits: (value) => value.n > value.d && placesOf(value) <= 3,
        make: (x) => {
          const whole = floor(x.value);
          const rest = subtract(x.value, rational(whole));
          const ask = x.rng.int(0, 2);
          return {
            text:
              ask === 0
                ? `How many whole ones are in ${x.text}?`
                : ask === 1
                  ? `${x.text} = ${x.t(whole)} + ?`
                  : `? + ${x.t(rest)} = ${x.text}`,
            value: ask === 1 ? rest : whole,
            expression: ask === 1 ? `${x.expr} - ${whole}` : `floor(${x.expr})`,
            // Read straight off the print.
            features: { rule: true, adjust: ask === 0 ? -0.6 : placesOf(x.value) - 1 },
            strategy: [`${x.t(whole)} + ${x.t(rest)} = ${x.text}`],
            slips: [
              [
                'decimals.tenths-as-ones',
                // Only a single digit after the point counts tenths; and where the tenths are printed and the wholes
                // asked for, taking tenths for ones leads elsewhere.
                ask === 2 || placesOf(x.value) > 1 ? null : multiply(rest, rational(10)),
              ],
              [
                'decimals.point-forgotten',
                ask === 0
                  ? x.n * (10 ** placesOf(x.value) / x.d)
                  : ask === 1 && placesOf(x.value) > 1
                    ? multiply(rest, rational(10 ** placesOf(x.value)))
                    : null,
              ],
              [
                placesOf(rest) === 1 ? 'decimals.hundredths-as-tenths' : 'decimals.place-missed',
                ask === 1 ? multiply(rest, TENTH) : null,
              ],
              ['missing.adds-all', ask === 2 ? add(x.value, rest) : null],
              ['decimals.rounds-up-always', ask === 1 ? null : whole + 1],
            ],
            uses: `takes ${x.text} apart`,
          };
        },
      }),
      numericTemplate({
        id: 'tenths',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 0, 10),
        suits: (value) => placesOf(value) <= 2 && value.n <= 100 * value.d,
        make: (x) => {
          const scale = 10 ** placesOf(x.value);
          const count = x.n * (scale / x.d);
          const words = x.rng.chance(0.5);
          return {
            text: words ? `How many ${x.parts(scale)} are in ${x.text}?` : `${x.text} = ?/${scale}`,
            value: count,
            expression: `${x.expr} * ${scale}`,
            features: { size: scale === 100 ? 1 : 0, adjust: x.n < x.d ? -0.8 : 0.3 },
            strategy: [
              ...(x.n > x.d ? [`${floor(x.value)} = ${x.t(floor(x.value) * scale, 'whole')}/${scale}`] : []),
              `${x.text} = ${x.t(count, 'whole')}/${scale}`,
            ],
            slips: [
              ['fractions.whole-ignored', x.n > x.d ? count % scale : null],
              ['fractions.whole-as-one-part', x.n > x.d ? floor(x.value) + (count % scale) : null],
              [scale === 10 ? 'decimals.hundredths-as-tenths' : 'decimals.place-missed', count * 10],
              ['decimals.place-missed', x.n < x.d ? rational(count, 10) : null],
            ],
            uses: `counts the ${x.parts(scale)} in ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.step',
    family: 'one more',
    title: 'One, a tenth or a hundredth more or less',
    year: 4,
    fluentYear: 5,
    strand: 'decimals',
    prerequisites: ['dec.parts'],
    codes: {
      ac9: ['AC9M4N01'],
      england: ['NC-Y4-fractions-2', 'NC-Y3-fractions-1', '5NPV-1'],
      ccss: ['4.NF.C.6'],
    },
    templates: [
      numericTemplate({
        id: 'step',
        kinds: ['decimal', 'money'],
        free: (rng) => drawDecimal(rng, 1, 0, 12),
        suits: (value) => placesOf(value) <= 3 && value.n <= 1_000_000 * value.d,
        make: (x) => {
          const units =
            x.form === 'money'
              ? [ONE, TENTH]
              : [ONE, TENTH, ...(placesOf(x.value) >= 2 ? [rational(1, 100)] : [])];
          const unit = x.pick(units);
          const up = compare(x.value, unit) <= 0 || x.rng.chance(0.6);
          const answer = up ? add(x.value, unit) : subtract(x.value, unit);
          const name = unit.d === 1 ? 'one' : `one ${x.parts(unit.d, 1)}`;
          const crosses = unit.d > 1 && floor(answer) !== floor(x.value);
          const op = up ? '+' : '−';
          return {
            text:
              x.form === 'money' || x.rng.chance(0.5)
                ? `${x.text} ${op} ${x.t(unit)}`
                : `What is ${name} ${up ? 'more' : 'less'} than ${x.text}?`,
            value: answer,
            expression: `${x.expr} ${up ? '+' : '-'} ${x.e(unit)}`,
            features: {
              rule: !crosses,
              extraSteps: crosses ? 1 : 0,
              size: unit.d === 100 ? 1 : 0,
              adjust: (unit.d === 1 ? -0.7 : 0) + (x.form === 'money' ? -0.3 : 0),
            },
            strategy: [
              ...(x.form === 'decimal'
                ? [
                    unit.d === 1
                      ? 'The whole part moves by one, the part after the point stays'
                      : `Count ${x.locale.countsWith} ${x.parts(unit.d)}: one ${x.parts(unit.d, 1)} is ${x.t(unit)}`,
                  ]
                : []),
              `${x.text} ${op} ${x.t(unit)} = ${x.t(answer)}`,
            ],
            slips: [
              [
                'operation.swapped',
                up ? (compare(x.value, unit) > 0 ? subtract(x.value, unit) : null) : add(x.value, unit),
              ],
              [
                'place.wrong-step',
                unit.d === 1
                  ? up
                    ? add(x.value, TENTH)
                    : subtract(x.value, TENTH)
                  : up
                    ? add(x.value, ONE)
                    : subtract(x.value, ONE),
              ],
              [
                'decimals.hundredths-as-tenths',
                unit.d === 10
                  ? up
                    ? add(x.value, rational(1, 100))
                    : subtract(x.value, rational(1, 100))
                  : null,
              ],
              [
                'decimals.parts-apart',
                crosses && up && x.form === 'decimal' && placesOf(x.value) === 1
                  ? addPartsApart(x.value, unit)
                  : null,
              ],
            ],
            uses: `steps from ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'sequence',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 1, 10),
        suits: (value) => placesOf(value) === 1 && value.n * 10 >= 5 * value.d && value.n <= 200 * value.d,
        make: (x) => {
          const unit = x.pick([TENTH, rational(2, 10), rational(5, 10)]);
          const first = subtract(x.value, multiply(unit, rational(2)));
          if (first.n < 0) return null;
          const answer = add(x.value, unit);
          return {
            text: `What comes next: ${x.t(first)}, ${x.t(subtract(x.value, unit))}, ${x.text}, ?`,
            value: answer,
            expression: `${x.expr} + ${x.e(unit)}`,
            features: { extraSteps: floor(answer) > floor(x.value) ? 1 : 0, size: unit.n === 1 ? 0 : 0.5 },
            strategy: [
              `${x.text} − ${x.t(subtract(x.value, unit))} = ${x.t(unit)}`,
              `${x.text} + ${x.t(unit)} = ${x.t(answer)}`,
            ],
            slips: [
              ['decimals.parts-apart', floor(answer) > floor(x.value) ? addPartsApart(x.value, unit) : null],
              ['pattern.adds-one', add(x.value, ONE)],
              ['fact.one-out', add(answer, TENTH)],
            ],
            uses: `counts on from ${x.text}`,
          };
        },
      }),
    ],
  },
];
