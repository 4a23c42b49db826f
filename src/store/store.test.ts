// The store's promises, on the embedded database and on a PostgreSQL server alike.
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, expect, it } from 'vitest';
import { describeOnBothDatabases } from '../../test/support/both-databases.js';
import { must, refusalOf } from '../../test/support/must.js';
import { sampleBoard } from '../../test/support/sample-board.js';
import type { TemporaryPostgres } from '../../test/support/temporary-postgres.js';
import { openStore } from './open-store.js';
import { type ChildInput, DEFAULT_SETTINGS, type MarkState, type Slip } from './records.js';
import type { Store } from './store.js';

const AT = '2026-11-25T01:02:03.004Z';
const NOW = new Date('2026-11-25T00:00:00.000Z');

function child(givenName: string, more: Partial<ChildInput> = {}): ChildInput {
  return { givenName, familyName: '', alias: '', year: 4, joined: null, ...more };
}

async function classWith(store: Store, names: readonly string[]) {
  const { id } = await must(store.classes.create({ name: 'Wattle', years: [5, 4, 4] }));
  return {
    classId: id,
    children: await must(
      store.children.add(
        id,
        names.map((name) => child(name)),
      ),
    ),
  };
}

describeOnBothDatabases('a store', NOW, (on) => {
  const { kind } = on;
  let store: Store;
  let folder: string;
  let postgres: TemporaryPostgres | null;

  beforeAll(() => {
    ({ store, folder, postgres } = on);
  });

  it('says where the data are without giving a user away', () => {
    expect(store.kind).toBe(kind);
    expect(store.place).toMatch(kind === 'embedded' ? /afterbell-store-/ : /^127\.0\.0\.1:\d+\/postgres$/);
  });

  it('keeps settings and refuses an edit of an old version', async () => {
    const before = await must(store.settings.read());
    expect(before).toEqual({ version: 0, value: DEFAULT_SETTINGS });
    const terms = [{ name: 'Term 1', first: '2026-01-27', last: '2026-04-02' }];
    const value = {
      ...DEFAULT_SETTINGS,
      schoolName: 'Gum Creek',
      terms,
      activities: { board: { rungs: 12 } },
    };
    expect(await must(store.settings.write(value, 0))).toEqual({ version: 1, value });
    expect(await must(store.settings.read())).toEqual({ version: 1, value });
    expect(await refusalOf(store.settings.write(DEFAULT_SETTINGS, 0))).toBe('conflict');
    expect(await must(store.settings.write({ ...value, paper: 'Letter' }, 1))).toMatchObject({ version: 2 });
  });

  it.each([
    ['30 February', [{ name: 'Term', first: '2026-02-30', last: '2026-04-02' }]],
    ['an end before the beginning', [{ name: 'Term', first: '2026-04-02', last: '2026-02-01' }]],
    [
      'overlapping terms',
      [
        { name: 'Two', first: '2026-03-01', last: '2026-06-01' },
        { name: 'One', first: '2026-01-27', last: '2026-03-01' },
      ],
    ],
  ])('refuses %s', async (_, terms) => {
    const { version } = await must(store.settings.read());
    expect(await refusalOf(store.settings.write({ ...DEFAULT_SETTINGS, terms }, version))).toBe(
      'date.invalid',
    );
  });

  it('keeps names in any script, with emoji and accents, as they are typed', async () => {
    const names = [
      'Zoë',
      '李小龍',
      'مريم',
      'Nguyễn Thị',
      '👩🏽‍🚀',
      "O'Brien; drop table children; --",
      'é',
      'é',
      '﷽',
      '𝔘𝔫𝔦',
    ];
    const { classId } = await classWith(store, names);
    expect((await must(store.children.list(classId))).map((one) => one.givenName)).toEqual(names);
  });

  it('refuses text that no database holds, and keeps nothing of the batch', async () => {
    const { classId } = await classWith(store, ['Ana']);
    expect(await refusalOf(store.children.add(classId, [child('Bo'), child('Bad\0name')]))).toBe(
      'text.invalid',
    );
    expect(await refusalOf(store.children.add(classId, [child('Half \uD83D')]))).toBe('text.invalid');
    expect(await refusalOf(store.classes.create({ name: '\0', years: [4] }))).toBe('text.invalid');
    expect(await refusalOf(store.classes.get('\0'))).toBe('text.invalid');
    expect(await must(store.children.list(classId))).toHaveLength(1);
  });

  it('refuses children without a name, of no primary year, with impossible dates, or by the thousand', async () => {
    const { classId } = await classWith(store, []);
    const add = (...inputs: ChildInput[]) => refusalOf(store.children.add(classId, inputs));
    expect(await add(child('  '))).toBe('input.invalid');
    expect(await add(child('Ana', { year: 7 }))).toBe('input.invalid');
    expect(await add(child('Ana', { year: 3.5 }))).toBe('input.invalid');
    expect(await add(child('x'.repeat(121)))).toBe('input.invalid');
    expect(await add(child('Ana', { joined: '2026-02-29' }))).toBe('date.invalid');
    expect(await add(child('Ana', { joined: 'yesterday' }))).toBe('date.invalid');
    expect(await add(...Array.from({ length: 501 }, () => child('Ana')))).toBe('input.invalid');
    expect(await must(store.children.list(classId))).toEqual([]);
  });

  it('keeps the class list in order, also after leaving and reordering', async () => {
    const { classId, children } = await classWith(store, ['Ana', 'Bo', 'Cy']);
    const [ana, bo, cy] = children.map((one) => one.id) as [string, string, string];
    await must(store.children.leave(bo, '2026-06-30'));
    expect((await must(store.children.list(classId))).map((one) => one.id)).toEqual([ana, cy]);
    expect(await must(store.children.list(classId, { withLeft: true }))).toHaveLength(3);
    expect(await refusalOf(store.children.reorder(classId, [cy, bo, ana]))).toBe('conflict');
    await must(store.children.reorder(classId, [cy, ana]));
    expect((await must(store.children.list(classId))).map((one) => one.id)).toEqual([cy, ana]);
    await must(store.children.leave(bo, null));
    expect(await must(store.children.list(classId))).toHaveLength(3);
    expect(await must(store.children.update(bo, { alias: 'B', year: 5 }))).toMatchObject({
      givenName: 'Bo',
      alias: 'B',
      year: 5,
    });
  });

  it('adds to one list from two sides at once without giving a place twice', async () => {
    const { classId } = await classWith(store, []);
    await Promise.all(
      ['A', 'B', 'C', 'D'].map((name) => store.children.add(classId, [child(`${name}1`), child(`${name}2`)])),
    );
    const positions = (await must(store.children.list(classId))).map((one) => one.position);
    expect(positions).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  });

  it('saves a sheet once, gives it back to the byte, and never changes it', async () => {
    const { classId } = await classWith(store, []);
    const content = sampleBoard(47);
    const saved = await must(store.sheets.save({ classId, date: '2026-11-25', content }));
    expect(JSON.stringify((await must(store.sheets.get(saved.id))).content)).toBe(JSON.stringify(content));
    expect(saved.createdAt).toBe(NOW.toISOString());
    expect((await must(store.sheets.save({ classId, date: '2026-11-25', content }))).id).toBe(saved.id);
    expect((await must(store.sheets.save({ classId, date: '2026-11-26', content }))).id).not.toBe(saved.id);
  });

  it('lets a newer sheet take the place of one, which stays readable', async () => {
    const { classId } = await classWith(store, []);
    const date = '2026-11-27';
    const first = await must(store.sheets.save({ classId, date, content: sampleBoard(1) }));
    const back = await must(store.sheets.save({ classId, date, content: sampleBoard(1, 'back') }));
    const second = await must(
      store.sheets.save({ classId, date, content: sampleBoard(2), supersedes: first.id }),
    );
    const current = (await must(store.sheets.current(classId, date))).map((sheet) => sheet.id);
    expect(current.sort()).toEqual([back.id, second.id].sort());
    expect(await must(store.sheets.get(first.id))).toEqual({ ...first, supersededBy: second.id });
    const again = store.sheets.save({ classId, date, content: sampleBoard(3), supersedes: first.id });
    expect(await refusalOf(again)).toBe('conflict');
    expect(await must(store.sheets.list({ classId }))).toHaveLength(2);
    expect(
      await must(store.sheets.list({ classId, withSuperseded: true, from: date, to: date })),
    ).toHaveLength(3);
    expect(await must(store.sheets.list({ classId, to: '2026-11-26' }))).toEqual([]);
  });

  it('issues slips once for each child and finds them as typed', async () => {
    const { classId, children } = await classWith(store, ['Ana', 'Bo']);
    const [ana, bo] = children.map((one) => one.id) as [string, string];
    const { id: sheetId } = await must(store.sheets.save({ classId, date: null, content: sampleBoard(5) }));
    const issued = await must(store.slips.issue(sheetId, [ana, null, null]));
    expect(new Set(issued.map((slip) => slip.id)).size).toBe(3);
    const again = await must(store.slips.issue(sheetId, [bo, ana]));
    expect(again[1]).toEqual(issued[0]);
    expect(await must(store.slips.list(sheetId))).toHaveLength(4);
    const [own, spare] = issued as readonly [Slip, Slip];
    expect(await must(store.slips.find(own.id.toLowerCase()))).toEqual({ id: own.id, sheetId, childId: ana });
    expect(await refusalOf(store.slips.find('ABC'))).toBe('input.invalid');
    expect(await refusalOf(store.slips.assign(spare.id, ana))).toBe('conflict');
    expect(await refusalOf(store.slips.assign(own.id, bo))).toBe('conflict');
  });

  it('records marks, repeats without an event, and keeps the history', async () => {
    const { classId, children } = await classWith(store, ['Ana', 'Bo']);
    const [ana, bo] = children.map((one) => one.id) as [string, string];
    const { id: sheetId } = await must(
      store.sheets.save({ classId, date: '2026-11-25', content: sampleBoard(8) }),
    );
    const batch = {
      sheetId,
      token: 'page',
      by: 'teacher',
      at: AT,
      marks: [
        { childId: ana, rung: 1, state: 'right', text: '' },
        { childId: ana, rung: 2, state: 'wrong', text: ' 75 ' },
        { childId: bo, rung: 1, state: 'absent', text: 'ignored' },
      ],
    } as const;
    const first = await must(store.marks.record(batch));
    expect(first).toMatchObject({ skipped: 0, sequence: 3, canUndo: true, canRedo: false });
    expect(await must(store.marks.record(batch))).toMatchObject({ changed: [], sequence: 3 });
    const marks = await must(store.marks.ofSheet(sheetId));
    expect(marks).toContainEqual({
      sheetId,
      childId: ana,
      rung: 2,
      state: 'wrong',
      text: '75',
      by: 'teacher',
      at: AT,
      sequence: 2,
    });
    expect(marks).toContainEqual(expect.objectContaining({ childId: bo, state: 'absent', text: '' }));
    await must(store.marks.record({ ...batch, marks: [{ childId: ana, rung: 2, state: null, text: '' }] }));
    expect(await must(store.marks.ofChild(ana))).toHaveLength(1);
    const events = await must(store.marks.events(sheetId, 2));
    expect(events.map((event) => event.sequence)).toEqual([3, 4]);
    expect(events[1]).toMatchObject({
      before: { state: 'wrong', text: '75' },
      after: null,
      action: 'record',
      at: AT,
    });
    expect(await must(store.marks.ofClass(classId, { from: '2026-11-25', to: '2026-11-25' }))).toHaveLength(
      2,
    );
    expect(await must(store.marks.ofClass(classId, { from: '2026-11-26' }))).toHaveLength(0);
  });

  it('refuses marks that make no sense, all or nothing', async () => {
    const { classId, children } = await classWith(store, ['Ana']);
    const childId = (children[0] as { id: string }).id;
    const { id: sheetId } = await must(store.sheets.save({ classId, date: null, content: sampleBoard(9) }));
    const record = (...marks: { childId: string; rung: number; state: MarkState; text: string }[]) =>
      refusalOf(store.marks.record({ sheetId, token: 't', by: 'b', at: AT, marks }));
    const good = { childId, rung: 1, state: 'right', text: '' } as const;
    expect(await record(good, { ...good, rung: 13 })).toBe('input.invalid');
    expect(await record(good, { ...good, rung: 0 })).toBe('input.invalid');
    expect(await record(good, { ...good, rung: 2, state: 'splendid' as MarkState })).toBe('input.invalid');
    expect(await record(good, { ...good, rung: 2, text: 'x'.repeat(201) })).toBe('input.invalid');
    expect(await record(good, { ...good, rung: 2, text: 'a\0b' })).toBe('text.invalid');
    expect(await record(good, { ...good, childId: 'nobody' })).toBe('not.found');
    const elsewhere = { sheetId: 'nowhere', token: 't', by: 'b', at: AT, marks: [good] };
    expect(await refusalOf(store.marks.record(elsewhere))).toBe('not.found');
    expect(await refusalOf(store.marks.record({ ...elsewhere, sheetId, at: 'noon' }))).toBe('date.invalid');
    expect(await must(store.marks.ofSheet(sheetId))).toEqual([]);
  });

  it('undoes and redoes like a list of past states', async () => {
    const { classId, children } = await classWith(store, ['Ana', 'Bo']);
    const ids = children.map((one) => one.id);
    const cell = fc.record({
      childId: fc.constantFrom(...ids),
      rung: fc.integer({ min: 1, max: 3 }),
      state: fc.constantFrom('right', 'wrong', 'blank', null),
      text: fc.constant(''),
    });
    const step = fc.oneof(
      fc.record({ marks: fc.array(cell, { minLength: 1, maxLength: 4 }) }),
      fc.constant('undo' as const),
      fc.constant('redo' as const),
    );
    let seed = 1000;
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 6, maxLength: 14, size: 'max' }), async (steps) => {
        const { id: sheetId } = await must(
          store.sheets.save({ classId, date: null, content: sampleBoard(seed++) }),
        );
        const change = { sheetId, token: 'page', by: 'teacher', at: AT };
        const shown = async () =>
          JSON.stringify(
            (await must(store.marks.ofSheet(sheetId))).map((m) => `${m.childId} ${m.rung} ${m.state}`).sort(),
          );
        // The model: every state there was, and where in that list we stand.
        let states = [await shown()];
        let at = 0;
        for (const one of steps) {
          if (typeof one === 'string') {
            const target = at + (one === 'undo' ? -1 : 1);
            const result = await store.marks[one](change);
            expect(result.ok).toBe(states[target] !== undefined);
            if (result.ok) at = target;
          } else {
            const { changed } = await must(store.marks.record({ ...change, marks: one.marks }));
            if (changed.length > 0) states = [...states.slice(0, ++at), await shown()];
          }
          expect(await shown()).toBe(states[at]);
        }
      }),
      { numRuns: 10, seed: 20261125 },
    );
  });

  it("leaves a colleague's later mark alone when undoing", async () => {
    const { classId, children } = await classWith(store, ['Ana']);
    const childId = (children[0] as { id: string }).id;
    const { id: sheetId } = await must(store.sheets.save({ classId, date: null, content: sampleBoard(10) }));
    const mine = { sheetId, token: 'mine', by: 'me', at: AT };
    const yours = { sheetId, token: 'yours', by: 'you', at: AT };
    const mark = (rung: number, state: MarkState) => ({ childId, rung, state, text: '' });
    await must(store.marks.record({ ...mine, marks: [mark(1, 'wrong'), mark(2, 'wrong')] }));
    await must(store.marks.record({ ...yours, marks: [mark(1, 'right')] }));
    const undone = await must(store.marks.undo(mine));
    expect(undone).toMatchObject({ skipped: 1, canUndo: false, canRedo: true });
    expect(undone.changed).toEqual([{ childId, rung: 2, state: null, text: '' }]);
    expect((await must(store.marks.ofSheet(sheetId))).map((m) => [m.rung, m.state, m.by])).toEqual([
      [1, 'right', 'you'],
    ]);
    expect(await refusalOf(store.marks.undo(mine))).toBe('nothing.to-undo');
    expect(await refusalOf(store.marks.redo(yours))).toBe('nothing.to-redo');
  });

  it('keeps every mark when many write to one sheet at once', async () => {
    const { classId, children } = await classWith(store, ['Ana', 'Bo', 'Cy', 'Di']);
    const { id: sheetId } = await must(store.sheets.save({ classId, date: null, content: sampleBoard(11) }));
    const batches = children.flatMap(({ id: childId }) =>
      [1, 2, 3, 4, 5, 6].map((rung) => ({
        sheetId,
        token: childId,
        by: 'teacher',
        at: AT,
        marks: [{ childId, rung, state: 'right' as const, text: '' }],
      })),
    );
    await Promise.all(batches.map(async (batch) => must(store.marks.record(batch))));
    expect(await must(store.marks.ofSheet(sheetId))).toHaveLength(24);
    const sequences = (await must(store.marks.events(sheetId))).map((event) => event.sequence);
    expect(sequences).toEqual(Array.from({ length: 24 }, (_, i) => i + 1));
  });

  it('keeps placements and the day log', async () => {
    const { classId, children } = await classWith(store, ['Ana', 'Bo']);
    const [ana, bo] = children.map((one) => one.id) as [string, string];
    const placement = {
      childId: ana,
      level: 0.1 + 0.2,
      spread: 0.7,
      source: 'check',
      at: AT,
      detail: { asked: 9 },
    } as const;
    await must(store.placements.put({ ...placement, level: 1 }));
    await must(store.placements.put(placement));
    expect(await must(store.placements.list(classId))).toEqual([placement]);
    expect(await refusalOf(store.placements.put({ ...placement, level: Number.NaN }))).toBe('input.invalid');
    const day = {
      classId,
      date: '2026-11-25',
      number: '47',
      activity: 'board',
      note: '',
      absent: [bo],
    } as const;
    await must(store.days.put({ ...day, absent: [ana, bo] }));
    await must(store.days.put(day));
    await must(store.days.put({ ...day, date: '2026-11-24', number: '$4.85', absent: [] }));
    expect((await must(store.days.list(classId))).map((one) => one.number)).toEqual(['$4.85', '47']);
    expect(await must(store.days.list(classId, { from: '2026-11-25' }))).toEqual([day]);
    expect(await refusalOf(store.days.put({ ...day, absent: ['nobody'] }))).toBe('not.found');
  });

  it('really deletes an erased child, and says how much that was', async () => {
    const { classId, children } = await classWith(store, ['Ana Erasable', 'Bo']);
    const [ana, bo] = children.map((one) => one.id) as [string, string];
    const { id: sheetId } = await must(
      store.sheets.save({ classId, date: '2026-11-25', content: sampleBoard(12) }),
    );
    await must(store.slips.issue(sheetId, [ana, bo]));
    const marks = [ana, bo].map((childId) => ({ childId, rung: 1, state: 'right' as const, text: '' }));
    await must(store.marks.record({ sheetId, token: 't', by: 'b', at: AT, marks }));
    await must(
      store.placements.put({ childId: ana, level: 0, spread: 1, source: 'teacher', at: AT, detail: {} }),
    );
    await must(
      store.days.put({ classId, date: '2026-11-25', number: null, activity: null, note: '', absent: [ana] }),
    );
    const erased = await must(store.children.erase(ana));
    expect(erased).toEqual({
      children: 1,
      marks: 1,
      markEvents: 1,
      slips: 1,
      placements: 1,
      absences: 1,
      loans: 0,
      bands: 0,
      timedSheets: 0,
      timedResults: 0,
      timedMoves: 0,
    });
    const everything = JSON.stringify(await must(store.takeSnapshot()));
    expect(everything).not.toContain(ana);
    expect(everything).not.toContain('Ana Erasable');
    expect(everything).toContain(bo);
    expect(await refusalOf(store.children.erase(ana))).toBe('not.found');
    expect(await must(store.classes.erase(classId))).toMatchObject({ children: 1, marks: 1, slips: 1 });
    expect(JSON.stringify(await must(store.takeSnapshot()))).not.toContain(classId);
  });

  it('refuses everything, politely, once closed', async () => {
    const place = postgres ? { databaseUrl: postgres.url('postgres') } : { dataDir: join(folder, 'second') };
    const second = await must(openStore(place));
    await second.close();
    await second.close();
    expect(await refusalOf(second.classes.list())).toBe('store.closed');
  });
});
