// Timed practice on the embedded database and on a PostgreSQL server alike.
import { beforeAll, expect, it } from 'vitest';
import { composeTimed } from '#engine/activities/timed/compose.js';
import type { Timed } from '#engine/activities/timed/timed.js';
import { describeOnBothDatabases } from '../../test/support/both-databases.js';
import { must, refusalOf } from '../../test/support/must.js';
import type { TimedOutcome } from './records.js';
import { checkSnapshot } from './snapshot-schema.js';
import type { Store } from './store.js';

const DAY = '2026-11-25';
const NEXT_DAY = '2026-11-26';
const AT = `${DAY}T00:00:00.000Z`;

function outcome(attempted: number, wrong: number[] = []): TimedOutcome {
  return { attempted, wrong, written: {}, redoWrong: [], minutes: 2 };
}

describeOnBothDatabases('timed practice', new Date(AT), (on) => {
  let store: Store;
  let twos: Timed;
  let fives: Timed;

  beforeAll(async () => {
    ({ store } = on);
    twos = await must(composeTimed({ level: 10, forms: 1, seed: 1, locale: 'en-AU' }));
    fives = await must(composeTimed({ level: 11, forms: 1, seed: 1, locale: 'en-AU' }));
  });

  async function classOf(...names: string[]) {
    const { id: classId } = await must(store.classes.create({ name: 'Wattle', years: [3, 4] }));
    const children = await must(
      store.children.add(
        classId,
        names.map((givenName) => ({ givenName, familyName: '', alias: '', year: 4, joined: null })),
      ),
    );
    return { classId, ids: children.map(({ id }) => id) as [string, ...string[]] };
  }

  it('gives each child one sheet a day, which may change until it is marked', async () => {
    const { classId, ids } = await classOf('Ana', 'Bo');
    const redo = twos.forms[0]?.questions.slice(0, 2) ?? [];
    const issue = (content: Timed) =>
      must(
        store.timed.issue({
          classId,
          date: DAY,
          sheets: ids.map((childId) => ({ childId, content, redo })),
        }),
      );
    const first = await issue(twos);
    expect(first.map(({ childId, levelId, outcome: came }) => [childId, levelId, came])).toEqual(
      ids.map((id) => [id, 'table-2-10', null]),
    );
    expect(first[0]).toMatchObject({ content: twos, redo });
    const again = await issue(fives);
    expect(again.map(({ id, levelId }) => [id, levelId])).toEqual(first.map(({ id }) => [id, 'table-5']));
    const [ana] = again;
    await must(store.timed.record([{ sheetId: ana?.id ?? '', outcome: outcome(20) }], AT));
    expect((await issue(twos)).map(({ levelId }) => levelId)).toEqual(['table-5', 'table-2-10']);
    expect(await must(store.timed.list(classId, { from: NEXT_DAY }))).toEqual([]);
    expect((await must(store.timed.find(ana?.id.toLowerCase() ?? ''))).id).toBe(ana?.id);
    expect(await refusalOf(store.timed.find('K7Q2'))).toBe('input.invalid');
  });

  it('records results, takes them back one by one, and refuses what the sheet cannot have', async () => {
    const { classId, ids } = await classOf('Ana');
    const [sheet] = await must(
      store.timed.issue({ classId, date: DAY, sheets: [{ childId: ids[0], content: twos, redo: [] }] }),
    );
    const sheetId = sheet?.id ?? '';
    const record = (came: TimedOutcome) => store.timed.record([{ sheetId, outcome: came }], AT);
    for (const wrong of [
      outcome(61),
      outcome(-1),
      outcome(10, [11]),
      { ...outcome(10), redoWrong: [1] },
      { ...outcome(10), minutes: 0 },
      { ...outcome(10), written: { 12: '7' } },
    ])
      expect(await refusalOf(record(wrong))).toBe('input.invalid');
    await must(record(outcome(30, [4, 7])));
    await must(record(outcome(31, [4])));
    expect((await must(store.timed.find(sheetId))).outcome).toEqual(outcome(31, [4]));
    expect((await must(store.timed.undo(sheetId))).outcome).toEqual(outcome(30, [4, 7]));
    expect((await must(store.timed.undo(sheetId))).outcome).toBeNull();
    expect(await refusalOf(store.timed.undo(sheetId))).toBe('nothing.to-undo');
  });

  it('keeps a ladder of the class and moves that can be taken back', async () => {
    const { classId, ids } = await classOf('Ana');
    expect(await must(store.timed.ladder(classId))).toBeNull();
    const ladder = {
      steps: [{ kind: 'given', id: 'table-5' } as const],
      minutes: 3,
      digitsPerMinute: null,
      questions: 60,
    };
    await must(store.timed.putLadder(classId, ladder));
    expect(await must(store.timed.ladder(classId))).toEqual(ladder);
    expect(await refusalOf(store.timed.putLadder(classId, { ...ladder, steps: [] }))).toBe('input.invalid');
    await must(store.timed.putLadder(classId, null));
    expect(await must(store.timed.ladder(classId))).toBeNull();
    const move = { childId: ids[0], date: DAY, levelId: 'table-5', evidence: 'Chosen.' };
    await must(store.timed.move(move));
    await must(store.timed.move({ ...move, levelId: 'table-3' }));
    expect((await must(store.timed.moves(classId))).map(({ levelId }) => levelId)).toEqual([
      'table-5',
      'table-3',
    ]);
    await must(store.timed.undoMove(ids[0]));
    expect(await must(store.timed.moves(classId))).toEqual([move]);
    await must(store.timed.undoMove(ids[0]));
    expect(await refusalOf(store.timed.undoMove(ids[0]))).toBe('nothing.to-undo');
  });

  it('goes into a backup whole, and out of the school with the child and the class', async () => {
    const { classId, ids } = await classOf('Ana', 'Bo');
    const sheets = await must(
      store.timed.issue({
        classId,
        date: DAY,
        sheets: ids.map((childId) => ({ childId, content: twos, redo: [] })),
      }),
    );
    await must(
      store.timed.record(
        sheets.map(({ id }) => ({ sheetId: id, outcome: outcome(9, [2]) })),
        AT,
      ),
    );
    await must(store.timed.move({ childId: ids[0], date: DAY, levelId: 'table-5', evidence: '' }));
    const snapshot = await must(store.takeSnapshot());
    expect(checkSnapshot(structuredClone(snapshot))).toEqual({ ok: true, value: snapshot });
    await must(store.loadSnapshot(snapshot, { replace: true }));
    expect(await must(store.takeSnapshot())).toEqual(snapshot);
    expect(await must(store.children.erase(ids[0]))).toMatchObject({
      timedSheets: 1,
      timedResults: 1,
      timedMoves: 1,
    });
    expect(await must(store.classes.erase(classId))).toMatchObject({ timedSheets: 1, timedResults: 1 });
    const after = await must(store.takeSnapshot());
    expect(after.timed_sheets.filter(({ child_id: child }) => ids.includes(String(child)))).toEqual([]);
  });
});
