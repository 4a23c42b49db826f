// The sets of the wish on the page, made in the background and made anew whenever the wish changes.
import { useEffect, useRef, useState } from 'react';
import type { FromMaker, MadeSet, MakeOrder, Refusal } from './worker/messages.js';
import { type CallMaker, Workshop } from './workshop.js';

interface Bench {
  /** The order that all this belongs to. */
  readonly key: string;
  /** The sets made so far, in order. */
  readonly sets: readonly MadeSet[];
  /** Why the sets that are missing cannot be made; null when nothing is wrong. */
  readonly refusal: Refusal | null;
  readonly hasEnded: boolean;
  readonly swapRefusal: Refusal | null;
  /** The turns of the swaps that stand. */
  readonly swaps: readonly number[];
  /** The sets as they were before each swap, the latest last. */
  readonly earlier: readonly (readonly MadeSet[])[];
}

const EMPTY: Bench = {
  key: '',
  sets: [],
  refusal: null,
  hasEnded: false,
  swapRefusal: null,
  swaps: [],
  earlier: [],
};

export interface Maker extends Pick<Bench, 'sets' | 'refusal' | 'swapRefusal'> {
  readonly isWorking: boolean;
  /** Names what is in `sets`: it changes whenever they do. */
  readonly version: string;
  /** Whether the sets belong to the wish before: they stay until the first new one is there. */
  readonly isOld: boolean;
  /** Asks for another question in a set; what comes of it appears in `sets`, or in `swapRefusal`. */
  readonly swap: (at: number, place: number) => void;
  /** Takes the last swap back; null when there is none. */
  readonly takeBack: (() => void) | null;
}

const callMaker: CallMaker = (hear, stumble) => {
  const worker = new Worker(new URL('./worker/make-worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<FromMaker>) => hear(data));
  worker.addEventListener('error', stumble);
  return {
    // A thread has no origin to name, unlike a window.
    // oxlint-disable-next-line unicorn/require-post-message-target-origin
    post: (message) => worker.postMessage(message),
    terminate: () => worker.terminate(),
  };
};

/** `order` is null until everything it needs is known. */
export function useMaker(order: MakeOrder | null): Maker {
  const [bench, setBench] = useState<Bench>(EMPTY);
  const workshop = useRef<Workshop | null>(null);
  const turn = useRef(0);
  const key = order === null ? '' : JSON.stringify(order);

  useEffect(() => {
    const opened = new Workshop(callMaker);
    workshop.current = opened;
    return () => opened.close();
  }, []);

  useEffect(() => {
    if (key === '') return;
    const upTo = (at: number) => (before: Bench) =>
      before.key === key ? before.sets.slice(0, at) : EMPTY.sets;
    workshop.current?.make(JSON.parse(key) as MakeOrder, {
      onMade: (at, set) => setBench((before) => ({ ...EMPTY, key, sets: [...upTo(at)(before), set] })),
      onRefused: (at, refusal) => setBench((before) => ({ ...EMPTY, key, sets: upTo(at)(before), refusal })),
      onEnded: () => setBench((before) => ({ ...before, hasEnded: true })),
    });
  }, [key]);

  const isOld = bench.key !== key;
  const isWorking = isOld || !bench.hasEnded;
  const { sets, refusal, swapRefusal, earlier } = bench;

  function swap(at: number, place: number): void {
    const set = sets[at];
    if (!order || !set || isWorking) return;
    const mine = ++turn.current;
    workshop.current?.swap(
      order,
      { set, at, place, turn: mine },
      {
        onMade: (_, made) =>
          setBench((before) => ({
            ...before,
            sets: before.sets.map((one, index) => (index === at ? made : one)),
            swapRefusal: null,
            swaps: [...before.swaps, mine],
            earlier: [...before.earlier, before.sets],
          })),
        onRefused: (_, reason) => setBench((before) => ({ ...before, swapRefusal: reason })),
        onEnded: () => {},
      },
    );
  }

  const last = earlier.at(-1);
  const version = `${bench.key}/${bench.swaps.join()}`;
  return {
    sets,
    refusal: isOld ? null : refusal,
    swapRefusal,
    isWorking,
    version,
    isOld,
    swap,
    takeBack: last
      ? () =>
          setBench({
            ...bench,
            sets: last,
            swapRefusal: null,
            swaps: bench.swaps.slice(0, -1),
            earlier: earlier.slice(0, -1),
          })
      : null,
  };
}
