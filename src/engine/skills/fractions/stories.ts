// Fractions in one-sentence stories: sums and differences, parts of parts, sharing and filling.
import type { Written } from '../../questions/slips/fraction-operations.js';
import { add, divide, multiply, rational, subtract, ZERO } from '../../numbers/rational.js';
import type { Rational } from '../../numbers/rational.js';
import { fractionAnswer, writtenAnswer } from '../../questions/answer.js';
import type { Draft, DraftSlip } from '../../questions/draft.js';
import type { MisconceptionId } from '../../questions/misconceptions.js';
import { formatMixed } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { twoNames } from '../story.js';
import { templateOf } from '../template-of.js';

const slipsOf = (
  wrong: readonly (readonly [MisconceptionId, Rational | Written])[],
  locale: Locale,
): DraftSlip[] =>
  wrong
    .filter(([, value]) => ('top' in value ? value.top : value.n) > 0)
    .map(([misconception, value]) => ({
      misconception,
      answer: 'top' in value ? writtenAnswer(value) : fractionAnswer(value, locale),
    }));

type Pair = readonly [a: Rational, b: Rational];

function unlikePair(rng: Rng): Pair {
  const [d, e] = rng.pick([
    [2, 4],
    [4, 8],
    [3, 6],
    [2, 3],
    [3, 4],
    [5, 10],
    [2, 5],
  ] as const);
  return [
    rational(rng.int(1, d - 1), d),
    rational(e === 4 ? rng.pick([1, 3]) : 1 + 2 * rng.int(0, Math.floor((e - 2) / 2)), e),
  ];
}

const JOINED = [
  ['walks', 'km', 'to the library', 'to the park'],
  ['uses', 'kg of flour', 'for bread', 'for buns'],
  ['paints', 'm of fence', 'before lunch', 'after lunch'],
] as const;

const SPELT = {
  km: (metre: string) => `kilo${metre}s`,
  'kg of flour': () => 'kilograms',
  'm of fence': (metre: string) => `${metre}s`,
} as const;

const together = templateOf<readonly [pair: Pair, story: (typeof JOINED)[number]]>({
  id: 'together',
  free: (rng) => [unlikePair(rng), rng.pick(JOINED)],
  draft: ([[a, b], [verb, unit, one, other]], { rng, locale }): Draft => {
    const [who] = twoNames(rng);
    const total = add(a, b);
    const say = (value: Rational) => formatMixed(value, locale);
    return {
      text: `${who} ${verb} ${say(a)} ${unit} ${one} and ${say(b)} ${unit.split(' ')[0]} ${other}. How many ${SPELT[unit](locale.spelling.metre)} is that in all?`,
      answer: fractionAnswer(total, locale),
      expression: `(${a.n}/${a.d}) + (${b.n}/${b.d})`,
      features: {
        story: true,
        unlike: a.d !== b.d,
        extraSteps: Math.max(a.d, b.d) % Math.min(a.d, b.d) === 0 ? 0.5 : 1,
      },
      strategy: commonSteps(a, b, '+', total, locale),
      slips: slipsOf(
        [
          ['fractions.add-tops-bottoms', { top: a.n + b.n, bottom: a.d + b.d }],
          ['fractions.not-renamed', { top: a.n + b.n, bottom: Math.max(a.d, b.d) }],
        ],
        locale,
      ),
    };
  },
});

function commonSteps(a: Rational, b: Rational, sign: '+' | '−', result: Rational, locale: Locale): string[] {
  let common = Math.max(a.d, b.d);
  while (common % a.d !== 0 || common % b.d !== 0) common++;
  const [x, y] = [(a.n * common) / a.d, (b.n * common) / b.d];
  const renamed = [
    ...(a.d === common ? [] : [`${a.n}/${a.d} = ${x}/${common}`]),
    ...(b.d === common ? [] : [`${b.n}/${b.d} = ${y}/${common}`]),
  ];
  return [
    ...(renamed.length > 0 ? [renamed.join(' and ')] : []),
    `${x}/${common} ${sign} ${y}/${common} = ${formatMixed(result, locale)}`,
  ];
}

const howMuchMore = templateOf<Pair>({
  id: 'how-much-more',
  free: (rng) => {
    for (;;) {
      const [a, b] = unlikePair(rng);
      const gap = subtract(a, b);
      if (gap.n !== 0) return gap.n > 0 ? [a, b] : [b, a];
    }
  },
  draft: ([more, less], { rng, locale }) => {
    const [one, other] = twoNames(rng);
    const gap = subtract(more, less);
    const say = (value: Rational) => formatMixed(value, locale);
    return {
      text: `${one} runs ${say(more)} km and ${other} ${say(less)} km. How many more kilo${locale.spelling.metre}s does ${one} run?`,
      answer: fractionAnswer(gap, locale),
      expression: `(${more.n}/${more.d}) - (${less.n}/${less.d})`,
      features: {
        story: true,
        unlike: more.d !== less.d,
        extraSteps: Math.max(more.d, less.d) % Math.min(more.d, less.d) === 0 ? 0.5 : 1,
      },
      strategy: commonSteps(more, less, '−', gap, locale),
      slips: slipsOf(
        [
          ['difference.adds', add(more, less)],
          ['fractions.not-renamed', { top: more.n - less.n, bottom: Math.max(more.d, less.d) }],
        ],
        locale,
      ),
    };
  },
});

