// A half-laid jigsaw: what lies where, and which placements are still open. The proof, the count of outline fits and the
// child all walk through positions; they differ in how they choose and what they look at.
import { Outlook } from './outlook.js';
import type { Placement, Puzzle } from './puzzle.js';

/** Lays and lifts pieces. `sees` says whether rows are judged: without it only outlines and kinds count. */
export class Position {
  readonly puzzle: Puzzle;
  readonly #outlook: Outlook | null;
  readonly grid: Int16Array;
  readonly #loose: Int16Array;
  readonly #isUsed: Uint8Array;
  readonly #cover: Uint16Array;
  readonly #places: Uint16Array;
  /** The placements open after so many pieces; lists are kept, so that lifting costs nothing. */
  readonly #open: Int16Array[] = [];
  readonly #counts: number[] = [];
  readonly #laid: number[] = [];
  #low = 0;
  #middle = 0;
  #high = 0;

  constructor(puzzle: Puzzle, sees: 'rows' | 'outlines') {
    this.puzzle = puzzle;
    this.#outlook = sees === 'rows' ? new Outlook(puzzle) : null;
    this.grid = new Int16Array(puzzle.rows * puzzle.columns).fill(-1);
    this.#loose = new Int16Array(puzzle.tokens.length);
    for (const id of puzzle.drawn) this.#loose[id] = (this.#loose[id] as number) + 1;
    this.#isUsed = new Uint8Array(puzzle.pieceCount);
    this.#cover = new Uint16Array(this.grid.length);
    this.#places = new Uint16Array(puzzle.pieceCount);
    const { placements } = puzzle;
    const first = new Int16Array(placements.length);
    let count = 0;
    for (let i = 0; i < placements.length; i++)
      if (this.#leavesHope(placements[i] as Placement)) first[count++] = i;
    this.#open.push(first);
    this.#counts.push(count);
  }

  get depth(): number {
    return this.#laid.length;
  }

  get isFull(): boolean {
    return this.depth === this.puzzle.pieceCount;
  }

  isUsed(piece: number): boolean {
    return this.#isUsed[piece] === 1;
  }

  /** The placements open now. Valid until the next piece is laid or lifted. */
  open(): Int16Array {
    return (this.#open[this.depth] as Int16Array).subarray(0, this.#counts[this.depth]);
  }

  lay(index: number): void {
    const placement = this.puzzle.placements[index] as Placement;
    const { cells, tokens, piece } = placement;
    for (let i = 0; i < cells.length; i++) {
      const id = tokens[i] as number;
      this.grid[cells[i] as number] = id;
      this.#loose[id] = (this.#loose[id] as number) - 1;
    }
    this.#isUsed[piece] = 1;
    this.#low |= placement.low;
    this.#middle |= placement.middle;
    this.#high |= placement.high;
    const from = this.#open[this.depth] as Int16Array;
    const count = this.#counts[this.depth] as number;
    this.#laid.push(index);
    this.#sift(from, count, placement);
  }

  lift(): void {
    const placement = this.puzzle.placements[this.#laid.pop() as number] as Placement;
    const { cells, tokens, piece } = placement;
    for (let i = 0; i < cells.length; i++) {
      const id = tokens[i] as number;
      this.grid[cells[i] as number] = -1;
      this.#loose[id] = (this.#loose[id] as number) + 1;
    }
    this.#isUsed[piece] = 0;
    this.#low &= ~placement.low;
    this.#middle &= ~placement.middle;
    this.#high &= ~placement.high;
  }

  /** From here on only placements that show the right text in the cell are open. */
  print(cell: number): void {
    const { placements, drawn } = this.puzzle;
    const open = this.#open[this.depth] as Int16Array;
    const count = this.#counts[this.depth] as number;
    let kept = 0;
    for (let i = 0; i < count; i++) {
      const index = open[i] as number;
      const { cells, tokens } = placements[index] as Placement;
      const at = cells.indexOf(cell);
      if (at < 0 || tokens[at] === drawn[cell]) open[kept++] = index;
    }
    this.#counts[this.depth] = kept;
  }

  /** Whether laying the placement would leave a cell that nothing covers or a piece that has no place. */
  leadsNowhere(index: number): boolean {
    this.lay(index);
    const isLost = !this.isFull && this.tightest().length === 0;
    this.lift();
    return isLost;
  }

  /** The options at the cell or piece that has fewest, the first in reading order among equals; none when all is lost. */
  tightest(): number[] {
    const all = this.puzzle.placements;
    const open = this.#open[this.depth] as Int16Array;
    const count = this.#counts[this.depth] as number;
    const cover = this.#cover.fill(0);
    const places = this.#places.fill(0);
    for (let i = 0; i < count; i++) {
      const { cells, piece } = all[open[i] as number] as Placement;
      places[piece] = (places[piece] as number) + 1;
      for (let j = 0; j < cells.length; j++) {
        const cell = cells[j] as number;
        cover[cell] = (cover[cell] as number) + 1;
      }
    }
    let fewest = Number.POSITIVE_INFINITY;
    let isPiece = false;
    let at = -1;
    for (let cell = 0; cell < cover.length; cell++) {
      if ((cover[cell] as number) < fewest && this.grid[cell] === -1) {
        fewest = cover[cell] as number;
        at = cell;
      }
    }
    for (let piece = 0; piece < places.length; piece++) {
      if ((places[piece] as number) < fewest && this.#isUsed[piece] === 0) {
        fewest = places[piece] as number;
        isPiece = true;
        at = piece;
      }
    }
    const options: number[] = [];
    for (let i = 0; i < count && options.length < fewest; i++) {
      const index = open[i] as number;
      const placement = all[index] as Placement;
      if (isPiece ? placement.piece === at : placement.cells.includes(at)) options.push(index);
    }
    return options;
  }

  /** Keeps what is still open after `placed` was laid. */
  #sift(from: Int16Array, count: number, placed: Placement): void {
    const all = this.puzzle.placements;
    const { depth } = this;
    let rest = this.#open[depth];
    if (rest === undefined) {
      rest = new Int16Array(all.length);
      this.#open[depth] = rest;
    }
    const [low, middle, high] = [this.#low, this.#middle, this.#high];
    const rows = this.#outlook === null ? 0 : placed.touchedMask;
    let kept = 0;
    for (let i = 0; i < count; i++) {
      const index = from[i] as number;
      const placement = all[index] as Placement;
      if (placement.low & low || placement.middle & middle || placement.high & high) continue;
      if (this.#isUsed[placement.piece] === 1) continue;
      if (placement.touchedMask & rows && !this.#leavesHope(placement, rows)) continue;
      rest[kept++] = index;
    }
    this.#counts[depth] = kept;
  }

  /** Whether the rows it touches, those of `mask` among them, could still come true. */
  #leavesHope({ cells, tokens, touched }: Placement, mask = -1): boolean {
    const outlook = this.#outlook;
    if (outlook === null) return true;
    const { grid } = this;
    for (let i = 0; i < cells.length; i++) grid[cells[i] as number] = tokens[i] as number;
    let isHopeful = true;
    for (let i = 0; i < touched.length && isHopeful; i++) {
      const row = touched[i] as number;
      if (mask & (1 << row)) isHopeful = outlook.isHopeful(row, grid, this.#loose);
    }
    for (let i = 0; i < cells.length; i++) grid[cells[i] as number] = -1;
    return isHopeful;
  }
}
