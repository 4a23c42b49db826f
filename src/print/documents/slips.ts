// Recording slips, 6 or 8 to a page, cut apart by the teacher and collected after the warm-up.
import type { Board } from '#engine/activities/board/board.js';
import { qrSvg } from '../qr.js';
import type { SlipRequest } from '../request.js';
import { textPieces } from '../text/rich-text.js';
import { answerForm, narrowForm } from './answer-form.js';
import type { Composer } from './composer.js';
import {
  dateInWords,
  MOST_PAGES_A_PART,
  type PartData,
  paperData,
  sideInWords,
  yearsInWords,
} from './page-data.js';
import { slipLayout } from './slip-layout.js';

/** Slips in the order asked for, row by row, in parts that share their frame. */
export function* slipParts({ request, names }: Composer): Generator<PartData> {
  const { options, boards } = request;
  const perPage = options.perPage ?? (options.largePrint ? 6 : 8);
  const slips = options.slips ?? Array.from({ length: perPage * (options.copies ?? 1) }, () => null);
  const date = dateInWords(options);
  const layout = slipLayout(request.paper, perPage, Math.max(...boards.map((board) => board.rungs.length)));
  const boxWidth = layout.boxes[0]?.w ?? 0;
  const first = boards[0] as Board;
  const shared = {
    kind: 'slips',
    paper: paperData(request.paper),
    heading: `Slips for ${first.number}`,
    layout,
    boards: boards.map((board) => boardData(board)),
    strip: `afterbell \u00b7 ${first.number} \u00b7 ${yearsInWords(first.years)} \u00b7 seed ${first.seed}. Print at 100 %: this ruler is 100 mm long.`,
  };
  const most = perPage * MOST_PAGES_A_PART;
  for (let i = 0; i < slips.length; i += most) {
    const some = slips.slice(i, i + most).map((slip) => slipData(slip));
    const sheets = Array.from({ length: Math.ceil(some.length / perPage) }, (_, k) =>
      some.slice(k * perPage, (k + 1) * perPage),
    );
    yield { ...shared, pages: sheets.length, sheets };
  }

  function boardData(board: Board): object {
    return {
      number: textPieces(board.number),
      line: [date, sideInWords(board)].filter(Boolean).join('  \u00b7  '),
      forms: board.rungs.map((rung) => narrowForm(answerForm(rung.question), boxWidth)),
    };
  }

  function slipData(slip: SlipRequest | null): object {
    return {
      name: slip?.name ? names.one(slip.name) : null,
      id: slip?.id ?? '',
      board: Math.min(slip?.board ?? 0, boards.length - 1),
      qr: slip ? qrSvg(slip.id) : null,
      alt: slip ? `Code ${slip.id}` : '',
    };
  }
}
