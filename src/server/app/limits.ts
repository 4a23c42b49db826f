// How much one request may carry.

export interface Limits {
  readonly requestBytes: number;
  readonly backupBytes: number;
}

export const DEFAULT_LIMITS: Limits = { requestBytes: 2_000_000, backupBytes: 200_000_000 };
