// The built program as its own process on a folder of its own, for tests that use it as a person or a script would.
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';

const MAIN = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));

export interface TestServer {
  readonly address: string;
  readonly dataDir: string;
  readonly process: ChildProcess;
  /** Ends the server; with `keepData` its folder stays. */
  stop(options?: { keepData?: boolean }): Promise<void>;
}

/** A port that is free at this moment. */
export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}

/** Starts `afterbell serve` and waits until it answers. */
export async function startServer(
  today: string,
  dataDir = mkdtempSync(join(tmpdir(), 'afterbell-')),
): Promise<TestServer> {
  const port = await freePort();
  const child = spawn(process.execPath, [MAIN, 'serve', '--no-open'], {
    env: {
      ...process.env,
      PORT: String(port),
      AFTERBELL_DATA: dataDir,
      AFTERBELL_TODAY: today,
      DATABASE_URL: '',
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  await new Promise<void>((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error(`the server did not start: ${said}`)), 200_000);
    child.stdout.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      if (said.includes('is ready at')) {
        clearTimeout(timer);
        resolve();
      }
    });
    child.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
    child.once('exit', (code) => {
      clearTimeout(timer);
      reject(new Error(`the server ended (${code}): ${said}`));
    });
  });
  return {
    address: `http://127.0.0.1:${port}`,
    dataDir,
    process: child,
    async stop({ keepData = false } = {}) {
      if (child.exitCode === null && child.signalCode === null) {
        const ended = new Promise((resolve) => child.once('exit', resolve));
        child.kill('SIGTERM');
        await ended;
      }
      if (!keepData) rmSync(dataDir, { recursive: true, force: true });
    },
  };
}
