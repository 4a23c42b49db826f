// Opens the embedded database of a data folder: owned, durable, proved to sync, at the current schema.
import { renameSync, rmSync } from 'node:fs';
import { sql } from 'drizzle-orm';
import type { PGlite } from '@electric-sql/pglite';
import { drizzle } from 'drizzle-orm/pglite';
import { DatabaseStopped, DISK_FULL, expectedFailure } from '../errors.js';
import { migrate } from '../migrate.js';
import { type Result, refuse, succeed } from '../result.js';
import {
  makeSession,
  type OpenedDatabase,
  READ_TRANSACTION,
  type RunTransaction,
  type Session,
  type Transaction,
} from '../session.js';
import { EmbeddedClient } from './client.js';
import { syncFolder, syncTree } from '../durable-write.js';
import { checkFolder, type DataFolder, damaged, inspectFolder, markFolder, unusable } from './folder.js';
import { takeFolder } from './owner.js';
import { readTemplate } from './template.js';

export interface OpenEmbeddedOptions {
  readonly dataDir: string;
  readonly school: string;
  /** Told once in words when a first creation begins, which takes some seconds. */
  readonly onProgress?: (sentence: string) => void;
  /** False leaves out the syncing file layer, so that a test can see the store refuse. */
  readonly withSync?: boolean;
}

/** Makes the database beside its final place and moves it there when it is on the disk. */
async function createDatabase(folder: DataFolder): Promise<void> {
  rmSync(folder.unfinished, { recursive: true, force: true });
  // Left from a creation that was cut short between the move and the mark; it holds nothing yet.
  rmSync(folder.database, { recursive: true, force: true });
  // Syncing each file as it is written would take several times as long as syncing all of them at the end.
  const client = new EmbeddedClient({ folder: folder.unfinished, template: readTemplate(), withSync: false });
  await client.start();
  await client.close();
  syncTree(folder.unfinished);
  renameSync(folder.unfinished, folder.database);
  syncFolder(folder.path);
  markFolder(folder.path, true);
}

/** One commit that must raise the file layer's sync counter. */
async function provesToSync(
  client: EmbeddedClient,
  session: Session,
  school: string,
): Promise<Result<boolean>> {
  const before = client.syncs();
  const written = await session.write(async (tx) => {
    await tx.execute(sql`insert into schools (school_id, openings) values (${school}, 1)
      on conflict (school_id) do update set openings = schools.openings + 1`);
    return succeed(null);
  });
  if (!written.ok) return written;
  return succeed(client.syncs() > before);
}

async function openOwned(
  path: string,
  options: OpenEmbeddedOptions,
  release: () => Promise<void>,
): Promise<Result<OpenedDatabase>> {
  const inspected = inspectFolder(path);
  if (!inspected.ok) return inspected;
  const folder = inspected.value;
  try {
    if (!folder.ready) {
      options.onProgress?.('Setting up the data folder; this takes a few seconds and happens once.');
      markFolder(path, false);
      await createDatabase(folder);
    }
  } catch (error) {
    if (error instanceof DatabaseStopped)
      return error.diskFull ? { ok: false, error: DISK_FULL } : damaged(path);
    return unusable(path, error);
  }
  const client = new EmbeddedClient({
    folder: folder.database,
    template: null,
    withSync: options.withSync ?? true,
  });
  try {
    await client.start();
  } catch (error) {
    await client.close();
    if (error instanceof DatabaseStopped && error.diskFull) return { ok: false, error: DISK_FULL };
    return damaged(path);
  }
  // The driver needs only the two methods that the bridge has.
  const database = drizzle(client as unknown as PGlite);
  const runTransaction: RunTransaction = (kind, work) =>
    database.transaction(
      (tx) => work(tx as unknown as Transaction),
      kind === 'read' ? READ_TRANSACTION : undefined,
    );
  const session = makeSession(runTransaction, options.school);
  const outcome = await migrate(runTransaction);
  const proof = outcome.ok ? await provesToSync(client, session, options.school) : outcome;
  const refusal = !proof.ok
    ? proof
    : proof.value === false
      ? refuse(
          'folder.undurable',
          `Afterbell could not prove that what it saves in ${path} reaches the disk, so it did not open it.`,
          'Install Afterbell again, unchanged; if that does not help, choose a folder on a local disk.',
        )
      : null;
  if (refusal) {
    await client.close();
    return refusal;
  }
  let closing: Promise<void> | null = null;
  const close = async () => {
    await session.end();
    await client.close();
    await release();
  };
  return succeed({
    session,
    place: path,
    syncs: async () => client.syncs(),
    close() {
      closing ??= close();
      return closing;
    },
  });
}

/** Opens, and on first use creates, the data folder's database. */
export async function openEmbedded(options: OpenEmbeddedOptions): Promise<Result<OpenedDatabase>> {
  const checked = checkFolder(options.dataDir);
  if (!checked.ok) return checked;
  const path = checked.value;
  let owner: Awaited<ReturnType<typeof takeFolder>>;
  try {
    owner = await takeFolder(path);
  } catch (error) {
    return unusable(path, error);
  }
  if (!owner) {
    return refuse(
      'folder.busy',
      `The data folder ${path} is already open in another Afterbell.`,
      'Use that one, or close it first; or name another folder with AFTERBELL_DATA.',
    );
  }
  let opened: Result<OpenedDatabase> | null = null;
  try {
    opened = await openOwned(path, options, owner.release);
    return opened;
  } catch (thrown) {
    const error = expectedFailure(thrown);
    if (error) return { ok: false, error };
    throw thrown;
  } finally {
    if (!opened?.ok) await owner.release();
  }
}
