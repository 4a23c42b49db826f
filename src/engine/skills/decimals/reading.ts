// Reading decimals: parts, tenths, comparing, rounding, decimals and fractions.
import {
  add,
  compare,
  decimalPlaces,
  divide,
  floor,
  multiply,
  type Rational,
  rational,
  roundTo,
  subtract,
} from '../../numbers/rational.js';
import { DECIMAL_RULES, type DecimalRule, largerByRule } from '../../questions/slips/decimal-comparison.js';
import type { MisconceptionId } from '../../questions/misconceptions.js';
import type { Rng } from '../../random/rng.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';

const TENTH = rational(1, 10);
const ONE = rational(1);

/** A decimal with the given places whose last digit is not zero. */
export function drawDecimal(rng: Rng, places: 1 | 2 | 3, low: number, high: number): Rational {
  const scale = 10 ** places;
  const digits = rng.int(1, (high - low) * scale - 1);
  return rational(low * scale + digits + (digits % 10 === 0 ? 1 : 0), scale);
}

/** Places after the point, 9 when the decimal has no end. */
export function placesOf(value: Rational): number {
  return decimalPlaces(value) ?? 9;
}

const RULE_MISCONCEPTIONS: Readonly<Record<DecimalRule, MisconceptionId>> = {
  'whole-number': 'decimals.whole-number',
  'longer-larger': 'decimals.longer-larger',
  'shorter-larger': 'decimals.shorter-larger',
  zero: 'decimals.zero-rule',
};

/** The misconceptions whose rule would pick a wrong one of two decimals, given as texts. */
function comparisonSlips(right: string, wrong: string): MisconceptionId[] {
  return DECIMAL_RULES.filter((rule) => largerByRule(rule, right, wrong) === wrong).map(
    (rule) => RULE_MISCONCEPTIONS[rule],
  );
}

