// Dividing by tens, and by one digit beyond the tables.
import { divideDigits } from '../../questions/slips/quotients.js';
import { DIGITS, dividingSteps, friendlyPart } from './dividing-steps.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';
import { divideStory, withStory } from '../retold.js';

/** The skills on dividing by tens, and by one digit beyond the tables. */
export const DERIVED_DIVISION_SKILLS: readonly Skill[] = [
  {
    id: 'div.by10',
    family: 'divide by 10',
    title: 'Divide by 10, 100 and 1000, and divide tens and hundreds',
    year: 4,
    fluentYear: 5,
    strand: 'division',
    prerequisites: ['mult.by100', 'div.table.2510'],
    codes: { ac9: ['AC9M4N05'], england: ['4MD-1', 'NC-Y5-multdiv-7'], ccss: ['4.NBT.A.1'] },
    templates: withStory(divideStory, [
      numericTemplate({
        id: 'scaled-down',
        kinds: ['whole'],
        free: (rng) => rng.pick([10, 100]) * rng.int(2, 99),
        suits: (value) => value.d === 1 && value.n % 10 === 0 && value.n >= 20,
        make: (x) => {
          const by = x.pick([10, 100, 1000].filter((k) => x.n % k === 0 && x.n > k));
          return {
            text: `${x.text} ÷ ${x.t(by)}`,
            value: x.n / by,
            expression: `${x.n} / ${by}`,
            features: { rule: true, size: (by === 10 ? 0 : 1) + (x.n >= 10_000 ? 1 : 0), adjust: 0.3 },
            strategy: [`${x.t(x.n / by)} × ${x.t(by)} = ${x.text}`],
            slips: [
              ['times.zero-count', x.n / by / 10 >= 1 && x.n % (by * 10) === 0 ? x.n / by / 10 : null],
              ['times.zero-count', (x.n / by) * 10],
              ['divide.as-minus', x.n - by],
            ],
            uses: `divides ${x.text} by ${x.t(by)}`,
          };
        },
      }),
      numericTemplate({
        id: 'tens-by-digit',
        kinds: ['whole'],
        free: (rng) => rng.int(2, 9) * rng.int(2, 9) * rng.pick([10, 100]),
        suits: (value) => value.d === 1 && value.n % 10 === 0 && value.n >= 60 && value.n <= 8100,
        make: (x) => {
          const unit = x.n % 100 === 0 && x.n >= 400 ? 100 : 10;
          const base = x.n / unit;
          const fits = DIGITS.filter((k) => base % k === 0 && base / k >= 2 && base / k <= 12);
          if (fits.length === 0) return null;
          const k = x.pick(fits);
          return {
            text: `${x.text} ÷ ${k}`,
            value: x.n / k,
            expression: `${x.n} / ${k}`,
            features: {
              size: (k > 5 ? 1 : 0) + (unit === 100 ? 0.5 : 0),
              fives: k === 5,
              extraSteps: 1,
              adjust: k === 2 ? -0.5 : 0,
            },
            strategy: [`${base} ÷ ${k} = ${base / k}`, `${base / k} × ${unit} = ${x.t(x.n / k)}`],
            slips: [
              ['times.zero-count', x.n / k / 10],
              ['times.zero-count', (x.n / k) * 10],
              ['times.neighbour', (base / k + 1) * unit],
            ],
            uses: `divides ${x.text} by ${k}`,
          };
        },
      }),
    ]),
  },
  {
    id: 'div.2d1d',
    title: 'Divide two-digit numbers by one digit beyond the tables',
    year: 4,
    fluentYear: 5,
    strand: 'division',
    prerequisites: ['div.table.34', 'mult.2d1d'],
    codes: {
      ac9: ['AC9M4N06', 'AC9M4A02'],
      england: ['NC-Y3-multdiv-2', 'NC-Y5-multdiv-5'],
      ccss: ['4.NBT.B.6', '3.OA.B.5'],
    },
    templates: [
      numericTemplate({
        id: 'split',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 7) * rng.int(12, 19),
        suits: (value) => value.d === 1 && value.n >= 36 && value.n <= 99,
        make: (x) => {
          const fits = DIGITS.filter((k) => k > 2 && x.n % k === 0 && x.n / k > 10);
          if (fits.length === 0) return null;
          const k = x.pick(fits);
          const q = x.n / k;
          const story = x.rng.chance(0.3);
          return {
            text: story
              ? `${storyName(x.rng)} ties ${x.text} balloons in ${k} equal bunches. How many are in each?`
              : `${x.text} ÷ ${k}`,
            value: q,
            expression: `${x.n} / ${k}`,
            features: { size: k > 5 ? 1 : 0, fives: k === 5, extraSteps: 1, rule: q % 10 === 0, story },
            strategy: dividingSteps(x.n, k, x.t),
            slips: [
              ['divide.digits-alone', divideDigits(x.n, k)],
              ['divide.one-part-only', friendlyPart(x.n, k) / k],
              ['divide.neighbour', q - 1],
              ['divide.neighbour', q + 1],
            ],
            uses: `divides ${x.text} by ${k}`,
          };
        },
      }),
    ],
  },
  {
    id: 'div.3d1d',
    title: 'Divide three-digit numbers by one digit',
    year: 5,
    fluentYear: 6,
    strand: 'division',
    prerequisites: ['div.2d1d', 'div.by10'],
    codes: { ac9: ['AC9M5N07'], england: ['5MD-4', 'NC-Y5-multdiv-6'], ccss: ['4.NBT.B.6'] },
    templates: [
      numericTemplate({
        id: 'split',
        kinds: ['whole'],
        free: (rng) => rng.int(3, 9) * rng.int(31, 99),
        suits: (value) => value.d === 1 && value.n >= 101 && value.n <= 999,
        make: (x) => {
          const fits = DIGITS.filter((k) => k > 2 && x.n % k === 0);
          if (fits.length === 0) return null;
          const k = x.pick(fits);
          const q = x.n / k;
          const story = x.rng.chance(0.3);
          return {
            text: story
              ? x.pick([
                  `${k} garden beds share ${x.text} plants equally. How many are in each?`,
                  `${k} classes share ${x.text} books equally. How many does each get?`,
                ])
              : `${x.text} ÷ ${k}`,
            value: q,
            expression: `${x.n} / ${k}`,
            features: {
              size: k > 5 ? 1 : 0,
              fives: k === 5,
              extraSteps: dividingSteps(x.n, k, x.t).length > 3 ? 2 : 1,
              rule: q % 10 === 0,
              story,
            },
            strategy: dividingSteps(x.n, k, x.t),
            slips: [
              ['divide.digits-alone', divideDigits(x.n, k)],
              ['divide.one-part-only', friendlyPart(x.n, k) / k],
              ['divide.neighbour', q + 1],
              ['divide.neighbour', q - 1],
            ],
            uses: `divides ${x.text} by ${k}`,
          };
        },
      }),
    ],
  },
];
