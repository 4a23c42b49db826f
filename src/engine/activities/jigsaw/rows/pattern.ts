// Rows that grow by one step, and rows that repeat a core.
import { formatClock, formatDecimal, formatWhole } from '../../../numbers/format.js';
import { add, multiply, type Rational, rational } from '../../../numbers/rational.js';
import { markCell, numberCell } from '../cells.js';
import type { JigsawCell } from '../jigsaw.js';
import { isPeriodSeen, REPEAT_PERIODS } from '../row-truth.js';
import type { RowContext } from './band.js';

export interface Stride {
  readonly steps: readonly (readonly [n: number, d: number])[];
  readonly least: number;
  readonly most: number;
  readonly form: 'number' | 'clock' | 'fraction';
}

const wholes = (...steps: number[]): (readonly [number, number])[] => steps.map((step) => [step, 1]);

/** What children of each year count in; from about the middle of the year. Common practice. */
const STRIDES: readonly (readonly Stride[])[] = [
  [{ steps: wholes(1, 2), least: 0, most: 30, form: 'number' }],
  [{ steps: wholes(1, 2, 5, 10), least: 0, most: 120, form: 'number' }],
  [
    { steps: wholes(2, 3, 4, 5, 10), least: 0, most: 150, form: 'number' },
    { steps: wholes(15, 30), least: 60, most: 719, form: 'clock' },
  ],
  [
    { steps: wholes(2, 3, 4, 5, 6, 8, 10, 25, 50, 100), least: 0, most: 1200, form: 'number' },
    { steps: wholes(5, 10, 15, 20), least: 60, most: 719, form: 'clock' },
  ],
  [
    { steps: wholes(3, 4, 6, 7, 8, 9, 11, 12, 25, 50), least: 0, most: 1000, form: 'number' },
    {
      steps: [
        [1, 10],
        [2, 10],
        [5, 10],
      ],
      least: 0,
      most: 12,
      form: 'number',
    },
    {
      steps: [
        [1, 2],
        [1, 4],
        [1, 3],
      ],
      least: 0,
      most: 6,
      form: 'fraction',
    },
  ],
  [
    { steps: wholes(7, 8, 9, 11, 12, 15, 25, 125), least: 0, most: 2000, form: 'number' },
    {
      steps: [
        [1, 10],
        [3, 10],
        [1, 4],
        [6, 10],
        [1, 100],
      ],
      least: 0,
      most: 12,
      form: 'number',
    },
    { steps: wholes(2, 3, 5), least: -30, most: 30, form: 'number' },
  ],
  [
    { steps: wholes(12, 15, 19, 25, 99, 125), least: 0, most: 3000, form: 'number' },
    {
      steps: [
        [15, 100],
        [1, 4],
        [3, 10],
        [75, 100],
        [11, 10],
      ],
      least: 0,
      most: 15,
      form: 'number',
    },
    { steps: wholes(3, 4, 6, 7), least: -60, most: 60, form: 'number' },
    {
      steps: [
        [1, 8],
        [2, 5],
        [1, 6],
      ],
      least: 0,
      most: 8,
      form: 'fraction',
    },
  ],
];

const ATTEMPTS = 60;

/** A step that several rows share: such rows are easily mixed up, and shifted by whole steps they share most numbers. */
export interface SharedStep {
  readonly year: number;
  readonly stride: Stride;
  readonly step: readonly [n: number, d: number];
}

/** A step for a whole jigsaw. */
export function sharedStep({ rng, years }: RowContext): SharedStep {
  const year = rng.pick(years);
  const stride = rng.pick(STRIDES[year] as readonly Stride[]);
  return { year, stride, step: rng.pick(stride.steps) };
}

/** One row that grows or shrinks by a step (the shared one if there is one), or null when no start fits the width. */
export function stepsOf(
  columns: number,
  year: number,
  { rng, locale }: RowContext,
  shared: SharedStep | null,
): JigsawCell[] | null {
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const stride = shared?.stride ?? rng.pick(STRIDES[year] as readonly Stride[]);
    const [n, d] = shared?.step ?? rng.pick(stride.steps);
    const size = rational(n, d);
    const span = (columns - 1) * (n / d);
    const room = stride.most - stride.least - span;
    if (room < 0) continue;
    // Starts are whole numbers, or themselves multiples of the step where it is a part of one; clocks start on the hour or at a step.
    const grain = d === 1 ? (stride.form === 'clock' ? 5 : 1) : n / d;
    const far = Math.min(Math.floor(room / grain), Math.max(12, Math.round((2 * span) / grain)));
    const stepsFar = Math.floor(Math.min(far * grain, 1.5 * columns * (n / d)) / (n / d));
    const low =
      shared === null ? rng.int(0, far) : rng.int(0, stepsFar) * Math.max(1, Math.round(n / d / grain));
    const first =
      d === 1
        ? rational(stride.least + low * grain)
        : add(rational(stride.least), multiply(size, rational(low)));
    const rising = Array.from({ length: columns }, (_, i) => add(first, multiply(size, rational(i))));
    const values = rng.chance(0.35) ? rising.toReversed() : rising;
    const places = Math.max(...values.map((value) => (value.d === 1 ? 0 : String(value.d).length - 1)));
    return values.map((value) => numberCell(textOf(value, stride.form, places), value));
  }
  return null;

  function textOf(value: Rational, form: Stride['form'], places: number): string {
    if (form === 'clock') return formatClock(value.n);
    if (form === 'fraction') return mixedText(value);
    return value.d === 1 && places === 0 ? formatWhole(value.n, locale) : formatDecimal(value, locale);
  }
}

function mixedText({ n, d }: Rational): string {
  const whole = Math.floor(n / d);
  if (d === 1) return String(n);
  return whole === 0 ? `${n}/${d}` : `${whole} ${n - whole * d}/${d}`;
}

/** Shapes that the print room and the screen draw. */
export const SHAPE_MARKS = ['\u25cf', '\u25b2', '\u25a0', '\u2605', '\u25c6', '\u2b22'] as const;
const LETTER_MARKS = ['A', 'B', 'C', 'D', 'E', 'M'] as const;

/** One row that repeats a core of 2, 3 or 4 marks: shapes for the youngest, letters and numbers later. */
export function repeatsOf(columns: number, year: number, { rng }: RowContext): JigsawCell[] | null {
  const periods = REPEAT_PERIODS.filter(
    (period) => isPeriodSeen(period, columns) && (year > 0 || period < 4),
  );
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const period = rng.pick(periods);
    const kind =
      year <= 1 ? (rng.chance(0.75) ? 'shape' : 'number') : rng.pick(['shape', 'letter', 'number'] as const);
    const stock =
      kind === 'shape' ? SHAPE_MARKS : kind === 'letter' ? LETTER_MARKS : NUMBER_MARKS[year <= 2 ? 0 : 1];
    const marks = rng.shuffle(stock as readonly string[]).slice(0, rng.int(2, Math.min(3, period)));
    const core = Array.from({ length: period }, () => rng.pick(marks));
    if (new Set(core).size < 2 || (period === 4 && core[0] === core[2] && core[1] === core[3])) continue;
    return Array.from({ length: columns }, (_, i) => {
      const text = core[i % period] as string;
      return kind === 'number' ? numberCell(text, rational(Number(text))) : markCell(text);
    });
  }
  return null;
}

const NUMBER_MARKS = [
  ['1', '2', '3', '4', '5'],
  ['3', '5', '10', '12', '25', '50'],
] as const;
