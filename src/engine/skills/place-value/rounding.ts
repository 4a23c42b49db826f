// Rounding to any place and to the nearest whole, and the number halfway between.
import { formatWhole } from '../../numbers/format.js';
import { add, equals, floor, multiply, rational, roundTo } from '../../numbers/rational.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Template } from '../../questions/draft.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import { partTemplates } from '../parts.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { type NumberRange, placeName } from './place-templates.js';

const ROUNDED: NumberRange = {
  free: (rng) => (rng.chance(0.5) ? rng.int(12, 98) : rng.int(101, 990)),
  from: 11,
  to: 9999,
};

const ROUNDED_LARGE: NumberRange = { free: (rng) => rng.int(1200, 960_000), from: 1001, to: 999_999 };

/** "What is 47 to the nearest ten?" */
function roundWhole(range: NumberRange, units: readonly number[]): Template {
  type Chosen = readonly [n: number, unit: number];
  const choose = (n: number, rng: Rng): Chosen | null => {
    const fitting = units.filter((unit) => n > unit && n % unit !== 0);
    return fitting.length === 0 ? null : [n, rng.pick(fitting)];
  };
  return templateOf<Chosen>({
    id: 'round',
    free: (rng) => {
      for (;;) {
        const chosen = choose(range.free(rng), rng);
        if (chosen !== null) return chosen;
      }
    },
    on: onWhole(range.from, range.to, choose),
    draft: ([n, unit], { locale }) => {
      const say = (value: number) => formatWhole(value, locale);
      const down = Math.floor(n / unit) * unit;
      const middle = down + unit / 2;
      const rounded = n >= middle ? down + unit : down;
      const inner = unit / 10;
      const inSteps =
        inner >= 1 ? Math.floor((Math.floor((n + inner / 2) / inner) * inner) / unit + 0.5) * unit : rounded;
      const otherUnit = unit === 10 ? 100 : unit / 10;
      const near = Math.abs(n - middle) <= unit / 10;
      return {
        text: `What is ${say(n)} to the nearest ${placeName(unit)}?`,
        answer: wholeAnswer(rounded, locale),
        expression: `${unit} * floor(${n} / ${unit} + 1/2)`,
        features: {
          size: Math.max(0, String(n).length - String(unit).length - 1) * 0.8,
          carries: Math.floor(n / unit) % 10 === 9 && rounded > down ? 1 : 0,
          adjust: near ? 0.4 : 0,
        },
        strategy: [
          `${say(n)} lies between ${say(down)} and ${say(down + unit)}`,
          n === middle
            ? `${say(middle)} is exactly halfway, and halfway goes up: ${say(rounded)}`
            : `Halfway is ${say(middle)}; ${say(n)} is ${n > middle ? 'more' : 'less'}, so it goes ${n > middle ? 'up' : 'down'} to ${say(rounded)}`,
        ],
        slips: wholeSlips(
          [
            ['round.in-steps', inSteps],
            // Exactly halfway neither neighbour is nearer.
            [n === middle ? 'round.halfway-down' : 'round.cut-off', down],
            ['round.always-up', down + unit],
            ['round.wrong-place', n % otherUnit === 0 ? null : Math.floor(n / otherUnit + 0.5) * otherUnit],
            ['round.digit-only', rounded / unit],
          ],
          locale,
        ).slice(0, 4),
        ...(unit <= 1000
          ? {
              figure: {
                kind: 'number-line' as const,
                from: down,
                to: down + unit,
                step: unit / 10,
                labels: [down, down + unit],
                mark: n,
              },
            }
          : {}),
        usesNumber: `rounds ${say(n)} to the nearest ${placeName(unit)}`,
      };
    },
  });
}

const halfway = templateOf<readonly [low: number, high: number]>({
  id: 'halfway',
  free: (rng) => {
    const low = rng.int(6, 90);
    return [low, low + 2 * rng.int(2, 20)];
  },
  on: onWhole(2, 1_000_000, (n, rng) => {
    const gap =
      n < 1000
        ? rng.pick([2, 4, 6, 8, 10, 12, 20, 30, 50, 100])
        : n < 20_000
          ? rng.pick([10, 20, 50, 100, 200, 500, 1000])
          : rng.pick([500, 1000, 2000, 5000, 10_000, 50_000]);
    return n > gap + 5 && rng.chance(0.35) ? [n - gap, n] : [n, n + gap];
  }),
  draft: ([low, high], { locale }) => {
    const say = (value: number) => formatWhole(value, locale);
    const half = (high - low) / 2;
    const crosses = Math.floor(low / 10) !== Math.floor((low + half) / 10) && half % 10 !== 0;
    return {
      text: `What number is halfway between ${say(low)} and ${say(high)}?`,
      answer: wholeAnswer(low + half, locale),
      expression: `(${low} + ${high}) / 2`,
      features: {
        size: half <= 2 ? 0 : half % 10 === 0 || half === 5 ? 0.5 : 1,
        carries: crosses ? 1 : 0,
        adjust: low > 999 ? 0.3 : 0,
      },
      strategy: [
        `${say(high)} − ${say(low)} = ${say(2 * half)}`,
        `${say(2 * half)} ÷ 2 = ${say(half)}`,
        `${say(low)} + ${say(half)} = ${say(low + half)}`,
      ],
      slips: wholeSlips(
        [
          ['halfway.gap', half],
          ['halfway.end', high + half],
          // Nobody counts a long way by ones, and beside a middle one away from the ends are the ends themselves.
          ['count.off-by-one', half > 1 && half <= 20 ? low + half - 1 : null],
          ['fact.one-out', half > 1 && half <= 20 ? low + half + 1 : null],
        ],
        locale,
      ),
      figure: { kind: 'number-line', from: low, to: high, step: half, labels: [low, high] },
      usesNumber: `finds the middle between ${say(low)} and ${say(high)}`,
    };
  },
});

