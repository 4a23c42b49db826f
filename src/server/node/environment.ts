// What the environment says, checked once at the start.
import { homedir } from 'node:os';
import { isAbsolute, join, resolve } from 'node:path';
import envPaths from 'env-paths';
import type { Problem } from '#api/problem.js';

export interface Environment {
  readonly host: string;
  readonly port: number;
  readonly place: { readonly dataDir: string } | { readonly databaseUrl: string };
}

type Variables = Readonly<Record<string, string | undefined>>;
type EnvironmentResult = { ok: true; value: Environment } | { ok: false; error: Problem };

const LOOPBACK = new Set(['127.0.0.1', 'localhost', '::1']);

/** Reads PORT, HOST, AFTERBELL_DATA and DATABASE_URL, where an empty one counts as left out; one sentence for the first that is wrong. */
export function readEnvironment(variables: Variables): EnvironmentResult {
  const refuse = (message: string, hint: string): EnvironmentResult => ({
    ok: false,
    error: { code: 'environment', message, hint },
  });
  const portText = variables['PORT'] || '4680';
  const port = /^\d{1,5}$/.test(portText) ? Number(portText) : Number.NaN;
  if (!(port >= 1 && port <= 65_535))
    return refuse(
      `PORT is “${portText}”, which is not a port number.`,
      'Use a number from 1 to 65535, or leave it out.',
    );
  const host = variables['HOST'] || '127.0.0.1';
  if (!LOOPBACK.has(host)) {
    return refuse(
      `HOST is “${host}”, but without accounts Afterbell serves this computer only.`,
      'Leave HOST out, or set it to 127.0.0.1.',
    );
  }
  const databaseUrl = variables['DATABASE_URL'];
  if (databaseUrl) {
    if (!/^postgres(ql)?:\/\//.test(databaseUrl))
      return refuse('DATABASE_URL is not a PostgreSQL address.', 'It starts with postgres://.');
    return { ok: true, value: { host, port, place: { databaseUrl } } };
  }
  const given = variables['AFTERBELL_DATA'];
  const home = given?.startsWith('~/') ? join(homedir(), given.slice(2)) : given;
  const dataDir = home
    ? isAbsolute(home)
      ? home
      : resolve(home)
    : envPaths('afterbell', { suffix: '' }).data;
  return { ok: true, value: { host, port, place: { dataDir } } };
}
