// How large a mat and its loose pieces can be on a screen, with every loose piece beside the mat in a place of its own, so
// that nothing is scrolled and nothing moves that nobody touched.

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** From the top left of the tray, in px. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface MatFit {
  /** Side of a cell in px. */
  readonly cellPx: number;
  /** Loose pieces to the right of the mat; below it when false. */
  readonly isBeside: boolean;
  /** The place of each loose piece in their order. */
  readonly spots: readonly Spot[];
  /** Width of the tray in px. */
  readonly trayPx: number;
}

/** White between loose pieces, and between them and the mat. */
export const GAP_PX = 12;
const LEAST_CELL_PX = 16;
const MOST_CELL_PX = 320;

/**
 * The largest cells with which the mat and all pieces fit on the ground, side by side or one above the other. Sizes of mat
 * and pieces are in cells, the ground in px.
 */
export function fitMat(mat: Size, pieces: readonly Size[], ground: Size): MatFit {
  const best = [true, false].map((isBeside) => {
    let [low, high] = [LEAST_CELL_PX, MOST_CELL_PX];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (laidOut(mat, pieces, ground, isBeside, middle)) low = middle;
      else high = middle - 1;
    }
    return { low, isBeside };
  });
  const [beside, below] = best as [(typeof best)[number], (typeof best)[number]];
  const { low: cellPx, isBeside } = below.low > beside.low ? below : beside;
  const trayPx = trayWidth(mat, ground, isBeside, cellPx);
  const trayHeight = ground.height - (isBeside ? 0 : mat.height * cellPx + 2 * GAP_PX);
  return { cellPx, isBeside, trayPx, spots: calmRows(pieces, cellPx, trayPx, trayHeight) };
}

/** The pieces in the narrowest block of rows that still fits, in the middle of the tray. */
function calmRows(pieces: readonly Size[], cellPx: number, width: number, height: number): Spot[] {
  let best = inRows(pieces, cellPx, width);
  for (let narrower = width - cellPx / 2; narrower > 0; narrower -= cellPx / 2) {
    const rows = inRows(pieces, cellPx, narrower);
    if (!rows.fits || rows.height > height) break;
    best = rows;
  }
  const [aside, down] = [(width - best.width) / 2, (height - best.height) / 2];
  return best.spots.map(({ x, y }) => ({ x: x + aside, y: y + Math.max(0, down) }));
}

function trayWidth(mat: Size, ground: Size, isBeside: boolean, cellPx: number): number {
  return isBeside ? ground.width - mat.width * cellPx - 2 * GAP_PX : ground.width;
}

function laidOut(
  mat: Size,
  pieces: readonly Size[],
  ground: Size,
  isBeside: boolean,
  cellPx: number,
): boolean {
  const [width, height] = [mat.width * cellPx, mat.height * cellPx];
  if (width > ground.width || height > ground.height) return false;
  const tray = inRows(pieces, cellPx, trayWidth(mat, ground, isBeside, cellPx));
  return tray.fits && tray.height <= ground.height - (isBeside ? 0 : height + 2 * GAP_PX);
}

interface Rows {
  readonly spots: readonly Spot[];
  readonly width: number;
  readonly height: number;
  readonly fits: boolean;
}

/** Pieces in rows as words are set, each row as high as its highest piece. */
function inRows(pieces: readonly Size[], cellPx: number, width: number): Rows {
  const spots: Spot[] = [];
  let [x, y, rowHeight, fits, widest] = [0, 0, 0, true, 0];
  for (const piece of pieces) {
    const [wide, high] = [piece.width * cellPx, piece.height * cellPx];
    if (x > 0 && x + wide > width) [x, y, rowHeight] = [0, y + rowHeight + GAP_PX, 0];
    if (wide > width) fits = false;
    spots.push({ x, y });
    widest = Math.max(widest, x + wide);
    x += wide + GAP_PX;
    rowHeight = Math.max(rowHeight, high);
  }
  return { spots, width: widest, height: y + rowHeight, fits };
}
