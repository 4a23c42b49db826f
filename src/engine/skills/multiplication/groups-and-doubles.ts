// First multiplication: equal groups, skip counts, doubles, and times zero and one.
import { add, rational } from '../../numbers/rational.js';
import { carriesWhenDoubled, double } from './doubling.js';
import { numericTemplate, wholeWithin } from '../sketch.js';
import { writtenOne } from '../parts.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';

/** The skills on first multiplication: equal groups, skip counts, doubles, and times zero and one. */
export const GROUP_SKILLS: readonly Skill[] = [
  {
    id: 'mult.groups',
    title: 'Count equal groups',
    year: 1,
    fluentYear: 2,
    strand: 'multiplication',
    prerequisites: ['add.doubles'],
    codes: {
      ac9: ['AC9M1N03', 'AC9M1N06', 'AC9M2N05'],
      england: ['NC-Y1-multdiv-1', '1NF-2', '2MD-1'],
      ccss: ['2.OA.C.4', '3.OA.A.1'],
    },
    templates: [
      numericTemplate({
        id: 'groups',
        kinds: ['whole'],
        free: (rng) => rng.int(2, 6),
        suits: wholeWithin(2, 12),
        make: (x) => {
          const groups = x.rng.int(2, x.n <= 5 ? 5 : 3);
          const total = groups * x.n;
          return {
            text: `${groups} groups of ${x.text}`,
            value: total,
            expression: `${groups} * ${x.n}`,
            features: { size: groups === 2 ? 0 : (groups + x.n) / 5, fives: x.n === 5, rule: x.n === 10 },
            strategy: [`${Array.from({ length: groups }, () => x.n).join(' + ')} = ${total}`],
            slips: [
              ['times.as-plus', groups + x.n],
              ['times.neighbour', total - x.n],
              ['times.neighbour', total + x.n],
            ],
            uses: `makes groups of ${x.text}`,
            figure: total <= 36 ? { kind: 'array', rows: groups, columns: x.n } : undefined,
          };
        },
      }),
      numericTemplate({
        id: 'groups-story',
        kinds: ['whole'],
        free: (rng) => rng.pick([2, 5, 10, 3]),
        suits: wholeWithin(2, 10),
        make: (x) => {
          const groups = x.rng.int(2, 4);
          const total = groups * x.n;
          const [box, thing] = x.pick([
            ['plates', 'strawberries'],
            ['jars', 'buttons'],
            ['baskets', 'eggs'],
            ['pots', 'seeds'],
            ['shelves', 'books'],
          ] as const);
          return {
            text: `${groups} ${box} hold ${x.text} ${thing} each. How many ${thing} is that?`,
            value: total,
            expression: `${groups} * ${x.n}`,
            features: {
              story: true,
              size: groups === 2 ? 0 : (groups + x.n) / 5,
              fives: x.n === 5,
              rule: x.n === 10,
            },
            strategy: [`${Array.from({ length: groups }, () => x.n).join(' + ')} = ${total}`],
            slips: [
              ['times.as-plus', groups + x.n],
              ['times.neighbour', total - x.n],
            ],
            uses: `counts ${groups} groups of ${x.text}`,
          };
        },
      }),
    ],
  },
  {
    id: 'mult.double.small',
    family: 'double',
    title: 'Double numbers to 20',
    year: 1,
    fluentYear: 2,
    strand: 'multiplication',
    prerequisites: ['mult.groups'],
    codes: { ac9: ['AC9M1N03', 'AC9M2A03'], england: ['NC-Y1-addsub-2'], ccss: ['2.OA.C.3'] },
    templates: [
      numericTemplate({
        id: 'double',
        kinds: ['whole'],
        free: (rng) => rng.int(2, 20),
        suits: wholeWithin(1, 20),
        make: (x) =>
          double(
            x,
            {
              tie: true,
              size: x.n <= 5 ? 0 : x.n <= 10 ? 1 : 2,
              rule: x.n === 10 || x.n === 1,
              carries: x.n > 10 ? carriesWhenDoubled(x.n) : 0,
            },
            false,
          ),
      }),
      numericTemplate({
        id: 'half-inside',
        kinds: ['whole'],
        free: (rng) => 2 * rng.int(2, 10),
        suits: (value) => value.d === 1 && value.n % 2 === 0 && value.n >= 2 && value.n <= 40,
        make: (x) => ({
          text: `Double ? = ${x.text}`,
          value: x.n / 2,
          expression: `${x.n} / 2`,
          features: { unknownInside: true, size: x.n / 12 },
          strategy: [`${x.n / 2} + ${x.n / 2} = ${x.n}`],
          slips: [
            ['divide.not-undone', 2 * x.n],
            ['divide.as-minus', x.n - 2],
          ],
          uses: `finds what doubles to ${x.text}`,
        }),
      }),
    ],
  },
  {
    id: 'mult.double.2d',
    family: 'double',
    title: 'Double two-digit numbers',
    year: 2,
    fluentYear: 3,
    strand: 'multiplication',
    prerequisites: ['mult.double.small', 'add.2d2d'],
    codes: { ac9: ['AC9M2N05', 'AC9M2A03'], england: ['NC-Y2-multdiv-4', '2MD-1'], ccss: ['2.NBT.B.5'] },
    templates: [
      numericTemplate({
        id: 'double',
        kinds: ['whole'],
        free: (rng) => rng.int(21, 99),
        suits: wholeWithin(21, 99),
        make: (x) =>
          double(x, { carries: carriesWhenDoubled(x.n), size: x.n >= 50 ? 1 : 0, rule: x.n % 10 === 0 }),
      }),
      numericTemplate({
        id: 'double-story',
        kinds: ['whole'],
        free: (rng) => rng.int(12, 60),
        suits: wholeWithin(12, 99),
        make: (x) => {
          const name = storyName(x.rng);
          const sketch = double(x, {
            story: true,
            carries: carriesWhenDoubled(x.n),
            size: x.n >= 50 ? 1 : 0,
          });
          const told = x.pick([
            `${name} has read ${x.text} pages, half of a book. How many pages are in the book?`,
            `${name} skips ${x.text} times, then ${x.text} more. How many skips is that?`,
            `One box holds ${x.text} pencils. How many do two boxes hold?`,
          ]);
          // A 2 is added by mistake only where the story speaks of two.
          const slips = sketch.slips.filter(([slip]) => slip !== 'times.adds-two' || told.includes('two'));
          return { ...sketch, text: told, slips };
        },
      }),
    ],
  },
  {
    id: 'mult.double.large',
    family: 'double',
    title: 'Double three- and four-digit numbers and amounts of money',
    year: 3,
    fluentYear: 4,
    strand: 'multiplication',
    prerequisites: ['mult.double.2d', 'add.2d2d.carry'],
    codes: { ac9: ['AC9M3N04', 'AC9M3N06'], england: ['NC-Y3-multdiv-2'], ccss: ['3.OA.B.5'] },
    templates: [
      numericTemplate({
        id: 'double',
        kinds: ['whole'],
        free: (rng) => (rng.chance(0.5) ? rng.int(101, 999) : 50 * rng.int(3, 90)),
        suits: wholeWithin(100, 9999),
        make: (x) =>
          double(x, {
            carries: carriesWhenDoubled(x.n),
            size: x.n >= 1000 && x.n % 100 !== 0 ? 2 : x.n >= 1000 ? 1 : 0,
            rule: x.n % 100 === 0,
          }),
      }),
      numericTemplate({
        id: 'double-money',
        kinds: ['money'],
        free: (rng) => rational(5 * rng.int(13, 199), 100),
        suits: (value) => value.n <= 2000 * value.d,
        make: (x) => ({
          ...double(x, {
            carries: (x.d === 1 ? 0 : 1) + (x.value.n * 2 >= x.value.d * 20 ? 1 : 0),
            size: x.n > 20 * x.d ? 1 : 0,
          }),
          text: x.pick([
            `Double ${x.text}`,
            `2 × ${x.text}`,
            x.n < 40 * x.d
              ? `One ticket costs ${x.text}. What do 2 tickets cost?`
              : `One bike costs ${x.text}. What do 2 bikes cost?`,
          ]),
        }),
      }),
    ],
  },
  {
    id: 'mult.zero-one',
    family: 'rules of 0 and 1',
    title: 'Multiply by zero and one',
    year: 3,
    fluentYear: 4,
    strand: 'multiplication',
    prerequisites: ['mult.groups'],
    codes: { ac9: ['AC9M3N04'], england: ['NC-Y4-multdiv-2'], ccss: ['3.OA.B.5', '3.OA.C.7'] },
    templates: [
      numericTemplate({
        id: 'by-one-or-zero',
        kinds: ['whole', 'decimal', 'money', 'fraction'],
        free: (rng) => rng.int(3, 120),
        suits: () => true,
        make: (x) => {
          const by = x.rng.int(0, 1);
          const after = x.rng.chance(0.5);
          return {
            text: after ? `${x.text} × ${by}` : `${by} × ${x.text}`,
            value: by === 0 ? 0 : x.value,
            expression: after ? `${x.expr} * ${by}` : `${by} * ${x.expr}`,
            // A rule that holds for every number alike: easier still than a table fact with a rule.
            features: { rule: true, adjust: (by === 1 ? -0.8 : -0.3) + (after ? 0 : 0.1) },
            strategy: [
              by === 0 ? `No groups of ${x.text} make ${x.t(0)}` : `One group of ${x.text} is ${x.text}`,
            ],
            slips:
              by === 0
                ? [['times.zero-keeps', x.value]]
                : [
                    ['times.one-adds', add(x.value, writtenOne(x.value, x.form))],
                    ['times.zero-one-mixed', 0],
                  ],
            uses: `multiplies ${x.text} by ${by}`,
          };
        },
      }),
      numericTemplate({
        id: 'which-factor',
        kinds: ['whole', 'decimal', 'money', 'fraction'],
        free: (rng) => rng.int(3, 120),
        suits: () => true,
        make: (x) => ({
          text: `${x.text} × ? = ${x.text}`,
          value: 1,
          form: 'whole',
          expression: `${x.expr} / ${x.expr}`,
          features: { rule: true, unknownInside: true, adjust: -0.6 },
          strategy: [`${x.text} × 1 = ${x.text}`],
          slips: [
            ['times.zero-keeps', 0],
            ['missing.number-repeated', x.d === 1 ? x.n : null],
          ],
          uses: `finds what leaves ${x.text} as it is`,
        }),
      }),
    ],
  },
];
