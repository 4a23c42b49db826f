// The rota through its days: handed out, finished, away, back for review, taken back; and the shelf that it hands out from.
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { ClassDetail } from '#api/class.js';
import { rotaPaperPath } from '#api/endpoints.js';
import type { LibrarySet, RotaView } from '#api/sets.js';
import { composeChain } from '#engine/activities/chain/compose.js';
import { composeJigsaw } from '#engine/activities/jigsaw/compose.js';
import { composeTrail } from '#engine/activities/trail/compose.js';
import { addDays } from '#engine/numbers/calendar.js';
import { openTestApp, problemOf, request, type TestApp, TODAY } from '../../../../test/support/test-app.js';
import { dueOn } from './day-plan.js';
import { rotaSheet } from './rota-sheet.js';

let app: TestApp;
beforeAll(async () => {
  app = await openTestApp();
});
afterAll(() => app.close());
beforeEach(() => app.turnTo(TODAY));
afterEach(() => expect(app.faults).toEqual([]));

const TOMORROW = addDays(TODAY, 1);
type Band = LibrarySet['band'];

async function classOf(...children: readonly (readonly [name: string, year: number])[]) {
  return app.call(
    'createClass',
    {},
    {
      name: 'Wattle',
      years: [2, 4, 5],
      children: children.map(([givenName, year]) => ({ givenName, familyName: '', alias: '', year })),
    },
  );
}

const make = async ({ id }: ClassDetail, count: number, band: Band = 'middle', more: object = {}) =>
  (await app.call('makeSets', { classId: id }, { kind: 'chain', band, count, ...more })).sets;

/** New sets that lie in their boxes. */
async function box(room: ClassDetail, count: number, band: Band = 'middle', more: object = {}) {
  const sets = await make(room, count, band, more);
  const change = { setIds: sets.map(({ id }) => id), step: 'boxed' as const, done: true };
  return (await app.call('markSets', { classId: room.id }, change)).sets;
}

/** The rota of a class, and each tap on it. */
function rotaOf({ id: classId, children }: ClassDetail) {
  const params = { classId, kind: 'chain' };
  const child = (name: string) => children.find(({ shownAs }) => shownAs === name)?.id ?? name;
  return {
    look: () => app.call('rota', params, null),
    handOut: () => app.call('handOut', params, {}),
    finish: (name: string) => app.call('finishSet', params, { childId: child(name) }),
    takeBack: (name: string) => app.call('takeBackSet', params, { childId: child(name) }),
    give: (name: string, setId: string) => app.call('giveSet', params, { childId: child(name), setId }),
    undo: () => app.call('undoRota', params, {}),
    away: (name: string, absent = true) =>
      app.call('changeAway', { classId }, { childId: child(name), absent }),
    band: (name: string, band: Band | null) => app.call('changeBand', { childId: child(name) }, { band }),
    refused: async (
      name: 'handOut' | 'finishSet' | 'takeBackSet' | 'giveSet' | 'undoRota',
      body: object = {},
    ) => (await app.refused(name, params, body)).problem.code,
    child,
  };
}

const heldBy = (view: RotaView) =>
  Object.fromEntries(view.children.map(({ shownAs, holds }) => [shownAs, holds?.number ?? null]));
const held = (view: RotaView, name: string) => view.children.find(({ shownAs }) => shownAs === name)?.holds;
const waits = (view: RotaView, name: string) =>
  view.children.find(({ shownAs }) => shownAs === name)?.waiting?.message ?? null;

