// A jigsaw as pieces on a mat: of several cells each, laid flat, never one on another.
import { drawJigsawMat, drawJigsawPiece, type JigsawDrawing } from '#engine/activities/jigsaw/draw.js';
import type { Jigsaw } from '#engine/activities/jigsaw/jigsaw.js';
import { pieceName } from '#engine/activities/jigsaw/piece-names.js';
import { spokenPlace } from '#engine/activities/jigsaw/spoken.js';
import { Rng } from '#engine/random/rng.js';
import { jigsawHints } from './jigsaw-hints.js';
import { jigsawCellWords, jigsawShape, rowsWords } from './jigsaw-words.js';
import { cellsAt } from './mat.js';
import type { Drawn, MatPieces } from './mat-pieces.js';

/** Side of a cell as it is drawn before it is fitted to the screen; lines and letters keep their share of it. */
const CELL_MM = 18;

/** The frame and pieces of a jigsaw as the table shows them. */
export function jigsawPieces(jigsaw: Jigsaw): MatPieces {
  const shape = jigsawShape(jigsaw);
  const hints = jigsawHints(jigsaw, shape);
  const drawn = ({ svg, widthMm, heightMm, marginMm }: JigsawDrawing): Drawn => ({
    svg,
    width: widthMm / CELL_MM,
    height: heightMm / CELL_MM,
    left: marginMm / CELL_MM,
    top: marginMm / CELL_MM,
  });
  return {
    shape,
    locale: jigsaw.locale,
    homes: new Rng(jigsaw.seed).fork('loose').shuffle(jigsaw.pieces.map((_, piece) => piece)),
    ground: drawn(drawJigsawMat(jigsaw, CELL_MM)),
    pieces: jigsaw.pieces.map((_, piece) => {
      const drawing = drawJigsawPiece(jigsaw, piece, CELL_MM);
      return { ...drawn(drawing), words: drawing.alt };
    }),
    cellWords: (mat, cell) => jigsawCellWords(jigsaw, shape, mat, cell),
    placeWords: (piece, place) => `From ${spokenPlace(cellsAt(shape, piece, place)[0] ?? place)}.`,
    laidWords: (mat, piece) => {
      const place = mat.places[piece];
      if (!place) return '';
      const first = spokenPlace(cellsAt(shape, piece, place)[0] ?? place);
      return `Piece ${pieceName(piece)} from ${first}. ${rowsWords(jigsaw, shape, mat, piece)}`;
    },
    hints: (mat) => hints(mat),
    hasQuestions: false,
  };
}
