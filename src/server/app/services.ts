// The server's links to the outside, handed in by whoever starts it.
import type { KitRequest } from '#print/kit-request.js';
import type { PreviewedBoard, PrintedBoard, PrintRequest, Result as PrintResult } from '#print/request.js';
import type { TimedPrintRequest } from '#print/timed-request.js';
import type { Result as StoreResult } from '#store/result.js';
import type { Store } from '#store/store.js';

/** Makes paper; the real one works in a thread of its own. */
export interface Printing {
  print(request: PrintRequest): Promise<PrintResult<PrintedBoard>>;
  preview(request: PrintRequest): Promise<PrintResult<PreviewedBoard>>;
  printKit(request: KitRequest): Promise<PrintResult<PrintedBoard>>;
  previewKit(request: KitRequest): Promise<PrintResult<PreviewedBoard>>;
  printTimed(request: TimedPrintRequest): Promise<PrintResult<PrintedBoard>>;
}

/** One file that holds a school, and back; compression and encryption belong to the runtime. */
export interface Backups {
  /** The bytes of a backup of everything; locked when a passphrase is given. */
  take(passphrase: string | null): Promise<StoreResult<Uint8Array>>;
  /** Checks the whole file, then puts it in place, all or nothing. */
  putBack(bytes: Uint8Array, passphrase: string | null, replace: boolean): Promise<StoreResult<null>>;
}

export interface Services {
  readonly store: Store;
  readonly printing: Printing;
  readonly backups: Backups;
  /** The day where the teacher is, and the moment in UTC. */
  readonly clock: () => { readonly today: string; readonly now: string };
  /** Values of the Host header that this server answers to. */
  readonly allowedHosts: readonly string[];
  /** Notes an internal fault; never receives names of children. */
  readonly log: (fault: unknown) => void;
}
