// Wall poster: one board as large as the paper allows, whole or cut into tiles.
import type { Board } from '#engine/activities/board/board.js';
import { paperSize } from '../paper.js';
import type { PaperId, PrintRequest } from '../request.js';
import { textPieces } from '../text/rich-text.js';
import type { Composer } from './composer.js';
import {
  dateInWords,
  footLine,
  MINIMUM_RUNG,
  type PartData,
  paperData,
  rungsData,
  yearsInWords,
} from './page-data.js';

/** Shared by neighbouring tiles, so that they can be glued. */
const OVERLAP_MM = 10;
/** Unprinted edge of a tile; holds the trim marks. Most printers cannot print the outer 4 to 5 mm. */
const EDGE_MM = 10;

const GLUING = `Trim at the marks, lay it over the ${OVERLAP_MM} mm overlap, glue.`;

/** One poster a board. */
export function* posterParts({ request }: Composer): Generator<PartData> {
  for (const board of request.boards) yield posterPart(board, request);
}

function posterPart(board: Board, request: PrintRequest): PartData {
  const { options } = request;
  return {
    kind: 'poster',
    pages: options.tiled ? (options.tiled === 4 ? 4 : 2) : 1,
    paper: paperData(request.paper),
    foot: footLine(board, options),
    number: textPieces(board.number),
    caption: [yearsInWords(board.years), dateInWords(options)].filter(Boolean),
    minimum: MINIMUM_RUNG,
    rungs: rungsData(board),
    lowInk: options.lowInk ?? false,
    tiles: options.tiled ? tiling(request.paper, options.tiled === 4 ? 4 : 2) : null,
  };
}

/** Two landscape sheets one above the other, or four portrait sheets. */
function tiling(paper: PaperId, count: 2 | 4): object {
  const { widthMm, heightMm } = paperSize(paper);
  const names = count === 2 ? ['top', 'bottom'] : ['top left', 'top right', 'bottom left', 'bottom right'];
  return {
    columns: count / 2,
    rows: 2,
    width: count === 2 ? heightMm : widthMm,
    height: count === 2 ? widthMm : heightMm,
    edge: EDGE_MM,
    overlap: OVERLAP_MM,
    notes: names.map(
      (name, i) =>
        `Sheet ${i + 1} of ${count}, ${name}. Print at 100 %. ${i === 0 ? 'Keep whole; glue the others on.' : GLUING}`,
    ),
  };
}
