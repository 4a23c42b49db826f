// The server's links to the outside, handed in by whoever starts it.
import type { PreviewedBoard, PrintedBoard, PrintRequest, Result as PrintResult } from '#print/request.js';
import type { Snapshot } from '#store/snapshot.js';
import type { Result as StoreResult } from '#store/result.js';
import type { Store } from '#store/store.js';

/** Makes paper; the real one works in a thread of its own. */
export interface Printing {
  print(request: PrintRequest): Promise<PrintResult<PrintedBoard>>;
  preview(request: PrintRequest): Promise<PrintResult<PreviewedBoard>>;
}

/** Packs a snapshot into one file and back; compression and encryption belong to the runtime. */
export interface BackupCodec {
  pack(snapshot: Snapshot, passphrase: string | null): Promise<Uint8Array>;
  unpack(bytes: Uint8Array, passphrase: string | null): Promise<StoreResult<Snapshot>>;
}

export interface Services {
  readonly store: Store;
  readonly printing: Printing;
  readonly backups: BackupCodec;
  /** The day where the teacher is, and the moment in UTC. */
  readonly clock: () => { readonly today: string; readonly now: string };
  /** Values of the Host header that this server answers to. */
  readonly allowedHosts: readonly string[];
  /** Notes an internal fault; never receives names of children. */
  readonly log: (fault: unknown) => void;
}
