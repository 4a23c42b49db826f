// Line graphs of something that changes, and pie charts of shares.
import type { FigureSpec } from '../../figures/figure.js';
import { capital } from '../../figures/words.js';
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { gcd, rational } from '../../numbers/rational.js';
import { fractionAnswer, wholeAnswer, writtenAnswer } from '../../questions/answer.js';
import { wholeSlips } from '../../questions/slips/whole-slips.js';
import type { Rng } from '../../random/rng.js';
import { unitIn } from '../measuring/quantity.js';
import { worded } from '../offered.js';
import type { Skill } from '../skill.js';
import { onWhole, templateOf } from '../template-of.js';
import { outOf } from './out-of.js';

interface Change {
  readonly title: string;
  readonly unit: string;
  readonly noun: string;
  readonly step: number;
  readonly low: number;
  readonly labels: readonly string[];
}

const CHANGES: readonly Change[] = [
  {
    title: 'Temperature',
    unit: '°C',
    noun: 'degrees',
    step: 2,
    low: 10,
    labels: ['8 am', '10 am', 'noon', '2 pm', '4 pm'],
  },
  {
    title: 'Height of a plant',
    unit: 'cm',
    noun: 'cm',
    step: 5,
    low: 5,
    labels: ['week 1', 'week 2', 'week 3', 'week 4', 'week 5'],
  },
  {
    title: 'Water in a tank',
    unit: 'L',
    noun: 'litres',
    step: 10,
    low: 20,
    labels: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'],
  },
];

interface Graph {
  readonly change: Change;
  readonly values: readonly number[];
}

/** Values on the lines of the scale, no two neighbours equal. */
function graph(rng: Rng): Graph {
  const change = rng.pick(CHANGES);
  const values: number[] = [];
  let level = rng.int(0, 3);
  for (let i = 0; i < 5; i++) {
    values.push(change.low + change.step * level);
    // Plants only grow; the rest goes up and down.
    const up = change.unit === 'cm' || level === 0 || (level < 6 && rng.chance(0.6));
    level += up ? rng.int(1, 2) : -1;
  }
  return { change, values };
}

const drawn = ({ change, values }: Graph, locale: Locale): FigureSpec => ({
  kind: 'line-graph',
  title: change.title,
  unit: unitIn(change.unit, locale),
  from: Math.min(change.low, 0),
  step: change.step,
  points: values.map((value, i) => ({ label: change.labels[i] ?? '', value })),
});

/** Days are short below a graph and written out in a sentence. */
const DAYS: Readonly<Record<string, string>> = {
  Mon: 'Monday',
  Tue: 'Tuesday',
  Wed: 'Wednesday',
  Thu: 'Thursday',
  Fri: 'Friday',
};
const inFull = (label: string) => DAYS[label] ?? label;
const when = (label: string) =>
  /^\d|noon/.test(label) ? `at ${label}` : label.startsWith('week') ? `in ${label}` : `on ${inFull(label)}`;
const ASK: Readonly<Record<string, string>> = {
  Temperature: 'how many degrees is it',
  'Height of a plant': 'how many cm tall is the plant',
  'Water in a tank': 'how many litres are in the tank',
};

const readGraph = templateOf<readonly [graph: Graph, at: number]>({
  id: 'read',
  free: (rng) => [graph(rng), rng.int(0, 4)],
  draft: ([shown, at], { locale }) => {
    const value = shown.values[at] ?? 0;
    const label = shown.change.labels[at] ?? '';
    return {
      text: `In the line graph, ${ASK[shown.change.title]} ${when(label)}?`.replace(
        'litres',
        `${locale.spelling.litre}s`,
      ),
      answer: wholeAnswer(value, locale),
      expression: String(value),
      features: { drawn: true },
      strategy: [`Go up from ${label} to the point, then across to the scale: ${value}`],
      slips: wholeSlips(
        [
          ['graph.other-point', shown.values[at === 4 ? 3 : at + 1] ?? 0],
          ['meas.scale-by-ones', value / shown.change.step],
        ],
        locale,
      ),
      figure: drawn(shown, locale),
    };
  },
});

const changeBetween = templateOf<readonly [graph: Graph, from: number]>({
  id: 'change',
  free: (rng) => [graph(rng), rng.int(0, 3)],
  draft: ([shown, from], { locale }) => {
    const [a, b] = [shown.values[from] ?? 0, shown.values[from + 1] ?? 0];
    const [first, second] = [shown.change.labels[from] ?? '', shown.change.labels[from + 1] ?? ''];
    const up = b > a;
    const change = Math.abs(b - a);
    return {
      text: `By how many ${shown.change.noun} does the line ${up ? 'rise' : 'fall'} from ${inFull(first)} to ${inFull(second)}?`.replace(
        'litres',
        `${locale.spelling.litre}s`,
      ),
      answer: wholeAnswer(change, locale),
      expression: up ? `${b} - ${a}` : `${a} - ${b}`,
      features: { drawn: true, extraSteps: 1 },
      strategy: [
        `${capital(first)}: ${a}; ${second}: ${b}`,
        `${Math.max(a, b)} − ${Math.min(a, b)} = ${change}`,
      ],
      slips: wholeSlips(
        [
          ['graph.value-not-change', b],
          ['meas.scale-by-ones', change / shown.change.step],
          ['difference.adds', a + b],
        ],
        locale,
      ),
      figure: drawn(shown, locale),
    };
  },
});

