// From "npm start" on a built tree to the first answered request: with no data folder yet, and with one.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import process from 'node:process';
import { setTimeout as wait } from 'node:timers/promises';
import { freePort, inFolder, median, ROOT } from './support/measure.mjs';
import { ms, tell } from './support/tell.mjs';

const LATER_STARTS = 3;

/** Milliseconds until the app answers; the server is ended again. */
async function startOnce(dataDir) {
  const port = await freePort();
  const started = performance.now();
  // A group of its own, so that npm and the server it starts can be ended together.
  const child = spawn('npm', ['start', '--silent', '--', '--no-open'], {
    cwd: ROOT,
    env: { ...process.env, PORT: String(port), AFTERBELL_DATA: dataDir, DATABASE_URL: '' },
    stdio: ['ignore', 'ignore', 'inherit'],
    detached: true,
  });
  const ended = new Promise((resolve) => child.once('exit', resolve));
  try {
    while (performance.now() - started < 120_000) {
      const answer = await fetch(`http://127.0.0.1:${port}/api/state`).catch(() => null);
      if (answer?.ok) return performance.now() - started;
      if (child.exitCode !== null) break;
      await wait(10);
    }
    throw new Error('npm start gave no answer');
  } finally {
    process.kill(-child.pid, 'SIGTERM');
    await ended;
    // npm ends before the server has let the data folder go.
    while (await fetch(`http://127.0.0.1:${port}/api/state`).catch(() => null)) await wait(50);
    await wait(1000);
  }
}

await inFolder(async (folder) => {
  const dataDir = join(folder, 'data');
  const first = await startOnce(dataDir);
  const later = [];
  for (let i = 0; i < LATER_STARTS; i++) later.push(await startOnce(dataDir));
  tell({ what: 'npm start to the first answer, no data folder yet', measured: ms(first) });
  tell({ what: 'npm start to the first answer, every later time', measured: ms(median(later)) });
});
