// A solution in plain sentences, one piece at a time, as the careful child of child.ts finds it: for the adult's key, and for
// a hint on screen (the first step whose piece does not lie yet).
import { choices } from './child.js';
import type { Jigsaw, Place } from './jigsaw.js';
import { pieceName } from './piece-names.js';
import { Position } from './position.js';
import { makePuzzle, type Placement, type Puzzle } from './puzzle.js';
import { Rivals } from './rivals.js';
import { cellAt, listed, spokenCell, spokenPlace, spokenRow } from './spoken.js';

/** How the child knows: nothing else fits the gap; the piece has no other place; the others lead nowhere; tried out. */
export type StepReason = 'only piece' | 'only place' | 'others lead nowhere' | 'tried';

export interface SolutionStep {
  /** The piece, as a number in `pieces`, and its letter. */
  readonly piece: number;
  readonly name: string;
  /** Where it comes to lie. */
  readonly cells: readonly Place[];
  readonly reason: StepReason;
  /** Where and why, in a few plain sentences. */
  readonly text: string;
  /** Rows that are full now, counted from 0. */
  readonly rowsDone: readonly number[];
}

/** Rivals that a sentence speaks of. */
const MOST_TOLD = 2;

/**
 * The steps in which the jigsaw comes together, every piece once. Steps with the reason "tried" are those at which the child
 * cannot be sure; easy jigsaws have none. The jigsaw must have one assembly (proof.assemblies is 1).
 */
export function explainJigsaw(jigsaw: Jigsaw): readonly SolutionStep[] {
  const puzzle = makePuzzle(jigsaw);
  const position = new Position(puzzle, 'rows');
  const teller = new Teller(jigsaw, puzzle, position);
  const steps: SolutionStep[] = [];
  while (!position.isFull) {
    const { index, reason, text } = teller.gapStep() ?? teller.pieceStep() ?? teller.choiceStep();
    const { piece } = puzzle.placements[index] as Placement;
    const rowsDone = teller.rowsFilledBy(index);
    position.lay(index);
    const done = rowsDone.map((row) => ` Row ${row + 1} is now full: ${teller.rowText(row)}.`).join('');
    const { cells } = jigsaw.pieces[piece] as Jigsaw['pieces'][number];
    steps.push({ piece, name: pieceName(piece), cells, reason, text: text + done, rowsDone });
  }
  return steps;
}

interface Told {
  readonly index: number;
  readonly reason: StepReason;
  readonly text: string;
}

class Teller {
  readonly #jigsaw: Jigsaw;
  readonly #puzzle: Puzzle;
  readonly #position: Position;
  readonly #rivals: Rivals;

  constructor(jigsaw: Jigsaw, puzzle: Puzzle, position: Position) {
    this.#jigsaw = jigsaw;
    this.#puzzle = puzzle;
    this.#position = position;
    this.#rivals = new Rivals(jigsaw, puzzle, position);
  }