const highest = templateOf<Graph>({
  id: 'highest',
  free: (rng) => {
    for (;;) {
      const shown = graph(rng);
      const top = Math.max(...shown.values);
      if (shown.values.filter((value) => value === top).length === 1) return shown;
    }
  },
  draft: (shown, { locale }) => {
    const top = shown.values.indexOf(Math.max(...shown.values));
    const low = shown.values.indexOf(Math.min(...shown.values));
    return worded({
      text: 'Where is the line graph highest: what stands below that point?',
      right: shown.change.labels[top] ?? '',
      wrong: [
        ['graph.other-point', shown.change.labels[top === 4 ? 3 : top + 1] ?? ''],
        ['graph.lowest-for-highest', shown.change.labels[low] ?? ''],
      ],
      features: { drawn: true, adjust: -0.4 },
      strategy: [`The highest point stands above ${shown.change.labels[top]}`],
      figure: drawn(shown, locale),
    });
  },
});

const COLOURS = ['walk', 'bus', 'car', 'bike'] as const;

interface Pie {
  readonly parts: readonly number[];
  readonly total: number;
  readonly at: number;
}

/** Shares out of 2, 4 or 8 that a child can see, and a total that they divide. */
function pie(rng: Rng): Pie {
  const parts = rng.pick([
    [2, 1, 1],
    [1, 1, 1, 1],
    [4, 2, 1, 1],
    [3, 3, 2],
    [4, 3, 1],
  ] as const);
  const all = parts.reduce((sum: number, part) => sum + part, 0);
  return { parts, total: all * rng.int(2, 9), at: rng.int(0, parts.length - 1) };
}

const slices = ({ parts }: Pie): FigureSpec => ({
  kind: 'pie-chart',
  title: 'Ways to school',
  slices: parts.map((count, i) => ({ label: COLOURS[i] ?? '', parts: count })),
});

const sumOf = (parts: readonly number[]) => parts.reduce((sum, part) => sum + part, 0);
const HOW = ['walk', 'come by bus', 'come by car', 'come by bike'] as const;

const pieCount = templateOf<Pie>({
  id: 'how-many',
  free: pie,
  on: onWhole(8, 800, (n, rng) => {
    if (n % 4 !== 0) return null;
    const shown = pie(rng);
    const parts = n % 8 === 0 ? shown.parts : [2, 1, 1];
    return { parts, total: n, at: Math.min(shown.at, parts.length - 1) };
  }),
  draft: (shown, { locale }) => {
    const all = sumOf(shown.parts);
    const part = shown.parts[shown.at] ?? 1;
    const shared = gcd(part, all);
    const [n, d] = [part / shared, all / shared];
    const value = (shown.total / all) * part;
    const say = (count: number) => formatWhole(count, locale);
    return {
      text: `The pie chart stands for ${say(shown.total)} children. How many ${HOW[shown.at]}?`,
      answer: wholeAnswer(value, locale),
      expression: `${shown.total} / ${all} * ${part}`,
      features: { drawn: true, extraSteps: n > 1 ? 1 : 0, size: Math.min(2, shown.total / 40) },
      strategy: [
        `The slice is ${n}/${d} of the circle`,
        `${say(shown.total)} ÷ ${d} = ${say(shown.total / d)}`,
        ...(n > 1 ? [`${n} × ${say(shown.total / d)} = ${say(value)}`] : []),
      ],
      slips: wholeSlips(
        [
          ['pie.slices-alike', shown.total / shown.parts.length],
          ['fractions.part-left', shown.total - value],
          ['part.one-only', shown.total / d],
        ],
        locale,
      ),
      figure: slices(shown),
      usesNumber: `shares ${say(shown.total)} children in a pie chart`,
    };
  },
});

const pieShare = templateOf<Pie>({
  id: 'share',
  free: pie,
  draft: (shown, { locale }) => {
    const all = sumOf(shown.parts);
    const part = shown.parts[shown.at] ?? 1;
    return {
      text: `What fraction of the pie chart stands for children who ${HOW[shown.at]}?`,
      answer: fractionAnswer(rational(part, all), locale),
      expression: `${part} / ${all}`,
      features: { drawn: true, size: all > 4 ? 1 : 0 },
      strategy: [
        `Think of the circle as ${all} equal parts; this slice is ${part} of them`,
        outOf(part, all, locale),
      ],
      slips: [
        {
          misconception: 'pie.slices-alike',
          answer: fractionAnswer(rational(1, shown.parts.length), locale),
        },
        { misconception: 'fractions.part-left', answer: writtenAnswer({ top: all - part, bottom: all }) },
      ],
      figure: slices(shown),
    };
  },
});

export const GRAPH_SKILLS: readonly Skill[] = [
  {
    id: 'data.line',
    title: 'Read a line graph',
    year: 4,
    fluentYear: 5,
    strand: 'data',
    prerequisites: ['data.columns', 'sub.difference'],
    codes: { ac9: ['AC9M5ST02'], england: ['NC-Y4-stats-1', 'NC-Y5-stats-1', 'NC-Y6-stats-1'], ccss: [] },
    templates: [readGraph, changeBetween, highest],
  },
  {
    id: 'data.pie',
    title: 'Read a pie chart',
    year: 6,
    fluentYear: 6,
    strand: 'data',
    prerequisites: ['data.line', 'frac.nonunit-of'],
    codes: { ac9: ['AC9M6ST01'], england: ['NC-Y6-stats-1'], ccss: [] },
    templates: [pieCount, pieShare],
  },
];
