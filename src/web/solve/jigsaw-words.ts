// What a jigsaw says aloud: what stands in a cell, and how the rows read that a piece touches. Whether a row is true, the
// listener judges as the looker does.
import type { Jigsaw, Place } from '#engine/activities/jigsaw/jigsaw.js';
import { pieceName } from '#engine/activities/jigsaw/piece-names.js';
import { boxOfPiece } from '#engine/activities/jigsaw/piece-outline.js';
import { cellAt, spokenCell, spokenPlace } from '#engine/activities/jigsaw/spoken.js';
import { kindOf } from '#engine/activities/jigsaw/token.js';
import { cellsAt, isSame, type Mat, type MatShape, pieceOn } from './mat.js';

/** The shape of a jigsaw's pieces: each cell counted from the top left of the box around its piece. */
export function jigsawShape({ rows, columns, pieces }: Jigsaw): MatShape {
  return {
    rows,
    columns,
    pieces: pieces.map(({ cells }) => {
      const { top, left } = boxOfPiece(cells);
      return cells.map(([row, column]): Place => [row - top, column - left]);
    }),
    whenTaken: 'stop',
  };
}

/** "Row 2, column 3. Piece C: 7." or what the frame shows there. */
export function jigsawCellWords(jigsaw: Jigsaw, shape: MatShape, mat: Mat, cell: Place): string {
  const where = spokenPlace(cell).replace('row', 'Row');
  const piece = pieceOn(shape, mat, cell);
  if (piece === null) return `${where}. ${frameWords(jigsaw, cell)}.`;
  return `${where}. Piece ${pieceName(piece)}: ${shownWords(jigsaw, shape, mat, cell)}.`;
}

/** What the frame itself shows at a cell. */
function frameWords(jigsaw: Jigsaw, cell: Place): string {
  const own = cellAt(jigsaw, cell);
  const kind = kindOf(own);
  if (kind !== 'blank' && jigsaw.given.some((place) => isSame(place, cell)))
    return `Printed in the frame: ${spokenCell(own, jigsaw.locale)}`;
  return { number: 'Free', sign: 'Free, a ring for a sign', blank: 'Free, hatched' }[kind];
}

/** How the rows read on which a piece lies: "Row 2: 3 + gap = 7." */
export function rowsWords(jigsaw: Jigsaw, shape: MatShape, mat: Mat, piece: number): string {
  const place = mat.places[piece];
  if (!place) return '';
  const rows = [...new Set(cellsAt(shape, piece, place).map(([row]) => row))].toSorted((a, b) => a - b);
  return rows.map((row) => `Row ${row + 1}: ${rowWords(jigsaw, shape, mat, row)}.`).join(' ');
}

function rowWords(jigsaw: Jigsaw, shape: MatShape, mat: Mat, row: number): string {
  const cells = Array.from({ length: jigsaw.columns }, (_, column) =>
    pieceOn(shape, mat, [row, column]) === null ? 'gap' : shownWords(jigsaw, shape, mat, [row, column]),
  );
  return cells.join(jigsaw.rowRule === 'sentences' ? ' ' : ', ');
}

/** What the piece over a cell shows there. */
function shownWords(jigsaw: Jigsaw, shape: MatShape, mat: Mat, cell: Place): string {
  const piece = pieceOn(shape, mat, cell);
  const place = piece === null ? null : mat.places[piece];
  if (piece === null || !place) return 'gap';
  const at = cellsAt(shape, piece, place).findIndex((one) => isSame(one, cell));
  const own = jigsaw.pieces[piece]?.cells[at];
  return own ? spokenCell(cellAt(jigsaw, own), jigsaw.locale) : 'gap';
}

/** Rows, counted from 0, on which no cell is free. */
export function fullRows(jigsaw: Jigsaw, shape: MatShape, mat: Mat): number[] {
  return Array.from({ length: jigsaw.rows }, (_, row) => row).filter((row) =>
    Array.from({ length: jigsaw.columns }, (_, column) => column).every(
      (column) => pieceOn(shape, mat, [row, column]) !== null,
    ),
  );
}
