// Backups: everything comes back; whatever is wrong with a file has its own sentence and changes nothing.
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { composeTimed } from '#engine/activities/timed/compose.js';
import { must, refusalOf } from '../../test/support/must.js';
import { sampleBoard } from '../../test/support/sample-board.js';
import { exportBackup, readBackup, restore, writeBackup } from './backup.js';
import { openStore } from './open-store.js';
import { DEFAULT_SETTINGS } from './records.js';
import type { Store } from './store.js';

const AT = '2026-11-25T01:02:03.004Z';
const PASSPHRASE = 'wombat kettle Zoë sunrise';

/** Splits a backup file into its two lines and the packed content. */
function partsOf(file: Uint8Array): { description: Record<string, unknown>; payload: Buffer } {
  const bytes = Buffer.from(file);
  const first = bytes.indexOf('\n') + 1;
  const second = bytes.indexOf('\n', first) + 1;
  return {
    description: JSON.parse(bytes.subarray(first, second).toString()),
    payload: bytes.subarray(second),
  };
}

/** A file with other content but a right outer hash: what a hand-made or half-broken writer could produce. */
function withContent(content: string, description: Record<string, unknown> = {}): Uint8Array {
  const payload = gzipSync(content);
  const sha256 = createHash('sha256').update(payload).digest('hex');
  const line = JSON.stringify({
    version: 1,
    bytes: payload.length,
    sha256,
    encryption: null,
    ...description,
  });
  return Buffer.concat([Buffer.from(`AFTERBELL BACKUP\n${line}\n`), payload]);
}

function withTables(
  file: Uint8Array,
  change: (tables: Record<string, Record<string, unknown>[]>) => void,
): Uint8Array {
  const [head = '', body = ''] = gunzipSync(partsOf(file).payload).toString().split('\n');
  const tables = JSON.parse(body);
  change(tables);
  const text = JSON.stringify(tables);
  const sha256 = createHash('sha256').update(text).digest('hex');
  return withContent(`${JSON.stringify({ ...JSON.parse(head), sha256 })}\n${text}\n`);
}

async function keepTimed(store: Store, classId: string, childId: string): Promise<void> {
  const date = '2026-11-25';
  const steps = [{ kind: 'given', id: 'table-5' } as const];
  await must(store.timed.putLadder(classId, { steps, minutes: 3, digitsPerMinute: null, questions: 60 }));
  const form = await must(composeTimed({ level: 11, forms: 1, seed: 1, locale: 'en-AU' }));
  const [sheet] = await must(
    store.timed.issue({ classId, date, sheets: [{ childId, content: form, redo: [] }] }),
  );
  const outcome = { attempted: 9, wrong: [2], written: { 2: '12' }, redoWrong: [], minutes: null };
  await must(store.timed.record([{ sheetId: sheet?.id ?? '', outcome }], AT));
  await must(store.timed.move({ childId, date, levelId: 'table-5', evidence: 'Ready.' }));
}

