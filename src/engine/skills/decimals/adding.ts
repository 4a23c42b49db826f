// Adding and subtracting decimals, and completing them to a whole.
import { add, compare, floor, type Rational, rational, subtract } from '../../numbers/rational.js';
import { addPartsApart, rightAligned, withoutPoint } from '../../questions/slips/decimal-operations.js';
import type { Rng } from '../../random/rng.js';
import { numericTemplate, type Sketch, type Subject } from '../sketch.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';
import { drawDecimal, placesOf } from './draw-decimal.js';

/** The wholes first, then the parts, by way of the whole number between when the parts cross it. */
function stepsOf(x: Subject, other: Rational, sign: 1 | -1): string[] {
  const op = sign === 1 ? '+' : '−';
  const move = (from: Rational, by: Rational) => (sign === 1 ? add(from, by) : subtract(from, by));
  const steps: string[] = [];
  let now = x.value;
  const step = (by: Rational): void => {
    if (by.n === 0) return;
    const next = move(now, by);
    steps.push(`${x.t(now)} ${op} ${x.t(by)} = ${x.t(next)}`);
    now = next;
  };
  const wholes = rational(floor(other));
  const rest = subtract(other, wholes);
  step(wholes);
  const toWhole = sign === 1 ? subtract(rational(floor(now) + 1), now) : subtract(now, rational(floor(now)));
  if (rest.n > 0 && compare(rest, toWhole) > 0 && toWhole.n > 0 && toWhole.d > 1) {
    step(toWhole);
    step(subtract(rest, toWhole));
  } else step(rest);
  return steps.length === 1 ? inOnePlace(x, other, sign, steps) : steps;
}

const PARTS = ['', 'tenths', 'hundredths', 'thousandths'] as const;

/** A single jump told in the places it changes: the wholes for a whole number, else tenths, hundredths or thousandths. */
function inOnePlace(x: Subject, other: Rational, sign: 1 | -1, plain: string[]): string[] {
  const op = sign === 1 ? '+' : '−';
  const answer = sign === 1 ? add(x.value, other) : subtract(x.value, other);
  if (x.form !== 'decimal' || x.d === 1) return plain;
  if (other.d === 1) {
    const wholes = rational(floor(x.value));
    const moved = rational(wholes.n + sign * other.n);
    const part = subtract(x.value, wholes);
    if (wholes.n === 0 || moved.n <= 0) return plain;
    return [
      `${x.t(wholes)} ${op} ${x.t(other)} = ${x.t(moved)}`,
      `${x.t(moved)} + ${x.t(part)} = ${x.t(answer)}`,
    ];
  }
  const places = Math.max(placesOf(x.value), placesOf(other));
  const name = PARTS[places];
  if (!name) return plain;
  const parts = (count: number) => `${x.t(count, 'whole')} ${count === 1 ? name.slice(0, -1) : name}`;
  const [a = 0, b = 0, c = 0] = [x.value, other, answer].map((value) =>
    Math.round((value.n * 10 ** places) / value.d),
  );
  return [
    `${parts(a)} ${sign === 1 ? 'and' : 'take away'} ${parts(b)} ${sign === 1 ? 'are' : 'leaves'} ${parts(c)}`,
    ...plain,
  ];
}

/** a ± b: the wholes first, then the parts. */
function addOrTake(x: Subject, other: Rational, sign: 1 | -1, features: Sketch['features']): Sketch {
  const answer = sign === 1 ? add(x.value, other) : subtract(x.value, other);
  const op = sign === 1 ? '+' : '−';
  const rest = subtract(other, rational(floor(other)));
  return {
    text: `${x.text} ${op} ${x.t(other)}`,
    value: answer,
    expression: `${x.expr} ${sign === 1 ? '+' : '-'} ${x.e(other)}`,
    features,
    strategy: stepsOf(x, other, sign),
    slips: [
      ['decimals.parts-apart', sign === 1 ? addPartsApart(x.value, other) : null],
      ['decimals.right-aligned', rightAligned(x.value, sign, other)],
      ['decimals.point-forgotten', withoutPoint(answer)],
      [
        'operation.swapped',
        sign === -1 ? add(x.value, other) : compare(x.value, other) > 0 ? subtract(x.value, other) : null,
      ],
      [
        'decimals.whole-too-many',
        sign === -1 && rest.n * x.d > (x.n % x.d) * rest.d ? add(answer, rational(1)) : null,
      ],
    ],
    uses: sign === 1 ? `adds ${x.t(other)} to ${x.text}` : `takes ${x.t(other)} from ${x.text}`,
  };
}

function carriesIn(a: Rational, b: Rational): number {
  const parts = add(rational(a.n % a.d, a.d), rational(b.n % b.d, b.d));
  return floor(parts);
}

function borrowsIn(a: Rational, b: Rational): number {
  return (a.n % a.d) * b.d < (b.n % b.d) * a.d ? 1 : 0;
}

function drawNear(rng: Rng, places: 1 | 2, top: number): Rational {
  return rng.chance(0.5) ? drawDecimal(rng, places, 0, 1) : drawDecimal(rng, places, 1, top);
}