const partOfPart = templateOf<Pair>({
  id: 'part-of-part',
  free: (rng) => [
    rng.pick([rational(1, 2), rational(1, 3), rational(2, 3), rational(3, 4)]),
    rng.pick([rational(1, 2), rational(3, 4), rational(2, 5), rational(5, 6)]),
  ],
  draft: ([part, whole], { rng, locale }) => {
    const [who] = twoNames(rng);
    const say = (value: Rational) => formatMixed(value, locale);
    const eaten = multiply(part, whole);
    return {
      text: `There is ${say(whole)} of a pie left. ${who} eats ${say(part)} of that. What part of the whole pie is that?`,
      answer: fractionAnswer(eaten, locale),
      expression: `(${part.n}/${part.d}) * (${whole.n}/${whole.d})`,
      features: { story: true, extraSteps: 1 },
      strategy: [
        `${say(part)} of ${say(whole)}: ${part.n} × ${whole.n} = ${part.n * whole.n} on top, ${part.d} × ${whole.d} = ${part.d * whole.d} below`,
        ...(`${part.n * whole.n}/${part.d * whole.d}` === say(eaten)
          ? [`That is ${say(eaten)}`]
          : [`${part.n * whole.n}/${part.d * whole.d} = ${say(eaten)}`]),
      ],
      slips: slipsOf(
        [
          ['fractions.add-tops-bottoms', { top: part.n + whole.n, bottom: part.d + whole.d }],
          ['fractions.part-left', subtract(whole, eaten)],
        ],
        locale,
      ),
    };
  },
});

const severalTimes = templateOf<readonly [each: Rational, times: number]>({
  id: 'several-times',
  free: (rng) => [
    rng.pick([
      rational(1, 2),
      rational(3, 4),
      rational(2, 3),
      rational(3, 2),
      rational(5, 4),
      rational(5, 3),
    ]),
    rng.int(3, 6),
  ],
  draft: ([each, times], { rng, locale }) => {
    const [who] = twoNames(rng);
    const total = multiply(each, rational(times));
    const say = (value: Rational) => formatMixed(value, locale);
    return {
      text: `${who} swims ${say(each)} km a day. How many kilo${locale.spelling.metre}s is that in ${times} days?`,
      answer: fractionAnswer(total, locale),
      expression: `${times} * (${each.n}/${each.d})`,
      features: { story: true, extraSteps: each.n > each.d ? 1 : 0.5 },
      strategy:
        each.n > each.d
          ? [
              `${times} × 1 = ${times} and ${times} × ${each.n - each.d}/${each.d} = ${say(rational(times * (each.n - each.d), each.d))}`,
              `Together ${say(total)}`,
            ]
          : [`${times} × ${each.n} = ${times * each.n}, so ${times * each.n}/${each.d} = ${say(total)}`],
      slips: slipsOf(
        [
          ['fractions.multiplies-both', { top: times * each.n, bottom: times * each.d }],
          ['fractions.whole-ignored', each.n > each.d ? rational(times * (each.n - each.d), each.d) : ZERO],
        ],
        locale,
      ),
    };
  },
});

const shareOut = templateOf<readonly [bottom: number, people: number]>({
  id: 'share-out',
  free: (rng) => [rng.int(2, 5), rng.int(2, 5)],
  draft: ([bottom, people], { locale }) => ({
    text: `${people} friends share 1/${bottom} kg of nuts equally. What part of a kilogram does each get?`,
    answer: fractionAnswer(rational(1, bottom * people), locale),
    expression: `(1/${bottom}) / ${people}`,
    features: { story: true, extraSteps: 0.5, size: (bottom * people) / 20 },
    strategy: [
      `Cut each of the ${bottom} parts of a kilogram into ${people}: ${bottom} × ${people} = ${bottom * people} parts`,
      `Each gets 1/${bottom * people}`,
    ],
    slips: slipsOf(
      [
        ['divide.as-times', { top: people, bottom }],
        ['fractions.multiplies-both', { top: people, bottom: bottom * people }],
      ],
      locale,
    ),
  }),
});

const howManyFills = templateOf<readonly [amount: number, bottom: number]>({
  id: 'how-many-fills',
  free: (rng) => [rng.int(2, 6), rng.int(2, 5)],
  draft: ([amount, bottom], { locale }) => ({
    text: `How many cups of 1/${bottom} L can be filled from ${amount} L of juice?`,
    answer: fractionAnswer(divide(rational(amount), rational(1, bottom)), locale),
    expression: `${amount} / (1/${bottom})`,
    features: { story: true, size: (amount * bottom) / 20, extraSteps: locale.id === 'en-US' ? 0.1 : 0 },
    strategy: [`1 L fills ${bottom} cups`, `${amount} × ${bottom} = ${amount * bottom}`],
    slips: slipsOf(
      [
        ['fractions.divides-as-times', { top: amount, bottom }],
        ['times.neighbour', rational(amount * bottom + bottom)],
      ],
      locale,
    ),
  }),
});

export const FRACTION_STORY_SKILLS: readonly Skill[] = [
  {
    id: 'frac.story.sums',
    title: 'Add and subtract fractions in stories',
    year: 6,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.add.related', 'frac.subtract.related'],
    codes: { ac9: ['AC9M6N05'], england: ['NC-Y6-fractions-3'], ccss: ['5.NF.A.2'] },
    templates: [together, howMuchMore],
  },
  {
    id: 'frac.story.products',
    title: 'Multiply and divide fractions in stories',
    year: 6,
    fluentYear: 6,
    strand: 'fractions',
    prerequisites: ['frac.times-fraction', 'frac.divide-by-whole'],
    codes: {
      ac9: ['AC9M6N07'],
      england: ['NC-Y6-fractions-4', 'NC-Y6-fractions-5'],
      ccss: ['5.NF.B.6', '5.NF.B.7', '5.NF.B.7c'],
    },
    templates: [partOfPart, severalTimes, shareOut, howManyFills],
  },
];
