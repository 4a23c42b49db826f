// The print room's front door: a queue in front of one print thread, so that typesetting never blocks the caller.
import { Worker } from 'node:worker_threads';
import type { KitRequest } from './kit-request.js';
import { runJob } from './run-job.js';
import type { Press } from './press.js';
import type { PreviewedBoard, PrintedBoard, PrintRequest, Result } from './request.js';
import type { TimedPrintRequest } from './timed-request.js';

export type PrinterJob =
  | { readonly task: 'print'; readonly request: PrintRequest }
  | { readonly task: 'preview'; readonly request: PrintRequest }
  | { readonly task: 'printKit'; readonly request: KitRequest }
  | { readonly task: 'previewKit'; readonly request: KitRequest }
  | { readonly task: 'printTimed'; readonly request: TimedPrintRequest };

interface Waiting {
  readonly job: PrinterJob;
  readonly resolve: (result: Result<unknown>) => void;
  readonly reject: (fault: Error) => void;
}

interface Answer {
  readonly result?: Result<unknown>;
  readonly fault?: string;
}

/** Node cannot start a thread from TypeScript sources, so sources (tests, the dev server) work in the calling thread. */
const hasWorker = !import.meta.url.endsWith('.ts');

/** Prints and previews boards and kits, one job after another. Close it when done: the thread keeps the process alive until then. */
export class Printer {
  readonly #queue: Waiting[] = [];
  #current: Waiting | null = null;
  #worker: Worker | null = null;
  #press: Press | null = null;
  #isClosed = false;

  /** The finished PDF. Rejects only for a bug; what a person can mend comes back as `ok: false`. */
  printBoard(request: PrintRequest): Promise<Result<PrintedBoard>> {
    return this.#enqueue({ task: 'print', request }) as Promise<Result<PrintedBoard>>;
  }

  /** The same pages as SVG strings, from the same templates and page data. */
  previewBoard(request: PrintRequest): Promise<Result<PreviewedBoard>> {
    return this.#enqueue({ task: 'preview', request }) as Promise<Result<PreviewedBoard>>;
  }

  /** The finished PDF of numbered sets of a self-checking activity. */
  printKit(request: KitRequest): Promise<Result<PrintedBoard>> {
    return this.#enqueue({ task: 'printKit', request }) as Promise<Result<PrintedBoard>>;
  }

  /** The same pages as SVG strings. */
  previewKit(request: KitRequest): Promise<Result<PreviewedBoard>> {
    return this.#enqueue({ task: 'previewKit', request }) as Promise<Result<PreviewedBoard>>;
  }

  /** The finished PDF of timed practice. */
  printTimed(request: TimedPrintRequest): Promise<Result<PrintedBoard>> {
    return this.#enqueue({ task: 'printTimed', request }) as Promise<Result<PrintedBoard>>;
  }

  /** Ends the thread; jobs still waiting are rejected. */
  async close(): Promise<void> {
    this.#isClosed = true;
    for (const waiting of this.#queue.splice(0)) waiting.reject(new Error('the printer was closed'));
    const worker = this.#worker;
    this.#worker = null;
    await worker?.terminate();
  }

  #enqueue(job: PrinterJob): Promise<Result<unknown>> {
    if (this.#isClosed) return Promise.reject(new Error('the printer was closed'));
    return new Promise((resolve, reject) => {
      this.#queue.push({ job, resolve, reject });
      this.#next();
    });
  }

  #next(): void {
    if (this.#current || this.#queue.length === 0) return;
    this.#current = this.#queue.shift() as Waiting;
    // A thread has no origin to name, unlike a window.
    // oxlint-disable-next-line unicorn/require-post-message-target-origin
    if (hasWorker) this.#startWorker().postMessage(this.#current.job);
    else setImmediate(() => void this.#workHere((this.#current as Waiting).job));
  }

  #startWorker(): Worker {
    if (this.#worker) return this.#worker;
    // The thread runs built files whatever flags its parent was started with.
    const worker = new Worker(new URL('./worker.js', import.meta.url), { execArgv: [] });
    worker.on('message', (answer: Answer) => this.#settle(answer));
    worker.on('error', (fault) => this.#fail(worker, fault));
    worker.on('exit', () => this.#fail(worker, new Error('the print thread ended')));
    this.#worker = worker;
    return worker;
  }

  async #workHere(job: PrinterJob): Promise<void> {
    try {
      if (!this.#press) this.#press = new (await import('./press.js')).Press();
      this.#settle({ result: await runJob(this.#press, job) });
    } catch (fault) {
      this.#settle({ fault: fault instanceof Error ? (fault.stack ?? fault.message) : String(fault) });
    }
  }

  #settle({ result, fault }: Answer): void {
    const done = this.#current;
    this.#current = null;
    if (result) done?.resolve(result);
    else done?.reject(new Error(fault ?? 'the print thread gave no answer'));
    this.#next();
  }

  /** A crashed thread fails its own job only; the next job starts a fresh one. */
  #fail(worker: Worker, fault: Error): void {
    if (this.#worker !== worker) {
      if (this.#isClosed && this.#current) this.#settle({ fault: 'the printer was closed' });
      return;
    }
    this.#worker = null;
    if (this.#current) this.#settle({ fault: fault.message });
  }
}

/** A printer with its own thread, started at the first job. */
export function createPrinter(): Printer {
  return new Printer();
}
