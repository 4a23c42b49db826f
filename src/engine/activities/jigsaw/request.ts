// What the jigsaw composer is asked, and the errors it may answer with.
import type { LocaleId } from '../../numbers/locale.js';
import type { OwnSource } from '../../own-questions/own-supply.js';
import {
  JIGSAW_LEVELS,
  type Jigsaw,
  type JigsawLevel,
  LEAST_COLUMNS,
  LEAST_ROWS,
  MOST_COLUMNS,
  MOST_ROWS,
  ROW_KINDS,
  type RowKind,
} from './jigsaw.js';
import type { PoolError } from './rows/skill-pool.js';

export interface JigsawRequest {
  /** School years, 0 (Foundation) to 6. */
  readonly years: readonly number[];
  /** What the rows are about; mixed when left out. */
  readonly rowKind?: RowKind;
  /** 3 to 8. */
  readonly rows: number;
  /** 5 to 10. */
  readonly columns: number;
  /** Easy when left out. */
  readonly level?: JigsawLevel;
  /** A whole number that fits in 32 bits. */
  readonly seed: number;
  readonly locale: LocaleId;
  /** Rows are made from questions of these skills only; from the numbers of the years when left out or empty. */
  readonly skills?: readonly string[];
  /** Rows are made from a teacher's own questions, as far as they are number sentences, and from `skills` if given. */
  readonly own?: OwnSource;
}

export interface JigsawError {
  readonly code:
    | PoolError['code']
    | 'jigsaw.kind'
    | 'jigsaw.years'
    | 'jigsaw.size'
    | 'jigsaw.seed'
    | 'jigsaw.rows'
    | 'jigsaw.level';
  readonly message: string;
  readonly hint: string;
}

export type JigsawResult =
  | { readonly ok: true; readonly value: Jigsaw }
  | { readonly ok: false; readonly error: JigsawError };

/** What is wrong with a request by itself, or null. */
export function problemWith({
  years,
  rows,
  columns,
  seed,
  rowKind = 'mixed',
  level = 'easy',
}: JigsawRequest): JigsawError | null {
  if (years.length === 0 || years.some((year) => !Number.isInteger(year) || year < 0 || year > 6)) {
    return {
      code: 'jigsaw.years',
      message: `A jigsaw needs school years from 0 (Foundation) to 6, not \u201c${years.join(', ')}\u201d.`,
      hint: 'Give one year or a few, such as 3 and 4.',
    };
  }
  const isInside = (value: number, least: number, most: number) =>
    Number.isInteger(value) && value >= least && value <= most;
  if (!isInside(rows, LEAST_ROWS, MOST_ROWS) || !isInside(columns, LEAST_COLUMNS, MOST_COLUMNS)) {
    return {
      code: 'jigsaw.size',
      message: `A jigsaw has ${LEAST_ROWS} to ${MOST_ROWS} rows and ${LEAST_COLUMNS} to ${MOST_COLUMNS} columns, not ${rows} by ${columns}.`,
      hint: 'Choose 5 rows and 7 columns for a usual one.',
    };
  }
  if (!Number.isInteger(seed) || (seed | 0) !== seed) {
    return {
      code: 'jigsaw.seed',
      message: `The seed ${seed} is not a whole number that fits in 32 bits.`,
      hint: 'Use a whole number such as 1.',
    };
  }
  if (!ROW_KINDS.includes(rowKind)) {
    return {
      code: 'jigsaw.kind',
      message: `There are no rows of the kind \u201c${rowKind}\u201d.`,
      hint: `Choose one of ${ROW_KINDS.join(', ')}.`,
    };
  }
  if (!JIGSAW_LEVELS.includes(level)) {
    return {
      code: 'jigsaw.level',
      message: `There is no level \u201c${level}\u201d.`,
      hint: `Choose ${JIGSAW_LEVELS.join(', ')}.`,
    };
  }
  return null;
}

/**
 * The fewest cells that jigsaws of a kind need to be middle and hard: in smaller ones a careful child is sure too often.
 * Measured; missing numbers leave so little open that they are never hard.
 */
