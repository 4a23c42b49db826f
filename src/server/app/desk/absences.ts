// Who is away on a day, as marking and the rota note it.
import type { Result } from '#api/problem.js';
import type { DayRecord } from '#store/records.js';
import { refuse } from '../problems.js';
import type { Services } from '../services.js';

interface AbsenceNote {
  readonly classId: string;
  readonly date: string;
  readonly childId: string;
  readonly absent: boolean;
  /** What the day's record says where the day has none yet. */
  readonly unrecorded: Pick<DayRecord, 'number' | 'activity'>;
}

/** The children of a class who are away on a date. */
export async function absentOn(
  services: Services,
  classId: string,
  date: string,
): Promise<Result<readonly string[]>> {
  const days = await services.store.days.list(classId, { from: date, to: date });
  return days.ok ? { ok: true, value: days.value[0]?.absent ?? [] } : days;
}

/** Notes that a child is away, or is there after all. */
export async function noteAbsent(
  services: Services,
  { classId, date, childId, absent, unrecorded }: AbsenceNote,
): Promise<Result<Record<string, never>>> {
  const child = await services.store.children.get(childId);
  if (!child.ok) return child;
  if (child.value.classId !== classId)
    return refuse('child.missing', 'This child is not in this class.', 'Reload the page.');
  const days = await services.store.days.list(classId, { from: date, to: date });
  if (!days.ok) return days;
  const day = days.value[0] ?? { classId, date, ...unrecorded, note: '', absent: [] };
  const others = day.absent.filter((id) => id !== childId);
  const saved = await services.store.days.put({ ...day, absent: absent ? [...others, childId] : others });
  return saved.ok ? { ok: true, value: {} } : saved;
}
