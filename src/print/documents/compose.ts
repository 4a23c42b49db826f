// A print request -> the page data of all its parts, or a plain refusal.
import { DOCUMENTS, PAPERS, type PrintRequest, refuse, type Result } from '../request.js';
import type { PartData } from './page-data.js';
import { posterParts } from './poster.js';

/** Everything the templates read, in print order. */
export interface PageData {
  readonly title: string;
  readonly lang: string;
  readonly region: string;
  readonly parts: readonly PartData[];
}

export interface Composed {
  readonly data: PageData;
  readonly warnings: readonly string[];
}

const TITLES = {
  poster: 'Wall poster',
  sheet: 'Dry-wipe sheet',
  slips: 'Slips',
  key: 'Answer key',
  relief: 'For the relief teacher',
  practice: 'Practice sheet',
  kit: 'Warm-up kit',
} as const;

/** The page data of a request. Refuses an unknown document or paper, and a document without a board. */
export function composePages(request: PrintRequest): Result<Composed> {
  if (!DOCUMENTS.includes(request.document))
    return refuse('print.document', `There is no document called “${request.document}”.`, `Choose one of: ${DOCUMENTS.join(', ')}.`);
  if (!PAPERS.includes(request.paper))
    return refuse('print.paper', `There is no paper called “${request.paper}”.`, `Choose one of: ${PAPERS.join(', ')}.`);
  const first = request.boards[0];
  if (!first) return refuse('print.empty', 'There is no board to print.', 'Make a board first, then print it.');
  const [lang, region] = request.options.locale.split('-') as [string, string];
  return {
    ok: true,
    value: {
      data: { title: `${TITLES[request.document]}: ${first.number}`, lang, region, parts: posterParts(request) },
      warnings: [],
    },
  };
}
