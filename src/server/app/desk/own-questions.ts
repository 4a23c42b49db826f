// A teacher's own questions: kept with the settings, given to screens and to the day's boards.
import type { Result } from '#api/problem.js';
import { OwnQuestions, type OwnQuestionsView, type OwnTable, type OwnTableRead } from '#api/own-questions.js';
import { hashText } from '#engine/random/rng.js';
import type { Settings as StoredSettings } from '#store/records.js';
import { readOwnQuestions } from '../own-questions/read-own-questions.js';
import { refuse } from '../problems.js';
import type { Services } from '../services.js';

const KEY = 'ownQuestions';

/** The list as it is stored; empty where none was ever saved. */
export async function ownQuestions(services: Services): Promise<Result<OwnQuestionsView>> {
  const stored = await services.store.settings.read();
  return stored.ok ? { ok: true, value: viewOf(stored.value.value) } : stored;
}

/** Saves the list unless another window saved one since `version`; lines with a fault are kept to be mended later. */
export async function saveOwnQuestions(
  services: Services,
  { version, ...list }: OwnQuestionsView,
): Promise<Result<OwnQuestionsView>> {
  const stored = await services.store.settings.read();
  if (!stored.ok) return stored;
  const { value } = stored.value;
  if (viewOf(value).version !== version)
    return refuse(
      'own.changed',
      'Your questions were changed in another window.',
      'Copy what you typed here, reload the page, and put it in again.',
    );
  const written = await services.store.settings.write(
    { ...value, activities: { ...value.activities, [KEY]: list } },
    stored.value.version,
  );
  return written.ok ? { ok: true, value: viewOf(written.value.value) } : written;
}

/** A table, or lines, of a file as lines. */
export function readOwnTable({ name, text }: OwnTable): OwnTableRead {
  const { lines, problems } = readOwnQuestions(text, name);
  return {
    lines: [...lines],
    problems: lines.length > 0 ? [] : problems.map(({ message, hint }) => `${message} ${hint}`),
  };
}

function viewOf({ activities }: Pick<StoredSettings, 'activities'>): OwnQuestionsView {
  const read = OwnQuestions.safeParse(activities[KEY]);
  const list = read.success ? read.data : { text: '', onBoards: true };
  return { ...list, version: hashText(JSON.stringify(list)).toString(36) };
}
