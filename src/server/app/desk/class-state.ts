// What is known about a class on a day: settings, children, counted answers and the learner model built from them.
import type { Child, ClassSummary } from '#api/class.js';
import type { Result } from '#api/problem.js';
import type { Settings } from '#api/settings.js';
import { buildClassModel, type ChildRecord, type ClassModel } from '#engine/learning/class-model.js';
import { type SchoolYear, usualSchoolYear } from '#engine/learning/school-year.js';
import { type SchoolCalendar, schoolYearOf } from '#engine/planning/school-calendar.js';
import type { Placement as StoredPlacement } from '#store/records.js';
import type { Services } from '../services.js';
import { type AnswerRecord, answersOfClass } from './answers.js';
import { classDetail } from './classes.js';
import { calendarOf, readSettings } from './settings.js';

export interface ClassState {
  readonly schoolClass: Omit<ClassSummary, 'childCount'>;
  readonly children: readonly Child[];
  readonly settings: Settings;
  readonly calendar: SchoolCalendar;
  readonly schoolYear: SchoolYear;
  readonly answers: ReadonlyMap<string, readonly AnswerRecord[]>;
  readonly placements: ReadonlyMap<string, StoredPlacement>;
}

/** Everything about a class except the model, which depends on the day. */
export async function readClassState(
  services: Services,
  classId: string,
  on: string,
): Promise<Result<ClassState>> {
  const settings = await readSettings(services);
  if (!settings.ok) return settings;
  const calendar = calendarOf(settings.value);
  if (!calendar.ok) return calendar;
  const detail = await classDetail(services, classId);
  if (!detail.ok) return detail;
  const answers = await answersOfClass(services, classId);
  if (!answers.ok) return answers;
  const placements = await services.store.placements.list(classId);
  if (!placements.ok) return placements;
  const { children, ...schoolClass } = detail.value;
  return {
    ok: true,
    value: {
      schoolClass,
      children,
      settings: settings.value,
      calendar: calendar.value,
      schoolYear: schoolYearOf(calendar.value) ?? usualSchoolYear(on, settings.value.locale),
      answers: answers.value,
      placements: new Map(placements.value.map((placement) => [placement.childId, placement])),
    },
  };
}

/** The model's record of one child. Answers given after the day looked from are left out by the model itself. */
export function recordOf(state: ClassState, child: Child): ChildRecord {
  const placed = state.placements.get(child.id);
  return {
    id: child.id,
    year: child.year,
    answers: state.answers.get(child.id) ?? [],
    ...(placed ? { placement: { shift: placed.level - (child.year - 0.5), deviation: placed.spread } } : {}),
  };
}

/** Models of the last few questions asked: a page asks for the same class and day several times in a row. */
const KEPT_MODELS = 8;
const MODELS = new Map<string, ClassModel>();

/** The learner model of a class on a day, from all answers given up to it. */
export function modelOn(
  state: ClassState,
  on: string,
  children: readonly Child[] = state.children,
): ClassModel {
  const records = children.map((child) => recordOf(state, child));
  // Everything the model depends on, so that a changed mark, child or term asks for a new one.
  const key = JSON.stringify([
    state.schoolClass.id,
    on,
    state.schoolYear,
    records.map(({ id, year, placement, answers }) => [
      id,
      year,
      placement ?? null,
      answers
        .map((answer) => `${answer.questionId}/${answer.on}/${answer.difficulty}/${answer.right}`)
        .join(),
    ]),
  ]);
  const known = MODELS.get(key);
  MODELS.delete(key);
  const model = known ?? buildClassModel({ children: records, on, schoolYear: state.schoolYear });
  MODELS.set(key, model);
  for (const oldest of MODELS.keys()) {
    if (MODELS.size <= KEPT_MODELS) break;
    MODELS.delete(oldest);
  }
  return model;
}
