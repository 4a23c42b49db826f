// Reading and naming fractions, and wholes inside mixed numbers.
import { add, floor, rational, subtract } from '../../numbers/rational.js';
import { isProper, properFraction } from './draw-fraction.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';

/** The skills on reading and naming fractions, and wholes inside mixed numbers. */
export const NAMING_SKILLS: readonly Skill[] = [
  {
    id: 'frac.parts',
    title: 'Read a fraction: how many parts, which parts',
    year: 2,
    fluentYear: 3,
    strand: 'fractions',
    prerequisites: ['div.share'],
    codes: { ac9: ['AC9M2N03', 'AC9M3N02'], england: ['NC-Y2-fractions-1', '3F-1'], ccss: ['3.NF.A.1'] },
    templates: [
      numericTemplate({
        id: 'read',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [2, 3, 4, 5, 8]),
        suits: isProper,
        make: (x) => {
          const bottom = x.rng.chance(0.5);
          return {
            text: bottom ? `What is the bottom number of ${x.text}?` : `What is the top number of ${x.text}?`,
            value: bottom ? x.d : x.n,
            form: 'whole',
            expression: bottom ? `${x.n} / (${x.n}/${x.d})` : `${x.d} * (${x.n}/${x.d})`,
            // Read straight off the print.
            features: { rule: true, adjust: bottom ? -0.6 : -0.7 },
            strategy: [bottom ? `${x.d} parts make one whole` : `${x.n} of ${x.d} parts`],
            slips: [['fractions.top-for-bottom', bottom ? x.n : x.d]],
            uses: `reads ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'how-many-parts',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [3, 4, 5, 8]),
        suits: isProper,
        make: (x) => {
          const counts = x.n > 1 && x.rng.chance(0.5);
          return {
            text: counts
              ? `How many ${x.parts(x.d)} are in ${x.text}?`
              : `${x.text} is ${x.n} ${x.parts(x.d, x.n)}. How many ${x.parts(x.d)} make one whole?`,
            value: counts ? x.n : x.d,
            form: 'whole',
            expression: counts ? `(${x.n}/${x.d}) / (1/${x.d})` : `1 / (1/${x.d})`,
            features: { rule: true, adjust: counts ? -0.1 : 0, size: x.d > 8 ? 1 : 0 },
            strategy: [
              counts ? `${x.text} means ${x.n} ${x.parts(x.d)}` : `${x.d} ${x.parts(x.d)} make one whole`,
            ],
            slips: [
              ['fractions.top-for-bottom', counts ? x.d : x.n],
              [counts ? 'fractions.part-left' : 'fractions.part-to-rest', x.d - x.n],
            ],
            uses: counts ? `counts the parts of ${x.text}` : `uses the parts of ${x.text}`,
            figure:
              x.d <= 12 && x.rng.chance(0.4)
                ? { kind: 'fraction-bar', parts: x.d, shaded: counts ? x.n : 0 }
                : undefined,
          };
        },
      }),
      numericTemplate({
        id: 'shaded',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [2, 3, 4, 5, 8]),
        suits: (value) => isProper(value) && value.d <= 25,
        make: (x) => {
          const shape = x.pick(['bar', 'circle'] as const);
          const rest = x.rng.chance(0.4);
          const shaded = rest ? x.d - x.n : x.n;
          return {
            text: `A ${shape} has ${x.d} equal parts, ${shaded} shaded. What fraction is ${rest ? 'not shaded' : 'shaded'}?`,
            value: x.value,
            form: 'fraction',
            expression: `${x.n} / ${x.d}`,
            features: { drawn: true, extraSteps: rest ? 1 : 0 },
            strategy: [...(rest ? [`${x.d} − ${shaded} = ${x.n}`] : []), `${x.n} of ${x.d} equal parts`],
            slips: [
              ['fractions.part-to-rest', { top: x.n, bottom: x.d - x.n }],
              ['fractions.top-for-bottom', { top: x.d, bottom: x.n }],
              [rest ? 'part.rest-given' : 'fractions.part-left', rational(x.d - x.n, x.d)],
            ],
            uses: `finds ${x.text} in a picture`,
            figure:
              shape === 'bar'
                ? { kind: 'fraction-bar', parts: x.d, shaded }
                : { kind: 'fraction-circle', parts: x.d, shaded },
          };
        },
      }),
    ],
  },
  {
    id: 'frac.whole-part',
    family: 'round',
    title: 'Wholes in a mixed number and the nearest whole',
    year: 3,
    fluentYear: 4,
    strand: 'fractions',
    prerequisites: ['frac.parts'],
    codes: { ac9: ['AC9M4N04'], england: ['3F-3', '4F-1'], ccss: ['3.NF.A.2', '3.NF.A.3c'] },
    templates: [
      numericTemplate({
        id: 'wholes',
        kinds: ['fraction'],
        free: (rng) => add(rational(rng.int(1, 5)), properFraction(rng, [2, 3, 4, 5, 8])),
        suits: (value) => value.n > value.d,
        make: (x) => {
          const whole = floor(x.value);
          const rest = subtract(x.value, rational(whole));
          const ask = x.rng.int(0, 2);
          return {
            text:
              ask === 0
                ? `What is the whole number part of ${x.text}?`
                : ask === 1
                  ? `${x.text} = ${whole} + ?`
                  : `? + ${x.t(rest)} = ${x.text}`,
            value: ask === 1 ? rest : whole,
            expression: ask === 1 ? `${x.expr} - ${whole}` : `floor(${x.expr})`,
            // The whole is printed in front.
            features: { rule: true, adjust: ask === 0 ? -0.6 : 0 },
            strategy: [`${whole} + ${x.t(rest)} = ${x.text}`],
            slips:
              ask === 1
                ? [
                    // For 1 3/4 both are the printed 1 again, and repeating that is the likelier.
                    ['part.rest-given', whole],
                    ['fractions.whole-as-one-part', { top: rest.n + whole, bottom: rest.d }],
                    ['fractions.whole-kept', x.value],
                  ]
                : [
                    ['fractions.part-for-whole', rest.n],
                    ['fractions.part-for-whole', rest.d],
                    ['fractions.whole-ignored', 0],
                  ],
            uses: `takes ${x.text} apart`,
          };
        },
      }),
      numericTemplate({
        id: 'nearest-whole',
        kinds: ['fraction'],
        free: (rng) => add(rational(rng.int(0, 5)), properFraction(rng)),
        suits: (value) => value.d <= 100 && (value.n * 2) % value.d !== 0 && value.n < 1000 * value.d,
        make: (x) => {
          const whole = floor(x.value);
          const up = (x.n % x.d) * 2 > x.d;
          const open = x.rng.chance(0.5);
          return {
            text: open
              ? `Which whole number is nearest to ${x.text}?`
              : `Is ${x.text} nearer to ${x.t(whole)} or ${x.t(whole + 1)}?`,
            value: up ? whole + 1 : whole,
            form: 'whole',
            expression: `round(${x.expr})`,
            features: { fewChoices: true, size: x.d > 5 ? 1 : 0, adjust: 0.3 },
            strategy: [
              `${x.n % x.d}/${x.d} is ${up ? 'more' : 'less'} than 1/2, so ${whole > 0 ? x.text : 'it'} is nearer to ${x.t(up ? whole + 1 : whole)}`,
            ],
            slips: [
              [up ? 'round.cut-off' : 'round.always-up', up ? whole : whole + 1],
              // Where two numbers are offered, no child picks a third.
              ['fractions.part-for-whole', open ? x.n % x.d : null],
            ],
            uses: `rounds ${x.text}`,
            figure: {
              kind: 'number-line',
              from: whole,
              to: whole + 1,
              step: 1 / x.d,
              labels: [whole, whole + 1],
              mark: x.n / x.d,
            },
          };
        },
      }),
      numericTemplate({
        id: 'half-or-more',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [3, 4, 5, 8, 10]),
        suits: (value) => isProper(value) && value.n * 2 !== value.d,
        make: (x) => {
          const more = x.n * 2 > x.d;
          const half = rational(1, 2);
          const askMore = x.rng.chance(0.7);
          const pickFirst = askMore === more;
          return {
            text: `Which is ${askMore ? 'greater' : 'less'}: ${x.text} or 1/2?`,
            value: pickFirst ? x.value : half,
            expression: `${askMore ? 'max' : 'min'}(${x.n}/${x.d}, 1/2)`,
            features: { fewChoices: true, size: x.d > 5 ? 1 : 0, extraSteps: x.d % 2 },
            strategy: [
              `Half of ${x.d} parts is ${x.d % 2 === 0 ? x.d / 2 : `${Math.floor(x.d / 2)} 1/2`}`,
              `${x.n} ${x.n === 1 ? 'part is' : 'parts are'} ${more ? 'more' : 'less'} than that, so ${pickFirst ? x.text : '1/2'} is ${askMore ? 'greater' : 'less'}`,
            ],
            slips: [
              [
                more ? 'fractions.smaller-bottom-bigger' : 'fractions.bigger-bottom-bigger',
                pickFirst ? half : x.value,
              ],
            ],
            uses: `compares ${x.text} with a half`,
          };
        },
      }),
    ],
  },
];
