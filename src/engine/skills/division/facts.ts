// Division facts: the tables read backwards, one skill for each group of tables.
import { numericTemplate } from '../sketch.js';
import type { Skill } from '../skill.js';
import { countables, storyName } from '../story.js';

interface FactGroup {
  readonly id: string;
  readonly title: string;
  readonly divisors: readonly number[];
  readonly top: number;
  readonly year: number;
  readonly fluentYear: number;
  readonly after: readonly string[];
  readonly codes: Skill['codes'];
}

const GROUPS: readonly FactGroup[] = [
  {
    id: 'div.table.2510',
    title: 'Division facts for 2, 5 and 10',
    divisors: [2, 5, 10],
    top: 10,
    year: 2,
    fluentYear: 3,
    after: ['div.share', 'mult.table.2', 'mult.table.5', 'mult.table.10'],
    codes: {
      ac9: ['AC9M2A03', 'AC9M3A03'],
      england: ['NC-Y2-multdiv-1', '2MD-2', 'NC-Y2-multdiv-2', '5NF-1'],
      ccss: ['3.OA.C.7', '3.OA.B.6'],
    },
  },
  {
    id: 'div.table.34',
    title: 'Division facts for 3 and 4',
    divisors: [3, 4],
    top: 10,
    year: 3,
    fluentYear: 4,
    after: ['div.table.2510', 'mult.table.3', 'mult.table.4'],
    codes: {
      ac9: ['AC9M3A03'],
      england: ['NC-Y3-multdiv-1', '3MD-1', '5NF-1'],
      ccss: ['3.OA.C.7', '3.OA.B.6'],
    },
  },
  {
    id: 'div.table.69',
    title: 'Division facts for 6, 7, 8 and 9',
    divisors: [6, 7, 8, 9],
    top: 10,
    year: 4,
    fluentYear: 5,
    after: ['div.table.34', 'mult.table.6', 'mult.table.7', 'mult.table.8', 'mult.table.9'],
    codes: {
      ac9: ['AC9M4A02'],
      england: ['NC-Y4-multdiv-1', '4NF-1', '5NF-1'],
      ccss: ['3.OA.C.7', '3.OA.B.6'],
    },
  },
  {
    id: 'div.table.1112',
    title: 'Division facts for 11 and 12',
    divisors: [11, 12],
    top: 12,
    year: 4,
    fluentYear: 5,
    after: ['mult.table.11', 'mult.table.12', 'div.table.2510'],
    codes: { ac9: [], england: ['NC-Y4-multdiv-1', '4NF-1', '5NF-1'], ccss: [] },
  },
];

function factSkill({ id, title, divisors, top, year, fluentYear, after, codes }: FactGroup): Skill {
  const fits = (n: number, d: number) => n % d === 0 && n / d >= 2 && n / d <= 12;
  const suits = (value: { n: number; d: number }) => value.d === 1 && divisors.some((d) => fits(value.n, d));
  const free = (rng: { pick: <T>(items: readonly T[]) => T; int: (a: number, b: number) => number }) =>
    rng.pick(divisors) * rng.int(2, top);
  const ease = (q: number, d: number) => ({
    size: (q <= 5 ? 0 : 1) + (d >= 6 && q >= 6 && q <= 9 ? 0.5 : 0),
    tie: q === d,
    rule: d === 10 || q === 10,
    fives: d === 5 || q === 5,
  });
  return {
    id,
    title,
    year,
    fluentYear,
    strand: 'division',
    prerequisites: after,
    codes,
    templates: [
      numericTemplate({
        id: 'fact',
        kinds: ['whole'],
        free,
        suits,
        make: (x) => {
          const d = x.pick(divisors.filter((k) => fits(x.n, k)));
          const q = x.n / d;
          return {
            text: `${x.text} ÷ ${d}`,
            value: q,
            expression: `${x.n} / ${d}`,
            features: ease(q, d),
            strategy: [`${d} × ${q} = ${x.n}`, `${x.n} ÷ ${d} = ${q}`],
            slips: [
              ['divide.neighbour', q - 1],
              ['divide.neighbour', q + 1],
              ['divide.as-minus', x.n - d],
            ],
            uses: `divides ${x.text} by ${d}`,
          };
        },
      }),
      numericTemplate({
        id: 'divisor',
        kinds: ['whole'],
        free,
        suits,
        make: (x) => {
          const d = x.pick(divisors.filter((k) => fits(x.n, k)));
          const q = x.n / d;
          return {
            text: `${x.text} ÷ ? = ${q}`,
            value: d,
            expression: `${x.n} / ${q}`,
            features: { ...ease(q, d), unknownInside: true },
            strategy: [`${q} × ${d} = ${x.n}`],
            slips: [
              ['divide.as-times', x.n * q],
              ['divide.neighbour', d + 1],
              ['divide.neighbour', d - 1],
              ['divide.as-minus', x.n - q],
            ],
            uses: `finds what ${x.text} is divided by to give ${q}`,
          };
        },
      }),
      numericTemplate({
        id: 'story',
        kinds: ['whole'],
        free,
        suits: (value) => suits(value) && value.n >= 10,
        make: (x) => {
          const d = x.pick(divisors.filter((k) => fits(x.n, k)));
          const q = x.n / d;
          const things = countables(x.n, x.rng);
          const [text, shares] = x.pick([
            [`${storyName(x.rng)} packs ${x.text} ${things} in bags of ${d}. How many bags is that?`, false],
            [`${d} friends share ${x.text} ${things} equally. How many does each get?`, true],
            [`${x.text} chairs stand in rows of ${d}. How many rows are there?`, false],
          ] as const);
          return {
            text,
            value: q,
            expression: `${x.n} / ${d}`,
            features: { ...ease(q, d), story: true },
            // Groups of d are q times d; the drawing follows this order.
            strategy: [shares ? `${d} × ${q} = ${x.n}` : `${q} × ${d} = ${x.n}`, `${x.n} ÷ ${d} = ${q}`],
            slips: [
              ['divide.as-minus', x.n - d],
              ['divide.neighbour', q - 1],
              ['divide.neighbour', q + 1],
            ],
            uses: `divides ${x.text} by ${d}`,
          };
        },
      }),
    ],
  };
}

/** The skills on division facts: the tables read backwards, one skill for each group of tables. */
export const DIVISION_FACT_SKILLS: readonly Skill[] = GROUPS.map(factSkill);
