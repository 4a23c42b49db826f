// Which cells are printed in the frame: the dial by which a jigsaw comes to its level.
import { helpfulCells } from './help.js';
import { Rng } from '../../random/rng.js';
import type { Jigsaw, JigsawCell, JigsawLevel, Place, RowKind } from './jigsaw.js';
import { tryRange } from './level.js';
import { childTries, countTrueAssemblies, PROOF_NODE_LIMIT } from './proof.js';
import { makePuzzle, type Puzzle } from './puzzle.js';
import { kindOf } from './token.js';

/** A jigsaw whose rows and pieces are chosen. */
export type Uncut = Omit<Jigsaw, 'kind' | 'years' | 'locale' | 'rowKind' | 'given' | 'proof'>;

export interface Printed {
  readonly given: readonly Place[];
  readonly wrongTries: number;
}

/** At most this share of the cells is printed in the frame to help. */
const MOST_HELP_SHARE = 0.3;

/**
 * The cells to print so that the child's tries come into the level's range: none if they are in it already, else as many
 * of the most telling ones as it takes. Null when they are too few from the start, or when rivals remain.
 */
export function printedFor(base: Uncut, rowKind: RowKind, level: JigsawLevel): Printed | null {
  const range = tryRange(level, base.pieces.length, base.rowRule);
  const blanks = blankPlaces(base);
  const frame = { ...base, given: blanks };
  const isMissing = rowKind === 'missing';
  if (level !== 'easy' && !isMissing) {
    const bare = makePuzzle(frame);
    const tries = childTries(bare, base.seed, range);
    const isAlone = isProved(bare);
    if (isAlone && tries < range.least) return null;
    if (isAlone && tries <= range.most) return { given: blanks, wrongTries: tries };
  }
  const most = Math.floor(MOST_HELP_SHARE * (base.cells.length - blanks.length));
  const help = isMissing ? allButOne(base) : helpfulCells(makePuzzle(frame), most);
  if (help === null) return null;
  // More printed cells mean fewer tries: the right number is found by halving.
  let fewest = level === 'easy' ? help.length : isMissing ? base.rows : 1;
  let mostHelp = level === 'easy' || isMissing ? help.length : help.length - 1;
  while (fewest <= mostHelp) {
    const count = (fewest + mostHelp) >> 1;
    const given = inOrder([...blanks, ...help.slice(0, count)]);
    const puzzle = makePuzzle({ ...base, given });
    const wrongTries = childTries(puzzle, base.seed, range);
    if (wrongTries < range.least) mostHelp = count - 1;
    else if (wrongTries <= range.most && isProved(puzzle)) return { given, wrongTries };
    else fewest = count + 1;
  }
  return null;
}

/** In every sentence all numbers but one, which is missing; first one of each row, then the others. */
function allButOne({ cells, rows, columns, seed }: Uncut): Place[] {
  const rng = new Rng(seed).fork('missing');
  const shown = Array.from({ length: rows }, (_, row): Place[] => {
    const parts: Place[][] = [[]];
    for (let column = 0; column < columns; column++) {
      const kind = kindOf(cells[row * columns + column] as JigsawCell);
      if (kind === 'blank') parts.push([]);
      else if (kind === 'number') (parts.at(-1) as Place[]).push([row, column]);
    }
    return rng.shuffle(parts.flatMap((places) => rng.shuffle(places).slice(1)));
  });
  const firsts = shown.flatMap((places) => places.slice(0, 1));
  return [...firsts, ...rng.shuffle(shown.flatMap((places) => places.slice(1)))];
}

function isProved(puzzle: Puzzle): boolean {
  const { found, isComplete } = countTrueAssemblies(puzzle, PROOF_NODE_LIMIT);
  return found === 1 && isComplete;
}

function inOrder(places: readonly Place[]): Place[] {
  return places.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
}

/** The blank cells: they are printed in the frame, hatched, so that every sentence has its place. */
function blankPlaces({ cells, columns }: Uncut): Place[] {
  return cells.flatMap((cell, at): Place[] =>
    kindOf(cell) === 'blank' ? [[Math.floor(at / columns), at % columns]] : [],
  );
}
