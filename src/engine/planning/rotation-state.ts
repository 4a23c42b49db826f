// Who has had which set: what the rotation knows before it decides. A loan lasts from the day a child receives a set to
// the day it is finished or taken back, both included, however many days that takes.
import type { Band } from '../curriculum/bands.js';
import { daysBetween } from '../numbers/calendar.js';
import { loanBook } from './loan-book.js';

export interface RotationSet {
  readonly id: string;
  /** From 1 within its band. */
  readonly number: number;
  readonly band: Band;
  /** Whether the set lies in its box, so that it can be handed out. */
  readonly isReady: boolean;
  /** Skills that its questions practise, by id. */
  readonly skills: readonly string[];
}

export interface SetLoan {
  readonly setId: string;
  readonly childId: string;
  /** ISO dates; `to` is null while the child has the set. */
  readonly from: string;
  readonly to: string | null;
  /** False while the child has the set, and for one that was taken back before it was finished. */
  readonly isFinished: boolean;
}

export interface RotationChild {
  readonly id: string;
  readonly band: Band;
  readonly isAbsent: boolean;
}

/** One activity of one class on one day. */
export interface RotationState {
  /** ISO date of the day that is planned. */
  readonly date: string;
  /** Decides between sets that are equally good. */
  readonly seed: number;
  readonly sets: readonly RotationSet[];
  /** In the order in which they began. */
  readonly loans: readonly SetLoan[];
  /** Skills that the class may be forgetting; a set about them may come back early. */
  readonly dueSkills: readonly string[];
}

/** A set comes back for review no sooner than this many days after it was finished (common practice: four weeks). */
export const REVIEW_GAP_DAYS = 28;

/** The loan of the set that the child has now; undefined when it has none. */
export function loanOf(state: RotationState, childId: string): SetLoan | undefined {
  return loanBook(state.loans).ofChild(childId).current;
}

/** Whether anyone has or had the set on the day: until tomorrow it belongs to that child. */
export function isInUse(state: RotationState, setId: string): boolean {
  const last = loanBook(state.loans).lastDayOf(setId);
  return last !== undefined && last >= state.date;
}

/** The days on which the child finished the set, oldest first. */
export function finishesOf(state: RotationState, childId: string, setId: string): readonly string[] {
  return loanBook(state.loans).ofChild(childId).finishes.get(setId) ?? [];
}

/**
 * Whether the set may come back to the child before the others are used up: at least half of its skills are due, it was
 * finished {@link REVIEW_GAP_DAYS} or more days ago, and the child's last set was a new one.
 */
export function isReviewDue(state: RotationState, childId: string, set: RotationSet): boolean {
  const last = finishesOf(state, childId, set.id).at(-1);
  if (last === undefined || daysBetween(last, state.date) < REVIEW_GAP_DAYS) return false;
  const due = set.skills.filter((skill) => state.dueSkills.includes(skill)).length;
  if (due === 0 || due * 2 < set.skills.length) return false;
  const { lastFinished, finishes } = loanBook(state.loans).ofChild(childId);
  return lastFinished === undefined || finishes.get(lastFinished)?.length === 1;
}
