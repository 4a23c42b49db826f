// The loans of a class sorted by child and by set, so that a year of them can be asked many times over.
import type { SetLoan } from './rotation-state.js';

/** Later than any day: the end of a loan that has none yet. */
const STILL_OUT = '9999-12-31';

export interface ChildLoans {
  /** The loan of the set that the child has now. */
  readonly current: SetLoan | undefined;
  /** The days on which the child finished a set, oldest first, by set. */
  readonly finishes: ReadonlyMap<string, readonly string[]>;
  /** The set of the finished loan that began last. */
  readonly lastFinished: string | undefined;
}

export interface LoanBook {
  readonly ofChild: (childId: string) => ChildLoans;
  /** The last day on which anyone had the set, far in the future while someone has it; undefined when nobody ever had. */
  readonly lastDayOf: (setId: string) => string | undefined;
}

const NONE: ChildLoans = { current: undefined, finishes: new Map(), lastFinished: undefined };

/** Kept for as long as the list of loans is: the same list is asked for each child and set. */
const BOOKS = new WeakMap<readonly SetLoan[], LoanBook>();

/** The book of these loans, which stand in the order in which they began. */
export function loanBook(loans: readonly SetLoan[]): LoanBook {
  let book = BOOKS.get(loans);
  if (!book) BOOKS.set(loans, (book = sortLoans(loans)));
  return book;
}

function sortLoans(loans: readonly SetLoan[]): LoanBook {
  const children = new Map<
    string,
    { current?: SetLoan; finishes: Map<string, string[]>; lastFinished?: string }
  >();
  const lastDays = new Map<string, string>();
  for (const loan of loans) {
    const { setId, childId, to, isFinished } = loan;
    const lastDay = to ?? STILL_OUT;
    if (lastDay > (lastDays.get(setId) ?? '')) lastDays.set(setId, lastDay);
    let child = children.get(childId);
    if (!child) children.set(childId, (child = { finishes: new Map() }));
    if (to === null) child.current ??= loan;
    if (!isFinished) continue;
    child.lastFinished = setId;
    if (to === null) continue;
    const days = child.finishes.get(setId);
    if (days) days.push(to);
    else child.finishes.set(setId, [to]);
  }
  for (const { finishes } of children.values()) for (const days of finishes.values()) days.sort();
  const books = new Map<string, ChildLoans>(
    [...children].map(([id, { current, finishes, lastFinished }]) => [
      id,
      { current, finishes, lastFinished },
    ]),
  );
  return { ofChild: (childId) => books.get(childId) ?? NONE, lastDayOf: (setId) => lastDays.get(setId) };
}
