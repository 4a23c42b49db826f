// The whole from a percent of it, and the percent from a part.
import { divide, floor, multiply, rational } from '../../numbers/rational.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';

/** The skills on the whole from a percent of it, and the percent from a part. */
export const WHOLE_FROM_PERCENT_SKILLS: readonly Skill[] = [
  {
    id: 'pct.whole',
    title: 'Find the whole, or the percentage, from a part',
    year: 6,
    fluentYear: 6,
    strand: 'percentages',
    prerequisites: ['pct.of', 'frac.whole-from-part'],
    codes: { ac9: ['AC9M6N07'], england: ['NC-Y6-ratio-2', 'NC-Y6-fractions-11'], ccss: ['6.RP.A.3c'] },
    // Works backwards; common practice.
    shift: 0.5,
    templates: [
      numericTemplate({
        id: 'whole-from-percent',
        kinds: ['whole', 'decimal', 'money', 'fraction'],
        free: (rng) => rng.int(3, 60),
        suits: (value, form) =>
          form === 'whole' ? value.n >= 2 && value.n <= 1000 : value.n <= 50 * value.d && value.d <= 100,
        make: (x) => {
          const [percent, by] = x.pick([
            [10, 10],
            [50, 2],
            [25, 4],
            [20, 5],
          ] as const);
          const answer = multiply(x.value, rational(by));
          return {
            text: x.rng.chance(0.5)
              ? `${percent}% of ? = ${x.text}`
              : `${percent}% of a number is ${x.text}. What is the number?`
                  .replace('a number', x.form === 'money' ? 'an amount' : 'a number')
                  .replace('the number?', x.form === 'money' ? 'the amount?' : 'the number?'),
            value: answer,
            expression: `${x.expr} / (${percent} / 100)`,
            features: {
              unknownInside: true,
              rule: percent === 10,
              extraSteps: x.n > 12 * x.d && percent !== 10 ? 1 : 0,
              unlike: x.d > 1,
              adjust: percent === 50 ? -0.8 : 0.2,
            },
            strategy: [`100 ÷ ${percent} = ${by}`, `${by} × ${x.text} = ${x.t(answer)}`],
            slips: [
              ['divide.not-undone', divide(x.value, rational(by))],
              ['percent.times-it', multiply(x.value, rational(percent))],
              ['percent.as-amount', percent],
            ],
            uses: `takes ${x.text} as ${percent}% of a whole`,
          };
        },
      }),
      numericTemplate({
        id: 'percent-from-part',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 45),
        suits: (value) => value.d === 1 && value.n >= 2 && value.n <= 400,
        make: (x) => {
          const percent = x.pick([10, 20, 25, 50, 75, 40, 60]);
          if ((x.n * 100) % percent !== 0) return null;
          const whole = (x.n * 100) / percent;
          return {
            text: x.rng.chance(0.5)
              ? `What percentage of ${x.t(whole)} is ${x.text}?`
              : `Of ${x.t(whole)} people, ${x.text} wear a hat. What percentage is that?`,
            value: percent,
            expression: `${x.n} / ${whole} * 100`,
            features: {
              extraSteps: percent === 50 ? 0 : 1,
              size: percent > 50 || percent === 40 ? 1 : 0,
              adjust: percent === 50 ? -0.6 : 0,
            },
            strategy: [
              whole === 100 ? `${x.n} out of 100 is ${percent}%` : `${x.n}/${whole} = ${percent}/100`,
            ],
            slips: [
              ['percent.count-as-percent', x.n],
              ['part.rest-given', percent === 50 ? null : 100 - percent],
              ['ratio.adds', whole - x.n],
              ['percent.times-in-whole', whole % x.n === 0 ? whole / x.n : null],
            ],
            uses: `compares ${x.text} with ${x.t(whole)}`,
          };
        },
      }),
      numericTemplate({
        id: 'percent-of-day-part',
        kinds: ['fraction', 'decimal'],
        free: (rng) => rng.pick([rational(3, 4), rational(2, 5), rational(3, 5), rational(7, 10)]),
        suits: (value) => value.d > 1 && 100 % value.d === 0 && value.n < value.d,
        make: (x) => {
          const unit = floor(rational(100, x.d));
          const percent = x.n * unit;
          return {
            text: `${x.text} of the seats are taken. What percentage are free?`,
            value: 100 - percent,
            form: 'whole',
            expression: `100 * (1 - ${x.form === 'fraction' ? `${x.n}/${x.d}` : x.expr})`,
            features: { story: true, extraSteps: 1, size: x.d > 10 ? 1 : 0, adjust: x.d === 2 ? -0.8 : -0.2 },
            strategy: [`${x.text} = ${percent}/100`, `100 − ${percent} = ${100 - percent}`],
            slips: [
              ['fractions.complement-of-top', percent],
              ['percent.count-as-percent', x.form === 'fraction' ? x.d - x.n : null],
              ['percent.tenths-as-percent', (100 - percent) % 10 === 0 ? (100 - percent) / 10 : null],
            ],
            uses: `takes ${x.text} from a whole, as a percentage`,
          };
        },
      }),
    ],
  },
];
