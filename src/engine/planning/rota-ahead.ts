// The rota of the days to come, for paper: what everyone would have if each set took one day.
import { addDays } from '../numbers/calendar.js';
import { assignDay } from './rotation.js';
import { loanOf, type RotationChild, type RotationState, type SetLoan } from './rotation-state.js';

/**
 * For each child the ids of `days` sets: the one it has today, then one for each day that follows, by the rules of the
 * rotation. Null where it has none today or there is none for it. Children who are away are taken to be back tomorrow.
 */
export function rotaAhead(
  state: RotationState,
  children: readonly RotationChild[],
  days: number,
): ReadonlyMap<string, readonly (string | null)[]> {
  const rows = new Map<string, (string | null)[]>(
    children.map(({ id }) => [id, [loanOf(state, id)?.setId ?? null]]),
  );
  const back = children.map((child) => ({ ...child, isAbsent: false }));
  let loans = state.loans;
  for (let day = 1; day < days; day++) {
    const yesterday = addDays(state.date, day - 1);
    const date = addDays(state.date, day);
    loans = loans.map((loan) => (loan.to === null ? { ...loan, to: yesterday, isFinished: true } : loan));
    const given: SetLoan[] = [];
    for (const { childId, next } of assignDay({ ...state, date, loans }, back)) {
      rows.get(childId)?.push(next.ok ? next.value.setId : null);
      if (next.ok) given.push({ setId: next.value.setId, childId, from: date, to: null, isFinished: false });
    }
    loans = [...loans, ...given];
  }
  return rows;
}