describe('the shelf', () => {
  it('numbers sets on, and no two of them are alike', async () => {
    const room = await classOf(['Ana', 4]);
    const first = await make(room, 2);
    const second = [...(await make(room, 2)), ...(await make(room, 1, 'upper'))];
    expect([...first, ...second].map(({ band, number, box: at }) => `${band} ${number} ${at}`)).toEqual([
      'middle 1 1',
      'middle 2 1',
      'middle 3 1',
      'middle 4 1',
      'upper 1 1',
    ]);
    expect(first[0]).toMatchObject({ steps: [], nextStep: 'printed', heldBy: null, finishes: 0, note: '' });
    expect(first[0]?.topics.length).toBeGreaterThan(3);
    const contents = await Promise.all(
      [...first, ...second].map(async ({ id }) => (await app.call('set', { setId: id }, null)).content),
    );
    expect(new Set(contents.map((content) => JSON.stringify({ ...content, seed: 0 }))).size).toBe(5);
    expect((await app.call('library', { classId: room.id }, null)).sets).toHaveLength(5);
  });

  it('makes trails and jigsaws too, and says at once what cannot be made', async () => {
    const room = await classOf(['Ana', 4]);
    const [trail] = await make(room, 1, 'lower', { kind: 'trail', rows: 3, columns: 3 });
    const { content } = await app.call('set', { setId: trail?.id ?? '' }, null);
    expect(content).toMatchObject({ kind: 'trail', rows: 3, columns: 3, years: [1, 2] });
    const [jigsaw] = await make(room, 1, 'lower', { kind: 'jigsaw', level: 'middle' });
    expect(jigsaw?.topics).toEqual(['Mixed rows', '4 by 5, middle']);
    const wish = { kind: 'chain', band: 'middle', count: 1 };
    const refused = async (more: object) =>
      app.refused('makeSets', { classId: room.id }, { ...wish, ...more });
    expect(await refused({ kind: 'jigsaw', rows: 99, columns: 5 })).toMatchObject({ status: 400 });
    expect(await refused({ skills: ['no'] })).toMatchObject({
      status: 400,
      problem: { code: 'supply.skill' },
    });
    expect(await refused({ cards: 99 })).toMatchObject({ status: 400, problem: { code: 'chain.cards' } });
    expect(await refused({ count: 11 })).toMatchObject({ status: 400 });
    expect((await app.call('library', { classId: room.id }, null)).sets).toHaveLength(2);
  });

  it('keeps what was made elsewhere when its proof holds, once', async () => {
    const room = await classOf(['Ana', 4]);
    const made = composeChain({ years: [3, 4], seed: 5, locale: 'en-AU' });
    if (!made.ok) throw new Error(made.error.message);
    const chain = JSON.parse(JSON.stringify(made.value));
    const keep = (...contents: object[]) =>
      app.call('keepSets', { classId: room.id }, { band: 'middle', contents: contents as never });
    const [kept] = (await keep(chain)).sets;
    expect(kept).toMatchObject({ number: 1, kind: 'chain' });
    expect(await keep(chain)).toEqual({ sets: [kept] });
    expect((await app.call('set', { setId: kept?.id ?? '' }, null)).content).toEqual(chain);

    const refused = async (...contents: object[]) =>
      (await app.refused('keepSets', { classId: room.id }, { band: 'middle', contents })).problem.code;
    const cards = chain.cards as { answer: object | null }[];
    // Two strips with one answer; a proof that says more than is true; a strip too few.
    const twins = cards.with(2, { ...cards[2], answer: cards[1]?.answer ?? null });
    expect(await refused(chain, { ...chain, cards: twins })).toBe('sets.proof');
    expect(await refused({ ...chain, proof: { ...chain.proof, slips: 1 } })).toBe('sets.proof');
    expect(await refused({ ...chain, cards: cards.slice(1) })).toBe('sets.form');
    expect(await refused({ kind: 'trail', seed: 1 })).toBe('sets.form');
    expect((await app.call('library', { classId: room.id }, null)).sets).toHaveLength(1);
  });

  it('keeps trails and jigsaws only as they were proved', async () => {
    const room = await classOf(['Ana', 4]);
    const base = { years: [3, 4], seed: 5, locale: 'en-AU' } as const;
    const made = [
      composeTrail({ ...base, rows: 4, columns: 4 }),
      composeJigsaw({ ...base, rows: 5, columns: 7, level: 'hard' }),
    ].map((result) => (result.ok ? JSON.parse(JSON.stringify(result.value)) : null));
    const [trail, jigsaw] = made;
    for (const content of made) {
      const { sets } = await app.call(
        'keepSets',
        { classId: room.id },
        { band: 'middle', contents: [content] },
      );
      expect(sets[0]).toMatchObject({ number: 1, kind: content.kind });
    }
    const refused = async (content: object) =>
      (await app.refused('keepSets', { classId: room.id }, { band: 'middle', contents: [content] })).problem
        .code;
    // A forged proof, two tiles alike, an edge that meets nothing, a number changed, another proof, half a jigsaw.
    const { tiles } = trail;
    expect(await refused({ ...trail, proof: { ...trail.proof, leastBreaks: 9 } })).toBe('sets.proof');
    // Tiles that do not belong: some cannot even be drawn, the others have no single arrangement.
    const twin = { ...tiles[0], answer: tiles[1].answer };
    const torn = { ...tiles[0], edges: ['a', 'a', 'a', 'a'] };
    for (const changed of [tiles.with(1, twin), tiles.with(0, torn)])
      expect(await refused({ ...trail, tiles: changed })).toMatch(/^sets\.(form|proof)$/);
    const at = jigsaw.cells.findIndex(({ text }: { text: string }) => /^\d+$/.test(text));
    const wrong = jigsaw.cells.with(at, { text: '999', expression: '999' });
    expect(await refused({ ...jigsaw, cells: wrong })).toBe('sets.proof');
    expect(await refused({ ...jigsaw, proof: { ...jigsaw.proof, wrongTries: 0 } })).toBe('sets.proof');
    expect(await refused({ ...jigsaw, pieces: jigsaw.pieces.slice(1) })).toBe('sets.form');
  });

  it('ticks steps, takes notes, and lets go only what is not on paper', async () => {
    const room = await classOf(['Ana', 4]);
    const [one, two] = await make(room, 2);
    const mark = async (step: string, done: boolean, sets = [one, two]) =>
      (
        await app.call(
          'markSets',
          { classId: room.id },
          { setIds: sets.map((set) => set?.id ?? ''), step: step as never, done },
        )
      ).sets.map(({ nextStep }) => nextStep);
    expect(await mark('printed', true)).toEqual(['cut', 'cut']);
    expect(await mark('boxed', true, [one])).toEqual([null]);
    expect(await mark('boxed', false, [one])).toEqual(['cut']);
    expect(await mark('printed', false, [two])).toEqual(['printed']);
    const noted = await app.call('noteSet', { setId: one?.id ?? '' }, { note: ' strip C is torn ' });
    expect(noted.set.note).toBe('strip C is torn');
    expect(await app.refused('removeSet', { setId: one?.id ?? '' }, null)).toMatchObject({ status: 409 });
    await app.call('removeSet', { setId: two?.id ?? '' }, null);
    expect((await app.call('library', { classId: room.id }, null)).sets).toHaveLength(1);
  });
});

