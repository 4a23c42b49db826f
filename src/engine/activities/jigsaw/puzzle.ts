// A jigsaw laid out for the solvers: cell texts as small numbers, and every place where a piece could lie.
import { toNumber } from '../../numbers/rational.js';
import type { Jigsaw, JigsawCell, RowRule } from './jigsaw.js';
import { type CellKind, isComparison, kindOf, valueOf } from './token.js';

/** A distinct cell: same text and same expression. */
export interface Token {
  readonly cell: JigsawCell;
  readonly kind: CellKind;
  readonly isComparison: boolean;
  /** Nearest binary number; NaN for signs, blanks and shapes. */
  readonly value: number;
}

/** One way to lay one piece. */
export interface Placement {
  readonly piece: number;
  /** Cell numbers, row by row, and the tokens that come to lie there. */
  readonly cells: readonly number[];
  readonly tokens: readonly number[];
  /** Rows it touches, and the same as a bit mask. */
  readonly touched: readonly number[];
  readonly touchedMask: number;
  /** The cells as a bit mask of three words. */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface Puzzle {
  readonly rows: number;
  readonly columns: number;
  readonly rule: RowRule;
  readonly tokens: readonly Token[];
  /** The right assembly: the token of every cell, and the placement of every piece. */
  readonly drawn: readonly number[];
  readonly right: readonly number[];
  readonly pieceCount: number;
  readonly placements: readonly Placement[];
  /** True when every part between blank cells can have one comparison only, by counting. */
  readonly isOneComparison: boolean;
}

type PuzzleSource = Pick<Jigsaw, 'rows' | 'columns' | 'cells' | 'rowRule' | 'pieces' | 'given'>;

/**
 * The jigsaw made ready for the solvers: every placement in which numbers, signs and blanks lie where the frame shows that
 * kind, and printed cells meet their own text.
 */
export function makePuzzle(jigsaw: PuzzleSource): Puzzle {
  const { rows, columns, cells, rowRule, pieces, given } = jigsaw;
  const { tokens, drawn } = tokensOf(cells);
  const kinds = drawn.map((id) => (tokens[id] as Token).kind);
  const printed = new Set(given.map(([row, column]) => row * columns + column));
  const placements: Placement[] = [];
  const right: number[] = [];
  for (const [piece, { cells: places }] of pieces.entries()) {
    const ordered = places.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
    const downs = ordered.map(([row]) => row);
    const acrosses = ordered.map(([, column]) => column);
    const [top, left] = [Math.min(...downs), Math.min(...acrosses)];
    const height = Math.max(...downs) - top;
    const width = Math.max(...acrosses) - left;
    const ids = ordered.map(([row, column]) => drawn[row * columns + column] as number);
    const own = ids.map((id) => (tokens[id] as Token).kind);
    const texts = ids.map((id) => (tokens[id] as Token).cell.text);
    const offsets = ordered.map(([row, column]) => (row - top) * columns + (column - left));
    for (let down = 0; down + height < rows; down++) {
      next: for (let across = 0; across + width < columns; across++) {
        const from = down * columns + across;
        for (let i = 0; i < offsets.length; i++) {
          const cell = from + (offsets[i] as number);
          if (own[i] !== kinds[cell]) continue next;
          if (printed.has(cell) && texts[i] !== (tokens[drawn[cell] as number] as Token).cell.text)
            continue next;
        }
        if (down === top && across === left) right.push(placements.length);
        placements.push(placementAt(piece, from, offsets, ids, columns));
      }
    }
  }
  return {
    rows,
    columns,
    rule: rowRule,
    tokens,
    drawn,
    right,
    pieceCount: pieces.length,
    placements,
    isOneComparison: rowRule === 'sentences' && hasOneComparisonEach(cells, columns),
  };
}

function placementAt(
  piece: number,
  from: number,
  offsets: readonly number[],
  tokens: readonly number[],
  columns: number,
): Placement {
  const cells = offsets.map((offset) => from + offset);
  const masks: [number, number, number] = [0, 0, 0];
  const touched: number[] = [];
  let touchedMask = 0;
  for (const cell of cells) {
    const word = cell >> 5;
    masks[word] = (masks[word] as number) | (1 << (cell & 31));
    const row = Math.floor(cell / columns);
    if (!(touchedMask & (1 << row))) touched.push(row);
    touchedMask |= 1 << row;
  }
  return { piece, cells, tokens, touched, touchedMask, low: masks[0], middle: masks[1], high: masks[2] };
}

function tokensOf(cells: readonly JigsawCell[]): { tokens: Token[]; drawn: number[] } {
  const ids = new Map<string, number>();
  const tokens: Token[] = [];
  const drawn = cells.map((cell) => {
    const key = `${cell.text}\n${cell.expression}`;
    let id = ids.get(key);
    if (id === undefined) {
      id = tokens.length;
      ids.set(key, id);
      const kind = kindOf(cell);
      const value = kind === 'number' ? valueOf(cell) : null;
      tokens.push({
        cell,
        kind,
        isComparison: kind === 'sign' && isComparison(cell.expression),
        value: value === null ? Number.NaN : toNumber(value),
      });
    }
    return id;
  });
  return { tokens, drawn };
}

/** Every part needs a comparison; when there are no more of them than parts, none can have two. */
function hasOneComparisonEach(cells: readonly JigsawCell[], columns: number): boolean {
  let parts = 0;
  let comparisons = 0;
  for (const [i, cell] of cells.entries()) {
    const kind = kindOf(cell);
    const before = i % columns === 0 ? null : kindOf(cells[i - 1] as JigsawCell);
    if (kind !== 'blank' && (before === null || before === 'blank')) parts++;
    if (kind === 'sign' && isComparison(cell.expression)) comparisons++;
  }
  return parts === comparisons;
}