const roundPart = partTemplates('round-part', ({ value, form, text, expr, rng, t, locale }) => {
  const tenths = form === 'decimal' && value.d > 10 && rng.chance(0.5);
  // Half of a whole is a matter of convention for fractions, so it is not asked.
  if (form === 'fraction' && value.d === 2) return null;
  const unit = tenths ? rational(1, 10) : rational(1);
  const rounded = roundTo(value, unit);
  const down = multiply(rational(Math.floor((value.n * unit.d) / (value.d * unit.n))), unit);
  const up = multiply(rational(Math.floor((value.n * unit.d) / (value.d * unit.n)) + 1), unit);
  const goesUp = rounded.n === up.n && rounded.d === up.d;
  const inSteps = roundTo(roundTo(value, rational(1, 10)), unit);
  const name = form === 'money' ? locale.currency.mainName[0] : tenths ? 'tenth' : 'whole number';
  return {
    text:
      form === 'fraction'
        ? `Which whole number is nearest to ${text}?`
        : `What is ${text} to the nearest ${name}?`,
    value: rounded,
    expression: tenths ? `floor(${expr} * 10 + 1/2) / 10` : `floor(${expr} + 1/2)`,
    features: {
      size: (tenths ? 0.7 : 0) + (value.d > 10 ? 0.5 : 0),
      carries: goesUp && floor(value) % 10 === 9 ? 1 : 0,
      adjust: form === 'money' ? -0.3 : 0,
    },
    strategy: [
      `${text} lies between ${t(down)} and ${t(up)}`,
      `It is ${goesUp ? 'at least halfway, so it goes up' : 'less than halfway, so it goes down'}: ${t(rounded)}`,
    ],
    slips: [
      ['round.in-steps', inSteps],
      [equals(add(down, up), add(value, value)) ? 'round.halfway-down' : 'round.cut-off', down],
      ['round.always-up', up],
      [
        'round.wrong-place',
        tenths ? roundTo(value, rational(1)) : value.n >= 5 * value.d ? roundTo(value, rational(10)) : null,
      ],
    ],
    uses: `rounds ${text}`,
    ...(tenths
      ? {}
      : {
          figure: {
            kind: 'number-line' as const,
            from: floor(value),
            to: floor(value) + 1,
            step: 0.1,
            labels: [floor(value), floor(value) + 1],
            mark: value.n / value.d,
          },
        }),
  };
});

export const ROUNDING_SKILLS: readonly Skill[] = [
  {
    id: 'place.round.10-100',
    family: 'round',
    title: 'Round to the nearest ten, hundred or thousand',
    year: 4,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.next-ten', 'place.three-digit'],
    codes: { ac9: ['AC9M4N07'], england: ['NC-Y4-place-7', '4NPV-3'], ccss: ['3.NBT.A.1'] },
    templates: [roundWhole(ROUNDED, [10, 100, 1000])],
  },
  {
    id: 'place.halfway',
    title: 'Find the number halfway between',
    year: 4,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.next-ten', 'sub.difference'],
    codes: { ac9: ['AC9M4N06'], england: ['NC-Y4-place-6'], ccss: ['2.MD.B.6'] },
    templates: [halfway],
  },
  {
    id: 'place.round.large',
    family: 'round',
    title: 'Round numbers to a million',
    year: 5,
    fluentYear: 6,
    strand: 'place-value',
    prerequisites: ['place.round.10-100', 'place.million'],
    codes: { ac9: ['AC9M5N08'], england: ['NC-Y5-place-4'], ccss: ['4.NBT.A.3'] },
    templates: [roundWhole(ROUNDED_LARGE, [100, 1000, 10_000, 100_000])],
  },
  {
    id: 'place.round.part',
    family: 'round',
    title: 'Round decimals, fractions and money to the nearest whole',
    year: 5,
    fluentYear: 6,
    strand: 'place-value',
    prerequisites: ['place.round.10-100', 'place.part-neighbours'],
    codes: {
      ac9: ['AC9M5N01', 'AC9M5N08'],
      england: ['NC-Y4-fractions-8', 'NC-Y5-fractions-8', '5NPV-3'],
      ccss: ['5.NBT.A.4'],
    },
    shift: -0.3,
    templates: roundPart,
  },
];
