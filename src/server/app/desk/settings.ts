// Settings as screens know them, from settings as the store keeps them.
import type { Result } from '#api/problem.js';
import { DEFAULT_SETTINGS, Settings } from '#api/settings.js';
import { addDays, daysBetween, parseIsoDate } from '#engine/numbers/calendar.js';
import { type CalendarResult, makeSchoolCalendar } from '#engine/planning/school-calendar.js';
import type { Settings as StoredSettings } from '#store/records.js';
import type { Services } from '../services.js';

/** The settings in use; defaults where nothing was ever set. */
export async function readSettings(services: Services): Promise<Result<Settings & { demo: boolean }>> {
  const stored = await services.store.settings.read();
  if (!stored.ok) return stored;
  return { ok: true, value: { ...toScreen(stored.value.value), demo: stored.value.value.demo } };
}

function toScreen(stored: StoredSettings): Settings {
  const board = Settings.pick({ minutes: true, slipsPerPage: true }).safeParse(
    stored.activities['board'] ?? {},
  );
  const { minutes, slipsPerPage } = board.success ? board.data : DEFAULT_SETTINGS;
  return {
    locale: stored.locale,
    paper: stored.paper === 'Letter' ? 'Letter' : 'A4',
    terms: stored.terms.map((span) => ({ ...span })),
    closedDays: stored.closedDays.map((span) => ({ ...span })),
    minutes,
    slipsPerPage,
  };
}

/** Saves settings after checking every date; the answer is what is now stored. */
export async function saveSettings(
  services: Services,
  settings: Settings,
  demo?: boolean,
): Promise<Result<Settings>> {
  const calendar = calendarOf(settings);
  if (!calendar.ok) return calendar;
  const stored = await services.store.settings.read();
  if (!stored.ok) return stored;
  const { version, value } = stored.value;
  const { minutes, slipsPerPage, ...rest } = settings;
  const written = await services.store.settings.write(
    {
      ...value,
      ...rest,
      demo: demo ?? value.demo,
      activities: { ...value.activities, board: { minutes, slipsPerPage } },
    },
    version,
  );
  return written.ok ? { ok: true, value: toScreen(written.value.value) } : written;
}

/** The school calendar that the settings describe; the first fault in a date as one sentence. */
export function calendarOf(settings: Pick<Settings, 'terms' | 'closedDays'>): CalendarResult {
  const closed: string[] = [];
  for (const { name, first, last } of settings.closedDays) {
    const wrong = [first, last].find((date) => parseIsoDate(date) === null);
    if (wrong !== undefined) {
      return refuse(
        'calendar.date',
        `${name}: ${wrong} is not a day of the calendar.`,
        'Choose a day from the calendar.',
      );
    }
    if (last < first)
      return refuse(
        'calendar.order',
        `${name} ends on ${last}, before it starts on ${first}.`,
        'Swap the two dates.',
      );
    if (daysBetween(first, last) > 366)
      return refuse('calendar.order', `${name} lasts more than a year.`, 'Check the two dates.');
    for (let date = first; date <= last; date = addDays(date, 1)) closed.push(date);
  }
  return makeSchoolCalendar(
    settings.terms.map(({ name, first, last }) => ({ name, start: first, end: last })),
    closed,
  );
}

function refuse(code: 'calendar.date' | 'calendar.order', message: string, hint: string): CalendarResult {
  return { ok: false, error: { code, message, hint } };
}
