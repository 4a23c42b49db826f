// Marks on their way to the server. One request at a time, everything that gathers meanwhile goes into the next; what is
// not acknowledged stays here and in the browser's storage, and is sent again, also after the page was closed.
import type { MarkEntry, MarksSaved } from '#api/marking.js';

export interface OutboxParts {
  readonly storageKey: string;
  readonly storage: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;
  readonly send: (entries: MarkEntry[]) => Promise<MarksSaved>;
  /** True for a failure that trying again cannot mend. */
  readonly isFinal: (failure: unknown) => boolean;
  /** Runs something later; returns how to call it off. */
  readonly later: (run: () => void, delayMs: number) => () => void;
  readonly onSaved: (saved: MarksSaved) => void;
  readonly onChange: () => void;
}

export interface OutboxState {
  readonly unsent: number;
  readonly isSending: boolean;
  /** What the last attempt threw; null while all goes well. */
  readonly failure: unknown;
  /** True when nothing is tried again by itself. */
  readonly isFinal: boolean;
  /** False when the browser keeps no second copy of what is unsent. */
  readonly isKept: boolean;
}

const FIRST_WAIT_MS = 1_000;
const LONGEST_WAIT_MS = 15_000;
const MOST_AT_ONCE = 1_000;

export class Outbox {
  readonly #parts: OutboxParts;
  /** The latest entry of every cell that is not acknowledged yet, oldest first. */
  readonly #entries: Map<string, MarkEntry>;
  #isSending = false;
  #failure: unknown = null;
  #waitMs = FIRST_WAIT_MS;
  #callOff: (() => void) | null = null;
  #isKept = true;

  constructor(parts: OutboxParts) {
    this.#parts = parts;
    this.#entries = new Map(readEntries(parts).map((entry) => [cellOf(entry), entry]));
  }

  get state(): OutboxState {
    return {
      unsent: this.#entries.size,
      isSending: this.#isSending,
      failure: this.#failure,
      isFinal: this.#failure !== null && this.#parts.isFinal(this.#failure),
      isKept: this.#isKept,
    };
  }
  get entries(): readonly MarkEntry[] {
    return [...this.#entries.values()];
  }
  holds(childId: string, rung: number): boolean {
    return this.#entries.has(cellOf({ childId, rung }));
  }

  /** Takes entries in and sends them as soon as the way is free. */
  add(entries: readonly MarkEntry[]): void {
    for (const entry of entries) {
      // Deleting first keeps the order in which cells were last changed.
      this.#entries.delete(cellOf(entry));
      this.#entries.set(cellOf(entry), entry);
    }
    this.#keep();
    this.#parts.onChange();
    if (this.#callOff === null) void this.#send();
  }

  /** Tries at once, whatever the wait. */
  sendNow(): void {
    this.#callOff?.();
    this.#callOff = null;
    void this.#send();
  }

  /** Lets go of everything unsent: for marks that the server refuses for good. */
  drop(): void {
    this.#callOff?.();
    this.#callOff = null;
    this.#entries.clear();
    this.#failure = null;
    this.#keep();
    this.#parts.onChange();
  }

  async #send(): Promise<void> {
    if (this.#isSending || this.#entries.size === 0) return;
    this.#isSending = true;
    this.#parts.onChange();
    const batch = this.entries.slice(0, MOST_AT_ONCE);
    try {
      const saved = await this.#parts.send([...batch]);
      for (const entry of batch)
        if (this.#entries.get(cellOf(entry)) === entry) this.#entries.delete(cellOf(entry));
      this.#failure = null;
      this.#waitMs = FIRST_WAIT_MS;
      this.#isSending = false;
      this.#keep();
      this.#parts.onSaved(saved);
      this.#parts.onChange();
      void this.#send();
    } catch (failure) {
      this.#failure = failure;
      this.#isSending = false;
      if (!this.#parts.isFinal(failure)) {
        this.#callOff = this.#parts.later(() => {
          this.#callOff = null;
          void this.#send();
        }, this.#waitMs);
        this.#waitMs = Math.min(LONGEST_WAIT_MS, this.#waitMs * 2);
      }
      this.#parts.onChange();
    }
  }

  #keep(): void {
    const { storage, storageKey } = this.#parts;
    try {
      if (this.#entries.size === 0) storage.removeItem(storageKey);
      else storage.setItem(storageKey, JSON.stringify(this.entries));
      this.#isKept = true;
    } catch {
      // A full or forbidden storage costs only the second copy; the entries are still here and are still sent.
      this.#isKept = false;
    }
  }
}

function cellOf({ childId, rung }: Pick<MarkEntry, 'childId' | 'rung'>): string {
  return `${childId}/${rung}`;
}

function readEntries({ storage, storageKey }: OutboxParts): MarkEntry[] {
  try {
    const kept: unknown = JSON.parse(storage.getItem(storageKey) ?? '[]');
    return Array.isArray(kept) ? kept.filter(isEntry) : [];
  } catch {
    return [];
  }
}

function isEntry(value: unknown): value is MarkEntry {
  const entry = value as MarkEntry | null;
  return (
    typeof entry?.childId === 'string' && typeof entry.rung === 'number' && typeof entry.typed === 'string'
  );
}
