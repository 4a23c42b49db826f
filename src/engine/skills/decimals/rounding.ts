// Rounding decimals.
import { add, compare, equals, floor, rational, roundTo, subtract } from '../../numbers/rational.js';
import { drawDecimal, placesOf } from './draw-decimal.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';

const TENTH = rational(1, 10);

const ONE = rational(1);

/** The skills on rounding decimals. */
export const ROUNDING_SKILLS: readonly Skill[] = [
  {
    id: 'dec.round',
    family: 'round',
    title: 'Round to the nearest whole number',
    year: 4,
    fluentYear: 5,
    strand: 'decimals',
    prerequisites: ['dec.parts', 'place.round.10-100'],
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
          const isHalfway = (x.n * 2) % x.d === 0;
          const between = x.rng.chance(0.3) && x.form === 'decimal' && !isHalfway;
          const unit = x.locale.currency.mainName[0];
          const rest = subtract(x.value, rational(down));
          const goes = between ? 'is nearer to' : 'rounds to';
          return {
            text: between
              ? `Is ${x.text} nearer to ${x.t(down)} or ${x.t(down + 1)}?`
              : x.form === 'money'
                ? `What is ${x.text} to the nearest ${unit}?`
                : `What is ${x.text} to the nearest whole number?`,
            value: answer,
            expression: `round(${x.expr})`,
            features: {
              rule: true,
              size: placesOf(x.value) > 1 && x.form === 'decimal' ? 1 : 0,
              fewChoices: between,
              adjust: (up ? 0.2 : -0.1) + (isHalfway ? 0.4 : 0) + 0.2,
            },
            strategy: [
              `${x.text} lies between ${x.t(down)} and ${x.t(down + 1)}`,
              isHalfway
                ? `${x.text} is halfway, which goes up to ${x.t(answer)}`
                : `${x.t(rest)} is ${up ? 'more' : 'less'} than ${x.t(rational(1, 2))}, so ${down > 0 ? x.text : 'it'} ${goes} ${x.t(answer)}`,
            ],
            slips: [
              [up ? 'decimals.cut-short' : 'decimals.rounds-up-always', up ? down : down + 1],
              // Where two numbers are offered, no child picks a third.
              [
                'decimals.point-forgotten',
                !between && x.form === 'decimal' && placesOf(x.value) === 1 ? x.n * (10 / x.d) : null,
              ],
              ['round.wrong-place', between ? null : roundTo(x.value, rational(10))],
            ],
            uses: `rounds ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.round.tenth',
    family: 'round',
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
          const halfway = equals(subtract(x.value, down), rational(1, 20));
          return {
            text: `What is ${x.text} to the nearest tenth?`,
            value: answer,
            expression: `round(${x.expr} * 10) / 10`,
            features: { size: placesOf(x.value) > 2 ? 1 : 0, carries: up && answer.d === 1 ? 1 : 0 },
            strategy: [
              `${x.text} lies between ${x.t(down)} and ${x.t(add(down, TENTH))}`,
              halfway ? `Halfway goes up, to ${x.t(answer)}` : `It is nearer to ${x.t(answer)}`,
            ],
            slips: [
              [up ? 'decimals.cut-short' : 'decimals.rounds-up-always', up ? down : add(down, TENTH)],
              ['round.wrong-place', roundTo(x.value, ONE)],
            ],
            uses: `rounds ${x.text} to one place`,
          };
        },
      }),
      numericTemplate({
        id: 'nearer',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 2, 0, 10),
        suits: (value) => placesOf(value) >= 2 && placesOf(value) <= 3 && value.n > value.d / 20,
        make: (x) => {
          const down = rational(Math.floor((x.n * 10) / x.d), 10);
          const up = add(down, TENTH);
          const halfway = add(down, rational(1, 20));
          if (equals(x.value, halfway)) return null;
          const isUp = compare(x.value, halfway) > 0;
          const [answer, other] = isUp ? [up, down] : [down, up];
          return {
            text: `Is ${x.text} nearer to ${x.t(down)} or ${x.t(up)}?`,
            value: answer,
            expression: `round(${x.expr} * 10) / 10`,
            features: { size: placesOf(x.value) > 2 ? 1 : 0, fewChoices: true },
            strategy: [
              `Halfway is ${x.t(halfway)}`,
              `${x.text} is ${isUp ? 'more' : 'less'}, so it is nearer to ${x.t(answer)}`,
            ],
            slips: [[isUp ? 'decimals.cut-short' : 'decimals.rounds-up-always', other]],
            uses: `rounds ${x.text}`,
          };
        },
      }),
    ],
  },
];
