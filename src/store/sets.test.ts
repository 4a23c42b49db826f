// Printed sets, who has them, and bands, on the embedded database and on a PostgreSQL server alike.
import { beforeAll, expect, it } from 'vitest';
import type { SetKind } from '#engine/planning/set-shelf.js';
import { describeOnBothDatabases } from '../../test/support/both-databases.js';
import { must, refusalOf } from '../../test/support/must.js';
import type { CardSet, SetContent } from './records.js';
import { checkSnapshot } from './snapshot-schema.js';
import type { Store } from './store.js';

const DAY = '2026-11-25';
const NEXT_DAY = '2026-11-26';
const NOW = new Date(`${DAY}T00:00:00.000Z`);

const content = (seed: number, kind: SetKind = 'chain') =>
  ({ kind, seed, cards: [{ label: 'Ä', answer: null }] }) as SetContent;

describeOnBothDatabases('printed sets', NOW, (on) => {
  let store: Store;

  beforeAll(() => {
    ({ store } = on);
  });

  async function library(setCount: number, names: readonly string[] = ['Ana', 'Bo']) {
    const { id: classId } = await must(store.classes.create({ name: 'Wattle', years: [3, 4] }));
    const children = await must(
      store.children.add(
        classId,
        names.map((givenName) => ({ givenName, familyName: '', alias: '', year: 4, joined: null })),
      ),
    );
    const contents = Array.from({ length: setCount }, (_, i) => content(i));
    const sets = await must(store.sets.save({ classId, band: 'middle', contents }));
    const turn = (date: string, open: [number, number][], close: [number, boolean][] = []) =>
      store.loans.record({
        classId,
        kind: 'chain',
        date,
        open: open.map(([child, set]) => ({ childId: idOf(child), setId: sets[set]?.id ?? '' })),
        close: close.map(([child, finished]) => ({ childId: idOf(child), finished })),
      });
    const idOf = (child: number) => children[child]?.id ?? '';
    return { classId, sets, turn, idOf };
  }

  it('are numbered from 1 in each band and kind, and kept to the byte', async () => {
    const { classId, sets } = await library(3);
    expect(sets.map(({ number }) => number)).toEqual([1, 2, 3]);
    const save = (band: 'middle' | 'upper', ...contents: SetContent[]) =>
      must(store.sets.save({ classId, band, contents }));
    expect((await save('middle', content(9)))[0]).toMatchObject({ number: 4, band: 'middle', seed: 9 });
    expect((await save('upper', content(9)))[0]).toMatchObject({ number: 1, band: 'upper' });
    expect((await save('middle', content(0, 'jigsaw')))[0]).toMatchObject({ number: 1, kind: 'jigsaw' });
    expect((await save('middle', content(9), content(1), content(10))).map(({ number }) => number)).toEqual([
      4, 2, 5,
    ]);
    const got = await must(store.sets.get(sets[1]?.id ?? ''));
    expect(JSON.stringify(got.content)).toBe(JSON.stringify(content(1)));
    expect(got).toMatchObject({ steps: [], note: '', createdAt: NOW.toISOString() });
    const listed = (all: readonly CardSet[]) => all.map((set) => `${set.kind} ${set.band} ${set.number}`);
    expect(listed(await must(store.sets.list(classId)))).toEqual([
      ...[1, 2, 3, 4, 5].map((number) => `chain middle ${number}`),
      'chain upper 1',
      'jigsaw middle 1',
    ]);
    expect(await must(store.sets.list(classId, 'jigsaw'))).toHaveLength(1);
  });

  it('made from several places at once get numbers of their own', async () => {
    const { classId } = await library(0);
    await Promise.all(
      [1, 2, 3, 4].map((seed) =>
        store.sets.save({ classId, band: 'lower', contents: [content(seed), content(seed + 10)] }),
      ),
    );
    expect((await must(store.sets.list(classId))).map(({ number }) => number)).toEqual([
      1, 2, 3, 4, 5, 6, 7, 8,
    ]);
  });

  it('are refused when they are none, and all with them', async () => {
    const { classId } = await library(0);
    const save = (...contents: unknown[]) =>
      refusalOf(store.sets.save({ classId, band: 'lower', contents: contents as SetContent[] }));
    expect(await save(content(1), content(1, 'trail'))).toBe('input.invalid');
    expect(await save({ ...content(1), kind: 'board' })).toBe('input.invalid');
    expect(await save({ kind: 'chain', seed: 1.5 })).toBe('input.invalid');
    expect(await save(...Array.from({ length: 101 }, (_, i) => content(i)))).toBe('input.invalid');
    expect(await refusalOf(store.sets.save({ classId: 'no', band: 'lower', contents: [content(1)] }))).toBe(
      'not.found',
    );
    expect(await must(store.sets.list(classId))).toEqual([]);
  });

  it('are ticked in any order, many at once, and carry a note', async () => {
    const { classId, sets } = await library(3);
    const ids = sets.map(({ id }) => id);
    const mark = (setIds: string[], step: 'printed' | 'cut' | 'boxed', done = true) =>
      store.sets.mark({ classId, setIds, step, done, date: DAY });
    await must(mark(ids, 'cut'));
    await must(mark(ids.slice(0, 2), 'printed'));
    await must(mark(ids, 'cut', false));
    const again = await must(mark([ids[0] ?? '', ids[0] ?? ''], 'boxed'));
    expect(again.map(({ steps }) => steps)).toEqual([['printed', 'boxed']]);
    await must(mark(ids.slice(0, 1), 'boxed'));
    expect((await must(store.sets.list(classId))).map(({ steps }) => steps)).toEqual([
      ['printed', 'boxed'],
      ['printed'],
      [],
    ]);
    expect(await must(store.sets.note(ids[0] ?? '', ' card C is torn '))).toMatchObject({
      note: 'card C is torn',
    });
    expect(await refusalOf(store.sets.note(ids[0] ?? '', 'x'.repeat(501)))).toBe('input.invalid');
    expect(await refusalOf(mark([...ids, 'no'], 'cut'))).toBe('not.found');
    const other = await library(1);
    expect(await refusalOf(mark([other.sets[0]?.id ?? ''], 'cut'))).toBe('not.found');
  });

  it('go only while nothing of them is on paper', async () => {
    const { classId, sets, turn } = await library(3);
    const [one, two, three] = sets.map(({ id }) => id) as [string, string, string];
    await must(store.sets.mark({ classId, setIds: [one], step: 'printed', done: true, date: DAY }));
    await must(turn(DAY, [[0, 1]]));
    expect(await refusalOf(store.sets.erase(one))).toBe('conflict');
    expect(await refusalOf(store.sets.erase(two))).toBe('conflict');
    await must(store.sets.erase(three));
    expect(await refusalOf(store.sets.get(three))).toBe('not.found');
  });

  it('are with one child at a time, and one of a kind with each child', async () => {
    const { classId, sets, turn, idOf } = await library(4);
    const [first] = await must(turn(DAY, [[0, 0]]));
    expect(first).toMatchObject({
      setId: sets[0]?.id,
      childId: idOf(0),
      from: DAY,
      to: null,
      finished: false,
    });
    expect(await refusalOf(turn(DAY, [[1, 0]]))).toBe('conflict');
    expect(await refusalOf(turn(DAY, [[0, 1]]))).toBe('conflict');
    expect(await refusalOf(turn(DAY, [], [[1, true]]))).toBe('conflict');
    expect(await refusalOf(turn('2026-11-24', [], [[0, true]]))).toBe('date.invalid');
    // Finished and next is one turn; the finished set is free for others from tomorrow.
    await must(turn(DAY, [[0, 1]], [[0, true]]));
    expect(await refusalOf(turn(DAY, [[1, 0]]))).toBe('conflict');
    await must(turn(NEXT_DAY, [[1, 0]]));
    expect(await refusalOf(turn(NEXT_DAY, [[1, 7]]))).not.toBe(null);
    const lists = await must(store.loans.list(classId, 'chain'));
    expect(lists.map(({ from, to, finished }) => [from, to, finished])).toEqual([
      [DAY, DAY, true],
      [DAY, null, false],
      [NEXT_DAY, null, false],
    ]);
    expect(await must(store.loans.list(classId, 'trail'))).toEqual([]);
  });

  it('stay as they are when a part of a turn is refused', async () => {
    const { classId, turn } = await library(2);
    await must(turn(DAY, [[0, 0]]));
    const before = await must(store.loans.list(classId, 'chain'));
    expect(
      await refusalOf(
        turn(
          DAY,
          [
            [1, 1],
            [0, 0],
          ],
          [
            [0, true],
            [1, true],
          ],
        ),
      ),
    ).toBe('conflict');
    const other = await library(1);
    expect(
      await refusalOf(
        store.loans.record({
          classId,
          kind: 'chain',
          date: DAY,
          close: [],
          open: [{ childId: other.idOf(0), setId: other.sets[0]?.id ?? '' }],
        }),
      ),
    ).toBe('not.found');
    expect(await must(store.loans.list(classId, 'chain'))).toEqual(before);
  });

  it('are handed out once when two taps come at the same moment', async () => {
    const { turn } = await library(1);
    const answers = await Promise.all([turn(DAY, [[0, 0]]), turn(DAY, [[1, 0]])]);
    expect(answers.map(({ ok }) => ok).sort()).toEqual([false, true]);
  });

  it('go back turn by turn, through the turns of one day', async () => {
    const { classId, turn } = await library(4);
    const undo = (date = NEXT_DAY) => store.loans.undo(classId, 'chain', date);
    expect(await must(store.loans.canUndo(classId, 'chain', DAY))).toBe(false);
    expect(await refusalOf(undo())).toBe('nothing.to-undo');
    const first = await must(
      turn(DAY, [
        [0, 0],
        [1, 1],
      ]),
    );
    const second = await must(turn(NEXT_DAY, [[0, 2]], [[0, true]]));
    await must(turn(NEXT_DAY, [], [[1, false]]));
    expect(await must(store.loans.canUndo(classId, 'chain', NEXT_DAY))).toBe(true);
    expect(await refusalOf(undo(DAY))).toBe('nothing.to-undo');
    expect(await must(undo())).toEqual(second);
    expect(await must(undo())).toEqual(first);
    expect(await must(store.loans.canUndo(classId, 'chain', NEXT_DAY))).toBe(false);
    expect(await refusalOf(undo())).toBe('nothing.to-undo');
    await must(turn(NEXT_DAY, [[0, 3]], [[0, true]]));
    expect(await must(undo())).toEqual(first);
  });

  it('go back without a child who has left meanwhile', async () => {
    const { classId, turn, idOf } = await library(3);
    await must(
      turn(DAY, [
        [0, 0],
        [1, 1],
      ]),
    );
    await must(turn(NEXT_DAY, [[0, 2]], [[0, true]]));
    await must(store.children.leave(idOf(0), NEXT_DAY));
    const loans = await must(store.loans.undo(classId, 'chain', NEXT_DAY));
    const ofLeaver = loans.filter(({ childId }) => childId === idOf(0));
    expect(ofLeaver).toMatchObject([{ to: NEXT_DAY, finished: false }]);
    expect(loans.filter(({ to }) => to === null)).toMatchObject([{ childId: idOf(1) }]);
    expect(await must(store.loans.canUndo(classId, 'chain', NEXT_DAY))).toBe(false);
  });

  it('leave with the child everything that was kept about it', async () => {
    const { classId, turn, idOf } = await library(2);
    await must(
      turn(DAY, [
        [0, 0],
        [1, 1],
      ]),
    );
    await must(store.bands.put(idOf(0), 'upper'));
    expect(await must(store.children.erase(idOf(0)))).toMatchObject({ loans: 1, bands: 1 });
    expect(JSON.stringify(await must(store.takeSnapshot()))).not.toContain(idOf(0));
    await must(turn(NEXT_DAY, [], [[1, true]]));
    expect(await must(store.classes.erase(classId))).toMatchObject({ children: 1, loans: 1 });
    expect(JSON.stringify(await must(store.takeSnapshot()))).not.toContain(classId);
  });

  it('come back when the child who has them leaves', async () => {
    const { classId, turn, idOf } = await library(1);
    await must(turn(DAY, [[0, 0]]));
    await must(store.children.leave(idOf(0), '2026-11-20'));
    expect(await must(store.loans.list(classId, 'chain'))).toMatchObject([{ to: DAY, finished: false }]);
    await must(turn(NEXT_DAY, [[1, 0]]));
  });

  it('keep a band that was chosen for a child', async () => {
    const { classId, idOf } = await library(0);
    await must(store.bands.put(idOf(1), 'lower'));
    await must(store.bands.put(idOf(1), 'upper'));
    await must(store.bands.put(idOf(0), 'lower'));
    await must(store.bands.put(idOf(0), null));
    expect(await must(store.bands.list(classId))).toEqual([{ childId: idOf(1), band: 'upper' }]);
    expect(await refusalOf(store.bands.put('no', 'upper'))).toBe('not.found');
    expect(await refusalOf(store.bands.put(idOf(0), 'best' as 'upper'))).toBe('input.invalid');
  });

  it('are all in a snapshot, and one made before there were sets can still be read', async () => {
    const { classId, sets, turn, idOf } = await library(2);
    await must(
      store.sets.mark({ classId, setIds: [sets[0]?.id ?? ''], step: 'boxed', done: true, date: DAY }),
    );
    await must(turn(DAY, [[0, 0]]));
    await must(store.bands.put(idOf(0), 'upper'));
    const before = await must(store.takeSnapshot());
    const checked = checkSnapshot(JSON.parse(JSON.stringify(before)));
    expect(checked).toEqual({ ok: true, value: before });
    await must(store.loadSnapshot(before, { replace: true }));
    expect(await must(store.takeSnapshot())).toEqual(before);
    expect(await must(store.sets.get(sets[0]?.id ?? ''))).toMatchObject({ steps: ['boxed'] });
    const { sets: _sets, set_steps: _steps, loans: _loans, child_bands: _bands, ...older } = before;
    expect(checkSnapshot(older)).toMatchObject({ ok: true, value: { sets: [], loans: [] } });
  });
});
