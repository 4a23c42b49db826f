// Reading tables, timetables and line plots.
import type { FigureSpec } from '../../figures/figure.js';
import { formatClock, formatMixed, formatWhole } from '../../numbers/format.js';
import { add, rational, subtract } from '../../numbers/rational.js';
import { clockAnswer, durationAnswer, wholeAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Locale } from '../../numbers/locale.js';
import type { Rng } from '../../random/rng.js';
import { quantity, quantityAnswer } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';

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

/** One of three places that is next to the one given. */
const neighbour = (at: number) => (at === 2 ? 1 : at + 1);

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

interface Bus {
  readonly leaves: readonly number[];
  readonly legs: readonly [number, number];
  readonly bus: number;
}

function bus(rng: Rng): Bus {
  const first = 60 * rng.int(8, 15) + 5 * rng.int(0, 11);
  const gap = 5 * rng.int(5, 8);
  return {
    leaves: [first, first + gap, first + 2 * gap],
    legs: [5 * rng.int(2, 5), rng.int(11, 28)],
    bus: rng.int(0, 2),
  };
}

const STOPS = ['Bridge', 'Market', 'Hill'] as const;

const timetable = ({ leaves, legs }: Bus): FigureSpec => ({
  kind: 'table',
  heads: 'column',
  rows: STOPS.map((stop, i) => [
    stop,
    ...leaves.map((start) => formatClock(start + (i > 0 ? legs[0] : 0) + (i > 1 ? legs[1] : 0), 24)),
  ]),
});

const whenThere = templateOf<Bus>({
  id: 'when',
  free: bus,
  draft: (line) => {
    const start = line.leaves[line.bus] ?? 0;
    const arrive = start + line.legs[0] + line.legs[1];
    const other = (line.leaves[neighbour(line.bus)] ?? 0) + line.legs[0] + line.legs[1];
    return {
      text: `In the timetable, when does the ${formatClock(start, 24)} bus from ${STOPS[0]} reach ${STOPS[2]}?`,
      answer: clockAnswer(arrive, 24),
      expression: `${start} + ${line.legs[0]} + ${line.legs[1]}`,
      features: { drawn: true, adjust: -0.3 },
      strategy: [
        `Find ${formatClock(start, 24)}, then go down its column to ${STOPS[2]}: ${formatClock(arrive, 24)}`,
      ],
      slips: [
        { misconception: 'table.other-line', answer: clockAnswer(start + line.legs[0], 24) },
        { misconception: 'graph.other-point', answer: clockAnswer(other, 24) },
      ],
      figure: timetable(line),
    };
  },
});

const howLong = templateOf<Bus>({
  id: 'how-long',
  free: bus,
  draft: (line) => {
    const start = line.leaves[line.bus] ?? 0;
    const [one, two] = line.legs;
    const arrive = start + one + two;
    const untilHour = 60 - (start % 60);
    const crosses = Math.floor(start / 60) < Math.floor(arrive / 60) && start % 60 > 0 && arrive % 60 > 0;
    return {
      text: `In the timetable, how long does the ${formatClock(start, 24)} bus take from ${STOPS[0]} to ${STOPS[2]}?`,
      answer: durationAnswer(one + two),
      expression: `${arrive} - ${start}`,
      features: { drawn: true, extraSteps: 1, carries: crosses ? 1 : 0 },
      strategy: crosses
        ? [
            `To the full hour: ${untilHour} min, then ${arrive % 60} min more`,
            `${untilHour} + ${arrive % 60} = ${one + two}`,
          ]
        : [`From ${formatClock(start, 24)} to ${formatClock(arrive, 24)} it is ${one + two} min`],
      slips: [
        { misconception: 'table.other-line', answer: durationAnswer(one) },
        ...(crosses
          ? [{ misconception: 'time.hundred-minutes' as const, answer: durationAnswer(one + two + 40) }]
          : []),
        { misconception: 'graph.other-point', answer: durationAnswer(two) },
      ],
      figure: timetable(line),
    };
  },
});

interface Plot {
  readonly d: number;
  readonly counts: readonly [number, number, number, number];
}

const plotRows = ({ d, counts }: Plot, locale: Locale): FigureSpec => ({
  kind: 'table',
  heads: 'column',
  rows: [
    ['Length in m', ...counts.map((_, i) => formatMixed(rational(i + 1, d), locale))],
    ['How many', ...counts.map(String)],
  ],
});

