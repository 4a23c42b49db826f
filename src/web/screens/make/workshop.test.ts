import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { wishOf } from './wish.js';
import type { FromMaker, MadeSet, MakeOrder, ToMaker } from './worker/messages.js';
import { type Listener, type MakerThread, Workshop } from './workshop.js';

const order: MakeOrder = { wish: wishOf({}, { years: [4], seed: 1 }), locale: 'en-AU', due: [], own: '' };
const set = (name: string) => ({ activity: name, pictures: [], steps: [] }) as unknown as MadeSet;

class FakeThread implements MakerThread {
  readonly heard: ToMaker[] = [];
  isHome = false;
  readonly say: (report: FromMaker) => void;
  readonly stumble: () => void;
  constructor(say: (report: FromMaker) => void, stumble: () => void) {
    this.say = say;
    this.stumble = stumble;
  }
  post(message: ToMaker) {
    this.heard.push(message);
  }
  terminate() {
    this.isHome = true;
  }
  lastId(): number {
    return this.heard.at(-1)?.id ?? 0;
  }
}

let threads: FakeThread[];
let workshop: Workshop;
beforeEach(() => {
  vi.useFakeTimers();
  threads = [];
  workshop = new Workshop((hear, stumble) => {
    const thread = new FakeThread(hear, stumble);
    threads.push(thread);
    return thread;
  });
});
afterEach(() => {
  workshop.close();
  vi.useRealTimers();
});

function listen() {
  const words: string[] = [];
  const listener: Listener = {
    onMade: (at, made) => words.push(`made ${at} ${String(made.activity)}`),
    onRefused: (_, { message }) => words.push(message),
    onEnded: () => words.push('ended'),
  };
  return { words, listener };
}

const thread = (at = 0): FakeThread => {
  const found = threads[at];
  if (!found) throw new Error(`no thread ${at}`);
  return found;
};

describe('a workshop', () => {
  it('calls its maker at the first order only, and passes on what is said', () => {
    const { words, listener } = listen();
    expect(threads).toHaveLength(0);
    workshop.make(order, listener);
    const id = thread().lastId();
    thread().say({ id, said: 'made', at: 0, set: set('a') });
    thread().say({ id, said: 'ended' });
    workshop.swap(order, { set: set('a'), at: 0, place: 2, turn: 1 }, listener);
    expect(thread().heard.at(-1)).toMatchObject({ task: 'swap', place: 2, turn: 1 });
    expect(threads).toHaveLength(1);
    expect(words).toEqual(['made 0 a', 'ended']);
  });

  it('lets nobody hear about an order that was given up', () => {
    const [old, fresh] = [listen(), listen()];
    workshop.make(order, old.listener);
    const first = thread().lastId();
    workshop.make(order, fresh.listener);
    const second = thread().lastId();
    thread().say({ id: first, said: 'made', at: 0, set: set('old') });
    thread().say({ id: first, said: 'ended' });
    thread().say({ id: second, said: 'made', at: 0, set: set('new') });
    thread().say({ id: second, said: 'ended' });
    expect(old.words).toEqual([]);
    expect(fresh.words).toEqual(['made 0 new', 'ended']);
  });

  it('sends a maker home that does not come back from an order nobody wants, and asks a fresh one', () => {
    const { words, listener } = listen();
    workshop.make(order, listener);
    thread().say({ id: thread().lastId(), said: 'made', at: 0, set: set('first') });
    workshop.make(order, listener);
    vi.advanceTimersByTime(10_000);
    expect(thread().isHome).toBe(true);
    const fresh = thread(1);
    expect(fresh.heard).toHaveLength(1);
    // What the old one still says is not heard.
    thread().say({ id: fresh.lastId(), said: 'made', at: 0, set: set('ghost') });
    fresh.say({ id: fresh.lastId(), said: 'made', at: 0, set: set('second') });
    expect(words).toEqual(['made 0 first', 'made 0 second']);
  });

  it('keeps a maker that ends the old order in time, and one that is still starting', () => {
    const { listener } = listen();
    workshop.make(order, listener);
    workshop.make(order, listener);
    vi.advanceTimersByTime(5_000);
    expect(threads).toHaveLength(1);
    thread().say({ id: thread().lastId(), said: 'made', at: 0, set: set('a') });
    workshop.make(order, listener);
    thread().say({ id: thread().lastId() - 1, said: 'ended' });
    vi.advanceTimersByTime(5_000);
    expect(threads).toHaveLength(1);
  });

  it('says so when a maker stays silent for too long, or stumbles, and works again afterwards', () => {
    const slow = listen();
    workshop.make(order, slow.listener);
    vi.advanceTimersByTime(60_000);
    expect(slow.words).toEqual(['This is taking too long.', 'ended']);
    expect(thread().isHome).toBe(true);
    const broken = listen();
    workshop.make(order, broken.listener);
    thread(1).stumble();
    expect(broken.words).toEqual(['Something went wrong while making this.', 'ended']);
    const well = listen();
    workshop.make(order, well.listener);
    thread(2).say({ id: thread(2).lastId(), said: 'ended' });
    expect(well.words).toEqual(['ended']);
    vi.advanceTimersByTime(60_000);
    expect(well.words).toEqual(['ended']);
  });
});
