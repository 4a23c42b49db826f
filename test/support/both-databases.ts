// A suite that runs on the embedded database and on a PostgreSQL server alike, each on a place of its own.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe } from 'vitest';
import { openStore } from '#store/open-store.js';
import type { Store } from '#store/store.js';
import { must } from './must.js';
import { hasPostgres, startPostgres, type TemporaryPostgres } from './temporary-postgres.js';

/** What the suite works on; filled before its first test. */
export interface OnDatabase {
  readonly kind: Store['kind'];
  store: Store;
  /** A folder that goes with the suite; the embedded database lies in it. */
  folder: string;
  postgres: TemporaryPostgres | null;
}

/**
 * Describes the same tests on both databases. Where PostgreSQL is not installed its half is listed as skipped; with CI
 * set it must be there (see {@link hasPostgres}).
 */
export function describeOnBothDatabases(title: string, now: Date, tests: (on: OnDatabase) => void): void {
  for (const kind of ['embedded', 'server'] as const) {
    const isHere = kind === 'embedded' || hasPostgres();
    describe.runIf(isHere)(`${title} on the ${kind} database`, () => {
      const on = { kind, postgres: null } as OnDatabase;
      beforeAll(async () => {
        on.folder = mkdtempSync(join(tmpdir(), 'afterbell-store-'));
        if (kind === 'server') on.postgres = await startPostgres();
        const place = on.postgres ? { databaseUrl: on.postgres.url('postgres') } : { dataDir: on.folder };
        on.store = await must(openStore(place, { now: () => now }));
      });
      afterAll(async () => {
        await on.store?.close();
        on.postgres?.stop();
        if (on.folder) rmSync(on.folder, { recursive: true, force: true });
      });
      tests(on);
    });
  }
}
