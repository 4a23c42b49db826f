// Comparing decimals of equal and unequal length.
import { add, compare, floor, rational, type Rational } from '../../numbers/rational.js';
import type { MisconceptionId } from '../../questions/misconceptions.js';
import { type DecimalRule, largerByRule } from '../../questions/slips/decimal-comparison.js';
import { drawDecimal, placesOf } from './draw-decimal.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';

/** The zero rule has no entry of its own: wherever it misleads, the whole-number rule chooses the same. */
const RULE_MISCONCEPTIONS = [
  ['whole-number', 'decimals.whole-number'],
  ['longer-larger', 'decimals.longer-larger'],
  ['shorter-larger', 'decimals.shorter-larger'],
] as const satisfies readonly (readonly [DecimalRule, MisconceptionId])[];

/** The misconceptions whose rule would pick the wrong one of two decimals, given as texts. */
function comparisonSlips(right: string, wrong: string): MisconceptionId[] {
  return RULE_MISCONCEPTIONS.filter(([rule]) => largerByRule(rule, right, wrong) === wrong).map(
    ([, id]) => id,
  );
}

/** The skills on comparing decimals of equal and unequal length. */
export const DECIMAL_COMPARING_SKILLS: readonly Skill[] = [
  {
    id: 'dec.compare',
    family: 'which is greater',
    title: 'Compare decimals with the same number of places',
    year: 4,
    fluentYear: 5,
    strand: 'decimals',
    prerequisites: ['dec.parts', 'place.compare.1000'],
    codes: { ac9: ['AC9M4N01', 'AC9M5N01'], england: ['NC-Y4-fractions-9'], ccss: ['4.NF.C.7'] },
    templates: [
      numericTemplate({
        id: 'which',
        kinds: ['decimal', 'money'],
        free: (rng) => drawDecimal(rng, rng.pick([1, 2]), 0, 10),
        suits: (value, form) =>
          (form === 'money' ? value.d > 1 : placesOf(value) <= 3) && value.n <= 100_000 * value.d,
        make: (x) => {
          const places = x.form === 'money' ? 2 : placesOf(x.value);
          const scale = 10 ** places;
          const digits = x.n * (scale / x.d);
          const shift = x.pick([1, 2, 5, 10, 30]) * (x.rng.chance(0.5) ? 1 : -1);
          const turned = Number([...String(digits)].reverse().join(''));
          const otherDigits = x.rng.chance(0.3) ? turned : digits + shift;
          if (
            otherDigits <= 0 ||
            otherDigits === digits ||
            otherDigits % 10 === 0 ||
            (x.form === 'money' && otherDigits < 100 !== digits < 100)
          )
            return null;
          const other = rational(otherDigits, scale);
          const askMore = x.rng.chance(0.6);
          const first = askMore === digits > otherDigits;
          // The one asked for is named first.
          const inOrder = (first ? [digits, otherDigits] : [otherDigits, digits]).map((count) =>
            x.t(count, 'whole'),
          );
          const texts = x.rng.shuffle([x.text, x.t(other)]);
          return {
            text: `Which is ${askMore ? 'greater' : 'less'}: ${texts[0]} or ${texts[1]}?`,
            value: first ? x.value : other,
            expression: `${askMore ? 'max' : 'min'}(${x.expr}, ${x.e(other)})`,
            features: {
              fewChoices: true,
              size: places > 1 && Math.abs(digits - otherDigits) < 10 ? 0.7 : 0,
              adjust: -0.3 - (x.form === 'money' ? 0.3 : 0) - (askMore ? 0.2 : 0),
            },
            strategy: [
              `${inOrder[0]} is ${askMore ? 'more' : 'less'} than ${inOrder[1]}, counted in ${x.form === 'money' ? x.locale.currency.minorName[1] : places === 3 ? 'thousandths' : x.parts(scale)}`,
            ],
            slips: [['compare.other-way-round', first ? other : x.value]],
            uses: `compares ${x.text} with ${x.t(other)}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.compare.ragged',
    family: 'which is greater',
    title: 'Compare decimals with different numbers of places',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.compare'],
    codes: { ac9: ['AC9M5N01'], england: ['NC-Y5-fractions-9', '5NPV-3'], ccss: ['5.NBT.A.3b'] },
    templates: [
      numericTemplate({
        id: 'which',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, rng.pick([1, 2]), 0, 6),
        suits: (value) => placesOf(value) <= 3 && value.n <= 1_000_000 * value.d,
        make: (x) => {
          const places = placesOf(x.value);
          const otherPlaces = x.pick(([1, 2, 3] as const).filter((p) => p !== places));
          const whole = floor(x.value);
          const other = add(rational(whole), drawDecimal(x.rng, otherPlaces, 0, 1));
          if (placesOf(other) !== otherPlaces || compare(other, x.value) === 0) return null;
          const [more, less] = compare(x.value, other) > 0 ? [x.value, other] : [other, x.value];
          const askMore = x.rng.chance(0.7);
          const [right, wrong] = askMore ? [more, less] : [less, more];
          const plain = (value: Rational) => x.e(value);
          const rules = comparisonSlips(plain(more), plain(less));
          const texts = x.rng.shuffle([x.text, x.t(other)]);
          const longest = Math.max(places, otherPlaces);
          const inLast = (value: Rational) => value.n * (10 ** longest / value.d);
          return {
            text: `Which is ${askMore ? 'greater' : 'less'}: ${texts[0]} or ${texts[1]}?`,
            value: right,
            expression: `${askMore ? 'max' : 'min'}(${x.expr}, ${x.e(other)})`,
            features: {
              fewChoices: true,
              unlike: rules.includes('decimals.whole-number') || rules.includes('decimals.longer-larger'),
              size: longest === 3 ? 1 : 0,
              adjust: askMore ? 0 : 0.2,
            },
            strategy: [
              `${x.t(inLast(right), 'whole')} is ${askMore ? 'more' : 'less'} than ${x.t(inLast(wrong), 'whole')}, counted in ${longest === 3 ? 'thousandths' : x.parts(10 ** longest)}`,
            ],
            slips: rules.map((rule) => [rule, wrong] as const),
            uses: `compares ${x.text} with ${x.t(other)}`,
          };
        },
      }),
    ],
  },
];
