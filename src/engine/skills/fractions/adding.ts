// Adding and subtracting fractions: like, related and unlike parts.
import { add, compare, lcm, type Rational, rational, subtract, ZERO } from '../../numbers/rational.js';
import type { Rng } from '../../random/rng.js';
import { numericTemplate, type NumericTemplate, type Sketch, type Subject } from '../sketch.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';
import { isProper, isSmallFraction, properFraction } from './draw-fraction.js';
import { addOrTake } from './add-or-take.js';
import { ribbonStory, wallStory, withStory } from '../retold.js';

const ONE_BELOW = [2, 3, 4, 5, 6, 8, 10, 12] as const;

function drawn(value: Rational, other: Rational, sign: 1 | -1): boolean {
  return sign === 1 || compare(value, other) > 0;
}

/** A template that adds to (or takes from) the number another fraction chosen by `other`. */
function sumTemplate(
  id: string,
  sign: 1 | -1,
  suits: NumericTemplate['suits'],
  free: (rng: Rng) => Rational,
  other: (x: Subject) => Rational | null,
  features: (x: Subject, other: Rational) => Sketch['features'],
) {
  return numericTemplate({
    id,
    kinds: ['fraction'],
    free,
    suits,
    make: (x) => {
      const second = other(x);
      if (second === null || compare(second, ZERO) <= 0 || !drawn(x.value, second, sign)) return null;
      return addOrTake(x, second, sign, features(x, second));
    },
  });
}

const smaller = (x: Subject): number => (x.d > 5 ? 0.5 : 0);

