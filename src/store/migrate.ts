// Brings a database to this program's schema, whichever of several openers comes first.
import { sql } from 'drizzle-orm';
import { expectedFailure } from './errors.js';
import { MIGRATIONS, type Migration } from './migrations.js';
import { type Result, refuse, succeed } from './result.js';
import type { RunTransaction } from './session.js';

/** Any fixed number does; all Afterbell programs on one database must use the same. */
const MIGRATION_LOCK = 46_801_125;

interface AppliedRow {
  readonly name: string;
  readonly hash: string;
}

function newerSchema(): Result<never> {
  return refuse(
    'schema.newer',
    'These data were written by a newer Afterbell than this one.',
    'Install the newest Afterbell, then open them again; nothing was changed.',
  );
}

/** Rows of a raw query on either driver. */
export function rowsOf<T>(result: unknown): readonly T[] {
  return (result as { rows: readonly T[] }).rows;
}

/**
 * Applies what is missing, in one transaction under a lock that other openers wait for; gives the number of steps applied.
 * Refuses with `schema.newer` when the database has a step that this program does not know.
 */
export async function migrate(
  runTransaction: RunTransaction,
  migrations: readonly Migration[] = MIGRATIONS,
): Promise<Result<number>> {
  try {
    return await runTransaction('write', async (tx): Promise<Result<number>> => {
      await tx.execute(sql`select pg_advisory_xact_lock(${MIGRATION_LOCK})`);
      await tx.execute(sql`create table if not exists afterbell_schema
        (position integer primary key, name text not null, hash text not null)`);
      const applied = rowsOf<AppliedRow>(
        await tx.execute(sql`select name, hash from afterbell_schema order by position`),
      );
      for (const [position, row] of applied.entries()) {
        const known = migrations[position];
        if (known?.name !== row.name || known.hash !== row.hash) return newerSchema();
      }
      for (const [position, migration] of migrations.entries()) {
        if (position < applied.length) continue;
        for (const statement of migration.statements) await tx.execute(sql.raw(statement));
        await tx.execute(
          sql`insert into afterbell_schema values (${position}::integer, ${migration.name}, ${migration.hash})`,
        );
      }
      return succeed(migrations.length - applied.length);
    });
  } catch (thrown) {
    const error = expectedFailure(thrown);
    if (error) return { ok: false, error };
    throw thrown;
  }
}
