import { beforeEach, expect, it } from 'vitest';
import type { MarkEntry, MarksSaved } from '#api/marking.js';
import { Outbox } from './outbox.js';

const entry = (rung: number, typed = ''): MarkEntry => ({
  childId: 'a',
  rung,
  state: typed === '' ? 'right' : null,
  typed,
});
const SAVED: MarksSaved = { marks: [], canUndo: true, canRedo: false };
const IDLE = { unsent: 0, isSending: false, failure: null, isFinal: false, isKept: true };
const settle = () => new Promise((resolve) => setTimeout(resolve, 0));

let kept: Map<string, string>;
let sent: { entries: MarkEntry[]; succeed: () => void; fail: (why?: string) => void }[];
let waits: { run: () => void; delayMs: number }[];

function open(): Outbox {
  return new Outbox({
    storageKey: 'unsent/s',
    storage: {
      getItem: (key) => kept.get(key) ?? null,
      setItem: (key, value) => void kept.set(key, value),
      removeItem: (key) => void kept.delete(key),
    },
    send: (entries) =>
      new Promise((resolve, reject) => {
        sent.push({ entries, succeed: () => resolve(SAVED), fail: (why = 'away') => reject(new Error(why)) });
      }),
    isFinal: (failure) => (failure as Error).message === 'gone',
    later: (run, delayMs) => {
      const wait = { run, delayMs };
      waits.push(wait);
      return () => void waits.splice(waits.indexOf(wait), 1);
    },
    onSaved: () => {},
    onChange: () => {},
  });
}

beforeEach(() => {
  kept = new Map();
  sent = [];
  waits = [];
});

it('sends at once, and gathers what comes meanwhile into one next request', async () => {
  const outbox = open();
  outbox.add([entry(1)]);
  outbox.add([entry(2)]);
  outbox.add([entry(3), entry(2, '75')]);
  expect(sent.map(({ entries }) => entries)).toEqual([[entry(1)]]);
  sent[0]?.succeed();
  await settle();
  expect(sent[1]?.entries).toEqual([entry(3), entry(2, '75')]);
  sent[1]?.succeed();
  await settle();
  expect(outbox.state).toEqual(IDLE);
  expect(kept.size).toBe(0);
});

it('keeps a cell that changed while its older value was under way', async () => {
  const outbox = open();
  outbox.add([entry(1)]);
  outbox.add([entry(1, '75')]);
  sent[0]?.succeed();
  await settle();
  expect(sent[1]?.entries).toEqual([entry(1, '75')]);
});

it('keeps everything while the server is away and tries again, less and less often', async () => {
  const outbox = open();
  outbox.add([entry(1)]);
  sent[0]?.fail();
  await settle();
  outbox.add([entry(2)]);
  expect(sent).toHaveLength(1);
  expect(outbox.state).toMatchObject({ unsent: 2, isSending: false, failure: new Error('away') });
  for (let attempt = 1; attempt <= 6; attempt++) {
    waits.shift()?.run();
    sent[attempt]?.fail();
    await settle();
  }
  expect(waits.map(({ delayMs }) => delayMs)).toEqual([15_000]);
  outbox.sendNow();
  expect(waits).toEqual([]);
  expect(sent[7]?.entries).toEqual([entry(1), entry(2)]);
  sent[7]?.succeed();
  await settle();
  expect(outbox.state).toEqual(IDLE);
});

it('finds what an earlier page could not send', async () => {
  open().add([entry(1), entry(2, '75')]);
  const later = open();
  expect(later.entries).toEqual([entry(1), entry(2, '75')]);
  expect(later.holds('a', 2)).toBe(true);
  later.sendNow();
  expect(sent[1]?.entries).toEqual([entry(1), entry(2, '75')]);
});

it('does without a damaged or forbidden storage', async () => {
  kept.set('unsent/s', '[{"childId":1},{]');
  expect(open().entries).toEqual([]);
  kept.set('unsent/s', '[{"childId":1},null,{"childId":"a","rung":4,"state":"blank","typed":""}]');
  expect(open().entries).toHaveLength(1);
});

it('stops trying and keeps the entries when a refusal is final, until they are let go', async () => {
  const outbox = open();
  outbox.add([entry(1)]);
  sent[0]?.fail('gone');
  await settle();
  expect(outbox.state).toMatchObject({ unsent: 1, isFinal: true });
  expect(waits).toEqual([]);
  expect(kept.size).toBe(1);
  outbox.drop();
  expect(outbox.state).toEqual(IDLE);
  expect(kept.size).toBe(0);
});

it('says when the browser keeps no second copy', () => {
  const outbox = open();
  kept.set = () => {
    throw new Error('full');
  };
  outbox.add([entry(1)]);
  expect(outbox.state).toMatchObject({ unsent: 1, isKept: false });
});
