// A fraction of a quantity.
import { decimalPlaces, divide, multiply, rational, subtract } from '../../numbers/rational.js';
import { PARTS } from './common-parts.js';
import { isProper, properFraction } from './draw-fraction.js';
import { numericTemplate, type Sketch, type Subject } from '../sketch.js';
import type { Skill } from '../skill.js';
import { countables, storyName } from '../story.js';
import { spendingStory, withStory } from '../retold.js';

/** top/bottom of the subject's quantity; the unit fraction first. */
function fractionOf(x: Subject, top: number, bottom: number, features: Sketch['features']): Sketch {
  const part = divide(x.value, rational(bottom));
  const answer = multiply(part, rational(top));
  return {
    text: `${top}/${bottom} of ${x.text}`,
    value: answer,
    expression: `(${top}/${bottom}) * ${x.expr}`,
    features,
    strategy: [
      `${x.text} ÷ ${bottom} = ${x.t(part)}`,
      ...(top > 1 ? [`${top} × ${x.t(part)} = ${x.t(answer)}`] : []),
    ],
    slips: [
      ['fractions.one-part-only', top > 1 ? part : null],
      ['fractions.part-left', subtract(x.value, answer)],
      [
        'fractions.takes-top',
        top > 1 && (x.form !== 'whole' || x.n % top === 0) ? divide(x.value, rational(top)) : null,
      ],
      [
        'divide.as-minus',
        top === 1 && x.value.n > bottom * x.value.d ? subtract(x.value, rational(bottom)) : null,
      ],
      ['divide.halves-once', bottom === 4 && top === 1 ? divide(x.value, rational(2)) : null],
      ['fractions.bottom-only', multiply(x.value, rational(top))],
    ],
    uses: `finds ${top}/${bottom} of ${x.text}`,
  };
}

/** Things some of which may well be red, as grapes and acorns of one bunch or tree may not. */
const RED_THINGS = ['beads', 'buttons', 'marbles', 'crayons', 'blocks', 'cards', 'stickers'] as const;

const UNIT_BOTTOMS = [2, 3, 4, 5, 6, 8, 10] as const;

