// A full disk: what is not saved is said so, what was saved stays, and with room again work goes on.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished, type TestContext } from 'vitest';
import { exportBackup, writeBackup } from '#store/backup.js';
import { openStore } from '#store/open-store.js';
import type { Store } from '#store/store.js';
import { must, refusalOf } from '../support/must.js';
import { sampleBoard } from '../support/sample-board.js';
import { mountSmallDisk, type SmallDisk } from '../support/small-disk.js';

const AT = '2026-11-25T01:02:03.000Z';

function smallDisk(context: TestContext, megabytes: number): SmallDisk {
  const disk = mountSmallDisk(megabytes);
  if (!disk)
    return context.skip(
      'A small disk can be mounted by root on Linux only. Mend: run the tests as root in a container.',
    );
  onTestFinished(() => disk.unmount());
  return disk;
}

async function sheetOf(store: Store) {
  const { id: classId } = await must(store.classes.create({ name: 'Wattle', years: [4] }));
  const inputs = Array.from({ length: 25 }, (_, i) => ({
    givenName: `Child ${i}`,
    familyName: '',
    alias: '',
    year: 4,
    joined: null,
  }));
  const children = await must(store.children.add(classId, inputs));
  const { id: sheetId } = await must(store.sheets.save({ classId, date: null, content: sampleBoard(1) }));
  return { sheetId, childIds: children.map((child) => child.id) };
}

/** Round `n` of marks: every child and rung, answers long enough to fill a disk. */
function roundOf(sheetId: string, childIds: readonly string[], n: number) {
  const marks = childIds.flatMap((childId) =>
    Array.from({ length: 12 }, (_, i) => ({
      childId,
      rung: i + 1,
      state: 'wrong' as const,
      text: `${n} ${'x'.repeat(180)}`,
    })),
  );
  return { sheetId, token: 'page', by: 'teacher', at: AT, marks };
}

async function roundIn(store: Store, sheetId: string): Promise<number> {
  const rounds = new Set((await must(store.marks.ofSheet(sheetId))).map((mark) => mark.text.split(' ')[0]));
  expect(rounds.size).toBe(1);
  return Number([...rounds][0]);
}

// With no room at all the tables cannot grow; with some, the log is what finds none.
describe.each([0, 18])('a disk with %i MB left', (megabytes) => {
  it('refuses marks it cannot keep, keeps those it has acknowledged, and goes on when there is room', async (context) => {
    const disk = smallDisk(context, 160);
    const dataDir = join(disk.folder, 'data');
    const store = await must(openStore({ dataDir }));
    onTestFinished(() => store.close());
    const { sheetId, childIds } = await sheetOf(store);
    await must(store.marks.record(roundOf(sheetId, childIds, 0)));
    disk.fill(megabytes * 1024 ** 2);

    let last = 0;
    let refusal: string | null = null;
    while (refusal === null && last < 2000) {
      const result = await store.marks.record(roundOf(sheetId, childIds, last + 1));
      if (result.ok) last++;
      else refusal = await refusalOf(result);
    }
    expect(refusal).toBe('disk.full');
    expect(await refusalOf(store.marks.record(roundOf(sheetId, childIds, last + 1)))).toBe('disk.full');

    disk.empty();
    expect(await roundIn(store, sheetId)).toBe(last);
    await must(store.marks.record(roundOf(sheetId, childIds, last + 1)));
    await store.close();
    const again = await must(openStore({ dataDir }));
    onTestFinished(() => again.close());
    expect(await roundIn(again, sheetId)).toBe(last + 1);
  });
});

describe('a disk that is too small', () => {
  it('is refused for a new data folder, which opens once there is room', async (context) => {
    const disk = smallDisk(context, 12);
    const dataDir = join(disk.folder, 'data');
    expect(await refusalOf(openStore({ dataDir }))).toBe('disk.full');
    disk.resize(160);
    const store = await must(openStore({ dataDir }));
    expect(await must(store.classes.list())).toEqual([]);
    await store.close();
  });

  it('is refused for a backup, leaving the backup before it whole', async (context) => {
    const disk = smallDisk(context, 160);
    const store = await must(openStore({ dataDir: join(disk.folder, 'data') }));
    onTestFinished(() => store.close());
    await sheetOf(store);
    const bytes = await must(exportBackup(store, { createdAt: AT }));
    disk.fill();
    const path = join(disk.folder, 'backup');
    expect(await refusalOf(writeBackup(path, bytes))).toBe('disk.full');
    expect(existsSync(path)).toBe(false);
    expect(readdirSync(disk.folder).sort()).toEqual(['ballast', 'data']);
  });
});
