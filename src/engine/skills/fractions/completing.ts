// Completing fractions to a whole, and counting in equal parts.
import { add, floor, rational, subtract } from '../../numbers/rational.js';
import { isProper, properFraction } from './draw-fraction.js';
import { sumSteps } from './mixed-steps.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';

/** The skills on completing fractions to a whole, and counting in equal parts. */
export const COMPLETING_SKILLS: readonly Skill[] = [
  {
    id: 'frac.complement',
    family: 'make up to a whole',
    title: 'Complete a fraction to one whole',
    year: 3,
    fluentYear: 4,
    strand: 'fractions',
    prerequisites: ['frac.parts', 'add.bonds10'],
    codes: {
      ac9: ['AC9M3N02'],
      england: ['NC-Y3-fractions-5', '3F-4', 'NC-Y3-fractions-7'],
      ccss: ['4.NF.B.3a'],
    },
    templates: [
      numericTemplate({
        id: 'gap',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng),
        suits: (value) => isProper(value),
        make: (x) => {
          const answer = subtract(rational(1), x.value);
          const ask = x.rng.int(0, 3);
          const figure = x.d <= 12 && x.rng.chance(0.3);
          return {
            text:
              ask === 0
                ? `${x.text} + ? = 1`
                : ask === 1
                  ? `1 − ${x.text}`
                  : ask === 2
                    ? `? + ${x.text} = 1`
                    : `${storyName(x.rng)} eats ${x.text} of a pizza. What fraction is left?`,
            value: answer,
            expression: `1 - ${x.n}/${x.d}`,
            features: {
              unknownInside: ask === 0 || ask === 2,
              size: x.d > 5 ? 1 : 0,
              story: ask === 3,
              drawn: figure,
              adjust: x.d <= 4 ? -0.4 : 0,
            },
            strategy: [`1 = ${x.d}/${x.d}`, `${x.d}/${x.d} − ${x.n}/${x.d} = ${x.d - x.n}/${x.d}`],
            slips: [
              ['fractions.complement-of-top', x.value],
              ['fact.one-out', x.n > 1 ? { top: x.d - x.n + 1, bottom: x.d } : null],
              ['fractions.parts-as-number', x.d - x.n],
            ],
            uses: `completes ${x.text} to one`,
            figure: figure ? { kind: 'fraction-bar', parts: x.d, shaded: x.n } : undefined,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.next-whole',
    family: 'make up to a whole',
    title: 'Complete a mixed number to a whole number',
    year: 4,
    fluentYear: 5,
    strand: 'fractions',
    prerequisites: ['frac.complement', 'frac.whole-part'],
    codes: { ac9: ['AC9M4N04'], england: ['4F-3', 'NC-Y4-fractions-4'], ccss: ['4.NF.B.3c'] },
    templates: [
      numericTemplate({
        id: 'gap',
        kinds: ['fraction'],
        free: (rng) => add(rational(rng.int(1, 6)), properFraction(rng)),
        suits: (value) => value.n > value.d && value.d <= 100,
        make: (x) => {
          const next = floor(x.value) + 1;
          const over = x.pick([0, 0, 1, 2]);
          const answer = subtract(rational(next + over), x.value);
          const minus = x.rng.chance(0.4);
          return {
            text: minus ? `${x.t(next + over)} − ${x.text}` : `${x.text} + ? = ${x.t(next + over)}`,
            value: answer,
            expression: `${next + over} - ${x.expr}`,
            features: { unknownInside: !minus, size: x.d > 5 ? 1 : 0, extraSteps: over > 0 ? 1 : 0 },
            strategy: [
              `${x.text} + ${x.t(subtract(rational(next), x.value))} = ${x.t(next)}`,
              ...(over > 0
                ? [
                    `${x.t(next)} + ${over} = ${x.t(next + over)}`,
                    `${x.t(subtract(rational(next), x.value))} + ${over} = ${x.t(answer)}`,
                  ]
                : []),
            ],
            slips: [
              ['decimals.whole-too-many', add(answer, rational(1))],
              ['fractions.complement-of-top', add(rational(over), subtract(x.value, rational(next - 1)))],
              ['exact.part-kept', add(rational(1 + over), subtract(x.value, rational(next - 1)))],
            ],
            uses: `completes ${x.text} to ${next + over}`,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.count',
    family: 'one more',
    title: 'Count on and back in equal parts',
    year: 3,
    fluentYear: 4,
    strand: 'fractions',
    prerequisites: ['frac.parts'],
    codes: {
      ac9: ['AC9M3N02', 'AC9M4N04'],
      england: ['NC-Y3-fractions-1', 'NC-Y3-fractions-3'],
      ccss: ['3.NF.A.2b', '4.NF.B.3'],
    },
    templates: [
      numericTemplate({
        id: 'one-part-more',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [2, 3, 4, 5, 8, 10]),
        suits: (value) => value.d <= 20 && value.n < 100 * value.d,
        make: (x) => {
          const unit = rational(1, x.d);
          const up = x.n === 1 || x.rng.chance(0.6);
          const answer = up ? add(x.value, unit) : subtract(x.value, unit);
          const words = x.rng.chance(0.5);
          return {
            text: words
              ? `What is one ${x.parts(x.d, 1)} ${up ? 'more' : 'less'} than ${x.text}?`
              : `${x.text} ${up ? '+' : '−'} 1/${x.d}`,
            value: answer,
            expression: `${x.expr} ${up ? '+' : '-'} 1/${x.d}`,
            features: {
              size: x.d > 5 ? 1 : 0,
              extraSteps: up && answer.d === 1 ? 0.5 : 0,
              adjust: up ? -0.3 : 0,
            },
            strategy: sumSteps(x, unit, up ? 1 : -1),
            slips: [
              [
                'fractions.add-tops-bottoms',
                up ? { whole: floor(x.value), top: (x.n % x.d) + 1, bottom: 2 * x.d } : null,
              ],
              [
                'fractions.steps-by-whole',
                up ? add(x.value, rational(1)) : x.n > x.d ? subtract(x.value, rational(1)) : null,
              ],
              [
                up ? 'operation.swapped' : 'fractions.parts-as-number',
                up ? rational(x.n - 1, x.d) : x.n < x.d ? x.n - 1 : null,
              ],
            ],
            uses: `steps ${up ? 'on' : 'back'} from ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'sequence',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [3, 4, 5, 8]),
        suits: (value) => value.d <= 25 && value.n >= 3 && value.n < 20 * value.d,
        make: (x) => {
          const terms = [2, 1, 0].map((back) => `${x.n - back}/${x.d}`);
          const answer = rational(x.n + 1, x.d);
          // 1/8, 2/8, 3/8 would want 4/8, but a key says 1/2.
          if (answer.d !== x.d && answer.d !== 1) return null;
          return {
            text: `What comes next: ${terms.join(', ')}, ?`,
            value: answer,
            expression: `${x.expr} + 1/${x.d}`,
            features: { size: x.d > 5 ? 1 : 0, adjust: -0.2 },
            strategy: [
              `${x.n}/${x.d} + 1/${x.d} = ${x.n + 1}/${x.d}`,
              ...(answer.d === 1 ? [`${x.n + 1}/${x.d} = ${x.t(answer)}`] : []),
            ],
            slips: [
              ['fractions.counts-both', { top: x.n + 1, bottom: x.d + 1 }],
              ['fractions.counts-bottom', { top: x.n, bottom: x.d + 1 }],
            ],
            uses: `counts on from ${x.text}`,
          };
        },
      }),
    ],
  },
];
