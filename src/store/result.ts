// What the store answers with: expected failures are values, one clear sentence each. Imports nothing, so any runtime can use it.

export const STORE_ERROR_CODES = [
  'input.invalid',
  'text.invalid',
  'date.invalid',
  'not.found',
  'conflict',
  'nothing.to-undo',
  'nothing.to-redo',
  'disk.full',
  'disk.failed',
  'folder.busy',
  'folder.foreign',
  'folder.corrupt',
  'folder.unwritable',
  'folder.undurable',
  'schema.newer',
  'database.unreachable',
  'database.refused',
  'store.closed',
  'backup.foreign',
  'backup.newer',
  'backup.corrupt',
  'backup.passphrase-missing',
  'backup.passphrase-wrong',
  'backup.would-overwrite',
] as const;
export type StoreErrorCode = (typeof STORE_ERROR_CODES)[number];

/** What went wrong, in one clear sentence, and how to mend it. */
export interface StoreError {
  readonly code: StoreErrorCode;
  readonly message: string;
  readonly hint: string;
}

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: StoreError };

/** A success that carries `value`. */
export function succeed<T>(value: T): Result<T> {
  return { ok: true, value };
}

/** A failure with its code, one sentence, and the way to mend it. */
export function refuse(
  code: StoreErrorCode,
  message: string,
  hint: string,
): { ok: false; error: StoreError } {
  return { ok: false, error: { code, message, hint } };
}