export const DECIMAL_READING_SKILLS: readonly Skill[] = [
  {
    id: 'dec.parts',
    title: 'Take a decimal apart: wholes, tenths, hundredths',
    year: 3,
    fluentYear: 4,
    strand: 'decimals',
    prerequisites: ['frac.count'],
    codes: {
      ac9: ['AC9M4N01'],
      england: ['NC-Y3-fractions-1', 'NC-Y4-fractions-5', '5NPV-2'],
      ccss: ['4.NF.C.6'],
    },
    templates: [
      numericTemplate({
        id: 'wholes',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 1, 20),
        suits: (value) => value.n > value.d && placesOf(value) <= 3,
        make: (x) => {
          const whole = floor(x.value);
          const rest = subtract(x.value, rational(whole));
          const ask = x.rng.int(0, 2);
          return {
            text:
              ask === 0
                ? `How many whole ones are in ${x.text}?`
                : ask === 1
                  ? `${x.text} = ${x.t(whole)} + ?`
                  : `? + ${x.t(rest)} = ${x.text}`,
            value: ask === 1 ? rest : whole,
            expression: ask === 1 ? `${x.expr} - ${whole}` : `floor(${x.expr})`,
            // Read straight off the print.
            features: { rule: true, adjust: ask === 0 ? -0.6 : placesOf(x.value) - 1 },
            strategy: [`${x.t(whole)} + ${x.t(rest)} = ${x.text}`],
            slips: [
              [
                'decimals.tenths-as-ones',
                ask === 1 ? multiply(rest, rational(10 ** placesOf(x.value))) : whole * 10,
              ],
              [
                'decimals.hundredths-as-tenths',
                ask === 1 ? multiply(rest, TENTH) : multiply(rest, rational(10)),
              ],
              ['decimals.rounds-up-always', ask === 1 ? null : whole + 1],
            ],
            uses: `takes ${x.text} apart`,
          };
        },
      }),
      numericTemplate({
        id: 'tenths',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 0, 10),
        suits: (value) => placesOf(value) <= 2 && value.n <= 100 * value.d,
        make: (x) => {
          const scale = 10 ** placesOf(x.value);
          const count = x.n * (scale / x.d);
          const words = x.rng.chance(0.5);
          return {
            text: words ? `How many ${x.parts(scale)} are in ${x.text}?` : `${x.text} = ?/${scale}`,
            value: count,
            expression: `${x.expr} * ${scale}`,
            features: { size: scale === 100 ? 1 : 0, adjust: x.n < x.d ? -0.8 : 0.3 },
            strategy: [
              ...(x.n > x.d ? [`${floor(x.value)} = ${floor(x.value) * scale}/${scale}`] : []),
              `${x.text} = ${count}/${scale}`,
            ],
            slips: [
              ['fractions.whole-ignored', x.n > x.d ? count % scale : null],
              ['fractions.whole-as-one-part', x.n > x.d ? floor(x.value) + (count % scale) : null],
              ['decimals.hundredths-as-tenths', count * 10],
              ['decimals.hundredths-as-tenths', scale === 100 && count % 10 === 0 ? count / 10 : null],
              ['decimals.place-missed', x.n < x.d ? x.value : null],
            ],
            uses: `counts the ${x.parts(scale)} in ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.step',
    title: 'One, a tenth or a hundredth more or less',
    year: 4,
    fluentYear: 5,
    strand: 'decimals',
    prerequisites: ['dec.parts'],
    codes: {
      ac9: ['AC9M4N01'],
      england: ['NC-Y4-fractions-2', 'NC-Y3-fractions-1', '5NPV-1'],
      ccss: ['4.NF.C.6', '5.NBT.A.3'],
    },
    templates: [
      numericTemplate({
        id: 'step',
        kinds: ['decimal', 'money'],
        free: (rng) => drawDecimal(rng, 1, 0, 12),
        suits: (value) => placesOf(value) <= 3 && value.n <= 1000 * value.d,
        make: (x) => {
          const units =
            x.form === 'money'
              ? [ONE, TENTH]
              : [ONE, TENTH, ...(placesOf(x.value) >= 2 ? [rational(1, 100)] : [])];
          const unit = x.pick(units);
          const up = compare(x.value, unit) <= 0 || x.rng.chance(0.6);
          const answer = up ? add(x.value, unit) : subtract(x.value, unit);
          const name = unit.d === 1 ? 'one' : `one ${x.parts(unit.d, 1)}`;
          const crosses = unit.d > 1 && floor(answer) !== floor(x.value);
          const op = up ? '+' : '−';
          return {
            text:
              x.form === 'money' || x.rng.chance(0.5)
                ? `${x.text} ${op} ${x.t(unit)}`
                : `What is ${name} ${up ? 'more' : 'less'} than ${x.text}?`,
            value: answer,
            expression: `${x.expr} ${up ? '+' : '-'} ${x.e(unit)}`,
            features: {
              rule: !crosses,
              extraSteps: crosses ? 1 : 0,
              size: unit.d === 100 ? 1 : 0,
              adjust: (unit.d === 1 ? -0.7 : 0) + (x.form === 'money' ? -0.3 : 0),
            },
            strategy: [`${x.text} ${op} ${x.t(unit)} = ${x.t(answer)}`],
            slips: [
              [
                'operation.swapped',
                up ? (compare(x.value, unit) > 0 ? subtract(x.value, unit) : null) : add(x.value, unit),
              ],
              [
                'decimals.place-missed',
                unit.d === 1
                  ? up
                    ? add(x.value, TENTH)
                    : subtract(x.value, TENTH)
                  : up
                    ? add(x.value, ONE)
                    : subtract(x.value, ONE),
              ],
              [
                'decimals.hundredths-as-tenths',
                unit.d === 10
                  ? up
                    ? add(x.value, rational(1, 100))
                    : subtract(x.value, rational(1, 100))
                  : null,
              ],
              [
                'decimals.parts-apart',
                crosses && up && placesOf(x.value) === 1
                  ? add(rational(floor(x.value)), rational(10, 100))
                  : null,
              ],
            ],
            uses: `steps from ${x.text}`,
          };
        },
      }),
      numericTemplate({
        id: 'sequence',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 1, 10),
        suits: (value) => placesOf(value) === 1 && value.n * 10 >= 5 * value.d && value.n <= 200 * value.d,
        make: (x) => {
          const unit = x.pick([TENTH, rational(2, 10), rational(5, 10)]);
          const first = subtract(x.value, multiply(unit, rational(2)));
          if (first.n < 0) return null;
          const answer = add(x.value, unit);
          return {
            text: `${x.t(first)}, ${x.t(subtract(x.value, unit))}, ${x.text}, ? What comes next?`,
            value: answer,
            expression: `${x.expr} + ${x.e(unit)}`,
            features: { extraSteps: floor(answer) > floor(x.value) ? 1 : 0, size: unit.n === 1 ? 0 : 0.5 },
            strategy: [
              `${x.text} − ${x.t(subtract(x.value, unit))} = ${x.t(unit)}`,
              `${x.text} + ${x.t(unit)} = ${x.t(answer)}`,
            ],
            slips: [
              [
                'decimals.parts-apart',
                floor(answer) > floor(x.value)
                  ? add(rational(floor(x.value)), rational(10 + ((answer.n * (10 / answer.d)) % 10), 100))
                  : null,
              ],
              ['decimals.place-missed', add(x.value, ONE)],
              ['divide.neighbour', add(answer, TENTH)],
            ],
            uses: `counts on from ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.compare',
    title: 'Compare decimals with the same number of places',
    year: 4,
    fluentYear: 5,
    strand: 'decimals',
    prerequisites: ['dec.parts'],
    codes: { ac9: ['AC9M4N01', 'AC9M5N01'], england: ['NC-Y4-fractions-9'], ccss: ['4.NF.C.7'] },
    templates: [
      numericTemplate({
        id: 'which',
        kinds: ['decimal', 'money'],
        free: (rng) => drawDecimal(rng, rng.pick([1, 2]), 0, 10),
        suits: (value, form) =>
          (form === 'money' ? value.d > 1 : placesOf(value) <= 3) && value.n <= 1000 * value.d,
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
          const texts = x.rng.shuffle([x.text, x.t(other)]);
          return {
            text: `Which is ${askMore ? 'more' : 'less'}, ${texts[0]} or ${texts[1]}?`,
            value: first ? x.value : other,
            expression: `${askMore ? 'max' : 'min'}(${x.expr}, ${x.e(other)})`,
            features: {
              fewChoices: true,
              size: places > 1 && Math.abs(digits - otherDigits) < 10 ? 0.7 : 0,
              adjust: -0.3 - (x.form === 'money' ? 0.3 : 0) - (askMore ? 0.2 : 0),
            },
            strategy: [
              `${Math.max(digits, otherDigits)} is more than ${Math.min(digits, otherDigits)}, counted in ${places === 3 ? 'thousandths' : x.parts(scale)}`,
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
        suits: (value) => placesOf(value) <= 3 && value.n <= 1000 * value.d,
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
          const inLast = (value: Rational) => String(value.n * (10 ** longest / value.d));
          return {
            text: `Which is ${askMore ? 'more' : 'less'}, ${texts[0]} or ${texts[1]}?`,
            value: right,
            expression: `${askMore ? 'max' : 'min'}(${x.expr}, ${x.e(other)})`,
            features: {
              fewChoices: true,
              unlike: rules.includes('decimals.whole-number') || rules.includes('decimals.longer-larger'),
              size: longest === 3 ? 1 : 0,
              adjust: askMore ? 0 : 0.2,
            },
            strategy: [
              `${inLast(more)} is more than ${inLast(less)}, counted in ${longest === 3 ? 'thousandths' : x.parts(10 ** longest)}`,
            ],
            slips: rules.slice(0, 1).map((rule) => [rule, wrong] as const),
            uses: `compares ${x.text} with ${x.t(other)}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.round',
    title: 'Round to the nearest whole number',
    year: 4,
    fluentYear: 5,
    strand: 'decimals',
    prerequisites: ['dec.parts'],
    codes: { ac9: ['AC9M4N07', 'AC9M5N08'], england: ['NC-Y4-fractions-8', '5NPV-3'], ccss: ['5.NBT.A.4'] },
    templates: [
      numericTemplate({
        id: 'whole',
        kinds: ['decimal', 'money'],
        free: (rng) => drawDecimal(rng, 1, 1, 30),
        suits: (value) =>
          value.d > 1 && value.n > value.d / 2 && placesOf(value) <= 3 && value.n <= 10_000 * value.d,
        make: (x) => {
          const answer = roundTo(x.value, ONE);
          const down = floor(x.value);
          const up = answer.n > down;
          const between = x.rng.chance(0.3) && x.form === 'decimal' && (x.n * 2) % x.d !== 0;
          const unit = x.locale.currency.mainName[0];
          return {
            text: between
              ? `Is ${x.text} nearer to ${x.t(down)} or to ${x.t(down + 1)}?`
              : x.form === 'money'
                ? `Round ${x.text} to the nearest ${unit}`
                : `Round ${x.text} to the nearest whole number`,
            value: answer,
            expression: `round(${x.expr})`,
            features: {
              rule: true,
              size: placesOf(x.value) > 1 && x.form === 'decimal' ? 1 : 0,
              fewChoices: between,
              adjust: (up ? 0.2 : -0.1) + ((x.n * 2) % x.d === 0 ? 0.4 : 0) + 0.2,
            },
            strategy: [
              `${x.text} lies between ${x.t(down)} and ${x.t(down + 1)}`,
              `${x.t(subtract(x.value, rational(down)))} is ${up ? 'at least' : 'less than'} ${x.t(rational(1, 2))}`,
            ],
            slips: [
              [up ? 'decimals.cut-short' : 'decimals.rounds-up-always', up ? down : down + 1],
              [
                'decimals.point-forgotten',
                x.form === 'decimal' && placesOf(x.value) === 1 ? x.n * (10 / x.d) : null,
              ],
              ['decimals.place-missed', roundTo(x.value, rational(10))],
            ],
            uses: `rounds ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.round.tenth',
    title: 'Round to one decimal place',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.round'],
    codes: { ac9: ['AC9M5N08'], england: ['NC-Y5-fractions-8', '5NPV-3'], ccss: ['5.NBT.A.4'] },
    templates: [
      numericTemplate({
        id: 'tenth',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 2, 0, 10),
        suits: (value) => placesOf(value) >= 2 && placesOf(value) <= 3 && value.n > value.d / 20,
        make: (x) => {
          const answer = roundTo(x.value, TENTH);
          const down = rational(Math.floor((x.n * 10) / x.d), 10);
          const up = compare(answer, down) > 0;
          return {
            text: `Round ${x.text} to the nearest tenth`,
            value: answer,
            expression: `round(${x.expr} * 10) / 10`,
            features: { size: placesOf(x.value) > 2 ? 1 : 0, carries: up && answer.d === 1 ? 1 : 0 },
            strategy: [
              `${x.text} lies between ${x.t(down)} and ${x.t(add(down, TENTH))}`,
              `It is nearer to ${x.t(answer)}`,
            ],
            slips: [
              [up ? 'decimals.cut-short' : 'decimals.rounds-up-always', up ? down : add(down, TENTH)],
              ['decimals.place-missed', roundTo(x.value, ONE)],
            ],
            uses: `rounds ${x.text} to one place`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.fraction',
    title: 'Match decimals and fractions',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.parts', 'frac.equal'],
    codes: {
      ac9: ['AC9M4N03', 'AC9M5N04'],
      england: ['NC-Y4-fractions-6', '5F-3', 'NC-Y5-fractions-6', '5NPV-4'],
      ccss: ['4.NF.C.6'],
    },
    templates: [
      numericTemplate({
        id: 'to-fraction',
        kinds: ['decimal'],
        free: (rng) =>
          rng.pick([
            rational(1, 2),
            rational(1, 4),
            rational(3, 4),
            rational(1, 5),
            rational(2, 5),
            rational(3, 5),
            rational(4, 5),
            rational(3, 20),
            rational(9, 20),
          ]),
        suits: (value) => placesOf(value) <= 2 && value.n <= 10 * value.d && value.d > 1,
        make: (x) => {
          const bottom = x.d < 10 || x.rng.chance(0.5) ? x.d : 100;
          const top = x.n * (bottom / x.d);
          return {
            text: `${x.text} = ?/${bottom}`,
            value: top,
            form: 'whole',
            expression: `${x.expr} * ${bottom}`,
            features: {
              size: bottom === 20 || bottom === 25 || bottom === 50 ? 1 : 0,
              adjust: bottom === 2 ? -0.8 : bottom === 100 ? -0.3 : 0,
              extraSteps: x.n > x.d ? 1 : 0,
            },
            strategy: [
              `1/${bottom} = ${x.t(rational(1, bottom))}`,
              `${top} × ${x.t(rational(1, bottom))} = ${x.text}`,
            ],
            slips: [
              [
                'fractions.digits-after-point',
                (x.n * (10 ** placesOf(x.value) / x.d)) % 10 ** placesOf(x.value),
              ],
              ['fractions.whole-ignored', x.n > x.d ? top % bottom : null],
              ['decimals.hundredths-as-tenths', bottom === 100 && top % 10 === 0 ? top / 10 : null],
              ['fractions.one-part-only', top > 1 ? 1 : 2],
            ],
            uses: `writes ${x.text} as a fraction`,
          };
        },
      }),
      numericTemplate({
        id: 'to-hundredths',
        kinds: ['fraction'],
        free: (rng) =>
          rng.pick([
            rational(1, 2),
            rational(1, 4),
            rational(3, 4),
            rational(2, 5),
            rational(3, 5),
            rational(7, 10),
            rational(9, 20),
            rational(6, 25),
          ]),
        suits: (value) => placesOf(value) <= 2 && value.n <= 10 * value.d,
        make: (x) => {
          const whole = floor(x.value);
          const hundredths = x.n * (100 / x.d);
          const tenths = placesOf(x.value) === 1 && x.rng.chance(0.5);
          const ask = x.rng.int(0, 1);
          const bottom = tenths ? 10 : 100;
          const value = tenths ? hundredths / 10 : hundredths;
          return ask === 0
            ? {
                text: `${x.text} = ?/${bottom}`,
                value,
                form: 'whole',
                expression: `(${x.n}/${x.d}) * ${bottom}`,
                features: {
                  extraSteps: whole > 0 ? 1 : 0,
                  size: x.d > 5 && x.d !== 10 ? 1 : 0,
                  adjust: tenths ? -0.4 : -0.2,
                },
                strategy: [`1/${x.d} = ${bottom / x.d}/${bottom}`, `${x.n} × ${bottom / x.d} = ${value}`],
                slips: [
                  ['fractions.top-unchanged', x.n],
                  ['fractions.equal-by-adding', x.n + bottom - x.d],
                  ['fractions.digits-after-point', Number(`${x.n}${x.d}`)],
                ],
                uses: `writes ${x.text} in ${tenths ? 'tenths' : 'hundredths'}`,
              }
            : {
                text: `Write ${x.text} with a decimal point`,
                value: x.value,
                form: 'decimal',
                expression: `${x.n} / ${x.d}`,
                features: {
                  extraSteps: whole > 0 ? 1 : 0,
                  size: x.d > 5 && x.d !== 10 ? 1 : 0,
                  adjust: x.d === 2 ? -0.6 : 0,
                },
                strategy: [
                  `${x.n % x.d}/${x.d} = ${hundredths % 100}/100`,
                  `${x.text} = ${x.t(x.value, 'decimal')}`,
                ],
                slips: [
                  [
                    'fractions.digits-after-point',
                    rational(whole * 100 + (x.n % x.d) * 10 + (x.d % 10), 100),
                  ],
                  ['fractions.digits-after-point', x.d < 10 ? rational((x.n % x.d) * 10 + x.d, 10) : null],
                  ['fractions.digits-joined', x.d < 10 ? rational(whole * 10 + x.d, 10) : null],
                  ['decimals.place-missed', divide(x.value, rational(10))],
                ],
                uses: `writes ${x.text} as a decimal`,
              };
        },
      }),
      numericTemplate({
        id: 'compare-forms',
        kinds: ['fraction', 'decimal'],
        freeForm: 'fraction',
        free: (rng) =>
          rng.pick([rational(1, 4), rational(3, 4), rational(2, 5), rational(3, 5), rational(4, 5)]),
        suits: (value) => placesOf(value) <= 2 && value.n < value.d,
        make: (x) => {
          const other =
            x.form === 'fraction'
              ? rational(x.rng.int(1, 9), 10)
              : x.pick([
                  rational(1, 2),
                  rational(1, 4),
                  rational(3, 4),
                  rational(2, 5),
                  rational(3, 5),
                  rational(1, 5),
                ]);
          const order = compare(x.value, other);
          if (order === 0) return null;
          const first = order > 0;
          const otherText = x.t(other, x.form === 'fraction' ? 'decimal' : 'fraction');
          return {
            text: `Which is more, ${x.text} or ${otherText}?`,
            value: first ? x.value : other,
            form: first === (x.form === 'fraction') ? 'fraction' : 'decimal',
            expression: `max(${x.e(x.value)}, ${x.e(other)})`,
            features: { fewChoices: true, extraSteps: 1, size: Math.abs(order) * 10 < x.d * other.d ? 1 : 0 },
            strategy: [
              `${x.t(x.value, 'decimal')} is ${first ? 'more' : 'less'} than ${x.t(other, 'decimal')}`,
            ],
            slips: [['fractions.digits-after-point', first ? other : x.value]],
            uses: `compares ${x.text} with ${otherText}`,
          };
        },
      }),
    ],
  },
];
