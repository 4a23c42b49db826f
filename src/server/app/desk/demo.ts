// The invented class for looking around: 27 children, terms around today, three marked boards of earlier
// school days, and a week of timed practice.
import type { ClassDetail, NewChild } from '#api/class.js';
import type { MarkEntry } from '#api/marking.js';
import type { Result } from '#api/problem.js';
import { DEFAULT_SETTINGS, type Settings } from '#api/settings.js';
import type { Board } from '#engine/activities/board/board.js';
import { logistic } from '#engine/learning/logistic.js';
import { addDays, dateOf, weekdayOf } from '#engine/numbers/calendar.js';
import { commonDifficulty } from '#engine/questions/question.js';
import { Rng } from '#engine/random/rng.js';
import type { Services } from '../services.js';
import { createClass } from './classes.js';
import { DEMO_CHILDREN, DEMO_CLASS_NAME } from './demo-class.js';
import { dayView } from './day.js';
import { practiseForDemo } from './demo-practice.js';
import { saveMarks } from './marking.js';
import { readSettings, saveSettings } from './settings.js';

/** Makes the demo class with its history; settings the teacher has made already are left alone. */
export async function startDemo(services: Services): Promise<Result<ClassDetail>> {
  const { today } = services.clock();
  const settings = await readSettings(services);
  if (!settings.ok) return settings;
  if (settings.value.terms.length === 0) {
    const { demo: _, ...kept } = settings.value;
    const saved = await saveSettings(
      services,
      { ...DEFAULT_SETTINGS, ...kept, terms: termsOfYear(dateOf(today).year) },
      true,
    );
    if (!saved.ok) return saved;
  }
  const children: NewChild[] = DEMO_CHILDREN.map(([givenName, familyName], index) => ({
    givenName,
    familyName,
    alias: '',
    year: index % 2 === 0 ? 4 : 5,
  }));
  const made = await createClass(services, { name: DEMO_CLASS_NAME, years: [4, 5], children });
  if (!made.ok) return made;
  for (const date of earlierFridays(today)) {
    const day = await dayView(services, made.value.id, date);
    if (!day.ok) return day;
    const sheet = day.value.sheets[0];
    if (!sheet) continue;
    const entries = made.value.children.flatMap((child, index) =>
      simulatedMarks(child.id, child.year, index, sheet.board, date),
    );
    const saved = await saveMarks(services, sheet.id, { entries });
    if (!saved.ok) return saved;
  }
  const practised = await practiseForDemo(services, made.value.id, today);
  return practised.ok ? made : practised;
}

/** Four terms of about ten weeks, as Australian schools have them. Common practice; a school sets its own dates. */
function termsOfYear(year: number): Settings['terms'] {
  const day = (monthDay: string) => `${year}-${monthDay}`;
  return [
    { name: 'Term 1', first: day('01-28'), last: day('04-02') },
    { name: 'Term 2', first: day('04-20'), last: day('06-26') },
    { name: 'Term 3', first: day('07-13'), last: day('09-18') },
    { name: 'Term 4', first: day('10-05'), last: day('12-18') },
  ];
}

function earlierFridays(today: string): string[] {
  const last = addDays(today, -(((weekdayOf(today) + 1) % 7) + 1));
  return [addDays(last, -14), addDays(last, -7), last];
}

/** One invented child's answers: each child has a level of its own, and wrong answers are mostly typical ones. */
function simulatedMarks(
  childId: string,
  year: number,
  index: number,
  board: Board,
  date: string,
): MarkEntry[] {
  const rng = new Rng(index).fork(date);
  const level = year - 0.5 + 2.4 * (new Rng(index).fork('level').unit() - 0.5);
  let isDone = false;
  return board.rungs.map(({ rung, question }): MarkEntry => {
    const chance = logistic(level - commonDifficulty(question));
    isDone ||= rung > 5 && chance < 0.3 && rng.chance(0.5);
    if (isDone) return { childId, rung, state: 'blank', typed: '' };
    if (rng.chance(chance)) return { childId, rung, state: 'right', typed: '' };
    const slip = question.slips.length > 0 && rng.chance(0.8) ? rng.pick(question.slips) : null;
    return slip
      ? { childId, rung, state: null, typed: slip.text }
      : { childId, rung, state: 'wrong', typed: '' };
  });
}
