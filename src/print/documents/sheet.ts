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
import type { PrintOptions, SheetGroup } from '../request.js';

/** One sheet a group and copy: the first board in front, the second behind; further boards make further sheets. */
export function* sheetParts({ request, names }: Composer): Generator<PartData> {
  const { options, boards } = request;
  const groups: readonly SheetGroup[] = options.groups?.length
    ? options.groups
    : [{ title: options.className ?? '', names: [] }];
  const sheets = groups.flatMap((group) => {
    const sheet = { group: group.title, members: names.list(group.names) };
    return Array.from({ length: options.copies ?? 1 }, () => sheet);
  });
  for (let i = 0; i < boards.length; i += 2) {
    const pair = boards.slice(i, i + 2);
    const faces = pair.map((board) => faceOf(board, pair.length, options));
    const most = Math.floor(MOST_PAGES_A_PART / pair.length);
    for (let k = 0; k < sheets.length; k += most) {
      const some = sheets.slice(k, k + most);
      yield {
        kind: 'sheet',
        pages: some.length * pair.length,
        paper: paperData(request.paper),
        lowInk: options.lowInk ?? false,
        faces,
        sheets: some,
      };
    }
  }
}

function faceOf(board: Board, sides: number, options: PrintOptions): object {
  const turn = board.side === 'front' ? 'turn over for more' : 'the other side is easier';
  return {
    foot: footLine(board, options),
    remark: sides > 1 ? turn : sideInWords(board),
    number: textPieces(board.number),
    minimum: MINIMUM_RUNG,
    rungs: rungsData(board),
  };
}
