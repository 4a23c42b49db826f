// Which set a child works on next. Nobody gets a set twice until the child has had all others of the band, or a review
// is due; no set is in two hands on one day; a child who is away keeps its set.
import type { Band } from '../curriculum/bands.js';
import { hashText } from '../random/rng.js';
import {
  finishesOf,
  isInUse,
  isReviewDue,
  loanOf,
  type RotationChild,
  type RotationSet,
  type RotationState,
} from './rotation-state.js';
import { boxOf } from './set-shelf.js';

/** `new`: not had yet; `review`: its topics are due again; `again`: the child has had every set of the band. */
export const SET_REASONS = ['new', 'review', 'again'] as const;
export type SetReason = (typeof SET_REASONS)[number];

export interface NextSet {
  readonly setId: string;
  readonly reason: SetReason;
}

export interface RotationProblem {
  readonly code: 'rotation.has-one' | 'rotation.away' | 'rotation.none-ready' | 'rotation.all-held';
  readonly message: string;
  readonly hint: string;
}

export type NextSetResult =
  | { readonly ok: true; readonly value: NextSet }
  | { readonly ok: false; readonly error: RotationProblem };

/**
 * The set that the child gets now; the same state gives the same set. Refused while the child has a set or is away, when
 * no set of the band is ready, and when every set that the child may have is with someone else today.
 */
export function assignNext(state: RotationState, child: RotationChild): NextSetResult {
  const kept = keeps(state, child);
  if (kept) return { ok: false, error: kept };
  const [first] = choicesFor(state, child);
  return first ? { ok: true, value: first } : { ok: false, error: whyNone(state, child.band) };
}

/**
 * A set for each child, in the order of `children`: as many children as can be served at once get one, which taking
 * turns would not achieve, since the first child might take the only set that the second may have. Those who have waited
 * longest come first where there are too few. Refusals are those of {@link assignNext}.
 */
export function assignDay(
  state: RotationState,
  children: readonly RotationChild[],
): readonly { readonly childId: string; readonly next: NextSetResult }[] {
  const open = children.filter((child) => !keeps(state, child));
  const choices = new Map(open.map((child) => [child.id, choicesFor(state, child)]));
  const takenBy = new Map<string, string>();
  for (const child of inWaitingOrder(state, open)) serve(child.id, choices, takenBy, new Set());
  const given = new Map([...takenBy].map(([setId, childId]) => [childId, setId]));
  return children.map((child) => {
    const kept = keeps(state, child);
    if (kept) return { childId: child.id, next: { ok: false, error: kept } };
    const value = choices.get(child.id)?.find(({ setId }) => setId === given.get(child.id));
    return {
      childId: child.id,
      next: value ? { ok: true, value } : { ok: false, error: whyNone(state, child.band) },
    };
  });
}

/** Every set that the child may have now, best first: a review, then the lowest box, then as the seed decides. */
export function choicesFor(state: RotationState, child: RotationChild): NextSet[] {
  const ready = state.sets.filter((set) => set.isReady && set.band === child.band);
  const turns = new Map(ready.map((set) => [set.id, finishesOf(state, child.id, set.id)]));
  const turnsOf = (set: RotationSet) => turns.get(set.id) ?? [];
  const hasNew = ready.some((set) => turnsOf(set).length === 0);
  const chance = (set: RotationSet) => hashText(`${state.seed}/${child.id}/${set.id}`);
  const isReview = (set: RotationSet) => hasNew && isReviewDue(state, child.id, set);
  return ready
    .filter((set) => !isInUse(state, set.id) && (!hasNew || turnsOf(set).length === 0 || isReview(set)))
    .sort(
      (a, b) =>
        Number(isReview(b)) - Number(isReview(a)) ||
        turnsOf(a).length - turnsOf(b).length ||
        compareDays(turnsOf(a).at(-1), turnsOf(b).at(-1)) ||
        boxOf(a.number) - boxOf(b.number) ||
        chance(a) - chance(b) ||
        a.number - b.number,
    )
    .map((set) => ({
      setId: set.id,
      reason: turnsOf(set).length === 0 ? 'new' : isReview(set) ? 'review' : 'again',
    }));
}

function compareDays(a = '', b = ''): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Gives the child a set, moving others to another of their choices where that makes room (an augmenting path: Kuhn 1955). */
function serve(
  childId: string,
  choices: ReadonlyMap<string, readonly NextSet[]>,
  takenBy: Map<string, string>,
  asked: Set<string>,
): boolean {
  for (const { setId } of choices.get(childId) ?? []) {
    if (asked.has(setId)) continue;
    asked.add(setId);
    const holder = takenBy.get(setId);
    if (holder === undefined || serve(holder, choices, takenBy, asked)) {
      takenBy.set(setId, childId);
      return true;
    }
  }
  return false;
}

/** Longest without a set first; equal ones as the seed and the day decide. */
function inWaitingOrder(state: RotationState, children: readonly RotationChild[]): RotationChild[] {
  const last = new Map<string, string>();
  for (const { childId, to } of state.loans)
    if (to !== null && to > (last.get(childId) ?? '')) last.set(childId, to);
  const chance = ({ id }: RotationChild) => hashText(`${state.seed}/${state.date}/${id}`);
  return [...children].sort(
    (a, b) => compareDays(last.get(a.id), last.get(b.id)) || chance(a) - chance(b) || (a.id < b.id ? -1 : 1),
  );
}

/** Why the child is to be left as it is, or null. */
function keeps(state: RotationState, child: RotationChild): RotationProblem | null {
  if (loanOf(state, child.id))
    return {
      code: 'rotation.has-one',
      message: 'This child already has a set.',
      hint: 'Press “Finished, next” once it is done.',
    };
  if (child.isAbsent)
    return {
      code: 'rotation.away',
      message: 'This child is away today.',
      hint: 'Take “away” back first.',
    };
  return null;
}

function whyNone(state: RotationState, band: Band): RotationProblem {
  return state.sets.some((set) => set.isReady && set.band === band)
    ? {
        code: 'rotation.all-held',
        message: 'Every set that is still new to this child is in use today.',
        hint: 'Make a few more sets of this band, or choose a set by hand.',
      }
    : {
        code: 'rotation.none-ready',
        message: `There is no ${band} set in a box yet.`,
        hint: 'Tick sets as “in the box” once they are, or make some first.',
      };
}
