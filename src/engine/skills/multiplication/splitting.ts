// Multiplying by splitting a factor into its places.
import {
  multiplyColumns,
  multiplyTensOnly,
  multiplyWithoutCarry,
  multiplyWithoutCross,
} from '../../questions/slips/products.js';
import { numericTemplate, type Sketch, type Subject, wholeWithin } from '../sketch.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';
import { timesStory, withStory } from '../retold.js';

/** The parts of a whole number by place, largest first: 305 is 300 and 5. */
function placeParts(n: number): number[] {
  return [...String(n)]
    .map((digit, i, all) => Number(digit) * 10 ** (all.length - 1 - i))
    .filter((part) => part > 0);
}

function splitSteps(x: Subject, k: number): string[] {
  const parts = placeParts(x.n);
  if (parts.length === 1 && x.n > 9) {
    // 30 × 4 has nothing to split: the digit first, then its place.
    const unit = 10 ** (String(x.n).length - 1);
    const base = x.n / unit;
    return [`${base} × ${k} = ${base * k}`, `${base * k} × ${x.t(unit)} = ${x.t(x.n * k)}`];
  }
  const steps = parts.map((part) => `${x.t(part)} × ${k} = ${x.t(part * k)}`);
  return parts.length > 1
    ? [...steps, `${parts.map((part) => x.t(part * k)).join(' + ')} = ${x.t(x.n * k)}`]
    : steps;
}

function carriesTimes(n: number, k: number): number {
  return [...String(n)].slice(1).filter((digit) => Number(digit) * k >= 10).length;
}

function byDigit(x: Subject, k: number): Sketch {
  return {
    text: x.rng.chance(0.5) ? `${x.text} × ${k}` : `${k} × ${x.text}`,
    value: x.n * k,
    expression: `${x.n} * ${k}`,
    features: {
      size: (k > 5 ? 1 : 0) + (x.n % 10 > 5 ? 0.5 : 0),
      carries: carriesTimes(x.n, k),
      fives: k === 5,
      rule: x.n % 10 === 0,
    },
    strategy: splitSteps(x, k),
    slips: [
      ['times.tens-only', multiplyTensOnly(x.n, k)],
      ['times.carry-forgotten', multiplyWithoutCarry(x.n, k)],
      ['times.neighbour', x.n * (k - 1)],
      ['times.as-plus', x.n + k],
    ],
    uses: `multiplies ${x.text} by ${k}`,
  };
}

