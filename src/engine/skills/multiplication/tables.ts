// The times tables: one skill a table, recall only (derived mental work has its own skills).
import { tableNeighbours } from '../../questions/slips/products.js';
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';
import { storyName } from '../story.js';

interface Table {
  readonly of: number;
  readonly year: number;
  readonly fluentYear: number;
  readonly after: readonly string[];
  readonly codes: Skill['codes'];
  /** The strategy a class would use for `other` lots, in true equations. */
  readonly derive: (other: number) => readonly string[];
}

const TABLES: readonly Table[] = [
  {
    of: 2,
    year: 2,
    fluentYear: 2,
    after: ['mult.double.small'],
    codes: {
      ac9: ['AC9M2A03'],
      england: ['NC-Y2-multdiv-1', '2MD-1', 'NC-Y2-multdiv-2', '5NF-1'],
      ccss: ['3.OA.C.7'],
    },
    derive: (k) => [`${k} + ${k} = ${2 * k}`],
  },
  {
    of: 5,
    year: 2,
    fluentYear: 3,
    after: ['mult.groups', 'mult.table.10'],
    codes: {
      ac9: ['AC9M3A03'],
      england: ['NC-Y2-multdiv-1', '2MD-1', 'NC-Y2-multdiv-2', '5NF-1'],
      ccss: ['3.OA.C.7'],
    },
    derive: (k) => [`${k} × 10 = ${10 * k}`, `${10 * k} ÷ 2 = ${5 * k}`],
  },
  {
    of: 10,
    year: 2,
    fluentYear: 3,
    after: ['mult.groups'],
    codes: {
      ac9: ['AC9M3A03'],
      england: ['NC-Y2-multdiv-1', '2MD-1', 'NC-Y2-multdiv-2', '5NF-1'],
      ccss: ['3.OA.C.7'],
    },
    derive: (k) => [`${k} tens is ${10 * k}`],
  },
  {
    of: 3,
    year: 3,
    fluentYear: 4,
    after: ['mult.table.2'],
    codes: { ac9: ['AC9M3A03'], england: ['NC-Y3-multdiv-1', '5NF-1'], ccss: ['3.OA.C.7'] },
    derive: (k) => [`2 × ${k} = ${2 * k}`, `${2 * k} + ${k} = ${3 * k}`],
  },
  {
    of: 4,
    year: 3,
    fluentYear: 4,
    after: ['mult.table.2'],
    codes: { ac9: ['AC9M3A03'], england: ['NC-Y3-multdiv-1', '3NF-2', '5NF-1'], ccss: ['3.OA.C.7'] },
    derive: (k) => [`2 × ${k} = ${2 * k}`, `2 × ${2 * k} = ${4 * k}`],
  },
  {
    of: 6,
    year: 4,
    fluentYear: 5,
    after: ['mult.table.3'],
    codes: { ac9: ['AC9M4A02'], england: ['NC-Y4-multdiv-1', '4NF-1', '5NF-1'], ccss: ['3.OA.C.7'] },
    derive: (k) => [`3 × ${k} = ${3 * k}`, `2 × ${3 * k} = ${6 * k}`],
  },
  {
    of: 7,
    year: 4,
    fluentYear: 5,
    after: ['mult.table.5', 'mult.table.2'],
    codes: { ac9: ['AC9M4A02'], england: ['NC-Y4-multdiv-1', '4NF-1', '5NF-1'], ccss: ['3.OA.C.7'] },
    derive: (k) => [`5 × ${k} = ${5 * k}`, `2 × ${k} = ${2 * k}`, `${5 * k} + ${2 * k} = ${7 * k}`],
  },
  {
    of: 8,
    year: 4,
    fluentYear: 5,
    after: ['mult.table.4'],
    codes: { ac9: ['AC9M4A02'], england: ['NC-Y3-multdiv-1', '3NF-2', '4NF-1', '5NF-1'], ccss: ['3.OA.C.7'] },
    derive: (k) => [`4 × ${k} = ${4 * k}`, `2 × ${4 * k} = ${8 * k}`],
  },
  {
    of: 9,
    year: 4,
    fluentYear: 5,
    after: ['mult.table.10', 'mult.table.3'],
    codes: { ac9: ['AC9M4A02'], england: ['NC-Y4-multdiv-1', '4NF-1', '5NF-1'], ccss: ['3.OA.C.7'] },
    derive: (k) => [`10 × ${k} = ${10 * k}`, `${10 * k} − ${k} = ${9 * k}`],
  },
  {
    of: 11,
    year: 4,
    fluentYear: 5,
    after: ['mult.table.10'],
    codes: { ac9: [], england: ['NC-Y4-multdiv-1', '4NF-1', '5NF-1'], ccss: [] },
    derive: (k) => [`10 × ${k} = ${10 * k}`, `${10 * k} + ${k} = ${11 * k}`],
  },
  {
    of: 12,
    year: 4,
    fluentYear: 5,
    after: ['mult.table.10', 'mult.table.2'],
    codes: { ac9: [], england: ['NC-Y4-multdiv-1', '4NF-1', '5NF-1'], ccss: [] },
    derive: (k) => [`10 × ${k} = ${10 * k}`, `2 × ${k} = ${2 * k}`, `${10 * k} + ${2 * k} = ${12 * k}`],
  },
];

