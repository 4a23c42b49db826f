// Folders that are not as they should be: refused in one sentence, with nothing changed in them.
import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtModule, ensureBuiltStore } from '../../../test/support/built-store.js';
import { must, refusalOf } from '../../../test/support/must.js';
import { temporaryFolder } from '../../../test/support/temporary-folder.js';
import { openStore } from '../open-store.js';

describe('a data folder', () => {
  let base: string;
  let sound: string;

  beforeAll(async () => {
    base = mkdtempSync(join(tmpdir(), 'afterbell-folder-'));
    sound = join(base, 'deep', 'down', 'data');
    const progress: string[] = [];
    const store = await must(
      openStore({ dataDir: sound }, { onProgress: (sentence) => progress.push(sentence) }),
    );
    expect(progress).toHaveLength(1);
    await must(store.classes.create({ name: 'Wattle', years: [4] }));
    await store.close();
  });
  afterAll(() => rmSync(base, { recursive: true, force: true }));

  /** A copy of the sound folder to be damaged. */
  function copy(): string {
    const dataDir = join(temporaryFolder(), 'data');
    cpSync(sound, dataDir, { recursive: true });
    return dataDir;
  }

  it('opens again with what was saved, on a syncing disk', async () => {
    const store = await must(openStore({ dataDir: sound }));
    expect(await must(store.classes.list())).toHaveLength(1);
    for (let i = 0; i < 5; i++) await must(store.classes.create({ name: `Class ${i}`, years: [i] }));
    const { commits, syncs } = await store.syncCounts();
    expect(commits).toBeGreaterThanOrEqual(5);
    expect(syncs).toBeGreaterThanOrEqual(commits);
    await store.close();
  });

  it('is refused when saving does not sync, whatever is in it', async () => {
    expect(await refusalOf(openStore({ dataDir: sound }, { withSync: false }))).toBe('folder.undurable');
    expect(await refusalOf(openStore({ dataDir: join(temporaryFolder(), 'new') }, { withSync: false }))).toBe(
      'folder.undurable',
    );
    // The refusal left it free and whole.
    await (await must(openStore({ dataDir: sound }))).close();
  });

  it('is refused while it is open', async () => {
    const store = await must(openStore({ dataDir: sound }));
    const second = await openStore({ dataDir: join(sound, '..', 'data') });
    expect(await refusalOf(second)).toBe('folder.busy');
    if (!second.ok) expect(second.error.message).toContain(sound);
    await store.close();
  });

  it('is not made among the files of someone else', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'holiday.jpg'), 'x');
    expect(await refusalOf(openStore({ dataDir: folder }))).toBe('folder.foreign');
    writeFileSync(
      join(folder, 'afterbell.json'),
      JSON.stringify({ format: 'other', postgres: '18', ready: true }),
    );
    expect(await refusalOf(openStore({ dataDir: folder }))).toBe('folder.foreign');
    expect(readdirSync(folder).sort()).toEqual(['afterbell.json', 'holiday.jpg']);
  });

  it('is refused when it is a file, or under one', async () => {
    const file = join(temporaryFolder(), 'file');
    writeFileSync(file, 'x');
    expect(await refusalOf(openStore({ dataDir: file }))).toBe('folder.unwritable');
    expect(await refusalOf(openStore({ dataDir: join(file, 'data') }))).toBe('folder.unwritable');
  });

  it.each<[string, (dataDir: string) => void, string]>([
    ['its mark is damaged', (dir) => writeFileSync(join(dir, 'afterbell.json'), '{"form'), 'folder.corrupt'],
    ['its database is gone', (dir) => rmSync(join(dir, 'database'), { recursive: true }), 'folder.corrupt'],
    [
      'its control file is cut short',
      (dir) => writeFileSync(join(dir, 'database', 'global', 'pg_control'), 'x'),
      'folder.corrupt',
    ],
    [
      'its log is gone',
      (dir) => rmSync(join(dir, 'database', 'pg_wal'), { recursive: true }),
      'folder.corrupt',
    ],
    [
      'it is of another database version',
      (dir) => writeFileSync(join(dir, 'database', 'PG_VERSION'), '17\n'),
      'schema.newer',
    ],
  ])('is refused when %s', async (_, damage, code) => {
    const dataDir = copy();
    damage(dataDir);
    expect(await refusalOf(openStore({ dataDir }))).toBe(code);
    // Refused again: the first attempt did not "mend" it into an empty one.
    expect(await refusalOf(openStore({ dataDir }))).toBe(code);
  });

  it('is made anew when its first creation was cut short', async () => {
    const dataDir = join(temporaryFolder(), 'data');
    mkdirSync(join(dataDir, 'database.new', 'base'), { recursive: true });
    writeFileSync(
      join(dataDir, 'afterbell.json'),
      JSON.stringify({ format: 'afterbell-data', postgres: '18', ready: false }),
    );
    const store = await must(openStore({ dataDir }));
    expect(await must(store.classes.list())).toEqual([]);
    await store.close();
    expect(existsSync(join(dataDir, 'database.new'))).toBe(false);
    expect(JSON.parse(readFileSync(join(dataDir, 'afterbell.json'), 'utf8'))).toMatchObject({ ready: true });
  });

  it.runIf(process.platform !== 'win32')('is refused where the user may not write', () => {
    ensureBuiltStore();
    const folder = temporaryFolder();
    chmodSync(folder, 0o555);
    // Root may write anywhere, so it becomes nobody first.
    const script = `
      import { openStore } from ${JSON.stringify(builtModule('open-store.js'))};
      if (process.getuid() === 0) process.seteuid(65534);
      const inside = await openStore({ dataDir: process.argv[1] });
      const below = await openStore({ dataDir: process.argv[1] + '/data' });
      console.log(inside.error?.code, below.error?.code);
    `;
    const args = ['--input-type=module', '-e', script, folder];
    const codes = execFileSync(process.execPath, args, { encoding: 'utf8' });
    expect(codes.trim()).toBe('folder.unwritable folder.unwritable');
  });
});
