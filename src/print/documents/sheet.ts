// Two-sided dry-wipe sheets: for every group of children the first board on the front, the second on the back.
import type { Board } from '#engine/activities/board/board.js';
import type { Composer } from './composer.js';
import {
  footLine,
  MINIMUM_RUNG,
  MOST_PAGES_A_PART,
  type PartData,
  paperData,
  rungsData,
  sideInWords,
} from './page-data.js';
import { textPieces } from '../text/rich-text.js';
import type { PrintRequest, SheetGroup } from '../request.js';

/** One sheet a group and copy, all boards of a group one after the other; cut into parts of whole sheets. */
export function* sheetParts({ request, names }: Composer): Generator<PartData> {
  const { options, boards } = request;
  const groups: readonly SheetGroup[] = options.groups?.length
    ? options.groups
    : [{ title: options.className ?? '', names: [] }];
  const faces = boards.map((board) => faceOf(board, request));
  const sheets = groups.flatMap((group) => {
    const sheet = { group: group.title, members: names.list(group.names) };
    return Array.from({ length: options.copies ?? 1 }, () => sheet);
  });
  const sheetsAPart = Math.max(1, Math.floor(MOST_PAGES_A_PART / boards.length));
  for (let i = 0; i < sheets.length; i += sheetsAPart) {
    const some = sheets.slice(i, i + sheetsAPart);
    yield {
      kind: 'sheet',
      pages: some.length * boards.length,
      paper: paperData(request.paper),
      lowInk: options.lowInk ?? false,
      faces,
      sheets: some,
    };
  }
}

function faceOf(board: Board, { boards, options }: PrintRequest): object {
  const turn = board.side === 'front' ? 'turn over for more' : 'the other side is easier';
  return {
    foot: footLine(board, options),
    remark: boards.length > 1 ? turn : sideInWords(board),
    number: textPieces(board.number),
    minimum: MINIMUM_RUNG,
    rungs: rungsData(board),
  };
}
