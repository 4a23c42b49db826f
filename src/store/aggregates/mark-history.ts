// Which batch of a place of work an undo takes back next, and which a redo brings back: two stacks replayed from the record.
import type { MarkAction } from '../records.js';

export interface BatchEntry {
  readonly batch: number;
  readonly action: MarkAction;
  /** The batch taken back or brought back; null for a recording. */
  readonly target: number | null;
}

export interface History {
  /** The batch that an undo takes back; null when there is none. */
  readonly undoable: number | null;
  /** The batch that a redo brings back; null when there is none. */
  readonly redoable: number | null;
}

/** Replays the batches of one token on one sheet, oldest first. Recording something new gives up what could be redone. */
export function historyOf(entries: readonly BatchEntry[]): History {
  const done: number[] = [];
  const undone: number[] = [];
  for (const { batch, action, target } of entries) {
    if (action === 'record') {
      done.push(batch);
      undone.length = 0;
    } else if (target !== null) {
      const [from, to] = action === 'undo' ? [done, undone] : [undone, done];
      if (from.at(-1) === target) to.push(from.pop() as number);
    }
  }
  return { undoable: done.at(-1) ?? null, redoable: undone.at(-1) ?? null };
}
