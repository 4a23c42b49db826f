// One print or preview job from request to bytes, in the calling thread.
import { setImmediate } from 'node:timers/promises';
import { composePages } from './documents/compose.js';
import { andikaFaces } from './fonts/andika.js';
import { coverageOf } from './fonts/coverage.js';
import { PdfJoiner } from './pdf/joiner.js';
import { withViewerPreferences } from './pdf/viewer-preferences.js';
import { toPages } from './preview/svg-pages.js';
import type { PreviewedBoard, PrintedBoard, PrintRequest, Result } from './request.js';
import { Typesetter } from './typesetter.js';

/** A preview shows the beginning of a longer job. */
const MOST_PREVIEW_PAGES = 40;

/** Runs jobs one after another in the thread that owns it; a caller waits for one before it starts the next. */
export class Press {
  readonly #faces = andikaFaces();
  readonly #covers = coverageOf(this.#faces[0]);
  readonly #typesetter = new Typesetter(this.#faces);

  /** The finished PDF, or a plain refusal. */
  async print(request: PrintRequest): Promise<Result<PrintedBoard>> {
    const composed = composePages(request, this.#covers);
    if (!composed.ok) return composed;
    const { pieces, warnings } = composed.value;
    const whole = await this.#printPieces(pieces);
    const pdf = withViewerPreferences(whole.pdf, {
      isDuplex: request.document === 'sheet' && request.boards.length > 1,
    });
    return { ok: true, value: { pdf, pages: whole.pages, warnings: warnings() } };
  }

  /** The same pages as SVG, from the same page data and templates. */
  async preview(request: PrintRequest): Promise<Result<PreviewedBoard>> {
    const composed = composePages(request, this.#covers);
    if (!composed.ok) return composed;
    const pages: string[] = [];
    let isCut = false;
    for (const piece of composed.value.pieces) {
      isCut = pages.length >= MOST_PREVIEW_PAGES;
      if (isCut) break;
      pages.push(...toPages(this.#typesetter.svg(piece)));
      await this.#rest();
    }
    isCut ||= pages.length > MOST_PREVIEW_PAGES;
    return {
      ok: true,
      value: { pages: pages.slice(0, MOST_PREVIEW_PAGES), isCut, warnings: composed.value.warnings() },
    };
  }

  async #printPieces(pieces: Iterable<object>): Promise<{ pdf: Uint8Array; pages: number }> {
    let first: { pdf: Uint8Array; pages: number } | null = null;
    let joiner: PdfJoiner | null = null;
    let pages = 0;
    for (const piece of pieces) {
      const set = this.#typesetter.pdf(piece);
      pages += set.pages;
      if (first && !joiner) {
        joiner = new PdfJoiner();
        joiner.add(first.pdf);
      }
      joiner?.add(set.pdf);
      first ??= set;
      await this.#rest();
    }
    if (!first) throw new Error('a job without pages');
    return joiner ? { pdf: joiner.finish(), pages } : first;
  }

  /** Native memory is given back only when the cache is empty and the event loop has turned. */
  async #rest(): Promise<void> {
    this.#typesetter.forget();
    await setImmediate();
  }
}