describe('the rota', () => {
  it('hands out a set of each child’s band, and on “finished” the next', async () => {
    const room = await classOf(['Ana', 4], ['Bo', 4], ['Cy', 2]);
    const rota = rotaOf(room);
    expect(waits(await rota.look(), 'Ana')).toMatch(/no middle set/);
    expect(await rota.refused('handOut')).toBe('rotation.none-ready');
    await make(room, 3);
    expect(await rota.refused('handOut')).toBe('rotation.none-ready');
    await box(room, 3);
    await box(room, 1, 'lower');
    const morning = await rota.handOut();
    expect(held(morning, 'Cy')).toMatchObject({ band: 'lower', number: 1, since: TODAY });
    const [ana, bo] = [held(morning, 'Ana'), held(morning, 'Bo')];
    expect(ana).toMatchObject({ band: 'middle', why: 'New to this child.' });
    expect(bo?.id).not.toBe(ana?.id);
    expect(await rota.refused('handOut')).toBe('rota.complete');
    const later = await rota.finish('Ana');
    expect(held(later, 'Ana')).toMatchObject({ band: 'middle' });
    expect(new Set([ana?.id, bo?.id, held(later, 'Ana')?.id]).size).toBe(3);
    expect(held(later, 'Bo')).toEqual(bo);
    // Another page still shows the set that is done.
    const stale = { childId: rota.child('Ana'), setId: ana?.id };
    expect(await rota.refused('finishSet', stale)).toBe('conflict');
    expect(later.children[0]?.had).toEqual([ana?.id]);
    // The only lower set is done: nothing else for Cy, who is told why.
    const none = await rota.finish('Cy');
    expect(held(none, 'Cy')).toBeNull();
    expect(waits(none, 'Cy')).toMatch(/in use today/);
    const shelf = (await app.call('library', { classId: room.id }, null)).sets;
    expect(shelf.find(({ id }) => id === ana?.id)).toMatchObject({ heldBy: null, finishes: 1 });
    expect(shelf.find(({ id }) => id === bo?.id)).toMatchObject({ heldBy: 'Bo', finishes: 0 });
    expect(await rota.refused('finishSet', { childId: rota.child('Cy') })).toBe('conflict');
    expect(await rota.refused('finishSet', { childId: 'no' })).toBe('child.missing');
  });

  it('leaves children alone who are away: they keep their set, or get none', async () => {
    const room = await classOf(['Ana', 4], ['Bo', 4]);
    const rota = rotaOf(room);
    await box(room, 3);
    await rota.away('Bo');
    const morning = await rota.handOut();
    expect(held(morning, 'Bo')).toBeNull();
    expect(morning.children[1]).toMatchObject({ absent: true, waiting: null });
    app.turnTo(TOMORROW);
    const next = await rota.handOut();
    const bo = held(next, 'Bo');
    expect(bo).toMatchObject({ since: TOMORROW });
    app.turnTo(addDays(TODAY, 2));
    await rota.away('Bo');
    expect(await rota.refused('finishSet', { childId: rota.child('Bo') })).toBe('rotation.away');
    expect(held(await rota.finish('Ana'), 'Bo')).toEqual(bo);
    await rota.away('Bo', false);
    expect(held(await rota.finish('Bo'), 'Bo')?.id).not.toBe(bo?.id);
  });

  it('gives nobody a set twice before the others are used up', async () => {
    const room = await classOf(['Ana', 4], ['Bo', 4]);
    const rota = rotaOf(room);
    await box(room, 3);
    const had: Record<string, string[]> = { Ana: [], Bo: [] };
    const reasons: string[] = [];
    for (let day = 0; day < 8; day++) {
      app.turnTo(addDays(TODAY, day));
      const view = await rota.handOut();
      for (const name of ['Ana', 'Bo']) {
        // Both may wait for the same last set; then one of them gets it on the next day.
        const one = held(view, name);
        if (!one) continue;
        had[name]?.push(one.id);
        if (had[name]?.length === 4) reasons.push(one.why);
        await rota.finish(name);
        if (held(await rota.look(), name)) await rota.takeBack(name);
      }
    }
    for (const sets of Object.values(had)) {
      expect(sets.length).toBeGreaterThan(3);
      expect(new Set(sets.slice(0, 3)).size).toBe(3);
    }
    expect(reasons).toEqual(Array(2).fill('Had before: this child has finished every set of the band.'));
  });

  it('brings a set back early when its topics are due for review', async () => {
    const room = await app.call('startDemo', {}, {});
    const rota = rotaOf(room);
    const ahead = addDays(TODAY, 28);
    const due = await dueOn(app.services, room.id, ahead);
    const skill = (due.ok ? due.value : []).find(
      (id) => composeChain({ years: [3, 4], seed: 1, locale: 'en-AU', skills: [id] }).ok,
    );
    const child = room.children.find(({ year }) => year === 4);
    if (!skill || !child) throw new Error('nothing is due in the demo class');
    const [due1] = await box(room, 1, 'middle', { skills: [skill] });
    await rota.give(child.id, due1?.id ?? '');
    await rota.finish(child.id);
    for (let tens = 0; tens < 2; tens++) await box(room, 10);
    app.turnTo(addDays(ahead, -1));
    expect(held(await rota.handOut(), child.shownAs)).toMatchObject({ why: 'New to this child.' });
    await rota.undo();
    app.turnTo(ahead);
    const view = await rota.handOut();
    expect(held(view, child.shownAs)).toMatchObject({ id: due1?.id });
    expect(held(view, child.shownAs)?.why).toMatch(/due for review/);
  });

  it('follows a band that was chosen for a child', async () => {
    const room = await classOf(['Ana', 4], ['Bo', 4]);
    const rota = rotaOf(room);
    await box(room, 2);
    await box(room, 1, 'upper');
    await rota.band('Bo', 'upper');
    const view = await rota.handOut();
    expect(view.children.map(({ band, bandChosen }) => [band, bandChosen])).toEqual([
      ['middle', false],
      ['upper', true],
    ]);
    expect(held(view, 'Bo')).toMatchObject({ band: 'upper' });
    await rota.band('Bo', null);
    const back = await rota.look();
    expect(back.children[1]).toMatchObject({ band: 'middle', bandChosen: false });
    expect(held(back, 'Bo')?.why).toMatch(/another band/);
  });

  it('lets the teacher give and take back, and takes back the last tap of today', async () => {
    const room = await classOf(['Ana', 4], ['Bo', 4]);
    const rota = rotaOf(room);
    const [one, two] = await box(room, 2);
    const [three] = await make(room, 1);
    const start = await rota.look();
    expect(start).toMatchObject({ canUndo: false, free: [{ number: 1 }, { number: 2 }] });
    await rota.give('Ana', one?.id ?? '');
    const give = { childId: rota.child('Bo') };
    expect(await rota.refused('giveSet', { ...give, setId: one?.id })).toBe('conflict');
    expect(await rota.refused('giveSet', { ...give, setId: three?.id })).toBe('rota.not-ready');
    expect(await rota.refused('giveSet', { ...give, setId: 'no' })).toBe('not.found');
    expect(await rota.refused('takeBackSet', give)).toBe('conflict');
    const swapped = await rota.give('Ana', two?.id ?? '');
    expect(heldBy(swapped)).toEqual({ Ana: 2, Bo: null });
    expect(swapped.children[0]?.had).toEqual([]);
    expect(heldBy(await rota.takeBack('Ana'))).toEqual({ Ana: null, Bo: null });
    expect(heldBy(await rota.undo())).toEqual({ Ana: 2, Bo: null });
    expect(heldBy(await rota.undo())).toEqual({ Ana: 1, Bo: null });
    expect(await rota.undo()).toEqual(start);
    expect(await rota.refused('undoRota')).toBe('nothing.to-undo');
    await rota.give('Ana', one?.id ?? '');
    app.turnTo(TOMORROW);
    expect(await rota.look()).toMatchObject({ canUndo: false });
    expect(await rota.refused('undoRota')).toBe('nothing.to-undo');
  });

  it('forgets a child who is erased, and the set is free', async () => {
    const room = await classOf(['Ana', 4], ['Bo', 4]);
    const rota = rotaOf(room);
    await box(room, 1);
    await rota.away('Bo');
    await rota.handOut();
    await rota.band('Ana', 'upper');
    const id = rota.child('Ana');
    await app.call('eraseChild', { childId: id }, null);
    const everything = await app.services.store.takeSnapshot();
    expect(JSON.stringify(everything)).not.toContain(id);
    expect(await rota.look()).toMatchObject({ children: [{ shownAs: 'Bo' }], free: [{ number: 1 }] });
  });

  it('is printed with what comes next, for those who are away too', async () => {
    const room = await classOf(['Ana', 4], ['Bo', 4]);
    const rota = rotaOf(room);
    const paper = (kind: string, classId = room.id) => app.fetch(request(rotaPaperPath(classId, kind)));
    await box(room, 6);
    await rota.away('Bo');
    const view = await rota.handOut();
    const sheet = await rotaSheet(app.services, { classId: room.id, kind: 'chain' });
    if (!sheet.ok) throw new Error(sheet.error.message);
    const [ana, bo] = sheet.value.rows;
    expect(ana).toMatchObject({ name: 'Ana', isAway: false });
    expect(ana?.cells[0]).toMatchObject({ number: held(view, 'Ana')?.number, box: 1 });
    expect(new Set(ana?.cells.map((cell) => cell?.number)).size).toBe(4);
    expect(bo).toMatchObject({ name: 'Bo', isAway: true });
    expect(bo?.cells[0]).toBeNull();
    expect(bo?.cells.slice(1)).not.toContain(null);
    const printed = await paper('chain');
    expect(printed.headers.get('content-type')).toBe('application/pdf');
    expect(printed.headers.get('x-page-count')).toBe('1');
    expect((await problemOf(await paper('board'))).status).toBe(404);
    expect((await problemOf(await paper('chain', 'no'))).status).toBe(404);
    const nobody = await app.call('createClass', {}, { name: 'Empty', years: [4], children: [] });
    expect((await problemOf(await paper('chain', nobody.id))).problem.code).toBe('print.empty');
  });

  it('has one page for each kind and no others', async () => {
    const room = await classOf(['Ana', 4]);
    for (const kind of ['trail', 'jigsaw'])
      expect(await app.call('rota', { classId: room.id, kind }, null)).toMatchObject({ kind });
    expect((await app.refused('rota', { classId: room.id, kind: 'board' }, null)).status).toBe(404);
  });
});
