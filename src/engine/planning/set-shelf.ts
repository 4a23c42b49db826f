// How printed sets are kept: numbered in tens to a box, and made ready step by step.

/** The activities that are printed as sets of loose pieces, cut once and lent to one child after another. */
export const SET_KINDS = ['chain', 'trail', 'jigsaw'] as const;
export type SetKind = (typeof SET_KINDS)[number];

/** Sets to a box (common practice). */
export const SETS_IN_A_BOX = 10;

/** The box of a set number, both from 1: sets 1 to 10 are in box 1. */
export function boxOf(setNumber: number): number {
  return Math.ceil(setNumber / SETS_IN_A_BOX);
}

/** What an adult does with a printed set, in the usual order. Any of it may be ticked first. */
export const SET_STEPS = ['printed', 'cut', 'laminated', 'boxed'] as const;
export type SetStep = (typeof SET_STEPS)[number];

/** True once the set lies in its box: then it can be handed out, whatever was skipped on the way. */
export function isReady(done: readonly SetStep[]): boolean {
  return done.includes('boxed');
}

/** The step to do next; null when the set is ready. */
export function nextStep(done: readonly SetStep[]): SetStep | null {
  return isReady(done) ? null : (SET_STEPS.find((step) => !done.includes(step)) ?? null);
}