describe('a backup', () => {
  let folder: string;
  let store: Store;
  let plain: Uint8Array;
  let locked: Uint8Array;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'afterbell-backup-'));
    store = await must(openStore({ dataDir: join(folder, 'data') }));
    await must(store.settings.write({ ...DEFAULT_SETTINGS, schoolName: 'Gum Creek' }, 0));
    const { id: classId } = await must(store.classes.create({ name: '4/5 Wattle', years: [4, 5] }));
    const inputs = ['Ana', '李小龍 🦘'].map((givenName) => ({
      givenName,
      familyName: 'Q',
      alias: '',
      year: 4,
      joined: '2026-01-28',
    }));
    const [ana] = await must(store.children.add(classId, inputs));
    const childId = (ana as { id: string }).id;
    const old = await must(store.sheets.save({ classId, date: '2026-11-25', content: sampleBoard(1) }));
    const sheet = await must(
      store.sheets.save({ classId, date: '2026-11-25', content: sampleBoard(2), supersedes: old.id }),
    );
    await must(store.slips.issue(sheet.id, [childId, null]));
    const marks = [{ childId, rung: 3, state: 'wrong' as const, text: '7½ "x"\n' }];
    await must(store.marks.record({ sheetId: sheet.id, token: 't', by: 'b', at: AT, marks }));
    await must(
      store.placements.put({
        childId,
        level: 0.1 + 0.2,
        spread: 1e-9,
        source: 'check',
        at: AT,
        detail: { a: [1, null] },
      }),
    );
    await must(
      store.days.put({
        classId,
        date: '2026-11-25',
        number: '47',
        activity: 'board',
        note: 'n',
        absent: [childId],
      }),
    );
    const content = { kind: 'chain', seed: 1 } as const;
    const [set] = await must(store.sets.save({ classId, band: 'middle', contents: [content] }));
    const setId = (set as { id: string }).id;
    const date = '2026-11-25';
    await must(store.sets.mark({ classId, setIds: [setId], step: 'boxed', done: true, date }));
    await must(store.loans.record({ classId, kind: 'chain', date, close: [], open: [{ childId, setId }] }));
    await must(store.bands.put(childId, 'upper'));
    await keepTimed(store, classId, childId);
    plain = await must(exportBackup(store, { createdAt: AT }));
    locked = await must(exportBackup(store, { createdAt: AT, passphrase: PASSPHRASE }));
  });

  afterAll(async () => {
    await store.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it.each(['plain', 'locked'])('brings everything back into an empty folder (%s)', async (kind) => {
    const isLocked = kind === 'locked';
    const backup = await must(isLocked ? readBackup(locked, PASSPHRASE) : readBackup(plain));
    expect(backup.createdAt).toBe(AT);
    const other = await must(openStore({ dataDir: join(folder, kind) }));
    try {
      await must(restore(other, backup, { replace: false }));
      const before = await must(store.takeSnapshot());
      expect(Object.values(before).every((rows) => rows.length > 0)).toBe(true);
      expect(await must(other.takeSnapshot())).toEqual(before);
      // Undo still works on what came back.
      const sheetId = String(before.marks[0]?.['sheet_id']);
      expect(await must(other.marks.undo({ sheetId, token: 't', by: 'b', at: AT }))).toMatchObject({
        skipped: 0,
      });
      expect(await refusalOf(restore(other, backup, { replace: false }))).toBe('backup.would-overwrite');
      await must(restore(other, backup, { replace: true }));
      expect(await must(other.takeSnapshot())).toEqual(before);
    } finally {
      await other.close();
    }
  });

  it('shows nothing without the passphrase', async () => {
    expect(Buffer.from(locked).toString('latin1')).not.toContain('Wattle');
    expect(() => gunzipSync(partsOf(locked).payload)).toThrow();
    expect(await refusalOf(readBackup(locked))).toBe('backup.passphrase-missing');
    expect(await refusalOf(readBackup(locked, ''))).toBe('backup.passphrase-missing');
    expect(await refusalOf(readBackup(locked, `${PASSPHRASE} `))).toBe('backup.passphrase-wrong');
    expect(await refusalOf(exportBackup(store, { createdAt: AT, passphrase: 'short' }))).toBe(
      'input.invalid',
    );
  });

  it('takes the passphrase from any keyboard', async () => {
    await must(readBackup(locked, PASSPHRASE.normalize('NFD')));
  });

  it('names a foreign, an empty and a newer file for what it is', async () => {
    const message = async (file: Uint8Array) => {
      const result = await readBackup(file);
      return result.ok ? 'ok' : `${result.error.code}: ${result.error.message}`;
    };
    expect(await message(Buffer.from('%PDF-1.7\nsome other document'))).toMatch(
      /^backup.foreign: .*not an Afterbell backup/,
    );
    expect(await message(gzipSync('something'))).toMatch(/^backup.foreign/);
    expect(await message(new Uint8Array())).toMatch(/^backup.corrupt: .*empty/);
    expect(await message(withContent('', { version: 2 }))).toMatch(/^backup.newer/);
    const [head = '', body = ''] = gunzipSync(partsOf(plain).payload).toString().split('\n');
    expect(
      await message(withContent(`${JSON.stringify({ ...JSON.parse(head), schema: 99 })}\n${body}\n`)),
    ).toMatch(/^backup.newer/);
  });

  it('is refused cut short at any place', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(plain.length - 1), async (length) => {
        expect(await refusalOf(readBackup(plain.subarray(0, length)))).toBe('backup.corrupt');
      }),
      { numRuns: 200 },
    );
  });

  it('is refused with any one bit turned', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(plain.length - 1), fc.nat(7), async (at, bit) => {
        const damaged = Uint8Array.from(plain);
        damaged[at] = (damaged[at] as number) ^ (1 << bit);
        expect(await refusalOf(readBackup(damaged))).toMatch(
          /^backup\.(corrupt|foreign|newer|passphrase-missing)$/,
        );
      }),
      { numRuns: 300 },
    );
  });

  it.each<[string, (tables: Record<string, Record<string, unknown>[]>) => void, RegExp]>([
    [
      'a child of year 9',
      (t) => Object.assign(t['children']?.[1] ?? {}, { year: 9 }),
      /children row 2, year/,
    ],
    [
      'an unknown mark',
      (t) => Object.assign(t['marks']?.[0] ?? {}, { state: 'great' }),
      /marks row 1, state/,
    ],
    [
      'a zero byte',
      (t) => Object.assign(t['children']?.[0] ?? {}, { alias: 'a\0' }),
      /children row 1, alias/,
    ],
    [
      'an impossible day',
      (t) => Object.assign(t['days']?.[0] ?? {}, { date: '2026-02-30' }),
      /days row 1, date/,
    ],
    ['a table less', (t) => delete t['slips'], /slips/],
    [
      'a changed sheet',
      (t) => Object.assign(t['sheets']?.[0] ?? {}, { content: '{}' }),
      /sheets row 1 does not match/,
    ],
  ])('is refused with %s in it', async (_, change, where) => {
    const result = await readBackup(withTables(plain, change));
    expect(result).toMatchObject({ ok: false, error: { code: 'backup.corrupt' } });
    if (!result.ok) expect(result.error.message).toMatch(where);
  });

  it('changes nothing when its rows contradict each other', async () => {
    const file = withTables(plain, (t) => Object.assign(t['marks']?.[0] ?? {}, { child_id: 'nobody' }));
    const before = await must(store.takeSnapshot());
    expect(await refusalOf(restore(store, await must(readBackup(file)), { replace: true }))).toBe(
      'backup.corrupt',
    );
    expect(await must(store.takeSnapshot())).toEqual(before);
  });

  it('is written whole or not at all', async () => {
    const path = join(folder, 'Sicherung é.afterbell');
    await must(writeBackup(path, locked));
    await must(writeBackup(path, plain));
    expect(readFileSync(path)).toEqual(Buffer.from(plain));
    expect(await refusalOf(writeBackup(join(folder, 'nowhere', 'x'), plain))).toBe('folder.unwritable');
    expect(await refusalOf(writeBackup(folder, plain))).toBe('folder.unwritable');
    expect(readdirSync(folder).filter((name) => name.includes('writing'))).toEqual([]);
  });
});
