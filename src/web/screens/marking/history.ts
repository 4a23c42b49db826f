// What can be taken back and brought back in this window: steps of changed cells, newest last.
import type { MarkState } from '#api/marking.js';

/** What a cell holds; a typed answer keeps its text beside the verdict. */
export interface Content {
  readonly state: MarkState | null;
  readonly typed: string;
}

export const OPEN: Content = { state: null, typed: '' };

export interface CellChange {
  readonly childId: string;
  readonly rung: number;
  readonly before: Content;
  readonly after: Content;
}

/** One press of the marker: every cell that it changed. */
export type Step = readonly CellChange[];

export interface History {
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
}

export const NO_HISTORY: History = { done: [], undone: [] };

/** More than a class's slips take. */
const STEPS_KEPT = 600;

/** The history after a step; what had been taken back is gone. An empty step changes nothing. */
export function withStep(history: History, step: Step): History {
  return step.length === 0 ? history : { done: [...history.done, step].slice(-STEPS_KEPT), undone: [] };
}

/** The last step turned round, with the history without it; null when there is none. */
export function takeBack({ done, undone }: History): { step: Step; history: History } | null {
  const last = done.at(-1);
  if (!last) return null;
  const step = last.map((change) => ({ ...change, before: change.after, after: change.before }));
  return { step, history: { done: done.slice(0, -1), undone: [...undone, last] } };
}

/** The step that was taken back last, with the history in which it is done again; null when there is none. */
export function bringBack({ done, undone }: History): { step: Step; history: History } | null {
  const step = undone.at(-1);
  return step ? { step, history: { done: [...done, step], undone: undone.slice(0, -1) } } : null;
}
