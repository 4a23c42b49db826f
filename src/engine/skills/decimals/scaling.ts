// Decimals times and divided by ten, a hundred, and their multiples.
import { divide, multiply, rational } from '../../numbers/rational.js';
import { appendZero, tenTimesWholePart } from '../../questions/slips/decimal-operations.js';
import { drawDecimal, placesOf } from './draw-decimal.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';
import { divideStory, timesStory, withStory } from '../retold.js';

const TENTH = rational(1, 10);

/** The skills on decimals times and divided by ten, a hundred, and their multiples. */
export const DECIMAL_SCALING_SKILLS: readonly Skill[] = [
  {
    id: 'dec.times10',
    family: 'times 10',
    title: 'Multiply decimals by 10, 100 and 1000',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.parts', 'mult.by100'],
    codes: { ac9: ['AC9M6N06'], england: ['5MD-1', 'NC-Y5-multdiv-7'], ccss: ['5.NBT.A.2'] },
    templates: [
      numericTemplate({
        id: 'scaled-up',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, rng.pick([1, 1, 2]), 0, 20),
        suits: (value) => placesOf(value) <= 3 && value.n <= 100_000 * value.d,
        make: (x) => {
          const by = x.pick([10, 10, 100, 1000]);
          const answer = multiply(x.value, rational(by));
          const places = placesOf(x.value);
          const pad = Math.log10(by) > places;
          return {
            text: x.rng.chance(0.7) ? `${x.text} × ${x.t(by)}` : `${x.t(by)} × ${x.text}`,
            value: answer,
            expression: `${x.expr} * ${by}`,
            features: {
              rule: true,
              size: Math.round(Math.log10(by)) - 1,
              extraSteps: pad ? 1 : 0,
              adjust: 0.4,
            },
            strategy:
              by === 10
                ? ['Each digit becomes worth ten times as much', `${x.text} × 10 = ${x.t(answer)}`]
                : [
                    `${x.text} × 10 = ${x.t(multiply(x.value, rational(10)))}`,
                    `${x.t(multiply(x.value, rational(10)))} × ${by / 10} = ${x.t(answer)}`,
                  ],
            slips: [
              ['decimals.zero-appended', by === 10 ? appendZero(x.value) : x.value],
              ['decimals.place-missed', multiply(answer, TENTH)],
              ['decimals.place-missed', multiply(answer, rational(10))],
              ['decimals.whole-part-only', by === 10 ? tenTimesWholePart(x.value) : null],
            ],
            uses: `multiplies ${x.text} by ${by}`,
          };
        },
      }),
      numericTemplate({
        id: 'which-power',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, rng.pick([1, 2]), 0, 10),
        suits: (value) => placesOf(value) <= 2 && value.n <= 100 * value.d,
        make: (x) => {
          const by = x.pick([10, 100, 1000]);
          return {
            text: `${x.text} × ? = ${x.t(multiply(x.value, rational(by)))}`,
            value: by,
            expression: `${x.e(multiply(x.value, rational(by)))} / ${x.expr}`,
            features: { rule: true, unknownInside: true, size: Math.round(Math.log10(by)) - 1 },
            strategy: [`${x.text} × ${x.t(by)} = ${x.t(multiply(x.value, rational(by)))}`],
            slips: [
              ['decimals.place-missed', by * 10],
              ['decimals.place-missed', by > 10 ? by / 10 : null],
            ],
            uses: `scales ${x.text} up`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.divide10',
    family: 'divide by 10',
    title: 'Divide by 10, 100 and 1000 with decimal answers',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.times10', 'div.by10'],
    codes: { ac9: ['AC9M6N06'], england: ['NC-Y4-fractions-7', '5MD-1'], ccss: ['5.NBT.A.2'] },
    templates: withStory(divideStory, [
      numericTemplate({
        id: 'scaled-down',
        kinds: ['whole', 'decimal', 'money'],
        free: (rng) => rng.int(3, 480),
        suits: (value, form) =>
          form === 'whole'
            ? value.n % 10 !== 0 && value.n <= 9999
            : placesOf(value) <= 2 && value.n <= 100_000 * value.d,
        make: (x) => {
          const by =
            x.form === 'money'
              ? x.pick([10, 100])
              : x.form === 'decimal' && placesOf(x.value) > 1
                ? 10
                : x.pick([10, 10, 100, ...(x.form === 'whole' && x.n > 9 ? [1000] : [])]);
          const form = x.form === 'money' ? 'money' : 'decimal';
          const answer = divide(x.value, rational(by));
          const tenth = x.t(divide(x.value, rational(10)), form);
          return {
            text: `${x.text} ÷ ${x.t(by, 'whole')}`,
            value: answer,
            form,
            expression: `${x.expr} / ${by}`,
            features: {
              rule: true,
              size: Math.round(Math.log10(by)) - 1 + (answer.n * 10 < answer.d ? 1 : 0),
              adjust: x.form === 'decimal' ? 0.7 : 0.3,
            },
            strategy:
              by === 10
                ? [`${x.t(answer, form)} × 10 = ${x.text}`]
                : [`${x.text} ÷ 10 = ${tenth}`, `${tenth} ÷ ${by / 10} = ${x.t(answer, form)}`],
            slips: [
              // An amount that stays as it is shows no place that was missed.
              ['decimals.place-missed', by === 10 ? null : multiply(answer, rational(10))],
              ['decimals.place-missed', multiply(answer, TENTH)],
              ['divide.as-times', multiply(x.value, rational(by))],
            ],
            uses: `divides ${x.text} by ${x.t(by, 'whole')}`,
          };
        },
      }),
    ]),
  },
  {
    id: 'dec.times-tens',
    title: 'Multiply a decimal by tens and hundreds',
    year: 6,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.times10', 'dec.times-whole'],
    codes: { ac9: ['AC9M6N06'], england: ['6NPV-1', '6AS/MD-2'], ccss: ['5.NBT.B.7'] },
    templates: withStory(timesStory, [
      numericTemplate({
        id: 'times',
        kinds: ['decimal', 'money'],
        free: (rng) => drawDecimal(rng, 1, 0, 10),
        suits: (value) => placesOf(value) <= 2 && value.n <= 50 * value.d && value.d > 1,
        make: (x) => {
          const [k, unit] = x.pick([
            [2, 10],
            [3, 10],
            [4, 10],
            [5, 10],
            [2, 100],
            [3, 100],
          ] as const);
          const ten = multiply(x.value, rational(unit));
          const answer = multiply(ten, rational(k));
          return {
            text: `${x.text} × ${k * unit}`,
            value: answer,
            expression: `${x.expr} * ${k * unit}`,
            features: {
              extraSteps: 1,
              size: (unit === 100 ? 0.5 : 0) + (x.n > 5 * x.d ? 0.5 : 0) + (placesOf(x.value) > 1 ? 0.5 : 0),
              fives: k === 5,
            },
            strategy: [`${x.text} × ${unit} = ${x.t(ten)}`, `${x.t(ten)} × ${k} = ${x.t(answer)}`],
            slips: [
              ['decimals.place-missed', multiply(answer, TENTH)],
              ['decimals.place-missed', multiply(answer, rational(10))],
              ['times.step-forgotten', ten],
            ],
            uses: `multiplies ${x.text} by ${k * unit}`,
          };
        },
      }),
    ]),
  },
];
