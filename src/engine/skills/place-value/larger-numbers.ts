// Place value beyond a thousand, rounding, halfway points, and whole numbers around decimals, money and fractions.
import { formatWhole } from '../../numbers/format.js';
import { compare, floor, multiply, rational, roundTo } from '../../numbers/rational.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import { partTemplates } from '../parts.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import {
  compose,
  digitWorth,
  greatestOrLeast,
  howMany,
  moreOrLess,
  type NumberRange,
  restOf,
  roundWhole,
} from './place-templates.js';

const STEPPED: NumberRange = { free: (rng) => rng.int(101, 989), from: 20, to: 9899 };
const THOUSANDS: NumberRange = { free: (rng) => rng.int(1002, 9995), from: 1000, to: 99_999 };
const TO_100_000: NumberRange = {
  free: (rng) => (rng.chance(0.5) ? rng.int(1003, 9997) : 10 * rng.int(1001, 9899)),
  from: 100,
  to: 98_999,
};
const MILLION: NumberRange = { free: (rng) => 500 * rng.int(24, 1900), from: 10_000, to: 999_999 };
const ROUNDED: NumberRange = {
  free: (rng) => (rng.chance(0.5) ? rng.int(12, 98) : rng.int(101, 990)),
  from: 11,
  to: 9999,
};
const ROUNDED_LARGE: NumberRange = { free: (rng) => rng.int(1200, 960_000), from: 1001, to: 999_999 };

const halfway = templateOf<readonly [low: number, high: number]>({
  id: 'halfway',
  free: (rng) => {
    const low = rng.int(6, 90);
    return [low, low + 2 * rng.int(2, 20)];
  },
  on: onWhole(2, 20_000, (n, rng) => {
    const gap =
      n < 1000
        ? rng.pick([2, 4, 6, 8, 10, 12, 20, 30, 50, 100])
        : rng.pick([10, 20, 50, 100, 200, 500, 1000]);
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
          ['count.off-by-one', low + half - 1],
          ['fact.one-out', low + half + 1],
        ],
        locale,
      ),
      figure: { kind: 'number-line', from: low, to: high, step: half, labels: [low, high] },
      usesNumber: `finds the middle between ${say(low)} and ${say(high)}`,
    };
  },
});

const neighbours = partTemplates(
  'neighbour',
  ({ value, form, text, expr, rng, t, locale }) => {
    const up = floor(value) === 0 || rng.chance(0.6);
    const whole = floor(value) + (up ? 1 : 0);
    const unit = form === 'money' ? `whole ${locale.currency.mainName[0]} amount` : 'whole number';
    return {
      text: up ? `What is the next ${unit} after ${text}?` : `What is the last ${unit} before ${text}?`,
      value: rational(whole),
      expression: `${up ? 'ceil' : 'floor'}(${expr})`,
      features: {
        rule: true,
        size: (up ? 0 : 0.4) + (floor(value) % 10 === 9 && up ? 0.7 : 0),
        adjust: form === 'money' ? -0.3 : 0.2,
      },
      strategy: [
        `${text} lies between ${t(floor(value))} and ${t(floor(value) + 1)}`,
        `The one just ${up ? 'after' : 'before'} is ${t(whole)}`,
      ],
      slips: [
        ['count.wrong-way', up ? rational(floor(value)) : rational(whole + 1)],
        ['count.off-by-one', up ? rational(whole + 1) : whole > 0 ? rational(whole - 1) : null],
      ],
      uses: `finds the whole number just ${up ? 'after' : 'before'} ${text}`,
      ...(value.n < 20 * value.d
        ? {
            figure: {
              kind: 'number-line' as const,
              from: floor(value),
              to: floor(value) + 1,
              step: 1,
              labels: [floor(value), floor(value) + 1],
              mark: value.n / value.d,
            },
          }
        : {}),
    };
  },
  { places: 3 },
);

