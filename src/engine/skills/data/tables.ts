// Reading tables of counts.
import type { FigureSpec } from '../../figures/figure.js';
import { formatWhole } from '../../numbers/format.js';
import { wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { neighbour } from './neighbour.js';

const FRUIT = ['apples', 'pears', 'figs'] as const;
const DAYS = ['Mon', 'Tue', 'Wed'] as const;
const DAY_WORDS = ['Monday', 'Tuesday', 'Wednesday'] as const;

type Grid = readonly (readonly [number, number, number])[];

function grid(rng: Rng, high: number): Grid {
  return FRUIT.map(() => [rng.int(4, high), rng.int(4, high), rng.int(4, high)] as const);
}

const fruitTable = (cells: Grid): FigureSpec => ({
  kind: 'table',
  heads: 'both',
  rows: [['', ...DAYS], ...cells.map((row, i) => [FRUIT[i] ?? '', ...row.map(String)])],
});

interface Asked {
  readonly cells: Grid;
  readonly fruit: number;
  readonly day: number;
}

const cell = ({ cells, fruit, day }: Asked) => cells[fruit]?.[day] ?? 0;

const readCell = templateOf<Asked>({
  id: 'cell',
  free: (rng) => ({ cells: grid(rng, 25), fruit: rng.int(0, 2), day: rng.int(0, 2) }),
  draft: (asked, { locale }) => {
    const value = cell(asked);
    const [fruit, day] = [FRUIT[asked.fruit] ?? '', DAY_WORDS[asked.day] ?? ''];
    return {
      text: `In the table, how many ${fruit} were sold on ${day}?`,
      answer: wholeAnswer(value, locale),
      expression: String(value),
      features: { drawn: true, adjust: -0.3 },
      strategy: [`Go along the row ${fruit} to the column ${DAYS[asked.day]}: ${value}`],
      slips: wholeSlips(
        [
          ['table.other-line', cell({ ...asked, fruit: (asked.fruit + 1) % 3 })],
          ['graph.other-point', cell({ ...asked, day: neighbour(asked.day) })],
        ],
        locale,
      ),
      figure: fruitTable(asked.cells),
    };
  },
});

const rowTotal = templateOf<readonly [asked: Asked, byDay: boolean]>({
  id: 'total',
  free: (rng) => [{ cells: grid(rng, 15), fruit: rng.int(0, 2), day: rng.int(0, 2) }, rng.chance(0.5)],
  draft: ([asked, byDay], { locale }) => {
    const values = [0, 1, 2].map((i) => cell(byDay ? { ...asked, fruit: i } : { ...asked, day: i }));
    const [a = 0, b = 0, c = 0] = values;
    const total = a + b + c;
    return {
      text: byDay
        ? `In the table, how many pieces of fruit were sold on ${DAY_WORDS[asked.day]}?`
        : `In the table, how many ${FRUIT[asked.fruit]} were sold on all three days?`,
      answer: wholeAnswer(total, locale),
      expression: `${a} + ${b} + ${c}`,
      features: { drawn: true, extraSteps: 1, size: total / 40 },
      strategy: [`${a} + ${b} = ${a + b}`, `${a + b} + ${c} = ${total}`],
      slips: wholeSlips(
        [
          ['data.one-left-out', a + b],
          ['table.one-cell', Math.max(a, b, c)],
          [
            'table.other-line',
            [0, 1, 2].reduce(
              (sum, i) => sum + cell(byDay ? { ...asked, day: i } : { ...asked, fruit: i }),
              0,
            ),
          ],
        ],
        locale,
      ),
      figure: fruitTable(asked.cells),
    };
  },
});

const compareCounts = templateOf<readonly [first: number, second: number]>({
  id: 'ranked',
  free: (rng) => {
    const first = rng.int(8, 30);
    return [first, rng.int(3, first - 2)];
  },
  on: onWhole(6, 500, (n, rng) => [n, rng.int(2, n - 2)]),
  draft: ([first, second], { locale }) => {
    const say = (n: number) => formatWhole(n, locale);
    const total = first + second;
    return {
      text: `Of ${say(total)} children, ${say(second)} chose choir and the rest chess. How many chose chess?`,
      answer: wholeAnswer(first, locale),
      expression: `${total} - ${second}`,
      features: { story: true, size: Math.min(2, total / 60), carries: total % 10 < second % 10 ? 1 : 0 },
      strategy: [`${say(second)} + ${say(first)} = ${say(total)}`],
      slips: wholeSlips(
        [
          ['missing.adds-all', total + second],
          ['part.whole-given', total],
        ],
        locale,
      ),
      figure: { kind: 'part-whole', whole: say(total), parts: [say(second), '?'] },
      usesNumber: `finds ${say(first)} children as part of a larger group`,
    };
  },
});

export const TABLE_SKILLS: readonly Skill[] = [
  {
    id: 'data.table',
    title: 'Read a table',
    year: 3,
    fluentYear: 4,
    strand: 'data',
    prerequisites: ['data.tally', 'add.three'],
    codes: {
      ac9: ['AC9M3ST02'],
      england: ['NC-Y3-stats-1', 'NC-Y2-stats-1', 'NC-Y2-stats-3', 'NC-Y4-stats-2'],
      ccss: [],
    },
    templates: [readCell, rowTotal, compareCounts],
  },
];
