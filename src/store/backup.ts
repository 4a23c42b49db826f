// Backup and restore: one file that holds a school, checked completely before anything is changed.
import { createHash } from 'node:crypto';
import { resolve } from 'node:path';
import { seal, unseal } from './backup-envelope.js';
import { isIsoInstant } from './columns.js';
import { writeDurably } from './durable-write.js';
import { unusable } from './embedded/folder.js';
import { MIGRATIONS } from './migrations.js';
import type { IsoInstant } from './records.js';
import { type Result, refuse, succeed } from './result.js';
import type { Snapshot } from './snapshot.js';
import { checkSnapshot } from './snapshot-schema.js';
import type { Store } from './store.js';

/** A backup that has passed every check. */
export interface Backup {
  readonly createdAt: IsoInstant;
  /** Number of schema steps of the program that wrote it. */
  readonly schema: number;
  readonly snapshot: Snapshot;
}

export interface ExportOptions {
  readonly createdAt: IsoInstant;
  /** Locks the file; at least 8 characters. Nobody can open it without. */
  readonly passphrase?: string;
}

/** The bytes of a backup file with everything the store keeps. */
export async function exportBackup(store: Store, options: ExportOptions): Promise<Result<Uint8Array>> {
  const snapshot = await store.takeSnapshot();
  if (!snapshot.ok) return snapshot;
  const tables = JSON.stringify(snapshot.value);
  const sha256 = createHash('sha256').update(tables).digest('hex');
  const head = JSON.stringify({ createdAt: options.createdAt, schema: MIGRATIONS.length, sha256 });
  return seal(`${head}\n${tables}\n`, options.passphrase ?? null);
}

/** Writes a backup so that a crash leaves either no new file or the whole one. */
export function writeBackup(path: string, bytes: Uint8Array): Result<null> {
  const target = resolve(path);
  try {
    writeDurably(target, bytes);
    return succeed(null);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'ENOSPC') {
      return refuse(
        'disk.full',
        `There is no room for the backup at ${target}; nothing was written.`,
        'Free some space, or choose another disk.',
      );
    }
    if (code === 'ENOENT' || code === 'EISDIR') {
      return refuse(
        'folder.unwritable',
        `The backup cannot be written at ${target} (${code}).`,
        'Name a file in a folder that exists.',
      );
    }
    return unusable(target, error);
  }
}

function corrupt(what: string): Result<never> {
  return refuse('backup.corrupt', `This backup cannot be used: ${what}.`, 'Use an earlier backup.');
}

/** Reads and checks a backup file: its form, hashes, passphrase, version and every row. Changes nothing. */
export async function readBackup(bytes: Uint8Array, passphrase?: string): Promise<Result<Backup>> {
  const content = await unseal(bytes, passphrase ?? null);
  if (!content.ok) return content;
  const [first = '', tables = '', ...rest] = content.value.split('\n');
  let head: { createdAt?: unknown; schema?: unknown; sha256?: unknown } | null;
  let value: unknown;
  try {
    head = JSON.parse(first) as typeof head;
    value = JSON.parse(tables);
  } catch {
    return corrupt('its content is not what a backup holds');
  }
  if (!isIsoInstant(head?.createdAt) || typeof head.schema !== 'number' || rest.join('') !== '') {
    return corrupt('its content is not what a backup holds');
  }
  if (createHash('sha256').update(tables).digest('hex') !== head.sha256)
    return corrupt('its content is damaged');
  if (head.schema > MIGRATIONS.length) {
    return refuse(
      'backup.newer',
      'This backup was written by a newer Afterbell than this one.',
      'Install the newest Afterbell, then restore it.',
    );
  }
  const checked = checkSnapshot(value);
  if (!checked.ok) return corrupt(`${checked.where} is not as it must be`);
  for (const [i, sheet] of checked.value.sheets.entries()) {
    const hash = createHash('sha256').update(String(sheet.content)).digest('hex');
    if (hash !== sheet.content_hash) return corrupt(`sheets row ${i + 1} does not match its hash`);
  }
  return succeed({ createdAt: head.createdAt, schema: head.schema, snapshot: checked.value });
}

/** Puts a checked backup into the store, all or nothing; over existing data only with `replace`. */
export function restore(
  store: Store,
  backup: Backup,
  options: { readonly replace: boolean },
): Promise<Result<null>> {
  return store.loadSnapshot(backup.snapshot, options);
}