const greaterThanWhole = partTemplates(
  'greater',
  ({ value, form, text, expr, rng, t, e }) => {
    const whole = floor(value) + rng.int(floor(value) === 0 ? 1 : 0, 2);
    const greatest = rng.chance(0.6);
    const first = rng.chance(0.5);
    const valueWins = compare(value, rational(whole)) > 0 === greatest;
    const pair = first ? [text, t(whole)] : [t(whole), text];
    return {
      text: `Which is ${greatest ? 'greater' : 'less'}: ${pair.join(' or ')}?`,
      value: valueWins ? value : rational(whole),
      expression: `${greatest ? 'max' : 'min'}(${expr}, ${e(whole)})`,
      features: {
        fewChoices: true,
        size: whole === floor(value) || whole === floor(value) + 1 ? 0.7 : 0,
        adjust: form === 'money' ? -0.4 : form === 'fraction' ? 0.2 : 0,
      },
      strategy: [
        `${text} lies between ${t(floor(value))} and ${t(floor(value) + 1)}`,
        `So ${text} is ${compare(value, rational(whole)) > 0 ? 'greater' : 'less'} than ${t(whole)}`,
      ],
      slips: [['compare.reversed', valueWins ? rational(whole) : value]],
      uses: `compares ${text} with ${t(whole)}`,
    };
  },
  { places: 3 },
);

const roundPart = partTemplates(
  'round-part',
  ({ value, form, text, expr, rng, t, locale }) => {
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
          : `Round ${text} to the nearest ${name}.`,
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
        ['round.cut-off', down],
        ['round.always-up', up],
        ['round.in-steps', inSteps],
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
  },
  { places: 3 },
);

export const LARGER_PLACE_SKILLS: readonly Skill[] = [
  {
    id: 'place.hundred-more',
    title: 'Ten and a hundred more or less',
    year: 3,
    fluentYear: 4,
    strand: 'place-value',
    prerequisites: ['place.three-digit'],
    codes: { ac9: ['AC9M3N01', 'AC9M3N03'], england: ['NC-Y3-place-1'], ccss: ['2.NBT.B.8'] },
    shift: -0.4,
    templates: [moreOrLess(STEPPED, [10, 100])],
  },
  {
    id: 'place.thousands',
    title: 'Thousands, hundreds, tens and ones',
    year: 3,
    fluentYear: 4,
    strand: 'place-value',
    prerequisites: ['place.three-digit'],
    codes: {
      ac9: ['AC9M3N01'],
      england: ['NC-Y4-place-4', '4NPV-1', '4NPV-2'],
      ccss: ['4.NBT.A.1', '4.NBT.A.2'],
    },
    templates: [
      howMany(THOUSANDS),
      compose(THOUSANDS),
      restOf(THOUSANDS),
      digitWorth(THOUSANDS),
      moreOrLess(THOUSANDS, [1]),
    ],
  },
  {
    id: 'place.thousand-more',
    title: 'A hundred and a thousand more or less',
    year: 4,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.hundred-more', 'place.thousands'],
    codes: { ac9: ['AC9M3N01'], england: ['NC-Y4-place-2', 'NC-Y5-place-2'], ccss: ['4.NBT.A.1'] },
    shift: -0.5,
    templates: [moreOrLess(TO_100_000, [100, 1000])],
  },
  {
    id: 'place.compare.large',
    title: 'Compare numbers beyond 1000',
    year: 4,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.compare.1000', 'place.thousands'],
    codes: { ac9: ['AC9M3N01'], england: ['NC-Y4-place-5'], ccss: ['4.NBT.A.2'] },
    templates: [
      greatestOrLeast({ free: (rng) => rng.int(1020, 98_900), from: 1000, to: 999_999 }, 1_000_000),
    ],
  },
  {
    id: 'place.round.10-100',
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
    codes: { ac9: ['AC9M4N06'], england: ['NC-Y4-place-6', '4NPV-4'], ccss: ['2.MD.B.6'] },
    templates: [halfway],
  },
  {
    id: 'place.part-neighbours',
    title: 'Place decimals, mixed numbers and money among whole numbers',
    year: 4,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.compare.1000'],
    codes: { ac9: ['AC9M4N01', 'AC9M4N04'], england: ['NC-Y4-fractions-9', '5NPV-3'], ccss: ['4.NF.C.7'] },
    templates: [...neighbours, ...greaterThanWhole],
  },
  {
    id: 'place.million',
    title: 'Place value to a million',
    year: 5,
    fluentYear: 6,
    strand: 'place-value',
    prerequisites: ['place.thousands'],
    codes: { ac9: ['AC9M3N01'], england: ['NC-Y5-place-1', 'NC-Y5-place-2'], ccss: ['4.NBT.A.2'] },
    shift: -0.3,
    templates: [
      digitWorth(MILLION),
      howMany(MILLION),
      restOf(MILLION),
      moreOrLess({ ...MILLION, to: 890_000 }, [1, 1000, 10_000, 100_000]),
    ],
  },
  {
    id: 'place.round.large',
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
