// A request to print timed practice -> the page data of all its parts, or a plain refusal.
import type { Coverage } from '../../fonts/coverage.js';
import { isSlipId } from '../../qr.js';
import { refuse, type Result } from '../../request.js';
import { TIMED_DOCUMENTS, type TimedDocument, type TimedPrintRequest } from '../../timed-request.js';
import { problemWithCopies, problemWithDocument, problemWithPaper } from '../checks.js';
import { NamePrinter } from '../names.js';
import type { PartData } from '../page-data.js';
import { type Composed, inPieces } from '../pieces.js';
import { coverParts } from './cover.js';
import { timedKeyParts } from './key.js';
import { timedSheetParts } from './sheet.js';
import { spareParts } from './spares.js';

/** What every builder of timed pages is handed. */
export interface TimedComposer {
  readonly request: TimedPrintRequest;
  readonly names: NamePrinter;
}

const TITLES: Readonly<Record<TimedDocument, string>> = {
  pupil: 'Timed practice',
  key: 'Timed practice: answers',
  cover: 'Practice record',
  spares: 'Copies for tomorrow',
  kit: 'Timed practice: kit',
};

const BUILDERS: Readonly<
  Record<Exclude<TimedDocument, 'kit'>, (composer: TimedComposer) => Generator<PartData>>
> = { pupil: timedSheetParts, key: timedKeyParts, cover: coverParts, spares: spareParts };

/** The page data of timed practice. Refuses an unknown document or paper, no level, and sheets of forms that are not there. */
export function composeTimedPages(request: TimedPrintRequest, covers: Coverage): Result<Composed> {
  const refusal = checkRequest(request);
  if (refusal) return refusal;
  const names = new NamePrinter(covers);
  const { document } = request;
  return {
    ok: true,
    value: {
      pieces: inPieces(TITLES[document], request.options.locale, parts(), covers),
      warnings: () => names.warnings(),
      // A cover turns on its short edge, which the teacher chooses; its own outside says so.
      isDuplex: document === 'pupil' || document === 'kit',
    },
  };

  function* parts(): Generator<PartData> {
    const documents = document === 'kit' ? (['pupil', 'cover', 'key'] as const) : [document];
    for (const one of documents) yield* BUILDERS[one]({ request, names });
  }
}

function checkRequest({
  document,
  levels,
  sheets,
  paper,
  options,
}: TimedPrintRequest): ReturnType<typeof refuse> | null {
  const order = problemWithDocument(document, TIMED_DOCUMENTS) ?? problemWithPaper(paper);
  if (order) return order;
  if (paper === 'A3')
    return refuse('print.paper', 'Timed practice is not printed on A3.', 'Choose A4 or Letter.');
  if (levels.length === 0)
    return refuse('print.empty', 'There is no level to print.', 'Make a level first, then print it.');
  const astray = sheets?.find((sheet) => !levels[sheet.level]?.forms[sheet.form]);
  if (astray)
    return refuse(
      'print.form',
      `There is no form ${astray.form + 1} of level ${astray.level + 1} to print.`,
      'Make the forms first, then print them.',
    );
  const wrongId = sheets?.find(({ id }) => id !== undefined && !isSlipId(id));
  if (wrongId)
    return refuse(
      'print.slip-id',
      `The sheet code “${wrongId.id}” does not fit its square code.`,
      'Use 1 to 20 capital letters and digits.',
    );
  return problemWithCopies(options.copies);
}
