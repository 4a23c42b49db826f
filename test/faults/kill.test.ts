// The power of the promise "recorded": the program is killed at any moment, and no acknowledged mark is gone.
import { type ChildProcess, execFileSync, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtModule, ensureBuiltStore } from '../support/built-store.js';
import { randomFrom } from '../support/seeded-random.js';

const WRITER = fileURLToPath(new URL('./marking-writer.mjs', import.meta.url));
const SEED = 20261125;
const KILLS = 30;

interface Found {
  readonly events: readonly { readonly sequence: number; readonly cell: string; readonly text: string }[];
  readonly marks: readonly { readonly cell: string; readonly text: string; readonly sequence: number }[];
}

interface Run {
  readonly opened: boolean;
  readonly found: Found | null;
  readonly acknowledged: number;
  readonly refusal: string | null;
}

function writer(dataDir: string, ...more: readonly string[]): string[] {
  return [WRITER, builtModule('open-store.js'), dataDir, ...more];
}

/**
 * Starts the writer and reports what it said before it was killed: `delayMs` after its start, or after it has
 * acknowledged that many marks, so that a slow machine is given the same work as a fast one.
 */
async function runUntilKilled(dataDir: string, from: 'start' | number, delayMs: number): Promise<Run> {
  const child: ChildProcess = spawn(process.execPath, writer(dataDir), {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const kill = () => void wait(delayMs).then(() => child.kill('SIGKILL'));
  let acks = 0;
  let run: Run = { opened: false, found: null, acknowledged: 0, refusal: null };
  if (from === 'start') kill();
  for await (const line of createInterface({ input: child.stdout as NodeJS.ReadableStream })) {
    const [word = '', ...rest] = line.split(' ');
    if (word === 'open') run = { ...run, opened: true };
    if (word === 'refused') run = { ...run, refusal: rest.join(' ') };
    if (word === 'state') {
      run = { ...run, found: JSON.parse(line.slice('state '.length)) as Found };
      if (from === 0) kill();
    }
    if (word === 'ack') {
      const [number, commits, syncs] = rest.map(Number) as [number, number, number];
      expect(syncs, `mark ${number} was acknowledged before it was synced`).toBeGreaterThanOrEqual(commits);
      run = { ...run, acknowledged: number };
      if (++acks === from) kill();
    }
  }
  await ended;
  return run;
}

/** Every mark up to the last acknowledged one is there, at most one more, and marks agree with their events. */
function checkFound(found: Found, acknowledged: number): void {
  const last = found.events.length;
  expect(found.events.map((event) => event.text)).toEqual(
    Array.from({ length: last }, (_, i) => String(i + 1)),
  );
  expect(last).toBeGreaterThanOrEqual(acknowledged);
  expect(last).toBeLessThanOrEqual(acknowledged + 1);
  const latest = new Map(
    found.events.map((event) => [event.cell, { text: event.text, sequence: event.sequence }]),
  );
  expect(new Map(found.marks.map(({ cell, text, sequence }) => [cell, { text, sequence }]))).toEqual(latest);
}

describe('marking, killed', () => {
  let base: string;
  beforeAll(() => {
    ensureBuiltStore();
    base = mkdtempSync(join(tmpdir(), 'afterbell-kill-'));
  });
  afterAll(() => rmSync(base, { recursive: true, force: true }));

  it(`at ${KILLS} random moments, loses no acknowledged mark and opens by itself (seed ${SEED})`, async () => {
    const random = randomFrom(SEED);
    const dataDir = join(base, 'data');
    let acknowledged = 0;
    let whileOpening = 0;
    let whileMarking = 0;
    const check = (run: Run) => {
      expect(run.refusal).toBeNull();
      if (run.found) {
        checkFound(run.found, acknowledged);
        // One mark may have been committed without its acknowledgement having been heard.
        acknowledged = Math.max(run.found.events.length, run.acknowledged);
      }
    };
    for (let kills = 0; kills < KILLS; kills++) {
      const run =
        kills % 5 === 4
          ? await runUntilKilled(dataDir, 'start', 50 + random(600))
          : await runUntilKilled(dataDir, random(20), random(20));
      check(run);
      if (run.found) whileMarking++;
      else whileOpening++;
    }
    const last = execFileSync(process.execPath, writer(dataDir, '1'), { encoding: 'utf8' })
      .split('\n')
      .find((line) => line.startsWith('state'));
    checkFound(JSON.parse(String(last).slice('state '.length)) as Found, acknowledged);
    expect(acknowledged).toBeGreaterThan(KILLS);
    expect(whileMarking).toBeGreaterThanOrEqual(20);
    expect(whileMarking + whileOpening).toBe(KILLS);
  }, 400_000);

  it('in the middle of the first setting up, starts afresh by itself', async () => {
    const random = randomFrom(SEED + 1);
    for (let kills = 0; kills < 3; kills++) {
      const dataDir = join(base, `first-${kills}`);
      await runUntilKilled(dataDir, 'start', 100 + random(1500));
      const said = execFileSync(process.execPath, writer(dataDir, '1'), { encoding: 'utf8' });
      expect(said).toMatch(/^ack \d+ \d+ \d+$/m);
      rmSync(dataDir, { recursive: true, force: true });
    }
  }, 240_000);

  it('refuses a second program in one sentence, and the first goes on', async () => {
    const dataDir = join(base, 'data');
    const owner = spawn(process.execPath, writer(dataDir), { stdio: ['ignore', 'pipe', 'inherit'] });
    const lines = createInterface({ input: owner.stdout })[Symbol.asyncIterator]();
    try {
      while (!String((await lines.next()).value).startsWith('ack'));
      const second = spawnSync(process.execPath, writer(dataDir, '1'), { encoding: 'utf8' });
      expect(second.status).toBe(3);
      expect(second.stdout).toMatch(
        /^refused folder\.busy The data folder \S+ is already open in another Afterbell\.\n$/,
      );
      expect(String((await lines.next()).value)).toMatch(/^ack /);
    } finally {
      owner.kill('SIGKILL');
    }
  });

  it('has each mark synced by the system between its acknowledgement and the one before', (context) => {
    const log = join(base, 'trace');
    const works = spawnSync('strace', ['-f', '-o', log, 'true']).status === 0;
    if (!works && process.env['CI'])
      throw new Error(
        'CI is set, but strace does not work here. Mend: apt-get install strace, and allow ptrace.',
      );
    if (!works)
      return context.skip(
        'strace is not installed, or tracing is not allowed. Mend: apt-get install strace.',
      );
    const args = [
      '-f',
      '-e',
      'trace=fsync,fdatasync,write',
      '-o',
      log,
      process.execPath,
      ...writer(join(base, 'data'), '40'),
    ];
    expect(spawnSync('strace', args, { stdio: 'ignore' }).status).toBe(0);
    const syncsBefore: number[] = [];
    let syncs = 0;
    for (const line of readFileSync(log, 'utf8').split('\n')) {
      if (/\bf(data)?sync\b.*= 0$/.test(line)) syncs++;
      if (/\bwrite\(1, "ack /.test(line)) {
        syncsBefore.push(syncs);
        syncs = 0;
      }
    }
    expect(syncsBefore).toHaveLength(40);
    expect(Math.min(...syncsBefore)).toBeGreaterThanOrEqual(1);
  });
});
