// One print or preview job from request to bytes, in the calling thread.
import { composePages } from './documents/compose.js';
import { toPages } from './preview/svg-pages.js';
import type { PreviewedBoard, PrintedBoard, PrintRequest, Result } from './request.js';
import { Typesetter } from './typesetter.js';

/** Runs jobs one after another in the thread that owns it. */
export class Press {
  readonly #typesetter = new Typesetter();

  /** The finished PDF, or a plain refusal. */
  print(request: PrintRequest): Result<PrintedBoard> {
    const composed = composePages(request);
    if (!composed.ok) return composed;
    try {
      return { ok: true, value: { ...this.#typesetter.pdf(composed.value.data), warnings: composed.value.warnings } };
    } finally {
      this.#typesetter.forget();
    }
  }

  /** The same pages as SVG, from the same page data and templates. */
  preview(request: PrintRequest): Result<PreviewedBoard> {
    const composed = composePages(request);
    if (!composed.ok) return composed;
    try {
      return { ok: true, value: { pages: toPages(this.#typesetter.svg(composed.value.data)), warnings: composed.value.warnings } };
    } finally {
      this.#typesetter.forget();
    }
  }
}
