// Wall poster: one board as large as the paper allows.
import type { Board } from '#engine/activities/board/board.js';
import type { PrintRequest } from '../request.js';
import { textPieces } from '../text/rich-text.js';
import { footLine, MINIMUM_RUNG, type PartData, paperData, rungsData, yearsInWords } from './page-data.js';

/** One poster a board. */
export function posterParts(request: PrintRequest): PartData[] {
  return request.boards.map((board) => posterPart(board, request));
}

function posterPart(board: Board, request: PrintRequest): PartData {
  return {
    kind: 'poster',
    paper: paperData(request.paper),
    foot: footLine(board, request),
    number: textPieces(board.number),
    caption: yearsInWords(board.years),
    minimum: MINIMUM_RUNG,
    rungs: rungsData(board),
  };
}
