// Turns what a database driver throws into the store's own refusals. What is not listed here is a bug and is thrown on.
import { Refusal } from './columns.js';
import { refuse, type StoreError } from './result.js';

interface DriverError {
  readonly code?: unknown;
  readonly message?: unknown;
  readonly cause?: unknown;
}

/** The refusal that a full disk is answered with. */
export const DISK_FULL: StoreError = refuse(
  'disk.full',
  'The disk is full, so nothing was saved; what was saved before is safe.',
  'Free some space on the disk with the data folder, then try again.',
).error;

const DISK_FAILED: StoreError = refuse(
  'disk.failed',
  'The disk did not take the data, so nothing was saved.',
  'Check the disk with the data folder, then start again; if it does not open, restore the last backup.',
).error;

export const STORE_CLOSED: StoreError = refuse(
  'store.closed',
  'The data folder has been closed.',
  'Start Afterbell again.',
).error;

/** Thrown by the embedded database's bridge when the database stopped in the middle of a request. */
export class DatabaseStopped extends Error {
  readonly diskFull: boolean;

  constructor(message: string, diskFull: boolean) {
    super(message);
    this.name = 'DatabaseStopped';
    this.diskFull = diskFull;
  }
}

/** The thrown value and what caused it, outermost first. */
function chainOf(thrown: unknown): DriverError[] {
  const chain: DriverError[] = [];
  for (let at: unknown = thrown; typeof at === 'object' && at !== null && chain.length < 10; ) {
    chain.push(at as DriverError);
    at = (at as DriverError).cause;
  }
  return chain;
}

/**
 * The refusal for an expected failure of the database, or null for a bug.
 * SQLSTATE codes: PostgreSQL documentation, appendix A.
 */
export function expectedFailure(thrown: unknown): StoreError | null {
  for (const link of chainOf(thrown)) {
    if (link instanceof Refusal) return link.error;
    if (link instanceof DatabaseStopped) return link.diskFull ? DISK_FULL : DISK_FAILED;
    const code = String(link.code ?? '');
    const message = String(link.message ?? '');
    if (code === '53100' || code === 'ENOSPC' || /No space left on device/.test(message)) return DISK_FULL;
    if (code === '58030' || code === 'EIO' || code === 'XX001' || code === 'XX002') return DISK_FAILED;
    if (/^(28|3D)/.test(code)) {
      return refuse(
        'database.refused',
        'The database server did not let Afterbell in.',
        'Check the user, password and database name in DATABASE_URL.',
      ).error;
    }
    if (/^(ECONN|ENOTFOUND|ETIMEDOUT|EHOST|EAI_|EPIPE)/.test(code) || /^(08|57P)/.test(code)) {
      return refuse(
        'database.unreachable',
        'The database server does not answer.',
        'Check that it runs and that DATABASE_URL names it, then try again.',
      ).error;
    }
    if (/Connection terminated|timeout exceeded when trying to connect/.test(message)) {
      return refuse(
        'database.unreachable',
        'The connection to the database server was lost, so nothing was saved.',
        'Check that the server runs, then try again.',
      ).error;
    }
  }
  return null;
}
