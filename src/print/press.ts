// One print or preview job from request to bytes, in the calling thread.
import { setImmediate } from 'node:timers/promises';
import { composePages } from './documents/compose.js';
import { composeKit } from './documents/kit/compose-kit.js';
import { composeTimedPages } from './documents/timed/compose-timed.js';
import type { Composed } from './documents/pieces.js';
import { andikaFaces } from './fonts/andika.js';
import { coverageOf } from './fonts/coverage.js';
import { PdfJoiner } from './pdf/joiner.js';
import { withViewerPreferences } from './pdf/viewer-preferences.js';
import { toPages } from './preview/svg-pages.js';
import type { KitRequest } from './kit-request.js';
import type { PreviewedBoard, PrintedBoard, PrintRequest, Result } from './request.js';
import type { TimedPrintRequest } from './timed-request.js';
import { type SetPages, Typesetter } from './typesetter.js';

/** A preview shows the beginning of a longer job. */
const MOST_PREVIEW_PAGES = 40;

/** Runs jobs one after another in the thread that owns it; a caller waits for one before it starts the next. */
export class Press {
  readonly #faces = andikaFaces();
  readonly #covers = coverageOf(this.#faces[0]);
  readonly #typesetter = new Typesetter(this.#faces);

  /** The finished PDF of boards, or a plain refusal. */
  async print(request: PrintRequest): Promise<Result<PrintedBoard>> {
    return this.#print(composePages(request, this.#covers));
  }

  /** The same pages as SVG, from the same page data and templates. */
  async preview(request: PrintRequest): Promise<Result<PreviewedBoard>> {
    return this.#preview(composePages(request, this.#covers));
  }

  /** The finished PDF of numbered sets, or a plain refusal. */
  async printKit(request: KitRequest): Promise<Result<PrintedBoard>> {
    return this.#print(composeKit(request, this.#covers));
  }

  /** The same pages as SVG. */
  async previewKit(request: KitRequest): Promise<Result<PreviewedBoard>> {
    return this.#preview(composeKit(request, this.#covers));
  }

  /** The finished PDF of timed practice, or a plain refusal. */
  async printTimed(request: TimedPrintRequest): Promise<Result<PrintedBoard>> {
    return this.#print(composeTimedPages(request, this.#covers));
  }

  async #print(composed: Result<Composed>): Promise<Result<PrintedBoard>> {
    if (!composed.ok) return composed;
    const { pieces, warnings, isDuplex } = composed.value;
    const { pdf, pages, remarks } = await this.#printPieces(pieces);
    return {
      ok: true,
      value: {
        pdf: withViewerPreferences(pdf, { isDuplex }),
        pages,
        warnings: [...new Set([...warnings(), ...remarks])],
      },
    };
  }

  async #preview(composed: Result<Composed>): Promise<Result<PreviewedBoard>> {
    if (!composed.ok) return composed;
    const { pieces, warnings } = composed.value;
    const pages: string[] = [];
    const remarks: string[] = [];
    let isCut = false;
    for (const piece of pieces) {
      isCut = pages.length >= MOST_PREVIEW_PAGES;
      if (isCut) break;
      const drawn = this.#typesetter.svg(piece);
      pages.push(...toPages(drawn.svg));
      remarks.push(...drawn.remarks);
      await this.#rest();
    }
    isCut ||= pages.length > MOST_PREVIEW_PAGES;
    return {
      ok: true,
      value: {
        pages: pages.slice(0, MOST_PREVIEW_PAGES),
        isCut,
        warnings: [...new Set([...warnings(), ...remarks])],
      },
    };
  }

  async #printPieces(pieces: Iterable<object>): Promise<SetPages> {
    let first: SetPages | null = null;
    const remarks: string[] = [];
    let joiner: PdfJoiner | null = null;
    let pages = 0;
    for (const piece of pieces) {
      const set = this.#typesetter.pdf(piece);
      pages += set.pages;
      remarks.push(...set.remarks);
      if (first && !joiner) {
        joiner = new PdfJoiner();
        joiner.add(first.pdf);
      }
      joiner?.add(set.pdf);
      first ??= set;
      await this.#rest();
    }
    if (!first) throw new Error('a job without pages');
    return { pdf: joiner ? joiner.finish() : first.pdf, pages, remarks };
  }

  /** Native memory is given back only when the cache is empty and the event loop has turned. */
  async #rest(): Promise<void> {
    this.#typesetter.forget();
    await setImmediate();
  }
}
