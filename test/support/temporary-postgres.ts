// A PostgreSQL server of its own for a test file: temporary folder, free port, this machine only, gone afterwards.
import { execFileSync } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface TemporaryPostgres {
  /** Address of a database for a user; the superuser "postgres" when no user is named. */
  url(database: string, user?: string): string;
  /** Runs SQL as superuser. */
  sql(database: string, text: string): void;
  stop(): void;
}

/** Folder of the newest server programs, or null where PostgreSQL is not installed. */
export function findPostgres(): string | null {
  const base = '/usr/lib/postgresql';
  if (!existsSync(base)) return null;
  const versions = readdirSync(base).sort((a, b) => Number(b) - Number(a));
  return (
    versions.map((version) => join(base, version, 'bin')).find((bin) => existsSync(join(bin, 'initdb'))) ??
    null
  );
}

/**
 * False where PostgreSQL is not installed, which skips a suite. With CI set nothing may be skipped, so it throws.
 */
export function hasPostgres(): boolean {
  if (findPostgres() !== null) return true;
  if (process.env['CI'])
    throw new Error('CI is set, but PostgreSQL is not installed. Mend: apt-get install postgresql.');
  console.warn('Skipped: tests against a PostgreSQL server. Mend: apt-get install postgresql.');
  return false;
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}

/**
 * Starts a server. Root may not run one, so it is run as the user "postgres" then. Its data are gone afterwards anyway, so
 * it syncs nothing to the disk unless asked to.
 */
export async function startPostgres({ withSync = false } = {}): Promise<TemporaryPostgres> {
  const bin = findPostgres();
  if (!bin) throw new Error('PostgreSQL is not installed');
  const isRoot = process.getuid?.() === 0;
  const folder = mkdtempSync(join(tmpdir(), 'afterbell-pg-'));
  const data = join(folder, 'data');
  const run = (program: string, args: readonly string[], input?: string) => {
    const command = join(bin, program);
    const [file, all] = isRoot
      ? ['runuser', ['-u', 'postgres', '--', command, ...args]]
      : [command, [...args]];
    execFileSync(file, all, {
      stdio: [input === undefined ? 'ignore' : 'pipe', 'ignore', 'pipe'],
      cwd: folder,
      input,
    });
  };
  if (isRoot) execFileSync('chown', ['postgres', folder]);
  chmodSync(folder, 0o700);
  run('initdb', ['-D', data, '-U', 'postgres', '-A', 'trust', '-E', 'UTF8', '--locale=C.UTF-8', '--no-sync']);
  const port = await freePort();
  const options = `-p ${port} -c listen_addresses=127.0.0.1 -c unix_socket_directories=${folder} -c fsync=${withSync ? 'on' : 'off'}`;
  run('pg_ctl', ['-D', data, '-w', '-l', join(folder, 'log'), '-o', options, 'start']);
  return {
    url: (database, user = 'postgres') => `postgres://${user}@127.0.0.1:${port}/${database}`,
    sql: (database, text) =>
      run(
        'psql',
        ['-h', '127.0.0.1', '-p', String(port), '-U', 'postgres', '-v', 'ON_ERROR_STOP=1', '-q', database],
        text,
      ),
    stop() {
      run('pg_ctl', ['-D', data, '-w', '-m', 'immediate', 'stop']);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