const plot = (rng: Rng): Plot => ({
  d: rng.pick([4, 8]),
  counts: [rng.int(2, 6), rng.int(2, 6), rng.int(2, 6), rng.int(2, 6)],
});

const observations = templateOf<Plot>({
  id: 'observations',
  free: plot,
  draft: (shown, { locale }) => {
    const [a, b, c, d] = shown.counts;
    return {
      text: 'In the table, how many ribbons were measured?',
      answer: wholeAnswer(a + b + c + d, locale),
      expression: `${a} + ${b} + ${c} + ${d}`,
      features: { drawn: true, extraSteps: 1 },
      strategy: [`${a} + ${b} + ${c} + ${d} = ${a + b + c + d}`],
      slips: wholeSlips(
        [
          ['table.headings-counted', 4],
          ['table.one-cell', Math.max(a, b, c, d)],
        ],
        locale,
      ),
      figure: plotRows(shown, locale),
    };
  },
});

const totalOf = templateOf<readonly [plot: Plot, at: number]>({
  id: 'total-length',
  free: (rng) => [plot(rng), rng.int(0, 2)],
  draft: ([shown, at], { locale }) => {
    const each = rational(at + 1, shown.d);
    const count = shown.counts[at] ?? 2;
    const total = rational((at + 1) * count, shown.d);
    const say = (value: typeof each) => quantity(value, locale, 'fraction').text;
    return {
      text: `In the table, how many metres long are all the ${say(each)} m ribbons together?`.replace(
        'metres',
        `${locale.spelling.metre}s`,
      ),
      answer: quantityAnswer(total, 'fraction', locale, 'm'),
      // Not "4 * (1/4)", which would be drawn as a quarter of 4: the ribbons are 4 quarters.
      expression: `${count} * ${at + 1} / ${shown.d}`,
      features: { drawn: true, extraSteps: 1, unlike: total.d > 1 },
      strategy: [`There are ${count} of them: ${count} × ${say(each)} = ${say(total)}`],
      slips: [
        { misconception: 'ratio.one-group', answer: quantityAnswer(each, 'fraction', locale, 'm') },
        {
          misconception: 'graph.other-point',
          answer: quantityAnswer(
            rational((at + 1) * (shown.counts[(at + 1) % 4] ?? 1), shown.d),
            'fraction',
            locale,
            'm',
          ),
        },
      ],
      figure: plotRows(shown, locale),
    };
  },
});

const spread = templateOf<Plot>({
  id: 'longest-shortest',
  free: (rng) => {
    const shown = plot(rng);
    const [a, b, c, d] = shown.counts;
    return rng.chance(0.5) ? { ...shown, counts: [0, b, c, d] } : { ...shown, counts: [a, b, c, 0] };
  },
  draft: (shown, { locale }) => {
    const low = shown.counts[0] === 0 ? 2 : 1;
    const high = shown.counts[3] === 0 ? 3 : 4;
    const [from, to] = [rational(low, shown.d), rational(high, shown.d)];
    const gap = subtract(to, from);
    const say = (value: typeof gap) => quantity(value, locale, 'fraction').text;
    const answer = (value: typeof gap) => quantityAnswer(value, 'fraction', locale, 'm');
    return {
      text: 'In the table, how much longer is the longest ribbon than the shortest?',
      answer: answer(gap),
      expression: `(${high}/${shown.d}) - (${low}/${shown.d})`,
      features: { drawn: true, extraSteps: 1, unlike: true },
      strategy: [`${say(to)} − ${say(from)} = ${say(gap)}`],
      slips: [
        { misconception: 'graph.value-not-change', answer: answer(to) },
        { misconception: 'difference.adds', answer: answer(add(to, from)) },
      ],
      figure: plotRows(shown, locale),
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
      usesNumber: `finds ${say(first)} children as a part of more`,
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
  {
    id: 'data.timetable',
    title: 'Read a timetable',
    year: 5,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.table', 'time.between'],
    codes: { ac9: ['AC9M6M03'], england: ['NC-Y5-stats-2'], ccss: [] },
    templates: [whenThere, howLong],
  },
  {
    id: 'data.measured',
    title: 'Read a table of measured lengths',
    year: 5,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.table', 'frac.times-whole'],
    codes: { ac9: [], england: [], ccss: ['4.MD.B.4', '5.MD.B.2', '6.SP.B.5a'] },
    templates: [observations, totalOf, spread],
  },
];
