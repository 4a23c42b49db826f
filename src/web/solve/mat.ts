// Pieces on a mat of cells: which lies where, and which still lie loose. Nothing here knows what is right; it knows only
// what cards on a table do: they lie flat, within the frame, one beside the other.

/** A row and a column, both counted from 0. */
export type Place = readonly [row: number, column: number];

export interface MatShape {
  readonly rows: number;
  readonly columns: number;
  /** Each piece's cells, counted from the top left of the box around it. */
  readonly pieces: readonly (readonly Place[])[];
  /** What a piece does where another lies already: it takes its place, or it cannot lie there. */
  readonly whenTaken: 'swap' | 'stop';
}

export interface Mat {
  /** For each piece where its box lies, null while it is loose. */
  readonly places: readonly (Place | null)[];
  /** All pieces in the order of their places beside the mat, to which they go back when taken off. */
  readonly homes: readonly number[];
}

/** A mat with nothing on it. */
export function emptyMat(homes: readonly number[]): Mat {
  return { places: homes.map(() => null), homes };
}

/** Pieces that are loose, in the order in which they lie beside the mat. */
export function looseOn(mat: Mat): number[] {
  return mat.homes.filter((piece) => mat.places[piece] === null);
}

/** The size of the box around a piece, in cells. */
export function boxOf(shape: MatShape, piece: number): { readonly rows: number; readonly columns: number } {
  const cells = shape.pieces[piece] ?? [];
  return {
    rows: 1 + Math.max(0, ...cells.map(([row]) => row)),
    columns: 1 + Math.max(0, ...cells.map(([, column]) => column)),
  };
}

/** The cells that a piece covers with its box at a place. */
export function cellsAt(shape: MatShape, piece: number, [row, column]: Place): Place[] {
  return (shape.pieces[piece] ?? []).map(([down, across]): Place => [row + down, column + across]);
}

/** The place nearest to the given one at which the whole piece lies within the frame. */
export function placeWithin(shape: MatShape, piece: number, [row, column]: Place): Place {
  const box = boxOf(shape, piece);
  const within = (value: number, most: number) => Math.max(0, Math.min(value, most));
  return [within(row, shape.rows - box.rows), within(column, shape.columns - box.columns)];
}

/** The piece that covers a cell; null where none does. */
export function pieceOn(shape: MatShape, mat: Mat, cell: Place): number | null {
  const found = mat.places.findIndex(
    (place, piece) => place !== null && cellsAt(shape, piece, place).some((one) => isSame(one, cell)),
  );
  return found < 0 ? null : found;
}

/** Other pieces that a piece would lie on at a place. */
export function piecesUnder(shape: MatShape, mat: Mat, piece: number, place: Place): number[] {
  const covered = cellsAt(shape, piece, place).flatMap((cell) => pieceOn(shape, mat, cell) ?? []);
  return [...new Set(covered)].filter((other) => other !== piece);
}

/** True when the piece can be laid at the place: within the frame, and flat or in the place of another. */
export function canLie(shape: MatShape, mat: Mat, piece: number, place: Place): boolean {
  if (!isSame(placeWithin(shape, piece, place), place)) return false;
  return shape.whenTaken === 'swap' || piecesUnder(shape, mat, piece, place).length === 0;
}

/**
 * The mat with the piece laid at the place; the same mat when it cannot lie there. A piece that lay there goes to where the
 * new one came from.
 */
export function layOn(shape: MatShape, mat: Mat, piece: number, place: Place): Mat {
  const from = mat.places[piece];
  if (from === undefined || (from !== null && isSame(from, place))) return mat;
  if (!canLie(shape, mat, piece, place)) return mat;
  const under = piecesUnder(shape, mat, piece, place);
  const places = mat.places.map((old, one) => (one === piece ? place : under.includes(one) ? from : old));
  return { ...mat, places };
}

/** The mat with the piece taken off. */
export function takeOff(mat: Mat, piece: number): Mat {
  if ((mat.places[piece] ?? null) === null) return mat;
  return { ...mat, places: mat.places.map((place, one) => (one === piece ? null : place)) };
}

/** True for a mat on which exactly these pieces can lie, such as one that was kept for them. */
export function isMat(value: unknown, shape: MatShape): value is Mat {
  if (typeof value !== 'object' || value === null) return false;
  const { places, homes } = value as Partial<Record<keyof Mat, unknown>>;
  if (!Array.isArray(places) || !Array.isArray(homes)) return false;
  const pieces = shape.pieces.map((_, piece) => piece);
  if (places.length !== pieces.length || homes.length !== pieces.length) return false;
  if (!pieces.every((piece) => homes.includes(piece))) return false;
  const covered = new Set<string>();
  return places.every((place: unknown, piece) => {
    if (place === null) return true;
    if (!isPlace(place) || !isSame(placeWithin(shape, piece, place), place)) return false;
    const cells = cellsAt(shape, piece, place).map(String);
    const isFlat = cells.every((cell) => !covered.has(cell));
    for (const cell of cells) covered.add(cell);
    return isFlat;
  });
}

export function isSame(a: Place, b: Place): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

function isPlace(value: unknown): value is Place {
  return Array.isArray(value) && value.length === 2 && value.every(Number.isInteger);
}
