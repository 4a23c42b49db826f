// The invented class's timed practice: five earlier school days of sheets, each child with a pace and a care of its own.
import type { Result } from '#api/problem.js';
import type { Outcome, TimedChild, TimedView } from '#api/timed-room.js';
import { addDays, weekdayOf } from '#engine/numbers/calendar.js';
import { Rng } from '#engine/random/rng.js';
import type { Services } from '../services.js';
import { handOutTimed, recordTimed } from './timed/room.js';

const SCHOOL_DAYS = 5;

/** How a child works: questions done in a minute on the first day, what a day adds to them, and the share it gets right. */
interface Pace {
  readonly perMinute: number;
  readonly growth: number;
  readonly care: number;
}

/** Hands out and counts the sheets of the last school days before `today`. */
export async function practiseForDemo(
  services: Services,
  classId: string,
  today: string,
): Promise<Result<null>> {
  for (const [day, date] of schoolDaysBefore(today).entries()) {
    const view = await handOutTimed(services, { classId, date });
    if (!view.ok) return view;
    const entries = view.value.children.flatMap((child, index) => {
      const outcome = simulatedOutcome(child, view.value, index, day);
      return child.sheet && outcome ? [{ sheetId: child.sheet.id, outcome }] : [];
    });
    const saved = await recordTimed(services, { classId, date }, entries);
    if (!saved.ok) return saved;
  }
  return { ok: true, value: null };
}

/** Oldest first. */
function schoolDaysBefore(today: string): string[] {
  const days: string[] = [];
  for (let date = addDays(today, -1); days.length < SCHOOL_DAYS; date = addDays(date, -1))
    if (weekdayOf(date) <= 5) days.unshift(date);
  return days;
}

/** Most children are somewhere in the middle; every ninth is quick and sure, every thirteenth is on too hard a level. */
function paceOf(index: number): Pace {
  const rng = new Rng(index).fork('pace');
  if (index % 9 === 4) return { perMinute: 19, growth: 0.6, care: 0.99 };
  if (index % 13 === 7) return { perMinute: 6, growth: 0, care: 0.72 };
  return { perMinute: 7 + 8 * rng.unit(), growth: 0.2 + 0.4 * rng.unit(), care: 0.93 + 0.06 * rng.unit() };
}

/** What came of one sheet; null for a child who was away that day. */
function simulatedOutcome(
  { sheet }: TimedChild,
  { forms }: TimedView,
  index: number,
  day: number,
): Outcome | null {
  const questions = forms.find(({ key }) => key === sheet?.formKey)?.questions ?? [];
  const rng = new Rng(index).fork(`sheet ${day}`);
  if (!sheet || rng.chance(0.03)) return null;
  const { perMinute, growth, care } = paceOf(index);
  const pace = perMinute + growth * day + (rng.unit() - 0.5);
  const attempted = Math.min(questions.length, Math.round(pace * sheet.minutes));
  const wrong = Array.from({ length: attempted }, (_, i) => i + 1).filter(() => !rng.chance(care));
  return {
    attempted,
    wrong,
    written: {},
    redoWrong: sheet.redo.flatMap((_, i) => (rng.chance(0.2) ? [i + 1] : [])),
    minutes: sheet.minutes,
  };
}
