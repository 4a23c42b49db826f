// One folder, one process: whoever asks at the same time, and however the owner before has died.
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { builtModule, ensureBuiltStore } from '../../../test/support/built-store.js';
import { temporaryFolder } from '../../../test/support/temporary-folder.js';
import { takeFolder } from './owner.js';

/** Says "ready", tries to take the folder when told to, says how that went, and keeps it until killed. */
const TAKER = `
  import { takeFolder } from ${JSON.stringify(builtModule('embedded/owner.js'))};
  console.log('ready');
  process.stdin.once('data', async () => console.log((await takeFolder(process.argv[1])) ? 'won' : 'refused'));
  process.stdin.resume();
`;

interface Taker {
  readonly process: ChildProcess;
  next(): Promise<string>;
}

function startTaker(folder: string): Taker {
  const child = spawn(process.execPath, ['--input-type=module', '-e', TAKER, folder], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  const lines = createInterface({ input: child.stdout as NodeJS.ReadableStream })[Symbol.asyncIterator]();
  return { process: child, next: async () => String((await lines.next()).value) };
}

function kill(taker: Taker): Promise<void> {
  return new Promise((resolve) => {
    taker.process.once('exit', () => resolve());
    taker.process.kill('SIGKILL');
  });
}

describe('the owner of a folder', () => {
  it('keeps it until it lets go', async () => {
    const folder = temporaryFolder();
    const first = await takeFolder(folder);
    expect(first).not.toBeNull();
    expect(await takeFolder(folder)).toBeNull();
    await first?.release();
    const second = await takeFolder(folder);
    expect(second).not.toBeNull();
    await second?.release();
  });

  it('works in a folder whose path is longer than a socket address', async () => {
    const folder = join(temporaryFolder(), 'x'.repeat(200));
    mkdirSync(folder);
    const first = await takeFolder(folder);
    expect(first).not.toBeNull();
    expect(await takeFolder(folder)).toBeNull();
    await first?.release();
  });

  it('takes over from a process that died before it had written its file', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'owner.7'), '');
    const owner = await takeFolder(folder);
    expect(owner).not.toBeNull();
    expect(readdirSync(folder).filter((name) => name.startsWith('owner.'))).toEqual(['owner.8']);
    await owner?.release();
  });

  it('is one of many who ask in the same moment, in one process', async () => {
    const folder = temporaryFolder();
    for (let round = 0; round < 20; round++) {
      const takers = await Promise.all(Array.from({ length: 8 }, () => takeFolder(folder)));
      const owners = takers.filter((owner) => owner !== null);
      expect(owners).toHaveLength(1);
      await owners[0]?.release();
    }
  });

  describe('among processes', () => {
    beforeAll(ensureBuiltStore);

    it('is one, also when several take over from one that was just killed', async () => {
      const folder = temporaryFolder();
      for (let round = 0; round < 6; round++) {
        const takers = Array.from({ length: 4 }, () => startTaker(folder));
        for (const taker of takers) expect(await taker.next()).toBe('ready');
        for (const taker of takers) taker.process.stdin?.write('go\n');
        const outcomes = await Promise.all(takers.map((taker) => taker.next()));
        expect(outcomes.filter((outcome) => outcome === 'won')).toHaveLength(1);
        await Promise.all(takers.map(kill));
      }
    });
  });
});
