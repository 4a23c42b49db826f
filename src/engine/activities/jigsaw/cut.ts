// Cutting the rectangle into interlocking pieces. A few outlines are chosen and used wherever they go, so that many pieces
// fit the same hole and only what stands on them decides; others fill the gaps.
import type { Rng } from '../../random/rng.js';
import type { JigsawCell, JigsawPiece, Place } from './jigsaw.js';
import { isBar, isRectangle, type Outline, outlinesOfSize } from './outlines.js';
import { kindOf } from './token.js';

export interface CutStyle {
  /** Cells of most pieces: 3, 4 or 5. */
  readonly sizes: readonly number[];
  /** How many outlines to prefer; fewer means that more pieces are alike. */
  readonly variety: number;
}

interface Shape {
  readonly outline: Outline;
  readonly isBar: boolean;
}

const MOST_STEPS = 160;
/** Straight bars help to fill a corner; they are dull, so there are few of them and none twice. */
const MOST_BARS = 2;
const BARS: readonly Shape[] = [2, 3].flatMap((size) =>
  outlinesOfSize(size)
    .filter(isBar)
    .map((outline) => ({ outline, isBar: true })),
);
const SHAPES: ReadonlyMap<number, readonly Shape[]> = new Map(
  [3, 4, 5].map((size) => [
    size,
    outlinesOfSize(size)
      .filter((outline) => !isBar(outline))
      .map((outline) => ({ outline, isBar: false })),
  ]),
);
/** The share of pieces that may be rectangles: they lie beside each other without interlocking. */
const MOST_RECTANGLES = 1 / 3;
/** Outlines beyond the preferred ones that are tried for one gap. */
const OTHERS_TRIED = 6;

/**
 * A random cut, or null when chance ran into a corner or into too many rectangles. No two straight bars are alike, no piece holds signs alone, and no
 * two pieces are alike in outline and texts (an exchange of them would not be seen).
 */
export function cutPieces(
  cells: readonly JigsawCell[],
  rows: number,
  columns: number,
  style: CutStyle,
  rng: Rng,
): readonly JigsawPiece[] | null {
  const stock = rng.shuffle(style.sizes.flatMap((size) => SHAPES.get(size) as readonly Shape[]));
  const preferred = stock.slice(0, style.variety);
  const others = stock.slice(style.variety);
  const isNumber = cells.map((cell) => kindOf(cell) === 'number');
  const owner = new Int8Array(rows * columns).fill(-1);
  const laid: { readonly shape: Shape; readonly at: number }[] = [];
  let steps = 0;

  function fits({ outline }: Shape, at: number): boolean {
    const row = Math.floor(at / columns);
    const column = at - row * columns;
    let hasNumber = false;
    for (const [down, across] of outline) {
      const x = column + across;
      if (row + down >= rows || x < 0 || x >= columns) return false;
      const cell = at + down * columns + across;
      if (owner[cell] !== -1) return false;
      hasNumber ||= isNumber[cell] as boolean;
    }
    return hasNumber;
  }

  function paint({ outline }: Shape, at: number, piece: number): void {
    for (const [down, across] of outline) owner[at + down * columns + across] = piece;
  }

  function tryShapes(shapes: readonly Shape[], from: number, most: number, at: number): boolean {
    for (let i = 0; i < most; i++) {
      const shape = shapes[(from + i) % shapes.length] as Shape;
      if (!fits(shape, at) || (shape.isBar && !isBarAllowed(shape))) continue;
      if (++steps > MOST_STEPS) return false;
      paint(shape, at, laid.length);
      laid.push({ shape, at });
      if (fill(at + 1)) return true;
      laid.pop();
      paint(shape, at, -1);
    }
    return false;
  }

  function isBarAllowed(shape: Shape): boolean {
    const bars = laid.filter((other) => other.shape.isBar);
    return bars.length < MOST_BARS && bars.every((other) => other.shape !== shape);
  }

  function fill(from: number): boolean {
    let at = from;
    while (at < owner.length && owner[at] !== -1) at++;
    if (at === owner.length) return true;
    const start = (shapes: readonly Shape[]) => rng.int(0, Math.max(0, shapes.length - 1));
    return (
      tryShapes(preferred, start(preferred), preferred.length, at) ||
      tryShapes(others, start(others), Math.min(others.length, OTHERS_TRIED), at) ||
      tryShapes(BARS, start(BARS), BARS.length, at)
    );
  }

  if (!fill(0)) return null;
  if (laid.filter(({ shape }) => isRectangle(shape.outline)).length > MOST_RECTANGLES * laid.length)
    return null;
  const texts = laid.map(({ shape, at }) =>
    [
      shape.outline.join(' '),
      ...shape.outline.map(([down, across]) => (cells[at + down * columns + across] as JigsawCell).text),
    ].join('|'),
  );
  if (new Set(texts).size < texts.length) return null;
  return laid.map(({ shape, at }) => ({
    cells: shape.outline.map(
      ([down, across]): Place => [Math.floor(at / columns) + down, (at % columns) + across],
    ),
  }));
}