/** The skills on adding and subtracting decimals, and completing them to a whole. */
export const DECIMAL_SUM_SKILLS: readonly Skill[] = [
  {
    id: 'dec.next-whole',
    family: 'make up to a whole',
    title: 'Complete a decimal to a whole number',
    year: 4,
    fluentYear: 5,
    strand: 'decimals',
    prerequisites: ['dec.parts', 'frac.complement'],
    codes: { ac9: ['AC9M4N01'], england: ['NC-Y4-fractions-10', '5NF-2'], ccss: ['5.NBT.B.7'] },
    templates: [
      numericTemplate({
        id: 'gap',
        kinds: ['decimal', 'money'],
        free: (rng) => drawDecimal(rng, 1, 0, 12),
        suits: (value) => value.d > 1 && placesOf(value) <= 3 && value.n <= 1_000_000 * value.d,
        make: (x) => {
          const next = floor(x.value) + 1;
          const to = x.rng.chance(0.75) ? next : x.n < 10 * x.d && x.n > x.d ? 10 : next + 1;
          const gap = subtract(rational(next), x.value);
          const answer = subtract(rational(to), x.value);
          const places = placesOf(x.value);
          const figure = places === 1 && x.form === 'decimal' && to === next && x.rng.chance(0.4);
          const minus = !figure && x.rng.chance(0.3);
          return {
            text: minus ? `${x.t(to)} − ${x.text}` : `${x.text} + ? = ${x.t(to)}`,
            value: answer,
            expression: `${to} - ${x.expr}`,
            features: {
              unknownInside: !minus,
              drawn: figure,
              size: places > 1 ? 1 : 0,
              extraSteps: to === next ? 0 : 1,
              adjust: -0.3,
            },
            strategy: [
              `${x.text} + ${x.t(gap)} = ${x.t(next)}`,
              ...(to === next
                ? []
                : [
                    `${x.t(next)} + ${x.t(to - next)} = ${x.t(to)}`,
                    `${x.t(gap)} + ${x.t(to - next)} = ${x.t(answer)}`,
                  ]),
            ],
            slips: [
              ['decimals.whole-too-many', add(answer, rational(1))],
              ['fractions.complement-of-top', subtract(x.value, rational(floor(x.value)))],
              [
                'decimals.tenths-as-ones',
                places === 1
                  ? rational(to * 10).n * 1 - x.n * (10 / x.d) > 0
                    ? to * 10 - x.n * (10 / x.d)
                    : null
                  : null,
              ],
              ['complement.extra-ten', places === 2 ? add(answer, rational(1, 10)) : null],
            ],
            uses: `completes ${x.text} to ${x.t(to)}`,
            figure: figure
              ? {
                  kind: 'number-line',
                  from: next - 1,
                  to: next,
                  step: 0.1,
                  labels: [next - 1, next],
                  mark: x.n / x.d,
                }
              : undefined,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.add',
    family: 'add to a part',
    title: 'Add decimals with the same number of places, or a whole number',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.next-whole', 'dec.step', 'add.2d2d.carry'],
    codes: { ac9: ['AC9M6N04'], england: ['5NF-2', 'NC-Y5-fractions-10'], ccss: ['5.NBT.B.7'] },
    templates: [
      numericTemplate({
        id: 'add',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 0, 10),
        suits: (value) => placesOf(value) <= 2 && value.n <= 100_000 * value.d,
        make: (x) => {
          const places = placesOf(x.value) === 1 ? 1 : 2;
          const other = drawNear(x.rng, places, 6);
          return addOrTake(x, other, 1, {
            carries: carriesIn(x.value, other),
            size: (places > 1 ? 1 : 0) + (other.n > other.d ? 0.5 : 0),
            adjust: -0.2,
          });
        },
      }),
      numericTemplate({
        id: 'add-whole',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 0, 10),
        suits: (value) => placesOf(value) <= 3 && value.n <= 500 * value.d,
        make: (x) => {
          const other = rational(x.rng.int(2, 20));
          return addOrTake(x, other, 1, {
            size: -1,
            carries: (floor(x.value) % 10) + (other.n % 10) >= 10 ? 0.5 : 0,
            adjust: -0.3 /* only the wholes change */,
          });
        },
      }),
      numericTemplate({
        id: 'story',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 1, 9),
        suits: (value) => placesOf(value) <= 2 && value.n <= 30 * value.d && value.n * 4 > value.d,
        make: (x) => {
          const places = placesOf(x.value) === 1 ? 1 : 2;
          const other = drawDecimal(x.rng, places, 1, 5);
          const sketch = addOrTake(x, other, 1, {
            story: true,
            carries: carriesIn(x.value, other),
            size: places > 1 ? 1 : 0,
          });
          const { metre, litre } = x.locale.spelling;
          return {
            ...sketch,
            text: x.pick([
              `${storyName(x.rng)} walks ${x.text}\u00a0km and then ${x.t(other)}\u00a0km. How many kilo${metre}s is that?`,
              `You pour ${x.text}\u00a0L and then ${x.t(other)}\u00a0L of water into a tub. How many ${litre}s is that?`,
              `One box weighs ${x.text}\u00a0kg, another ${x.t(other)}\u00a0kg. How many kilograms in all?`,
            ]),
          };
        },
      }),
    ],
  },
  {
    id: 'dec.subtract',
    family: 'take from a part',
    title: 'Subtract decimals with the same number of places',
    year: 5,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.next-whole', 'dec.step', 'sub.2d2d.borrow'],
    codes: { ac9: ['AC9M6N04'], england: ['5NF-2', 'NC-Y5-fractions-10'], ccss: ['5.NBT.B.7'] },
    templates: [
      numericTemplate({
        id: 'take',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 1, 12),
        suits: (value) => placesOf(value) <= 2 && value.n <= 500 * value.d && value.n * 5 > value.d,
        make: (x) => {
          const places = placesOf(x.value) === 1 ? 1 : 2;
          const other = drawNear(x.rng, places, Math.max(2, Math.min(6, floor(x.value))));
          if (compare(other, x.value) >= 0) return null;
          return addOrTake(x, other, -1, {
            carries: borrowsIn(x.value, other),
            size: (places > 1 ? 1 : 0) + (other.n > other.d ? 0.5 : 0),
          });
        },
      }),
      numericTemplate({
        id: 'missing-part',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 1, 9),
        suits: (value) => placesOf(value) <= 2 && value.n <= 100 * value.d,
        make: (x) => {
          const places = placesOf(x.value) === 1 ? 1 : 2;
          const part = drawDecimal(x.rng, places, 0, 4);
          const whole = add(x.value, part);
          return {
            text: `${x.text} + ? = ${x.t(whole)}`,
            value: part,
            expression: `${x.e(whole)} - ${x.expr}`,
            features: { unknownInside: true, carries: carriesIn(x.value, part), size: places > 1 ? 1 : 0 },
            strategy: [`${x.t(whole)} − ${x.text} = ${x.t(part)}`],
            slips: [
              ['divide.not-undone', add(whole, x.value)],
              // Filling up both ends too far only where the tenths pass a whole.
              ['decimals.whole-too-many', carriesIn(x.value, part) > 0 ? add(part, rational(1)) : null],
              ['decimals.point-forgotten', withoutPoint(part)],
            ],
            uses: `finds what to add to ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'dec.ragged',
    title: 'Add and subtract decimals with different numbers of places',
    year: 6,
    fluentYear: 6,
    strand: 'decimals',
    prerequisites: ['dec.add', 'dec.subtract', 'dec.compare.ragged'],
    codes: { ac9: ['AC9M6N04'], england: ['NC-Y5-fractions-10'], ccss: ['5.NBT.B.7', '6.NS.B.3'] },
    // Common practice.
    shift: 0.4,
    templates: [
      numericTemplate({
        id: 'ragged',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 1, 1, 12),
        suits: (value) => placesOf(value) <= 2 && value.n <= 100_000 * value.d,
        make: (x) => {
          const places = placesOf(x.value) === 1 ? 2 : 1;
          const other = drawNear(x.rng, places, 5);
          if (placesOf(other) !== places) return null;
          const sign = compare(other, x.value) < 0 && x.rng.chance(0.5) ? -1 : 1;
          const moves = sign === 1 ? carriesIn(x.value, other) : borrowsIn(x.value, other);
          return addOrTake(x, other, sign, {
            unlike: true,
            carries: moves,
            size: (sign === -1 && places === 2 ? 1 : 0) + (other.n > other.d ? 0.5 : 0),
          });
        },
      }),
      numericTemplate({
        id: 'from-whole',
        kinds: ['decimal'],
        free: (rng) => drawDecimal(rng, 2, 0, 9),
        suits: (value) => placesOf(value) <= 3 && value.n <= 90 * value.d && value.d > 1,
        make: (x) => {
          const from = 10 * Math.ceil((floor(x.value) + 1 + x.rng.int(0, 10)) / 10);
          const answer = subtract(rational(from), x.value);
          const next = floor(x.value) + 1;
          return {
            text: `${from} − ${x.text}`,
            value: answer,
            expression: `${from} - ${x.expr}`,
            features: { unlike: placesOf(x.value) > 1, carries: 1, acrossZero: true },
            strategy: [
              `${x.text} + ${x.t(subtract(rational(next), x.value))} = ${x.t(next)}`,
              ...(from > next
                ? [
                    `${x.t(next)} + ${x.t(from - next)} = ${from}`,
                    `${x.t(from - next)} + ${x.t(subtract(rational(next), x.value))} = ${x.t(answer)}`,
                  ]
                : []),
            ],
            slips: [
              ['decimals.whole-too-many', add(answer, rational(1))],
              ['decimals.right-aligned', rightAligned(rational(from), -1, x.value)],
              [
                'decimals.parts-apart',
                add(rational(from - floor(x.value)), subtract(x.value, rational(floor(x.value)))),
              ],
            ],
            uses: `takes ${x.text} from ${from}`,
          };
        },
      }),
    ],
  },
];
