// What the store costs on this disk: opening, and marks that are synced to the disk before they are acknowledged. Beside it
// a PostgreSQL server on the same disk behind the same store, syncing too, and bare synced writes to a file.
import { closeSync, fdatasyncSync, openSync, readFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { runnerImport } from 'vite';
import { openStore } from '#store/open-store.js';
import { inFolder, median, ROOT, timed } from './support/measure.mjs';
import { count, ms, tell } from './support/tell.mjs';

const CHILDREN = 27;
const RUNGS = 12;
const SINGLE_MARKS = 200;
const OPENINGS = 3;
const AT = '2026-11-25T01:02:03Z';

const board = JSON.parse(readFileSync(join(ROOT, 'test/fixtures/board-47-front.json'), 'utf8'));

function must(result) {
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

/** A class of 27 with a saved board. */
async function makeClass(store) {
  const { id: classId } = must(await store.classes.create({ name: 'Wattle', years: [4, 5] }));
  const inputs = Array.from({ length: CHILDREN }, (_, i) => ({
    givenName: `Child ${i + 1}`,
    familyName: '',
    alias: '',
    year: 4 + (i % 2),
    joined: null,
  }));
  const children = must(await store.children.add(classId, inputs));
  const sheet = must(await store.sheets.save({ classId, date: '2026-11-25', content: board }));
  return { classId, sheetId: sheet.id, childIds: children.map((child) => child.id) };
}

/** Records marks in batches of so many; milliseconds and syncs a batch. */
async function record(store, sheetId, batches) {
  const before = await store.syncCounts();
  const times = [];
  for (const marks of batches) {
    const batch = { sheetId, token: 'bench', by: 'teacher', at: AT, marks };
    const { clockMs, value } = await timed(() => store.marks.record(batch));
    must(value);
    times.push(clockMs);
  }
  const after = await store.syncCounts();
  const syncs = after.syncs === null ? null : after.syncs - before.syncs;
  return { times, syncs, total: times.reduce((sum, time) => sum + time, 0) };
}

const mark = (childId, rung, state) => ({ childId, rung, state, text: state === 'wrong' ? '46' : '' });

/** The same work on either database. */
async function work(store) {
  const { classId, sheetId, childIds } = await makeClass(store);
  const singles = Array.from({ length: SINGLE_MARKS }, (_, n) => [
    mark(childIds[n % CHILDREN], 1 + (n % RUNGS), n % 5 === 0 ? 'wrong' : 'right'),
  ]);
  const wholeBoard = childIds.map((childId) =>
    Array.from({ length: RUNGS }, (_, i) => mark(childId, i + 1, i > 7 ? 'blank' : 'wrong')),
  );
  const single = await record(store, sheetId, singles);
  const byChild = await record(store, sheetId, wholeBoard);
  const once = await record(store, sheetId, [
    childIds.flatMap((childId) =>
      Array.from({ length: RUNGS }, (_, i) => mark(childId, i + 1, i > 5 ? 'blank' : 'right')),
    ),
  ]);
  const read = await timed(() => store.marks.ofClass(classId));
  must(read.value);
  return { single, byChild, once, read: read.clockMs };
}

/** Milliseconds of each of so many bare writes of 8 kB, synced one by one. */
function bareWrites(folder) {
  const file = openSync(join(folder, 'bare'), 'w');
  const page = Buffer.alloc(8192, 1);
  const times = [];
  for (let n = 0; n < SINGLE_MARKS; n++) {
    const start = performance.now();
    writeSync(file, page);
    fdatasyncSync(file);
    times.push(performance.now() - start);
  }
  closeSync(file);
  return median(times);
}

async function onServer() {
  const { module: support } = await runnerImport(`${ROOT}test/support/temporary-postgres.ts`, {
    configFile: false,
    logLevel: 'error',
    root: ROOT,
  });
  if (support.findPostgres() === null) return null;
  const server = await support.startPostgres({ withSync: true });
  try {
    const open = () => openStore({ databaseUrl: server.url('postgres') });
    const first = await timed(open);
    await must(first.value).close();
    const later = await timed(open);
    const store = must(later.value);
    const done = await work(store);
    await store.close();
    return { ...done, first: first.clockMs, later: later.clockMs };
  } finally {
    server.stop();
  }
}

await inFolder(async (folder) => {
  const dataDir = join(folder, 'data');
  const first = await timed(() => openStore({ dataDir }));
  await must(first.value).close();
  const later = [];
  for (let i = 0; i < OPENINGS; i++) {
    const opened = await timed(() => openStore({ dataDir }));
    later.push(opened.clockMs);
    await must(opened.value).close();
  }
  const store = must(await openStore({ dataDir }));
  const own = await work(store);
  await store.close();
  const bare = bareWrites(folder);
  const server = await onServer();
  const beside = (figure) => (server ? `PostgreSQL server: ${figure(server)}` : 'no PostgreSQL here');

  tell({
    what: 'open a new data folder, ready for marks',
    measured: ms(first.clockMs),
    beside: beside((one) => `${ms(one.first)}, the server running already`),
  });
  tell({
    what: 'open it again',
    measured: ms(median(later)),
    beside: beside((one) => ms(one.later)),
  });
  tell({
    what: `one mark, synced, then acknowledged (${SINGLE_MARKS} one after another)`,
    measured: `${ms(median(own.single.times))}, ${count((1000 * SINGLE_MARKS) / own.single.total)} a second; ${own.single.syncs} syncs`,
    target: 'a sync for every mark',
    met: own.single.syncs >= SINGLE_MARKS,
    beside: beside(
      (one) => `${ms(median(one.single.times))}, ${count((1000 * SINGLE_MARKS) / one.single.total)} a second`,
    ),
  });
  tell({
    what: 'a bare write of 8 kB, synced, on the same disk',
    measured: ms(bare),
  });
  tell({
    what: `a board of ${CHILDREN} x ${RUNGS} marks, a child at a time`,
    measured: `${ms(own.byChild.total)}; ${own.byChild.syncs} syncs`,
    beside: beside((one) => ms(one.byChild.total)),
  });
  tell({
    what: `the same ${CHILDREN * RUNGS} marks at once`,
    measured: `${ms(own.once.total)}; ${own.once.syncs} syncs`,
    beside: beside((one) => ms(one.once.total)),
  });
  tell({
    what: 'read all marks of the class',
    measured: ms(own.read),
    beside: beside((one) => ms(one.read)),
  });
});
