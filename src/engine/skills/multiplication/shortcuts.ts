// Multiplying by compensating, by doubles and halves, and in the best order.
import { multiply, rational } from '../../numbers/rational.js';
import { numericTemplate, wholeWithin } from '../sketch.js';
import type { Skill } from '../skill.js';
import { threeFactorsStory, timesStory, withStory } from '../retold.js';
import { tenTimesOff } from './zeros.js';

/** The skills on multiplying by compensating, by doubles and halves, and in the best order. */
export const SHORTCUT_SKILLS: readonly Skill[] = [
  {
    id: 'mult.near',
    title: 'Multiply by 9, 11, 19, 21, 99 and 101 from a round number',
    year: 5,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.by100', 'mult.2d1d', 'add.adjust'],
    codes: {
      ac9: ['AC9M5N06'],
      england: ['NC-Y4-multdiv-3', 'NC-Y5-multdiv-5'],
      ccss: ['3.OA.B.5', '4.NBT.B.5'],
    },
    templates: withStory(timesStory, [
      numericTemplate({
        id: 'compensate',
        kinds: ['whole', 'money'],
        free: (rng) => rng.int(13, 80),
        suits: (value, form) =>
          form === 'money' ? value.n <= 20 * value.d : value.n >= 13 && value.n <= 400,
        make: (x) => {
          const [by, round] = x.pick(
            x.form === 'money'
              ? ([
                  [9, 10],
                  [11, 10],
                  [99, 100],
                ] as const)
              : ([
                  [9, 10],
                  [11, 10],
                  [99, 100],
                  [101, 100],
                  [19, 20],
                  [21, 20],
                ] as const),
          );
          const easy = multiply(x.value, rational(round));
          const answer = multiply(x.value, rational(by));
          const sign = by < round ? '−' : '+';
          return {
            text: `${x.text} × ${by}`,
            value: answer,
            expression: `${x.expr} * ${by}`,
            features: {
              extraSteps: 1,
              size: (round === 20 ? 1 : 0) + (x.value.n > 100 * x.value.d ? 1 : 0),
              adjust: by > round ? -0.3 : 0.2,
              unlike: x.form === 'money' && x.d > 1,
            },
            strategy: [
              `${x.text} × ${round} = ${x.t(easy)}`,
              `${x.t(easy)} ${sign} ${x.text} = ${x.t(answer)}`,
            ],
            slips: [
              ['times.adjust-forgotten', easy],
              ['times.adjust-by-one', rational(easy.n + (by - round) * easy.d, easy.d)],
              ['compensate.wrong-way', multiply(x.value, rational(2 * round - by))],
            ],
            uses: `multiplies ${x.text} by ${by}`,
          };
        },
      }),
    ]),
  },
  {
    id: 'mult.doubling-halving',
    title: 'Multiply by 4, 5, 8, 20, 25 and 50 with doubles and halves',
    year: 5,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.double.large', 'mult.by100', 'div.half.2d'],
    codes: {
      ac9: ['AC9M5N06'],
      england: ['NC-Y5-multdiv-5', 'NC-Y4-multdiv-3'],
      ccss: ['3.OA.B.5', '5.NBT.B.5'],
    },
    templates: withStory(timesStory, [
      numericTemplate({
        id: 'double-again',
        kinds: ['whole', 'money'],
        free: (rng) => rng.int(13, 160),
        suits: (value, form) =>
          form === 'money' ? value.n <= 50 * value.d : value.n >= 13 && value.n <= 999,
        make: (x) => {
          const times = x.pick([4, 4, 8]);
          const steps: string[] = [];
          let now = x.value;
          for (let k = times; k > 1; k /= 2) {
            const next = multiply(now, rational(2));
            steps.push(`2 × ${x.t(now)} = ${x.t(next)}`);
            now = next;
          }
          return {
            text: `${x.text} × ${times}`,
            value: now,
            expression: `${x.expr} * ${times}`,
            features: {
              extraSteps: times === 8 ? 2 : 1,
              size: x.value.n > 100 * x.value.d ? 1 : 0,
              adjust: -0.5,
              unlike: x.form === 'money' && x.d > 1,
            },
            strategy: steps,
            slips: [
              ['times.step-forgotten', multiply(x.value, rational(times / 2))],
              ['times.step-extra', multiply(x.value, rational(times * 2))],
              ['times.neighbour', multiply(x.value, rational(times - 1))],
            ],
            uses: `multiplies ${x.text} by ${times}`,
          };
        },
      }),
      numericTemplate({
        id: 'round-then-part',
        kinds: ['whole', 'money'],
        free: (rng) => 4 * rng.int(4, 30),
        suits: (value, form) =>
          form === 'money' ? value.n <= 20 * value.d : value.n >= 12 && value.n <= 999,
        make: (x) => {
          const [by, round, part] = x.pick([
            [5, 10, 2],
            [50, 100, 2],
            [25, 100, 4],
            [20, 10, 0],
          ] as const);
          const easy = multiply(x.value, rational(round));
          const answer = multiply(x.value, rational(by));
          return {
            text: `${x.text} × ${by}`,
            value: answer,
            expression: `${x.expr} * ${by}`,
            features: {
              extraSteps: 1,
              fives: by === 5,
              size: by === 25 ? 2 : by === 50 ? 1 : 0,
              carries: part > 0 && x.n % part !== 0 ? 1 : 0,
              unlike: x.form === 'money' && x.d > 1,
            },
            strategy:
              part === 0
                ? [`${x.text} × 10 = ${x.t(easy)}`, `2 × ${x.t(easy)} = ${x.t(answer)}`]
                : [`${x.text} × ${round} = ${x.t(easy)}`, `${x.t(easy)} ÷ ${part} = ${x.t(answer)}`],
            slips: [
              ['times.step-forgotten', easy],
              tenTimesOff(x, answer, 'more'),
              tenTimesOff(x, answer, 'less'),
              ['divide.halves-once', by === 25 ? multiply(x.value, rational(50)) : null],
            ],
            uses: `multiplies ${x.text} by ${by}`,
          };
        },
      }),
    ]),
  },
  {
    id: 'mult.three-factors',
    title: 'Multiply three factors in the best order',
    year: 5,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.2d1d', 'mult.by100'],
    codes: {
      ac9: ['AC9M5N06', 'AC9M5A02'],
      england: ['NC-Y4-multdiv-2', 'NC-Y4-multdiv-3'],
      ccss: ['3.OA.B.5'],
    },
    templates: withStory(threeFactorsStory, [
      numericTemplate({
        id: 'pair-to-ten',
        kinds: ['whole', 'decimal', 'money'],
        free: (rng) => rng.int(3, 60),
        suits: (value, form) => (form === 'whole' ? value.n >= 2 && value.n <= 999 : value.n <= 20 * value.d),
        make: (x) => {
          const [a, b] = x.pick([
            [2, 5],
            [5, 2],
            [4, 25],
            [2, 50],
            [5, 20],
          ] as const);
          const answer = multiply(x.value, rational(a * b));
          return {
            text: `${a} × ${x.text} × ${b}`,
            value: answer,
            expression: `${a} * ${x.expr} * ${b}`,
            features: {
              extraSteps: 1,
              size: a * b === 100 ? 1 : 0,
              adjust: -0.6 /* the pair makes a round number */,
              unlike: x.d > 1,
            },
            strategy: [`${a} × ${b} = ${a * b}`, `${a * b} × ${x.text} = ${x.t(answer)}`],
            slips: [
              ['addend.left-out', multiply(x.value, rational(a))],
              ['times.adds-among-factors', multiply(x.value, rational(a + b))],
              tenTimesOff(x, answer, 'more'),
            ],
            uses: `multiplies ${x.text} by ${a} and by ${b}`,
          };
        },
      }),
      numericTemplate({
        id: 'small-factors',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 12),
        suits: wholeWithin(3, 12),
        make: (x) => {
          const a = x.rng.int(2, 4);
          const b = x.rng.int(2, 5);
          return {
            text: `${a} × ${x.text} × ${b}`,
            value: a * b * x.n,
            expression: `${a} * ${x.n} * ${b}`,
            features: {
              extraSteps: 1,
              fives: b === 5,
              size: (x.n > 6 ? 1 : 0) + (a > 2 ? 0.5 : 0),
              adjust: -0.8 /* table facts only */,
            },
            strategy: [`${a} × ${b} = ${a * b}`, `${a * b} × ${x.text} = ${a * b * x.n}`],
            slips: [
              ['addend.left-out', a * x.n],
              ['times.adds-among-factors', a + b + x.n],
              ['times.adds-among-factors', a * x.n + b],
            ],
            uses: `multiplies ${x.text} by ${a} and by ${b}`,
          };
        },
      }),
    ]),
  },
];
