// The page's side of the talk with the maker: one order at a time, a newer one in place of an older one. A maker that does
// not come back from an order nobody wants any more, or at all, is sent home and a fresh one is called.
import type { FromMaker, MadeSet, MakeOrder, Refusal, ToMaker } from './worker/messages.js';

/** A maker at work in its thread. */
export interface MakerThread {
  post(message: ToMaker): void;
  terminate(): void;
}

/** Starts a maker; `hear` is told all that it says, `stumble` that it broke. */
export type CallMaker = (hear: (report: FromMaker) => void, stumble: () => void) => MakerThread;

export interface Listener {
  readonly onMade: (at: number, set: MadeSet) => void;
  readonly onRefused: (at: number, refusal: Refusal) => void;
  readonly onEnded: () => void;
}

/** How long a maker may go on with an order after a newer one was given, in ms: longer than a fresh start takes. */
const PATIENCE_MS = 600;
/** How long any order may stay without a word, in ms. */
const LONGEST_SILENCE_MS = 20_000;

const TOO_LONG: Refusal = {
  message: 'This is taking too long.',
  hint: 'Choose a smaller size or other skills, or make another one.',
};
const STUMBLED: Refusal = {
  message: 'Something went wrong while making this.',
  hint: 'Make another one, or reload the page.',
};

type Task = ToMaker extends infer T ? (T extends ToMaker ? Omit<T, 'id'> : never) : never;

interface Job {
  readonly message: ToMaker;
  readonly listener: Listener;
}

export class Workshop {
  readonly #callMaker: CallMaker;
  #thread: MakerThread | null = null;
  /** Whether the thread has said anything yet: while it is still starting, patience has no end. */
  #hasSpoken = false;
  #lastId = 0;
  /** The order whose reports count. */
  #current: Job | null = null;
  /** Ids that the maker has been given and has not ended. */
  readonly #open = new Set<number>();
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(callMaker: CallMaker) {
    this.#callMaker = callMaker;
  }

  /** Makes all sets of an order; whatever was under way is given up, and its listener hears nothing more. */
  make(order: MakeOrder, listener: Listener): void {
    this.#give({ task: 'make', order }, listener);
  }

  /** One set with another question in it. */
  swap(
    order: MakeOrder,
    swap: { readonly set: MadeSet; readonly at: number; readonly place: number; readonly turn: number },
    listener: Listener,
  ): void {
    this.#give({ task: 'swap', order, ...swap }, listener);
  }

  close(): void {
    this.#sendHome();
    this.#current = null;
  }

  #give(task: Task, listener: Listener): void {
    const message = { ...task, id: ++this.#lastId };
    this.#current = { message, listener };
    const isBusy = this.#open.size > 0 && this.#hasSpoken;
    this.#post(message);
    this.#wait(isBusy ? PATIENCE_MS : LONGEST_SILENCE_MS);
  }

  #post(message: ToMaker): void {
    this.#thread ??= this.#call();
    this.#open.add(message.id);
    this.#thread.post(message);
  }

  #call(): MakerThread {
    const thread: MakerThread = this.#callMaker(
      (report) => thread === this.#thread && this.#hear(report),
      () => thread === this.#thread && this.#giveUp(STUMBLED),
    );
    return thread;
  }

  #hear(report: FromMaker): void {
    this.#hasSpoken = true;
    if (report.said === 'ended') this.#open.delete(report.id);
    const job = this.#current;
    if (!job) return;
    // A word about an older order shows that the maker is on its way to the newer one.
    this.#wait(LONGEST_SILENCE_MS);
    if (report.id !== job.message.id) return;
    if (report.said === 'made') job.listener.onMade(report.at, report.set);
    else if (report.said === 'refused') job.listener.onRefused(report.at, report.refusal);
    else {
      this.#current = null;
      clearTimeout(this.#timer);
      job.listener.onEnded();
    }
  }

  #wait(limitMs: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      const job = this.#current;
      if (!job) return;
      if (limitMs === PATIENCE_MS) {
        this.#sendHome();
        this.#post(job.message);
        this.#wait(LONGEST_SILENCE_MS);
      } else this.#giveUp(TOO_LONG);
    }, limitMs);
  }

  #giveUp(refusal: Refusal): void {
    const job = this.#current;
    this.close();
    job?.listener.onRefused(0, refusal);
    job?.listener.onEnded();
  }

  #sendHome(): void {
    clearTimeout(this.#timer);
    this.#thread?.terminate();
    this.#thread = null;
    this.#hasSpoken = false;
    this.#open.clear();
  }
}
