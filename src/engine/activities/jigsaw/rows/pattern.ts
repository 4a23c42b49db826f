// Rows that grow by one step, and rows that repeat a core.
import { formatClock, formatDecimal, formatWhole } from '../../../numbers/format.js';
import { add, multiply, type Rational, rational } from '../../../numbers/rational.js';
import { markCell, numberCell } from '../cells.js';
import type { JigsawCell } from '../jigsaw.js';
import { isPeriodSeen } from '../row-truth.js';
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

/** Rows of one step begin within so many widths of one another: the nearer, the more numbers they share. */
const STARTS_WITHIN = 1.2;
const FALLING_SHARE = 0.35;

/** A step that several rows share: such rows are easily mixed up, and shifted by whole steps they share most numbers. */
export interface SharedStep {
  readonly year: number;
  readonly stride: Stride;
  readonly step: readonly [n: number, d: number];
  /** Whether the numbers of all rows go down. */
  readonly isFalling: boolean;
}

/** A step for a whole jigsaw. */
export function sharedStep({ rng, years }: RowContext): SharedStep {
  const year = rng.pick(years);
  const stride = rng.pick(STRIDES[year] as readonly Stride[]);
  return { year, stride, step: rng.pick(stride.steps), isFalling: rng.chance(FALLING_SHARE) };
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
    const stepsFar = Math.floor(Math.min(far * grain, STARTS_WITHIN * columns * (n / d)) / (n / d));
    const low =
      shared === null ? rng.int(0, far) : rng.int(0, stepsFar) * Math.max(1, Math.round(n / d / grain));
    const first =
      d === 1
        ? rational(stride.least + low * grain)
        : add(rational(stride.least), multiply(size, rational(low)));
    const rising = Array.from({ length: columns }, (_, i) => add(first, multiply(size, rational(i))));
    const values = (shared?.isFalling ?? rng.chance(FALLING_SHARE)) ? rising.toReversed() : rising;
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

/** Shapes that are drawn, see cell-marks.ts. */
const SHAPE_MARKS = ['\u25cf', '\u25b2', '\u25a0', '\u2605', '\u25c6', '\u2b22'] as const;
/** Arrows, which are told apart by their direction only. */
const ARROW_MARKS = ['\u2191', '\u2192', '\u2193', '\u2190', '\u2197', '\u2198'] as const;
const LETTER_MARKS = ['A', 'B', 'C', 'D', 'E', 'M'] as const;
const SMALL_NUMBERS = ['1', '2', '3', '4', '5'] as const;
const LARGER_NUMBERS = ['3', '5', '10', '12', '25', '50'] as const;
/** Numbers that are easily taken for one another. */
const ALIKE_NUMBERS = [
  ['25', '52', '2.5', '5.2'],
  ['0.5', '0.05', '5', '0.55'],
  ['1/2', '2/1', '1/3', '2/3'],
  ['14', '41', '1.4', '4.1'],
  ['108', '180', '801', '1.08'],
] as const;

interface Core {
  readonly periods: readonly number[];
  readonly stocks: readonly (readonly string[])[];
  /** Most different marks in a core. */
  readonly marks: number;
}

/** Cores by school year: shapes that differ plainly first, then longer cores, at last marks that are easily confused. */
const CORES: readonly Core[] = [
  { periods: [2, 3], stocks: [SHAPE_MARKS], marks: 2 },
  { periods: [2, 3], stocks: [SHAPE_MARKS, SHAPE_MARKS, SMALL_NUMBERS], marks: 3 },
  { periods: [2, 3, 4], stocks: [SHAPE_MARKS, LETTER_MARKS, SMALL_NUMBERS], marks: 3 },
  { periods: [3, 4], stocks: [SHAPE_MARKS, LETTER_MARKS, LARGER_NUMBERS], marks: 3 },
  { periods: [3, 4], stocks: [LETTER_MARKS, LARGER_NUMBERS, ARROW_MARKS], marks: 3 },
  { periods: [3, 4, 4], stocks: [ARROW_MARKS, ...ALIKE_NUMBERS], marks: 3 },
  { periods: [3, 4, 4], stocks: [ARROW_MARKS, ...ALIKE_NUMBERS], marks: 4 },
];

/** One row that repeats a core of 2, 3 or 4 marks. */
export function repeatsOf(columns: number, year: number, { rng }: RowContext): JigsawCell[] | null {
  const { periods, stocks, marks: most } = CORES[year] as Core;
  const seen = periods.filter((period) => isPeriodSeen(period, columns));
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const period = rng.pick(seen);
    const marks = rng.shuffle(rng.pick(stocks)).slice(0, rng.int(2, Math.min(most, period)));
    const core = Array.from({ length: period }, () => rng.pick(marks));
    if (new Set(core).size < 2 || (period === 4 && core[0] === core[2] && core[1] === core[3])) continue;
    return Array.from({ length: columns }, (_, i) => markCell(core[i % period] as string));
  }
  return null;
}
