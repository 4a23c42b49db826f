// Composing: rows, a cut, the proof, the level; drawn again until all of it holds, in a fixed order that the seed names.
import { type LocaleId, localeOf } from '../../numbers/locale.js';
import { Rng } from '../../random/rng.js';
import { type CutStyle, cutPieces } from './cut.js';
import {
  type Jigsaw,
  type JigsawLevel,
  type JigsawProof,
  LEAST_COLUMNS,
  LEAST_ROWS,
  MOST_COLUMNS,
  MOST_ROWS,
  type Place,
  type RowKind,
} from './jigsaw.js';
import { helpfulCells } from './help.js';
import { levelOf, type TryRange, tryRange } from './level.js';
import { exchanges, fitsAsked, outlineFits } from './outline-fits.js';
import { childTries, countTrueAssemblies, PROOF_NODE_LIMIT } from './proof.js';
import { makePuzzle } from './puzzle.js';
import { fillRows, ruleOf } from './rows/fill.js';
import { kindOf } from './token.js';

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
}

export interface JigsawError {
  readonly code: 'jigsaw.years' | 'jigsaw.size' | 'jigsaw.seed' | 'jigsaw.rows' | 'jigsaw.level';
  readonly message: string;
  readonly hint: string;
}

export type JigsawResult =
  | { readonly ok: true; readonly value: Jigsaw }
  | { readonly ok: false; readonly error: JigsawError };

const ATTEMPTS = 120;
const CUTS_OF_ROWS = 6;
/** After so many attempts without a set of rows, none will come. */
const ROW_ATTEMPTS = 12;

type Uncut = Omit<Jigsaw, 'kind' | 'years' | 'locale' | 'rowKind' | 'given' | 'proof'>;

/** The jigsaw that the request and its seed name, or why there is none and what to change. */
export function composeJigsaw(request: JigsawRequest): JigsawResult {
  const problem = problemWith(request);
  if (problem) return { ok: false, error: problem };
  const { rows, columns, seed, years, locale, rowKind = 'mixed', level = 'easy' } = request;
  const rowRule = ruleOf(rowKind);
  const stream = new Rng(seed).fork('jigsaw');
  const enough = fitsAsked(rows, columns);
  let hasRows = false;
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const rng = stream.fork(attempt);
    const filled = fillRows(rowKind, rows, columns, { years, locale: localeOf(locale), rng, level });
    if (filled === null) {
      if (!hasRows && attempt >= ROW_ATTEMPTS) return { ok: false, error: noRows(request) };
      continue;
    }
    hasRows = true;
    const cells = filled.flat();
    for (let cutting = 0; cutting < CUTS_OF_ROWS; cutting++) {
      const cut = cutPieces(cells, rows, columns, styleFor(level, rows * columns, rng), rng);
      // The cut comes in reading order, which would give the places away.
      const base: Uncut = { seed, rows, columns, cells, rowRule, pieces: rng.shuffle(cut ?? []) };
      if (cut === null || !hasEnoughFits(base, enough)) continue;
      const helped = helpedTo(base, level);
      if (helped === null) continue;
      const { given, wrongTries } = helped;
      const proof: JigsawProof = {
        assemblies: 1,
        outlineFits: outlineFits(base),
        wrongTries,
        level: levelOf(wrongTries, base.pieces.length, rowRule),
      };
      return { ok: true, value: { kind: 'jigsaw', years, locale, rowKind, ...base, given, proof } };
    }
  }
  return { ok: false, error: noLevel(request) };
}

/** Cells below which a jigsaw is small, and from which it is large. */
const SMALL = 30;
const LARGE = 45;

/** Counting is worth its time only where exchanges alone come near. */
const NEAR = 6;

function hasEnoughFits(base: Uncut, enough: number): boolean {
  const bound = exchanges(base);
  if (bound >= enough) return true;
  return (base.cells.length < SMALL || bound * NEAR >= enough) && outlineFits(base, enough) >= enough;
}

