// The one way to open a store: a data folder on this computer, or a PostgreSQL server.
import { openEmbedded } from './embedded/open-embedded.js';
import { makeStore } from './make-store.js';
import { openPostgres } from './postgres/open-postgres.js';
import type { Result } from './result.js';
import type { Store } from './store.js';

/** The school of a data folder, and of a server that keeps only one. */
export const LOCAL_SCHOOL = 'local';

export type StorePlace = { readonly dataDir: string } | { readonly databaseUrl: string };

export interface OpenStoreOptions {
  /** Which school's rows the store sees; default LOCAL_SCHOOL. */
  readonly school?: string;
  /** The clock that dates saved sheets; default the system's. */
  readonly now?: () => Date;
  /** Told in words when a first opening takes some seconds. */
  readonly onProgress?: (sentence: string) => void;
  /** False leaves out the syncing file layer of a data folder; the store must then refuse to open. For tests of that. */
  readonly withSync?: boolean;
}

/**
 * Opens the store, and creates it on first use. A data folder that is open elsewhere, foreign, damaged, newer, or on a disk
 * that does not sync is refused with one sentence.
 */
export async function openStore(place: StorePlace, options: OpenStoreOptions = {}): Promise<Result<Store>> {
  const school = options.school ?? LOCAL_SCHOOL;
  const isFolder = 'dataDir' in place;
  const opened = isFolder
    ? await openEmbedded({
        dataDir: place.dataDir,
        school,
        withSync: options.withSync ?? true,
        ...(options.onProgress ? { onProgress: options.onProgress } : {}),
      })
    : await openPostgres({ databaseUrl: place.databaseUrl, school });
  if (!opened.ok) return opened;
  return {
    ok: true,
    value: makeStore(isFolder ? 'embedded' : 'server', opened.value, options.now ?? (() => new Date())),
  };
}
