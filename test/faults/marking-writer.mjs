// Records marks through the compiled store until it is killed, and says after each that it is acknowledged.
//   node marking-writer.mjs <address of the store module> <data folder> [how many]
// Prints "open", "state <JSON of what was found>", then "ack <n> <commits> <syncs>" for each mark, at once.
import { writeSync } from 'node:fs';
import process from 'node:process';

const [storeModule, dataDir, many = 'Infinity'] = process.argv.slice(2);
const pause = new Int32Array(new SharedArrayBuffer(4));
/** Writes a line before going on; a reader who is slow is waited for. */
const say = (line) => {
  for (let left = Buffer.from(`${line}\n`); left.length > 0; ) {
    try {
      left = left.subarray(writeSync(1, left));
    } catch (error) {
      if (error.code !== 'EAGAIN') throw error;
      Atomics.wait(pause, 0, 0, 5);
    }
  }
};
const { openStore } = await import(storeModule);

const must = (result) => {
  if (!result.ok) {
    say(`refused ${result.error.code} ${result.error.message}`);
    process.exit(3);
  }
  return result.value;
};
const AT = '2026-11-25T01:02:03Z';
const rungs = Array.from({ length: 12 }, (_, i) => ({ rung: i + 1 }));
const board = {
  kind: 'board',
  seed: 1,
  number: '47',
  years: [4],
  side: 'front',
  locale: 'en-AU',
  rungs,
  proof: {},
};

const store = must(await openStore({ dataDir }));
say('open');
let [schoolClass] = must(await store.classes.list());
schoolClass ??= must(await store.classes.create({ name: 'Wattle', years: [4] }));
let children = must(await store.children.list(schoolClass.id));
if (children.length === 0) {
  const inputs = Array.from({ length: 25 }, (_, i) => ({
    givenName: `Child ${i}`,
    familyName: '',
    alias: '',
    year: 4,
    joined: null,
  }));
  children = must(await store.children.add(schoolClass.id, inputs));
}
const sheet = must(await store.sheets.save({ classId: schoolClass.id, date: '2026-11-25', content: board }));
const events = must(await store.marks.events(sheet.id));
const marks = must(await store.marks.ofSheet(sheet.id));
say(
  `state ${JSON.stringify({
    events: events.map((event) => ({
      sequence: event.sequence,
      cell: `${event.childId} ${event.rung}`,
      text: event.after?.text,
    })),
    marks: marks.map((mark) => ({
      cell: `${mark.childId} ${mark.rung}`,
      text: mark.text,
      sequence: mark.sequence,
    })),
  })}`,
);

const first = events.length + 1;
for (let n = first; n < first + Number(many); n++) {
  const childId = children[n % children.length].id;
  const mark = { childId, rung: 1 + (n % 12), state: 'wrong', text: String(n) };
  must(await store.marks.record({ sheetId: sheet.id, token: 'page', by: 'teacher', at: AT, marks: [mark] }));
  const { commits, syncs } = await store.syncCounts();
  say(`ack ${n} ${commits} ${syncs}`);
}
await store.close();