/** The skills on adding and subtracting fractions: like, related and unlike parts. */
export const FRACTION_SUM_SKILLS: readonly Skill[] = [
  {
    id: 'frac.add.like',
    family: 'add to a part',
    title: 'Add fractions with the same bottom',
    year: 4,
    fluentYear: 5,
    strand: 'fractions',
    prerequisites: ['frac.complement', 'frac.count'],
    codes: {
      ac9: ['AC9M5N05'],
      england: ['NC-Y3-fractions-5', 'NC-Y4-fractions-4', '4F-3'],
      ccss: ['4.NF.B.3a', '4.NF.B.3d'],
    },
    templates: [
      sumTemplate(
        'add',
        1,
        isSmallFraction,
        (rng) => properFraction(rng, [3, 4, 5, 6, 8, 10]),
        (x) => {
          const second = rational(x.rng.int(1, x.d - 1), x.d);
          return second.d === x.d ? second : null;
        },
        (x, other) => {
          const total = (x.n % x.d) + other.n;
          return {
            extraSteps: total > x.d ? 1 : 0,
            size: smaller(x),
            adjust: (x.n > x.d ? 0.3 : 0) - (total < x.d ? 0.3 : 0),
            tie: x.n === other.n,
          };
        },
      ),
      sumTemplate(
        'add-whole',
        1,
        (value) => value.d <= 25 && value.n <= 20 * value.d,
        (rng) => properFraction(rng),
        (x) => rational(x.rng.int(1, 5)),
        (x) => ({ rule: true, adjust: x.n > x.d ? 0.3 : 0, size: smaller(x) }),
      ),
      numericTemplate({
        id: 'story',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [4, 5, 6, 8]),
        suits: (value) => isProper(value) && value.d >= 3 && value.d <= 12,
        make: (x) => {
          const top = x.rng.int(1, x.d - 1);
          if (rational(top, x.d).d !== x.d) return null;
          const sketch = addOrTake(x, rational(top, x.d), 1, {
            story: true,
            extraSteps: x.n + top > x.d ? 1 : 0,
            size: smaller(x),
          });
          const { metre, litre } = x.locale.spelling;
          const [unit, did, spelt, of] = x.pick([
            ['km', 'walks', `kilo${metre}s`, ''],
            ['L', 'pours out', `${litre}s`, ' of juice'],
            ['kg', 'buys', 'kilograms', ' of rice'],
          ] as const);
          return {
            ...sketch,
            text: `${storyName(x.rng)} ${did} ${x.text}\u00a0${unit}${of} and then ${top}/${x.d}\u00a0${unit}. How many ${spelt} is that?`,
          };
        },
      }),
    ],
  },
  {
    id: 'frac.subtract.like',
    family: 'take from a part',
    title: 'Subtract fractions with the same bottom',
    year: 4,
    fluentYear: 5,
    strand: 'fractions',
    prerequisites: ['frac.complement', 'frac.count'],
    codes: {
      ac9: ['AC9M5N05'],
      england: ['NC-Y3-fractions-5', 'NC-Y4-fractions-4', '4F-3'],
      ccss: ['4.NF.B.3a', '4.NF.B.3c'],
    },
    templates: withStory(ribbonStory, [
      sumTemplate(
        'take',
        -1,
        (value) => isSmallFraction(value) && value.n >= 2,
        (rng) => properFraction(rng, [3, 4, 5, 6, 8, 10]),
        (x) => {
          const second = rational(x.rng.int(1, Math.min(x.n, x.d) - 1 || 1), x.d);
          return second.d === x.d ? second : null;
        },
        (x, other) => ({
          extraSteps: x.n > x.d && x.n % x.d < other.n ? 1 : 0,
          size: smaller(x),
          adjust: x.n < x.d ? -0.2 : 0,
        }),
      ),
      numericTemplate({
        id: 'from-wholes',
        kinds: ['fraction'],
        free: (rng) => properFraction(rng, [3, 4, 5, 8]),
        suits: (value) => isProper(value) && value.d <= 25,
        make: (x) => {
          const whole = x.rng.int(2, 5);
          const answer = subtract(rational(whole), x.value);
          return {
            text: `${whole} − ${x.text}`,
            value: answer,
            expression: `${whole} - ${x.expr}`,
            features: { extraSteps: 1, size: smaller(x) },
            strategy: [
              `${whole} = ${whole - 1} ${x.d}/${x.d}`,
              `${x.d}/${x.d} − ${x.text} = ${x.d - x.n}/${x.d}`,
              `${whole - 1} + ${x.d - x.n}/${x.d} = ${x.t(answer)}`,
            ],
            slips: [
              ['decimals.whole-too-many', add(answer, rational(1))],
              ['fractions.complement-of-top', add(rational(whole - 1), x.value)],
              ['fractions.whole-ignored', subtract(rational(1), x.value)],
            ],
            uses: `takes ${x.text} from ${whole}`,
          };
        },
      }),
    ]),
  },
  {
    id: 'frac.add.related',
    title: 'Add fractions with related bottoms',
    year: 5,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.add.like', 'frac.equal'],
    codes: { ac9: ['AC9M5N05'], england: ['NC-Y5-fractions-4'], ccss: ['5.NF.A.1'] },
    templates: withStory(wallStory, [
      sumTemplate(
        'add',
        1,
        isSmallFraction,
        (rng) => properFraction(rng, [2, 3, 4, 5, 6]),
        (x) => {
          const bottoms = [2, 3, 4, 5, 6, 8, 9, 10, 12].filter(
            (d) => d !== x.d && (d % x.d === 0 || x.d % d === 0),
          );
          if (bottoms.length === 0) return null;
          const d = x.pick(bottoms);
          const second = rational(x.rng.int(1, Math.max(1, d - 1)), d);
          return second.d === d ? second : null;
        },
        (x, other) => ({
          unlike: true,
          extraSteps: (x.n % x.d) * other.d + other.n * x.d > x.d * other.d ? 1 : 0,
          size:
            (Math.max(x.d, other.d) > 8 ? 0.5 : 0) +
            (Math.max(x.d, other.d) > 2 * Math.min(x.d, other.d) ? 1 : 0),
          adjust: x.n > x.d ? 0.3 : -0.2,
        }),
      ),
    ]),
  },
  {
    id: 'frac.subtract.related',
    title: 'Subtract fractions with related bottoms',
    year: 5,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.subtract.like', 'frac.equal'],
    codes: { ac9: ['AC9M5N05'], england: ['NC-Y5-fractions-4'], ccss: ['5.NF.A.1'] },
    templates: withStory(ribbonStory, [
      sumTemplate(
        'take',
        -1,
        isSmallFraction,
        (rng) => properFraction(rng, [3, 4, 5, 6, 8, 10]),
        (x) => {
          const bottoms = [2, 3, 4, 5, 6, 8, 9, 10, 12].filter(
            (d) => d !== x.d && (d % x.d === 0 || x.d % d === 0),
          );
          if (bottoms.length === 0) return null;
          const d = x.pick(bottoms);
          const second = rational(x.rng.int(1, Math.max(1, d - 1)), d);
          return second.d === d ? second : null;
        },
        (x, other) => ({
          unlike: true,
          extraSteps: x.n > x.d && (x.n % x.d) * other.d < other.n * x.d ? 1 : 0,
          size:
            (Math.max(x.d, other.d) > 8 ? 0.5 : 0) +
            (Math.max(x.d, other.d) > 2 * Math.min(x.d, other.d) ? 1 : 0),
          adjust: x.n > x.d ? 0.3 : 0,
        }),
      ),
    ]),
  },
  {
    id: 'frac.unlike',
    title: 'Add and subtract fractions with unlike bottoms',
    year: 6,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.add.related', 'frac.subtract.related'],
    codes: { ac9: ['AC9M6N05'], england: ['NC-Y6-fractions-3'], ccss: ['5.NF.A.1'] },
    // Unlike fractions stay hard well beyond the year: 40 to 58 % right in middle school (fraction subtraction data of Tatsuoka).
    shift: 1,
    templates: [1 as const, -1 as const].map((sign) =>
      sumTemplate(
        sign === 1 ? 'add' : 'take',
        sign,
        isSmallFraction,
        (rng) => properFraction(rng, [2, 3, 4, 5]),
        (x) => {
          const d = x.pick(
            ONE_BELOW.filter((k) => k % x.d !== 0 && x.d % k !== 0 && lcm(k, x.d) <= 60).concat(
              x.d === 2 ? [3] : [],
            ),
          );
          const second = rational(x.rng.int(1, d - 1), d);
          return second.d === d ? second : null;
        },
        (x, other) => ({
          unlike: true,
          extraSteps:
            (sign === 1 && (x.n % x.d) * other.d + other.n * x.d > x.d * other.d ? 1 : 0) +
            (sign === -1 && x.n > x.d && (x.n % x.d) * other.d < other.n * x.d ? 1 : 0),
          size: lcm(x.d, other.d) > 20 ? 1 : 0,
          adjust: x.n > x.d ? 0.3 : 0,
        }),
      ),
    ) as [ReturnType<typeof sumTemplate>, ReturnType<typeof sumTemplate>],
  },
];
