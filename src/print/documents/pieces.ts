// Page data of a whole job, handed out in pieces small enough to be set at one go, in characters that the typeface has.
import type { Coverage } from '../fonts/coverage.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import { printableText } from '../text/printable.js';
import { MOST_PAGES_A_PART, type PartData } from './page-data.js';

/** What the templates read at one go. */
export interface PageData {
  readonly title: string;
  readonly lang: string;
  readonly region: string;
  readonly parts: readonly PartData[];
}

export interface Composed {
  /** The job in pieces of at most about {@link MOST_PAGES_A_PART} pages, in print order; made one by one as they are taken. */
  readonly pieces: Iterable<PageData>;
  /** Plain sentences for the teacher; complete once all pieces were taken. */
  readonly warnings: () => readonly string[];
  /** Whether the job is meant for both sides of the paper. */
  readonly isDuplex: boolean;
}

/** The parts gathered into pieces under one title. */
export function* inPieces(
  title: string,
  locale: LocaleId,
  allParts: Iterable<PartData>,
  covers: Coverage,
): Generator<PageData> {
  const [lang, region] = locale.split('-') as [string, string];
  let parts: PartData[] = [];
  let pages = 0;
  for (const part of allParts) {
    if (parts.length > 0 && pages + part.pages > MOST_PAGES_A_PART) {
      yield printable({ title, lang, region, parts }, covers);
      parts = [];
      pages = 0;
    }
    parts.push(part);
    pages += part.pages;
  }
  yield printable({ title, lang, region, parts }, covers);
}

/** The same data with every text in characters that the typeface has. */
function printable<T>(data: T, covers: Coverage): T {
  if (typeof data === 'string') return printableText(data, covers) as T;
  if (Array.isArray(data)) return data.map((item) => printable(item, covers)) as T;
  if (data === null || typeof data !== 'object') return data;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, printable(value, covers)])) as T;
}