  /** A gap that only one piece can fill; of several such the one that says most. */
  gapStep(): Told | null {
    const { placements, drawn } = this.#puzzle;
    const cover: number[][] = drawn.map(() => []);
    for (const index of this.#position.open())
      for (const cell of this.#placement(index).cells) (cover[cell] as number[]).push(index);
    let best: { cell: number; index: number; rank: number } | null = null;
    for (const [cell, options] of cover.entries()) {
      if (this.#position.grid[cell] !== -1 || options.length !== 1) continue;
      const [index] = options as [number];
      const rank = this.#rankOf(index, cell);
      if (best === null || rank > best.rank) best = { cell, index, rank };
    }
    if (best === null) return null;
    const { cell, index } = best;
    const { piece } = placements[index] as Placement;
    const name = pieceName(piece);
    const rivals = this.#rivals.at(cell, piece);
    if (rivals.length === 0)
      return {
        index,
        reason: 'only piece',
        text: `Only piece ${name} has a shape that fits the gap at ${this.#place(cell)}.`,
      };
    if (this.#isPrinted(cell) && rivals.every((rival) => !this.#rivals.meetsPrinted(rival))) {
      const seen = cellAt(this.#jigsaw, this.#at(cell));
      const shown = seen.figure ? 'a picture' : spokenCell(seen, this.#jigsaw.locale);
      return {
        index,
        reason: 'only piece',
        text: `The mat shows ${shown} in ${this.#place(cell)}: only piece ${name} can lie there and show the same.`,
      };
    }
    const why = this.#rivals.whyNot(rivals);
    return {
      index,
      reason: 'only piece',
      text: [`Only piece ${name} fits in ${this.#place(cell)}.`, ...why].join(' '),
    };
  }

  /** A piece with a single place left. */
  pieceStep(): Told | null {
    const places: number[][] = this.#jigsaw.pieces.map(() => []);
    for (const index of this.#position.open()) (places[this.#placement(index).piece] as number[]).push(index);
    for (const [piece, options] of places.entries()) {
      if (this.#position.isUsed(piece) || options.length !== 1) continue;
      const [index] = options as [number];
      const text = `Piece ${pieceName(piece)} has only one place left in which every row can come right: ${this.#start(index)}.`;
      return { index, reason: 'only place', text };
    }
    return null;
  }

  /** Nothing is sure at a glance: the tightest spot is looked at, one piece ahead or by trying. */
  choiceStep(): Told {
    const options = this.#position.tightest();
    const left = choices(this.#position);
    const index = options.find((option) => this.#puzzle.right.includes(option)) as number;
    const pieces = [...new Set(options.map((option) => pieceName(this.#placement(option).piece)))];
    const isOnePiece = pieces.length === 1;
    const name = pieceName(this.#placement(index).piece);
    const shared = this.#placement(index).cells.find((cell) =>
      options.every((option) => this.#placement(option).cells.includes(cell)),
    );
    const opening = isOnePiece
      ? `Piece ${name} fits at ${listed(
          options.map((option) => this.#start(option)),
          'or',
        )}.`
      : `Piece ${listed(pieces, 'or')} could go ${shared === undefined ? 'here' : `in ${this.#place(shared)}`}.`;
    const end = isOnePiece ? `So piece ${name} belongs at ${this.#start(index)}.` : `So it is piece ${name}.`;
    const isSure = left.length === 1;
    const wrong = options.filter((option) => option !== index);
    const told = (isSure ? wrong : left.filter((option) => option !== index))
      .slice(0, MOST_TOLD)
      .map((option) => {
        const subject = isOnePiece
          ? `at ${this.#start(option)}`
          : `piece ${pieceName(this.#placement(option).piece)}`;
        return isSure ? this.#rivals.whyLost(option, subject) : this.#rivals.howTriedOut(option, subject);
      });
    const text = [opening, ...(isSure ? [] : ['Here you have to try.']), ...told, end].join(' ');
    return { index, reason: isSure ? 'others lead nowhere' : 'tried', text };
  }

  /** Rows that the placement would fill up. */
  rowsFilledBy(index: number): number[] {
    const { cells, touched } = this.#placement(index);
    const { columns } = this.#puzzle;
    return touched.filter((row) =>
      Array.from({ length: columns }, (_, i) => row * columns + i).every(
        (cell) => this.#position.grid[cell] !== -1 || cells.includes(cell),
      ),
    );
  }

  rowText(row: number): string {
    const { cells, columns, rowRule, locale } = this.#jigsaw;
    return spokenRow(cells.slice(row * columns, (row + 1) * columns), rowRule, locale);
  }

  /** Steps that finish a row say most, then those that start from what is printed, then those beside what lies already. */
  #rankOf(index: number, cell: number): number {
    const { columns } = this.#puzzle;
    const { grid } = this.#position;
    const beside = this.#placement(index).cells.filter((one) =>
      [
        one % columns > 0 ? one - 1 : -1,
        one % columns < columns - 1 ? one + 1 : -1,
        one - columns,
        one + columns,
      ].some((other) => other >= 0 && other < grid.length && grid[other] !== -1),
    ).length;
    return 20 * this.rowsFilledBy(index).length + (this.#isPrinted(cell) ? 10 : 0) + beside;
  }

  #isPrinted(cell: number): boolean {
    const [row, column] = this.#at(cell);
    return (
      cellAt(this.#jigsaw, [row, column]).text !== '' &&
      this.#jigsaw.given.some((place) => place[0] === row && place[1] === column)
    );
  }

  #placement(index: number): Placement {
    return this.#puzzle.placements[index] as Placement;
  }

  #at(cell: number): Place {
    return [Math.floor(cell / this.#puzzle.columns), cell % this.#puzzle.columns];
  }

  #place(cell: number): string {
    return spokenPlace(this.#at(cell));
  }

  /** The piece's first cell, by which its place is told. */
  #start(index: number): string {
    return this.#place(this.#placement(index).cells[0] as number);
  }
}
