// A print request -> the page data of all its parts, or a plain refusal.
import type { Coverage } from '../fonts/coverage.js';
import { isSlipId } from '../qr.js';
import { DOCUMENTS, type DocumentKind, type PrintRequest, refuse, type Result } from '../request.js';
import { problemWithCopies, problemWithDocument, problemWithPaper } from './checks.js';
import type { Composer } from './composer.js';
import { keyParts } from './key.js';
import { NamePrinter } from './names.js';
import { dateInWords, type PartData } from './page-data.js';
import { type Composed, inPieces } from './pieces.js';
import { posterParts } from './poster.js';
import { practiceParts } from './practice.js';
import { reliefParts } from './relief.js';
import { rotaParts } from './rota.js';
import { sheetParts } from './sheet.js';
import { slipParts } from './slips.js';

const TITLES: Record<DocumentKind, string> = {
  poster: 'Wall poster',
  sheet: 'Dry-wipe sheet',
  slips: 'Slips',
  key: 'Answer key',
  relief: 'For the relief teacher',
  practice: 'Practice sheet',
  rota: 'Rota',
  kit: 'Warm-up kit',
};

const BUILDERS: Record<Exclude<DocumentKind, 'kit'>, (composer: Composer) => Generator<PartData>> = {
  poster: posterParts,
  sheet: sheetParts,
  slips: slipParts,
  key: keyParts,
  relief: reliefParts,
  practice: practiceParts,
  rota: rotaParts,
};

const KIT = ['poster', 'sheet', 'slips', 'key', 'relief'] as const;

/**
 * The page data of a request. Refuses an unknown document, paper or date, too many copies, a slip id that does not fit
 * its code, and a document with nothing on it.
 */
export function composePages(request: PrintRequest, covers: Coverage): Result<Composed> {
  const refusal = checkRequest(request);
  if (refusal) return refusal;
  const names = new NamePrinter(covers);
  const number = request.boards[0]?.number;
  const title = number ? `${TITLES[request.document]}: ${number}` : TITLES[request.document];
  const parts = allParts(request, names);
  return {
    ok: true,
    value: {
      pieces: inPieces(title, request.options.locale, parts, covers),
      warnings: () => names.warnings(),
      isDuplex: request.document === 'sheet' && request.boards.length > 1,
    },
  };
}

function* allParts(request: PrintRequest, names: NamePrinter): Generator<PartData> {
  if (request.document !== 'kit') yield* BUILDERS[request.document]({ request, names });
  else
    for (const document of KIT) yield* BUILDERS[document]({ request: kitRequest(request, document), names });
}

/** Only the poster of a kit is printed on A3. */
function kitRequest(request: PrintRequest, document: (typeof KIT)[number]): PrintRequest {
  return request.paper === 'A3' && document !== 'poster' ? { ...request, paper: 'A4' } : request;
}

function checkRequest(
  request: PrintRequest,
): { ok: false; error: { code: string; message: string; hint: string } } | null {
  const { document, paper, boards, questions, rota, options } = request;
  const order = problemWithDocument(document, DOCUMENTS) ?? problemWithPaper(paper);
  if (order) return order;
  if (
    document === 'rota'
      ? !rota?.rows.length
      : boards.length === 0 && !(document === 'practice' && questions?.length)
  )
    return document === 'rota'
      ? refuse('print.empty', 'There is nobody on this rota.', 'Add children to the class first.')
      : refuse('print.empty', 'There is no board to print.', 'Make a board first, then print it.');
  if (options.date !== undefined && dateInWords(options) === '')
    return refuse(
      'print.date',
      `The date \u201c${options.date}\u201d cannot be read.`,
      'Write it as year-month-day, like 2026-11-25.',
    );
  const copies = problemWithCopies(options.copies);
  if (copies) return copies;
  const wrongId = options.slips?.find((slip) => !isSlipId(slip.id));
  if (wrongId)
    return refuse(
      'print.slip-id',
      `The slip code \u201c${wrongId.id}\u201d does not fit its square code.`,
      'Use 1 to 20 capital letters and digits.',
    );
  if (options.slips?.length === 0)
    return refuse('print.slips', 'There are no children to print slips for.', 'Choose at least one child.');
  return null;
}