/** The skills on multiplying by splitting a factor into its places. */
export const SPLITTING_SKILLS: readonly Skill[] = [
  {
    id: 'mult.2d1d',
    title: 'Multiply a two-digit number by one digit',
    year: 4,
    fluentYear: 5,
    strand: 'multiplication',
    prerequisites: ['mult.tens', 'mult.table.5', 'add.2d2d.carry'],
    codes: {
      ac9: ['AC9M4N06', 'AC9M4A02'],
      england: ['NC-Y4-multdiv-5', '4MD-3', 'NC-Y3-multdiv-2'],
      ccss: ['3.OA.B.5', '4.NBT.B.5'],
    },
    templates: [
      numericTemplate({
        id: 'split',
        kinds: ['whole'],
        free: (rng) => rng.int(13, 99),
        suits: wholeWithin(13, 99),
        make: (x) => byDigit(x, x.rng.int(3, 9)),
      }),
      numericTemplate({
        id: 'story',
        kinds: ['whole'],
        free: (rng) => rng.int(13, 48),
        suits: wholeWithin(13, 99),
        make: (x) => {
          const k = x.rng.int(3, 7);
          const sketch = byDigit(x, k);
          const name = storyName(x.rng);
          return {
            ...sketch,
            features: { ...sketch.features, story: true },
            text: x.pick([
              `${name} collects ${x.text} stamps a week. How many is that in ${k} weeks?`,
              `${k} buses carry ${x.text} children each. How many children is that?`,
              `A garden has ${k} rows of ${x.text} tulips. How many tulips is that?`,
            ]),
          };
        },
      }),
      numericTemplate({
        id: 'array-split',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 19),
        suits: wholeWithin(12, 19),
        make: (x) => {
          const k = x.rng.int(3, 6);
          return {
            text: `${k} × ${x.n} = ${k} × 10 + ${k} × ?`,
            value: x.n - 10,
            expression: `(${k} * ${x.n} - ${k} * 10) / ${k}`,
            features: {
              unknownInside: true,
              adjust: -0.4 /* a small missing part, no product to work out */,
            },
            strategy: [`${x.n} is 10 and ${x.n - 10}`, `${k} × ${x.n} = ${k} × 10 + ${k} × ${x.n - 10}`],
            slips: [
              ['times.product-for-factor', k * (x.n - 10)],
              ['place.neighbour', 1],
            ],
            uses: `splits ${x.text} into 10 and a part`,
          };
        },
      }),
    ],
  },
  {
    id: 'mult.3d1d',
    title: 'Multiply a three-digit number by one digit',
    year: 5,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.2d1d'],
    codes: { ac9: ['AC9M5N06'], england: ['NC-Y4-multdiv-4', '5MD-3'], ccss: ['4.NBT.B.5'] },
    templates: [
      numericTemplate({
        id: 'split',
        kinds: ['whole'],
        free: (rng) => rng.int(102, 420),
        suits: wholeWithin(101, 999),
        make: (x) => byDigit(x, x.rng.int(3, 9)),
      }),
      numericTemplate({
        id: 'story',
        kinds: ['whole'],
        free: (rng) => 5 * rng.int(21, 70),
        suits: wholeWithin(101, 999),
        make: (x) => {
          const k = x.rng.int(3, 6);
          const sketch = byDigit(x, k);
          return {
            ...sketch,
            features: { ...sketch.features, story: true },
            text: x.pick([
              `A farm packs ${x.text} melons a day. How many is that in ${k} days?`,
              `A hall has ${k} blocks of ${x.text} seats. How many seats is that?`,
            ]),
          };
        },
      }),
    ],
  },
  {
    id: 'mult.2d2d',
    title: 'Multiply by two-digit numbers in the head',
    year: 6,
    fluentYear: 6,
    strand: 'multiplication',
    prerequisites: ['mult.2d1d', 'mult.near'],
    codes: {
      ac9: ['AC9M5N06'],
      england: ['NC-Y5-multdiv-4', 'NC-Y6-fourops-1'],
      ccss: ['4.NBT.B.5', '5.NBT.B.5'],
    },
    // Four parts to hold in the head; common practice.
    shift: 0.8,
    templates: withStory(timesStory, [
      numericTemplate({
        id: 'four-parts',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 48),
        suits: wholeWithin(12, 99),
        make: (x) => {
          const by = x.pick([12, 13, 14, 15, 16, 18, 22, 23, 24, 32, 35]);
          const tens = by - (by % 10);
          const ones = by % 10;
          return {
            text: `${x.text} × ${by}`,
            value: x.n * by,
            expression: `${x.n} * ${by}`,
            features: {
              extraSteps: 1,
              size: (by > 20 ? 1 : 0) + (x.n > 40 ? 1 : 0),
              carries: carriesTimes(x.n, ones) + (((x.n * tens) % 100) + ((x.n * ones) % 100) >= 100 ? 1 : 0),
              tie: x.n === by,
            },
            strategy: [
              `${x.text} × ${tens} = ${x.t(x.n * tens)}`,
              `${x.text} × ${ones} = ${x.t(x.n * ones)}`,
              `${x.t(x.n * tens)} + ${x.t(x.n * ones)} = ${x.t(x.n * by)}`,
            ],
            slips: [
              ['times.cross-forgotten', multiplyWithoutCross(x.n, by)],
              ['times.columns-alone', multiplyColumns(x.n, by)],
              ['times.zero-count', x.n * (tens / 10) + x.n * ones],
              ['times.ones-left-out', x.n * tens],
            ],
            uses: `multiplies ${x.text} by ${by}`,
          };
        },
      }),
      numericTemplate({
        id: 'three-by-two',
        kinds: ['whole'],
        free: (rng) => 5 * rng.int(21, 80),
        suits: wholeWithin(101, 999),
        make: (x) => {
          const by = x.pick([12, 13, 14, 15, 21, 22, 24]);
          const tens = by - (by % 10);
          const ones = by % 10;
          return {
            text: `${x.text} × ${by}`,
            value: x.n * by,
            expression: `${x.n} * ${by}`,
            features: {
              extraSteps: 2,
              size: by > 20 ? 2 : 1,
              carries: Math.min(2, carriesTimes(x.n, ones)),
              rule: x.n % 100 === 0,
            },
            strategy: [
              `${x.text} × ${tens} = ${x.t(x.n * tens)}`,
              `${x.text} × ${ones} = ${x.t(x.n * ones)}`,
              `${x.t(x.n * tens)} + ${x.t(x.n * ones)} = ${x.t(x.n * by)}`,
            ],
            slips: [
              ['times.zero-count', x.n * (tens / 10) + x.n * ones],
              ['times.ones-left-out', x.n * tens],
              ['times.ones-added', x.n * tens + ones],
            ],
            uses: `multiplies ${x.text} by ${by}`,
          };
        },
      }),
    ]),
  },
];
