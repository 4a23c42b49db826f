// The one way to the database: a transaction within one school. Aggregates get the transaction and nothing else,
// because the embedded database is a single connection and would wait for itself.
import { sql } from 'drizzle-orm';
import type { PgDatabase, PgQueryResultHKT } from 'drizzle-orm/pg-core';
import { expectedFailure, STORE_CLOSED } from './errors.js';
import type { Result } from './result.js';

/** A running transaction: Drizzle's query methods, the same on both databases. */
export type Transaction = Pick<
  PgDatabase<PgQueryResultHKT, Record<string, never>>,
  'select' | 'insert' | 'update' | 'delete' | 'execute'
>;

/** Runs `work` in a transaction of an open database: committed on return, rolled back on a throw, which is thrown on. */
export type RunTransaction = <T>(kind: 'read' | 'write', work: (tx: Transaction) => Promise<T>) => Promise<T>;

/** How a reading transaction begins; it sees one moment, also over several queries. */
export const READ_TRANSACTION = { accessMode: 'read only', isolationLevel: 'repeatable read' } as const;

export interface Session {
  readonly school: string;
  /** Runs `work` in a transaction that may only read. */
  read<T>(work: (tx: Transaction) => Promise<Result<T>>): Promise<Result<T>>;
  /** Runs `work` in a transaction; a refusal rolls it back, success means that it is committed. */
  write<T>(work: (tx: Transaction) => Promise<Result<T>>): Promise<Result<T>>;
  /** Writing transactions committed so far. */
  commits(): number;
  /** Refuses all later work, and waits for the work under way. */
  end(): Promise<void>;
}

/** A database that is open and at the current schema. */
export interface OpenedDatabase {
  readonly session: Session;
  /** Where the data are, fit to be shown. */
  readonly place: string;
  /** Syncs to the disk since opening; null where the server does its own. */
  syncs(): Promise<number | null>;
  close(): Promise<void>;
}

/** Carries a refusal through the driver's rollback. */
class RolledBack extends Error {
  readonly result: Result<never>;

  constructor(result: Result<never>) {
    super('rolled back');
    this.result = result;
  }
}

/** A session of one school on an open database. */
export function makeSession(runTransaction: RunTransaction, school: string): Session {
  let commits = 0;
  let ended = false;
  const running = new Set<Promise<unknown>>();

  async function run<T>(
    kind: 'read' | 'write',
    work: (tx: Transaction) => Promise<Result<T>>,
  ): Promise<Result<T>> {
    if (ended) return { ok: false, error: STORE_CLOSED };
    try {
      const value = await runTransaction(kind, async (tx) => {
        await tx.execute(
          sql`select set_config('afterbell.school', ${school}, true), set_config('timezone', 'UTC', true)`,
        );
        const result = await work(tx);
        if (!result.ok) throw new RolledBack(result);
        return result;
      });
      if (kind === 'write') commits++;
      return value;
    } catch (thrown) {
      if (thrown instanceof RolledBack) return thrown.result;
      const error = expectedFailure(thrown);
      if (error) return { ok: false, error };
      throw thrown;
    }
  }

  function track<T>(promise: Promise<T>): Promise<T> {
    running.add(promise);
    const done = () => running.delete(promise);
    promise.then(done, done);
    return promise;
  }

  return {
    school,
    read: (work) => track(run('read', work)),
    write: (work) => track(run('write', work)),
    commits: () => commits,
    async end() {
      ended = true;
      await Promise.allSettled(running);
    },
  };
}
