// Why another piece, or another place, is not the right one: the sentences about what a child leaves aside.
import { choices } from './child.js';
import type { Jigsaw, JigsawCell, RowRule } from './jigsaw.js';
import { pieceName } from './piece-names.js';
import type { Position } from './position.js';
import { makePuzzle, type Placement, type Puzzle, type Token } from './puzzle.js';
import { isRowTrue } from './row-truth.js';
import { cellAt, spokenPlace, spokenRow } from './spoken.js';

/** Pieces laid to find how a try ends, at most. */
const MOST_TRIED = 3000;
const WRONG: Readonly<Record<RowRule, string>> = {
  sentences: 'is not true',
  steps: 'does not go by equal steps',
  repeats: 'does not repeat',
};

export class Rivals {
  readonly #jigsaw: Jigsaw;
  readonly #puzzle: Puzzle;
  readonly #position: Position;
  /** The same frame with nothing but blanks printed: what fits by outline and kind. */
  readonly #plain: Puzzle;
  readonly #printed: ReadonlySet<number>;

  constructor(jigsaw: Jigsaw, puzzle: Puzzle, position: Position) {
    this.#jigsaw = jigsaw;
    this.#puzzle = puzzle;
    this.#position = position;
    const isBlank = (place: readonly [number, number]) => cellAt(jigsaw, place).text === '';
    this.#plain = makePuzzle({ ...jigsaw, given: jigsaw.given.filter(isBlank) });
    this.#printed = new Set(jigsaw.given.map(([row, column]) => row * jigsaw.columns + column));
  }

  /** Placements of other loose pieces over the cell that fit by outline and kind alone. */
  at(cell: number, piece: number): readonly Placement[] {
    const { grid } = this.#position;
    return this.#plain.placements.filter(
      (other) =>
        other.piece !== piece &&
        !this.#position.isUsed(other.piece) &&
        other.cells.includes(cell) &&
        other.cells.every((at) => grid[at] === -1),
    );
  }

  /** Whether the placement shows what is printed under it. */
  meetsPrinted({ cells, tokens }: Placement): boolean {
    const { cells: all } = this.#jigsaw;
    return cells.every(
      (cell, i) =>
        !this.#printed.has(cell) || this.#cellOf(tokens[i] as number).text === (all[cell] as JigsawCell).text,
    );
  }

  /** A sentence on why one of these is wrong: the one that fills a row wrongly if there is one; none when all miss print. */
  whyNot(rivals: readonly Placement[]): string[] {
    const { columns, rowRule, locale } = this.#jigsaw;
    for (const rival of rivals) {
      if (!this.meetsPrinted(rival)) continue;
      for (const row of rival.touched) {
        const ids = Array.from(this.#position.grid.slice(row * columns, (row + 1) * columns));
        rival.cells.forEach((cell, i) => {
          if (Math.floor(cell / columns) === row) ids[cell % columns] = rival.tokens[i] as number;
        });
        if (ids.includes(-1)) continue;
        const cells = ids.map((id) => this.#cellOf(id));
        if (!isRowTrue(cells, rowRule))
          return [
            `With piece ${pieceName(rival.piece)} row ${row + 1} would read ${spokenRow(cells, rowRule, locale)}, which ${WRONG[rowRule]}.`,
          ];
      }
    }
    const names = [
      ...new Set(rivals.filter((rival) => this.meetsPrinted(rival)).map(({ piece }) => pieceName(piece))),
    ];
    const [first, ...others] = names;
    if (first === undefined) return ['The other shapes that fit there do not show what the mat shows.'];
    return [
      others.length === 0
        ? `Piece ${first} has the shape, but with it a row could not come right.`
        : `Pieces such as ${first} have the shape, but with them a row could not come right.`,
    ];
  }

  /** What becomes impossible when the placement is laid: "If it were piece B, nothing would fit in row 2, column 3." */
  whyLost(index: number, subject: string): string {
    this.#position.lay(index);
    const lost = this.#lostSpot();
    this.#position.lift();
    const start = subject.startsWith('piece') ? `If it were ${subject}` : `If it lay ${subject}`;
    return `${start}, ${lost ?? 'the rest could not come right'}.`;
  }

  #lostSpot(): string | null {
    const { placements, drawn, columns, pieceCount } = this.#puzzle;
    const covered = new Set<number>();
    const placed = new Set<number>();
    for (const index of this.#position.open()) {
      const { cells, piece } = placements[index] as Placement;
      placed.add(piece);
      for (const cell of cells) covered.add(cell);
    }
    for (let cell = 0; cell < drawn.length; cell++) {
      if (this.#position.grid[cell] === -1 && !covered.has(cell))
        return `nothing would fit in ${spokenPlace([Math.floor(cell / columns), cell % columns])}`;
    }
    for (let piece = 0; piece < pieceCount; piece++) {
      if (!this.#position.isUsed(piece) && !placed.has(piece))
        return `there would be no place for piece ${pieceName(piece)}`;
    }
    return null;
  }

  /** How a try ends: how many pieces can be laid at most before nothing fits. */
  howTriedOut(index: number, subject: string): string {
    const position = this.#position;
    const start = position.depth + 1;
    let tried = 0;
    let most = 0;
    const follow = () => {
      most = Math.max(most, position.depth - start);
      for (const option of choices(position)) {
        if (tried++ > MOST_TRIED) return;
        position.lay(option);
        follow();
        position.lift();
      }
    };
    position.lay(index);
    follow();
    position.lift();
    const opening = subject.startsWith('piece') ? `With ${subject}` : `With it ${subject}`;
    if (most === 0) return `${opening} you soon see that the rest does not fit.`;
    return `${opening} you can lay at most ${most} more ${most === 1 ? 'piece' : 'pieces'}, then nothing fits.`;
  }

  #cellOf(id: number): JigsawCell {
    return (this.#puzzle.tokens[id] as Token).cell;
  }
}