const STORIES = [
  (name: string, k: string, of: string) =>
    `${name} puts ${of} beads on each of ${k} strings. How many beads is that?`,
  (name: string, k: string, of: string) => `${name} plants ${k} rows of ${of} beans. How many beans is that?`,
  (name: string, k: string, of: string) =>
    `${name} walks ${of} laps a day for ${k} days. How many laps is that?`,
  (name: string, k: string, of: string) =>
    `${name} fills ${k} trays with ${of} eggs each. How many eggs is that?`,
] as const;

/** Largest other factor: twelve tables go to 12 in England, ten elsewhere. */
function longest(of: number): number {
  return of > 10 ? 12 : 10;
}

/** Two and ten lots are known first, whatever the table. */
function stepsFor(of: number, k: number, derive: Table['derive']): readonly string[] {
  return k === 2 ? [`${of} + ${of} = ${2 * of}`] : k === 10 ? [`${of} tens is ${10 * of}`] : derive(k);
}

/** How a class would find `k` groups of `of`, in true equations; empty for a number without a table. */
export function tableSteps(of: number, k: number): readonly string[] {
  const table = TABLES.find((one) => one.of === of);
  return table ? stepsFor(of, k, table.derive) : [];
}

function tableSkill({ of, year, fluentYear, after, codes, derive }: Table): Skill {
  const top = longest(of);
  const ease = (k: number) => ({
    size: k <= 5 ? 0 : k <= 9 ? 1 + (of >= 6 ? 0.5 : 0) : 0.5,
    tie: k === of,
    rule: k === 1 || k === 10 || of === 10,
    fives: of === 5 || k === 5,
  });
  const steps = (k: number) => stepsFor(of, k, derive);
  return {
    id: `mult.table.${of}`,
    title: `${of} times table`,
    year,
    fluentYear,
    strand: 'multiplication',
    prerequisites: after,
    codes,
    templates: [
      numericTemplate({
        id: 'fact',
        kinds: ['whole'],
        free: (rng) => rng.int(2, top),
        suits: (value) => value.d === 1 && value.n >= 2 && value.n <= 12,
        make: (x) => {
          const first = x.rng.chance(0.5) ? x.n : of;
          const second = first === x.n ? of : x.n;
          return {
            text: `${first} × ${second}`,
            value: of * x.n,
            expression: `${x.n} * ${of}`,
            features: ease(x.n),
            strategy: steps(x.n),
            slips: [
              ...tableNeighbours(of, x.n)
                .slice(0, 3)
                .map((wrong) => ['times.neighbour', wrong] as const),
              ['times.as-plus', of + x.n],
            ],
            uses: `multiplies ${x.text} by ${of}`,
            figure:
              x.rng.chance(0.2) && of <= 5 && x.n <= 6
                ? { kind: 'array', rows: first, columns: second }
                : undefined,
          };
        },
      }),
      numericTemplate({
        id: 'factor',
        kinds: ['whole'],
        free: (rng) => of * rng.int(2, top),
        suits: (value) => value.d === 1 && value.n % of === 0 && value.n >= 2 * of && value.n <= 12 * of,
        make: (x) => {
          const k = x.n / of;
          return {
            text: x.rng.chance(0.5) ? `${of} × ? = ${x.n}` : `? × ${of} = ${x.n}`,
            value: k,
            expression: `${x.n} / ${of}`,
            features: { ...ease(k), unknownInside: true },
            strategy: [`${of} × ${k} = ${of * k}`],
            slips: [
              ['divide.neighbour', k - 1],
              ['divide.neighbour', k + 1],
              ['divide.as-minus', x.n - of],
            ],
            uses: `finds ${x.text} in the ${of} times table`,
          };
        },
      }),
      numericTemplate({
        id: 'story',
        kinds: ['whole'],
        free: (rng) => rng.int(3, top),
        suits: (value) => value.d === 1 && value.n >= 3 && value.n <= 12,
        make: (x) => ({
          text: x.pick(of < 5 ? STORIES.slice(1, -1) : STORIES)(storyName(x.rng), x.text, String(of)),
          value: of * x.n,
          expression: `${x.n} * ${of}`,
          features: { ...ease(x.n), story: true },
          strategy: steps(x.n),
          slips: [
            ['times.as-plus', of + x.n],
            ...tableNeighbours(of, x.n)
              .slice(0, 2)
              .map((wrong) => ['times.neighbour', wrong] as const),
          ],
          uses: `multiplies ${x.text} by ${of}`,
        }),
      }),
    ],
  };
}

/** The skills on the times tables: one skill a table, recall only (derived mental work has its own skills). */
export const TABLE_SKILLS: readonly Skill[] = TABLES.map(tableSkill);