const LEAST_CELLS: Readonly<Record<RowKind, readonly [middle: number, hard: number]>> = {
  mixed: [15, 30],
  sentences: [15, 30],
  missing: [45, Number.POSITIVE_INFINITY],
  equivalents: [20, 60],
  families: [15, 28],
  steps: [15, 54],
  repeats: [15, 15],
};

/** That this kind needs a larger jigsaw for the level, or null. */
export function tooSmall({
  rowKind = 'mixed',
  rows,
  columns,
  level = 'easy',
}: JigsawRequest): JigsawError | null {
  const [middle, hard] = LEAST_CELLS[rowKind];
  const least = level === 'easy' ? 0 : level === 'middle' ? middle : hard;
  if (rows * columns >= least) return null;
  const isNever = least === Number.POSITIVE_INFINITY;
  return {
    code: 'jigsaw.level',
    message: isNever
      ? `A jigsaw of ${ROW_KIND_NAMES[rowKind]} cannot be made ${level}: most of its numbers are printed.`
      : `A ${rows} by ${columns} jigsaw of ${ROW_KIND_NAMES[rowKind]} cannot be made ${level}; it takes at least ${least} cells.`,
    hint: isNever
      ? 'Choose the level easy or middle, or number sentences.'
      : `Choose ${listed([`${sizeOf(least)} or more`, `the level ${level === 'hard' && rows * columns >= middle ? 'middle' : 'easy'}`], rowKind)}.`,
  };
}

/** "this, that, or mixed rows"; what is asked for already is not offered again. */
function listed([first, second]: readonly [string, string], rowKind: RowKind): string {
  return rowKind === 'mixed' ? `${first}, or ${second}` : `${first}, ${second}, or mixed rows`;
}

/** A size of at least so many cells, as a child's table takes it. */
function sizeOf(cells: number): string {
  for (const [rows, columns] of [
    [4, 5],
    [4, 7],
    [5, 7],
    [5, 9],
    [6, 9],
    [7, 9],
  ] as const) {
    if (rows * columns >= cells) return `${rows} rows and ${columns} columns`;
  }
  return `${MOST_ROWS} rows and ${MOST_COLUMNS} columns`;
}

/** What rows are called in a sentence. */
export const ROW_KIND_NAMES: Readonly<Record<RowKind, string>> = {
  mixed: 'mixed rows',
  sentences: 'number sentences',
  missing: 'sentences with missing numbers',
  equivalents: 'equal forms',
  families: 'fact families',
  steps: 'rows of steps',
  repeats: 'repeating rows',
};

/** That the years' numbers, or the skills, do not give so many rows. */
export function noRows({ rowKind = 'mixed', rows, columns, skills = [], own }: JigsawRequest): JigsawError {
  const rowsAsked = `${rows} different ${ROW_KIND_NAMES[rowKind]} of ${columns} cells`;
  if (skills.length > 0 || own) {
    return {
      code: 'jigsaw.rows',
      message: `${own ? 'Your questions' : 'The chosen skills'} do not give ${rowsAsked}.`,
      hint:
        rowKind === 'families'
          ? 'Choose 5 or 6 columns, fewer rows, or more that calculate.'
          : `Choose ${otherSizes(columns)} columns, fewer rows, or add ${own ? 'questions' : 'skills'}.`,
    };
  }
  return {
    code: 'jigsaw.rows',
    message: `The numbers of these years do not make ${rowsAsked}.`,
    hint: `Choose ${listed(['fewer rows or columns', 'a later year'], rowKind)}.`,
  };
}

/** Row lengths that sentences like, without the one asked for: "5 or 9". */
function otherSizes(columns: number): string {
  const others = [5, 7, 9].filter((size) => size !== columns);
  return `${others.slice(0, -1).join(', ')} or ${others.at(-1)}`;
}

/** That no jigsaw of this size and kind reaches the level. */
export function noLevel({ rowKind = 'mixed', rows, columns, level = 'easy' }: JigsawRequest): JigsawError {
  return {
    code: 'jigsaw.level',
    message: `A ${rows} by ${columns} jigsaw of ${ROW_KIND_NAMES[rowKind]} cannot be made ${level}.`,
    hint:
      level === 'easy'
        ? 'Choose fewer rows or columns, or the level middle.'
        : `Choose ${listed(['more rows or columns', 'an easier level'], rowKind)}.`,
  };
}