/** The skills on a fraction of a quantity. */
export const FRACTION_OF_SKILLS: readonly Skill[] = [
  {
    id: 'frac.half-quarter-of',
    family: 'fraction of an amount',
    title: 'A half or a quarter of a small number of things',
    year: 2,
    fluentYear: 3,
    strand: 'fractions',
    prerequisites: ['div.half.small'],
    codes: {
      ac9: ['AC9M2N03', 'AC9M2M02'],
      england: ['NC-Y1-fractions-2', 'NC-Y2-fractions-1', 'NC-Y2-fractions-2'],
      ccss: ['3.NF.A.1'],
    },
    templates: [
      numericTemplate({
        id: 'of',
        kinds: ['whole'],
        free: (rng) => 4 * rng.int(1, 6),
        suits: (value) => value.d === 1 && value.n % 2 === 0 && value.n >= 4 && value.n <= 24,
        make: (x) => {
          const bottom = x.n % 4 === 0 ? x.pick([2, 4, 4]) : 2;
          const sketch = fractionOf(x, 1, bottom, { size: (bottom === 4 ? 1 : 0) + x.n / 24 });
          const things = x.pick(RED_THINGS);
          const name = bottom === 2 ? 'Half' : `One ${x.parts(4, 1)}`;
          return {
            ...sketch,
            text: x.pick([sketch.text, `${name} of ${x.n} ${things} are red. How many are red?`]),
            figure: x.rng.chance(0.4)
              ? { kind: 'fraction-set', total: x.n, shaded: 0, groups: bottom }
              : undefined,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.unit-of',
    family: 'fraction of an amount',
    title: 'A unit fraction of a quantity',
    year: 3,
    fluentYear: 4,
    strand: 'fractions',
    prerequisites: ['frac.half-quarter-of', 'div.table.34'],
    codes: {
      ac9: ['AC9M3N02', 'AC9M3N04'],
      england: ['NC-Y3-fractions-2', '3F-2', 'NC-Y3-fractions-7'],
      ccss: ['3.NF.A.1', '5.NF.B.4'],
    },
    templates: [
      numericTemplate({
        id: 'of',
        kinds: ['whole'],
        free: (rng) => rng.pick([3, 4, 5, 6, 8, 10]) * rng.int(2, 10),
        suits: (value) => value.d === 1 && value.n >= 6 && value.n <= 1000,
        make: (x) => {
          const fits = UNIT_BOTTOMS.filter(
            (b) => b > 2 && x.n % b === 0 && x.n / b >= 2 && (x.n / b <= 12 || x.n % (10 * b) === 0),
          );
          if (fits.length === 0) return null;
          const b = x.pick(fits);
          return {
            ...fractionOf(x, 1, b, {
              size: b >= 6 && b < 10 ? 1 : 0,
              fives: b === 5,
              rule: b === 10,
              extraSteps: x.n > 120 ? 1 : 0,
            }),
            figure: x.rng.chance(0.3)
              ? {
                  kind: 'bar-model',
                  whole: x.text,
                  parts: Array.from({ length: b }, (_, i) => (i === 0 ? '?' : '')),
                }
              : undefined,
          };
        },
      }),
      numericTemplate({
        id: 'story',
        kinds: ['whole'],
        free: (rng) => rng.pick([3, 4, 5, 8]) * rng.int(3, 8),
        suits: (value) => value.d === 1 && value.n >= 9 && value.n <= 100,
        make: (x) => {
          const fits = UNIT_BOTTOMS.filter((b) => b > 2 && x.n % b === 0 && x.n / b >= 2 && x.n / b <= 12);
          if (fits.length === 0) return null;
          const b = x.pick(fits);
          const things = countables(x.n, x.rng);
          const part = `one ${x.parts(b, 1)}`;
          return {
            ...fractionOf(x, 1, b, {
              story: true,
              size: b >= 6 && b < 10 ? 1 : 0,
              fives: b === 5,
              rule: b === 10,
            }),
            text: x.pick([
              `${storyName(x.rng)} gives away ${part} of ${x.text} ${things}. How many is that?`,
              `A path is ${x.text}\u00a0m long. How many ${x.locale.spelling.metre}s is ${part} of it?`,
            ]),
          };
        },
      }),
    ],
  },
  {
    id: 'frac.nonunit-of',
    family: 'fraction of an amount',
    title: 'Any fraction of a whole quantity',
    year: 4,
    fluentYear: 5,
    strand: 'fractions',
    prerequisites: ['frac.unit-of', 'mult.table.3'],
    codes: {
      ac9: ['AC9M4N08', 'AC9M6N07'],
      england: ['NC-Y4-fractions-3', '5F-1'],
      ccss: ['4.NF.B.4c', '5.NF.B.4a'],
    },
    templates: [
      numericTemplate({
        id: 'of',
        kinds: ['whole'],
        free: (rng) => rng.pick([12, 15, 16, 18, 20, 24, 30, 32, 36, 40, 45, 48, 56, 60, 80, 100]),
        suits: (value) => value.d === 1 && value.n >= 6 && value.n <= 1_000_000,
        make: (x) => {
          const fits = PARTS.filter(
            ([, b]) => x.n % b === 0 && (x.n / b <= 12 || x.n % (10 * b) === 0 || x.n <= 100),
          );
          if (fits.length === 0) return null;
          const [top, b] = x.pick(fits);
          return {
            ...fractionOf(x, top, b, {
              extraSteps: x.n / b > 12 ? 1 : 0,
              size: b >= 6 && b < 10 ? 1 : 0,
              fives: b === 5,
              adjust: top === b - 1 ? -0.2 : 0,
            }),
            figure: x.rng.chance(0.25)
              ? {
                  kind: 'bar-model',
                  whole: x.text,
                  parts: Array.from({ length: b }, () => ''),
                  shaded: top,
                }
              : undefined,
          };
        },
      }),
      numericTemplate({
        id: 'of-on-fraction',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [3, 4, 5, 8]),
        suits: (value) => isProper(value) && value.d <= 25,
        make: (x) => {
          const k = x.rng.int(x.d === 2 ? 3 : 1, 10);
          const amount = x.d * k;
          const answer = x.n * k;
          const story = x.rng.chance(0.3) && k > 1;
          return {
            text: story
              ? `${x.text} of ${amount} children walk to school. How many children walk?`
              : `${x.text} of ${amount}`,
            value: answer,
            form: 'whole',
            expression: `(${x.n}/${x.d}) * ${amount}`,
            features: {
              story,
              size: (k > 5 ? 1 : 0) + (x.d > 5 ? 0.5 : 0),
              rule: k === 1 || k === 10,
              adjust: x.n === 1 ? -0.8 : 0,
            },
            strategy: [`${amount} ÷ ${x.d} = ${k}`, ...(x.n > 1 ? [`${x.n} × ${k} = ${answer}`] : [])],
            slips: [
              ['fractions.one-part-only', x.n > 1 ? k : null],
              ['fractions.part-left', amount - answer],
              ['fractions.takes-top', x.n > 1 && amount % x.n === 0 ? amount / x.n : null],
              ['divide.as-minus', x.n === 1 && amount > x.d ? amount - x.d : null],
            ],
            uses: `finds ${x.text} of ${amount}`,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.of-money',
    family: 'fraction of an amount',
    title: 'A fraction of an amount of money or a decimal',
    year: 5,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.nonunit-of'],
    codes: {
      ac9: ['AC9M6N07', 'AC9M5N09'],
      england: ['NC-Y4-fractions-10', '5F-1', '6NPV-4'],
      ccss: ['5.NF.B.4a'],
    },
    templates: withStory(spendingStory, [
      numericTemplate({
        id: 'of',
        kinds: ['money', 'decimal'],
        free: (rng) => rational(20 * rng.int(6, 60), 100),
        suits: (value) => value.n <= 10_000 * value.d,
        make: (x) => {
          const [top, b] = x.pick([
            [1, 2],
            [1, 3],
            [2, 3],
            [1, 4],
            [3, 4],
            [1, 5],
            [2, 5],
            [3, 5],
            [1, 10],
            [3, 10],
          ] as const);
          // Beyond thousandths nobody works in the head.
          if (x.form === 'decimal' && (decimalPlaces(multiply(x.value, rational(top, b))) ?? 0) > 3)
            return null;
          return fractionOf(x, top, b, {
            extraSteps: top > 1 ? 1 : 0,
            size: b === 3 ? 1 : 0,
            rule: b === 10,
            adjust: b === 2 ? -0.8 : 0,
          });
        },
      }),
    ]),
  },
];