/** Small jigsaws need pieces much alike to fit in many ways; upright pieces leave rows open for longer, which is harder. */
function styleFor(level: JigsawLevel, cells: number, rng: Rng): CutStyle {
  const styles =
    level === 'hard' ? [[4], [3, 4], [3, 4]] : cells < SMALL ? [[3], [3], [3, 4]] : [[3], [3, 4], [3, 4]];
  return { sizes: rng.pick(styles), variety: rng.int(2, cells < LARGE ? 5 : 8), isUpright: level === 'hard' };
}

interface Helped {
  readonly given: readonly Place[];
  readonly wrongTries: number;
}

/** At most this share of the cells is printed in the frame to help. */
const MOST_HELP_SHARE = 0.3;

/**
 * The cells to print so that the child's tries come into the level's range: none if they are in it already, else as many
 * of the most telling ones as it takes. Null when they are too few from the start, or when rivals remain.
 */
function helpedTo(base: Uncut, level: JigsawLevel): Helped | null {
  const range = tryRange(level, base.pieces.length, base.rowRule);
  const blanks = blankPlaces(base);
  const bare = makePuzzle({ ...base, given: blanks });
  const most = Math.floor(MOST_HELP_SHARE * (base.cells.length - blanks.length));
  if (level === 'easy') {
    const help = helpfulCells(bare, most);
    return help === null ? null : settle(base, [...blanks, ...help], range);
  }
  const tries = childTries(bare, base.seed, range);
  if (tries < range.least) return null;
  if (tries <= range.most) return settle(base, blanks, range, bare);
  const help = helpfulCells(bare, most);
  if (help === null) return null;
  for (let count = 1; count < help.length; count++) {
    const settled = settle(base, [...blanks, ...help.slice(0, count)], range);
    if (settled !== null) return settled;
  }
  return null;
}

/** The printed cells with the tries they leave, when these are in range and one assembly is left. */
function settle(
  base: Uncut,
  given: readonly Place[],
  range: TryRange,
  puzzle = makePuzzle({ ...base, given }),
): Helped | null {
  const wrongTries = childTries(puzzle, base.seed, range);
  if (wrongTries < range.least || wrongTries > range.most) return null;
  // A child who is always sure has proved it by her work.
  if (wrongTries > 0) {
    const count = countTrueAssemblies(puzzle, PROOF_NODE_LIMIT);
    if (count.found !== 1 || !count.isComplete) return null;
  }
  return { given: given.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]), wrongTries };
}

/** The blank cells: they are printed in the frame, hatched, so that every sentence has its place. */
function blankPlaces({ cells, columns }: Uncut): Place[] {
  return cells.flatMap((cell, at): Place[] =>
    kindOf(cell) === 'blank' ? [[Math.floor(at / columns), at % columns]] : [],
  );
}

function problemWith({ years, rows, columns, seed }: JigsawRequest): JigsawError | null {
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
  return null;
}

/** What rows are called in a sentence. */
export const ROW_KIND_NAMES: Readonly<Record<RowKind, string>> = {
  mixed: 'mixed rows',
  sentences: 'number sentences',
  equivalents: 'equal forms',
  families: 'fact families',
  steps: 'rows of steps',
  repeats: 'repeating rows',
};

function noRows({ rowKind = 'mixed', rows, columns }: JigsawRequest): JigsawError {
  return {
    code: 'jigsaw.rows',
    message: `The numbers of these years do not make ${rows} different ${ROW_KIND_NAMES[rowKind]} of ${columns} cells.`,
    hint: 'Choose fewer rows or columns, a later year, or mixed rows.',
  };
}

function noLevel({ rowKind = 'mixed', rows, columns, level = 'easy' }: JigsawRequest): JigsawError {
  return {
    code: 'jigsaw.level',
    message: `A ${rows} by ${columns} jigsaw of ${ROW_KIND_NAMES[rowKind]} cannot be made ${level}.`,
    hint:
      level === 'easy'
        ? 'Choose fewer rows or columns, or the level middle.'
        : 'Choose more rows or columns, an easier level, or mixed rows.',
  };
}
