// The built command run as a person or a script runs it: arguments in; status, stdout and stderr out.
import { spawn, spawnSync } from 'node:child_process';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';

const MAIN = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));

export interface Ran {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface RunOptions {
  readonly input?: string | Uint8Array;
  readonly env?: Readonly<Record<string, string>>;
}

/** Runs `afterbell` with these arguments to its end. Only the environment named here reaches it. */
export function afterbell(args: readonly string[], { input = '', env = {} }: RunOptions = {}): Ran {
  const { status, stdout, stderr, error } = spawnSync(process.execPath, [MAIN, ...args], {
    input,
    env: { PATH: process.env['PATH'] ?? '', TZ: 'Australia/Brisbane', ...env },
    maxBuffer: 2 ** 30,
  });
  if (error) throw error;
  const decode = (bytes: Uint8Array) => new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  return { status, stdout: decode(stdout), stderr: decode(stderr) };
}

/** What a run that must succeed printed. */
export function printed(args: readonly string[], options?: RunOptions): string {
  const ran = afterbell(args, options);
  expect(ran, args.join(' ')).toMatchObject({ status: 0 });
  return ran.stdout;
}

/** The one JSON document that a run with --json printed. */
export function json<T>(args: readonly string[], options?: RunOptions): T {
  return JSON.parse(printed([...args, '--json'], options)) as T;
}

/** Refused with status 2, nothing on stdout, and a last line that is one clear sentence and no stack trace; returns stderr. */
export function refusal(args: readonly string[], options?: RunOptions): string {
  const { status, stdout, stderr } = afterbell(args, options);
  expect({ status, stdout }, `${args.join(' ')}\n${stderr}`).toEqual({ status: 2, stdout: '' });
  expect(stderr, args.join(' ')).not.toMatch(
    /^\s+at |node:internal|\bundefined\b|\[object|went wrong inside/m,
  );
  expect(stderr.trimEnd().split('\n').at(-1), args.join(' ')).toMatch(/^afterbell: \S.*[.!]$/);
  return stderr;
}

/** The status of a run whose standard input comes only after a while, as from a slow program before it in a pipe. */
export function statusWithLateInput(
  args: readonly string[],
  input: string,
  afterMs: number,
): Promise<number | null> {
  const child = spawn(process.execPath, [MAIN, ...args], { stdio: ['pipe', 'ignore', 'ignore'] });
  setTimeout(() => child.stdin.end(input), afterMs);
  return new Promise((resolve) => child.once('exit', resolve));
}
