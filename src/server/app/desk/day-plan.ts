// What a day of a class is planned from: its calendar, model, number, topics due, and what was asked of late.
import type { Result } from '#api/problem.js';
import type { BoardGroup } from '#api/today.js';
import type { BoardSide } from '#engine/activities/board/board.js';
import type { BoardRequest } from '#engine/activities/board/board-request.js';
import { type ClassModel, typicalClass } from '#engine/learning/class-model.js';
import { addDays, parseIsoDate } from '#engine/numbers/calendar.js';
import type { DayNumber } from '#engine/numbers/day-number.js';
import { ownQuestionsIn } from '#engine/own-questions/own-lines.js';
import type { OwnQuestion } from '#engine/own-questions/own-question.js';
import { type DueSkill, exposuresOf } from '#engine/planning/due.js';
import { type DayPlan, planDay } from '#engine/planning/plan-day.js';
import { hashText } from '#engine/random/rng.js';
import { refuse } from '../problems.js';
import type { Services } from '../services.js';
import { type ClassState, modelOn, readClassState } from './class-state.js';
import { ownQuestions } from './own-questions.js';

/** Numbers and questions of this many past days do not come again. */
const RECENT_DAYS = 28;

export interface Day {
  readonly state: ClassState;
  readonly plan: DayPlan;
  readonly model: ClassModel;
  readonly avoid: readonly string[];
  readonly own: readonly OwnQuestion[];
}

/** Ids of the skills that are due for review in the class on a date, most urgent first. */
export async function dueOn(
  services: Services,
  classId: string,
  date: string,
): Promise<Result<readonly string[]>> {
  const due = await dueTopics(services, classId, date);
  return due.ok ? { ok: true, value: due.value.map(({ skill }) => skill) } : due;
}

/** The same with the reason for each in a sentence. */
export async function dueTopics(
  services: Services,
  classId: string,
  date: string,
): Promise<Result<readonly DueSkill[]>> {
  const day = await readDay(services, classId, date);
  return day.ok ? { ok: true, value: day.value.plan.due } : day;
}

/** All that the boards of a date are composed from. Errors: a date that is none, an unknown class, bad terms. */
export async function readDay(services: Services, classId: string, date: string): Promise<Result<Day>> {
  if (parseIsoDate(date) === null)
    return refuse('day.date', `${date} is not a day of the calendar.`, 'Write the day like 2026-02-03.');
  const state = await readClassState(services, classId, date);
  if (!state.ok) return state;
  const recent = await services.store.sheets.list({
    classId,
    from: addDays(date, -RECENT_DAYS),
    to: addDays(date, -1),
  });
  if (!recent.ok) return recent;
  const { schoolClass, settings, children } = state.value;
  const model = children.length > 0 ? modelOn(state.value, date) : typicalClass(schoolClass.years);
  const plan = planDay({
    date,
    terms: settings.terms.map(({ name, first, last }) => ({ name, start: first, end: last })),
    closed: [...state.value.calendar.closed],
    classModel: model,
    settings: { years: schoolClass.years, locale: settings.locale },
    seed: hashText(classId) >>> 1,
    recentNumbers: [...new Set(recent.value.map((sheet) => sheet.number))],
    exposures: exposuresOf(
      recent.value.flatMap(({ date: on, content }) => (on ? [{ on, board: content }] : [])),
    ),
  });
  if (!plan.ok) return plan;
  const avoid = recent.value.flatMap((sheet) => sheet.content.rungs.map(({ question }) => question.text));
  const list = await ownQuestions(services);
  if (!list.ok) return list;
  const own = list.value.onBoards ? ownQuestionsIn(list.value.text) : [];
  return { ok: true, value: { state: state.value, plan: plan.value, model, avoid, own } };
}

/** The request for one board of the day. */
export function requestFor(day: Day, number: DayNumber, group: BoardGroup, side: BoardSide): BoardRequest {
  const { state, plan } = day;
  const children = state.children.filter(({ year }) => group === 'class' || year === group);
  const years = group === 'class' ? state.schoolClass.years : [group];
  const model =
    group === 'class'
      ? day.model
      : children.length > 0
        ? modelOn(state, plan.date, children)
        : typicalClass(years);
  const seed = plan.boards.find((board) => board.side === side)?.seed ?? 1;
  return {
    number,
    years,
    side,
    seed: group === 'class' ? seed : hashText(`${seed}/${group}`) >>> 1,
    locale: state.settings.locale,
    classModel: model,
    due: plan.due.map(({ skill }) => skill),
    avoid: day.avoid,
    own: day.own,
  };
}
